using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What a source prints about how long lime takes to act, in its own words: sources mean different things by it.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// foreach (LimeTimeFact fact in LimeTimeFact.Published)
///     Console.WriteLine(fact);
/// </code></example>
public sealed record LimeTimeFact
{
    /// <summary>Describes a printed time.</summary>
    /// <param name="material">What takes the time.</param>
    /// <param name="time">The time as printed.</param>
    /// <param name="meaning">What is reached in it; empty where nothing is said.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentException">The material or the time is empty.</exception>
    /// <exception cref="ArgumentNullException">The meaning or the source is <see langword="null"/>.</exception>
    public LimeTimeFact(string material, string time, string meaning, Source source)
    {
        Material = Guard.NotBlank(material);
        Time = Guard.NotBlank(time);
        Meaning = Guard.NotNull(meaning);
        Source = Guard.NotNull(source);
    }

    /// <summary>Every printed time.</summary>
    public static IReadOnlyList<LimeTimeFact> Published { get; } = ValueList<LimeTimeFact>.Of(
    [
        Fact("Passes 100 mesh", "1 year", "100%", "Cornell", "https://courses2.cit.cornell.edu/cca/soilFertilityCA/CA5/CA512.html"),
        Fact("Passes 100 mesh", "2-3 months", "reacts", "Ohio OAIMA", "http://www.oaima.org/aws/OAIMA/pt/sp/aglime_enp"),
        Fact("Passes 100 mesh", "six months or less", "100%", "Atlantic Canada", "https://deploy.doczz.net/doc/6834858/which-limestone-should-you-use%3F"),
        Fact("Most limes", "3-6 months", "pH begins to move", "MU Extension", "http://www.mafg.net/NewAgriDataArticles.aspx?ArticleID=Nzk%3D-XCGCY2egN7s%3D&FolderID=MjA%3D-vsN5EKIFKPE%3D"),
        Fact("Lime before seeding forage", "6-12 months ahead", "advice", "Penn State", "http://www.forages.psu.edu/topics/soil_fertility/pre_estab/liming.html"),
        Fact("Garden lime", "3-4 months", "changes pH", "Clemson HGIC", "https://hgic.clemson.edu/could-soil-ph-be-limiting-your-gardens-potential/"),
        Fact("Limestone", "up to 6 months", "effect on pH", "UMaine Extension", "https://www.centralmaine.com/2016/10/14/umaine-extension-releases-list-for-bulk-lime-sources/"),
        Fact("Lime (or fertiliser, OM) before a pH test", "3 months", "do not test sooner", "RHS", "https://rhs.org.uk/soil-composts-mulches/lime-liming"),
        Fact("Surface lime around plants", "years", "to have any effect", "RHS", "https://rhs.org.uk/soil-composts-mulches/lime-liming"),
        Fact("Top-dressed lime movement", "about 1 cm/year", "downward", "Border Mail/Holbrook Landcare", "https://www.bordermail.com.au/story/7169146/new-lime-demonstration-testing-sites-loving-the-land/"),
        Fact("Fine particles", "1-2 years", "", "ServiTech", "https://cropfile.hostwiki.io/2-00-fertilizer-lime-amendment-technology-and-use/2-03-012-liming-material-effectiveness"),
        Fact("Medium particles", "3-5 years", "", "ServiTech", "https://cropfile.hostwiki.io/2-00-fertilizer-lime-amendment-technology-and-use/2-03-012-liming-material-effectiveness"),
        Fact("Pelleted lime", "same as fine aglime on an ECCE/ENP basis", "no faster than high quality aglime", "Ohio (No-Till Farmer)", "https://www.no-tillfarmer.com/articles/2474-key-questions-to-ask-about-pelletized-lime"),
    ]);

    /// <summary>What takes the time.</summary>
    public string Material { get; }

    /// <summary>The time as printed.</summary>
    public string Time { get; }

    /// <summary>What is reached in it; empty where nothing is said.</summary>
    public string Meaning { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The material, the time, the meaning and the publisher.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Material}: {Time}{(Meaning.Length == 0 ? "" : $", {Meaning}")} [{Source.Publisher}]";

    private static LimeTimeFact Fact(string material, string time, string meaning, string publisher, string address) => new(
        material,
        time,
        meaning,
        new Source(
            "lime-time-" + string.Concat(publisher.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-')),
            "time for lime to act",
            publisher,
            null,
            address));
}
