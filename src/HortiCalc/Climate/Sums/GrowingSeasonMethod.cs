using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published definition of the growing season by runs of warm and of cold days.</summary>
/// <remarks>
/// <para>
/// Both begin the season with the first run of so many days whose mean is above 5 °C and end it with the first run of as many whose mean is
/// below. What neither print says is settled alike for both, so that they differ in the length of the run alone:
/// </para>
/// <list type="bullet">
/// <item>a day at exactly 5 °C belongs to no run, nor does a missing day: each breaks the run it falls in;</item>
/// <item>the year is 1 January to 31 December, in the south 1 July to 30 June; runs are looked for in it alone, so that a season which never
/// stopped begins on its first day, and a run that the end of the year cuts short is none;</item>
/// <item>the cold run lies wholly after the middle of the year (1 July, in the south 1 January) and after the start, as the first definition
/// says; without that a cold spell in February would end a British season that began in January;</item>
/// <item>without a cold run the season lasts to the end of the year; without a warm run there is none and its length is zero;</item>
/// <item>it lasts from the first day of the warm run to the day before the cold one.</item>
/// </list>
/// </remarks>
public sealed record GrowingSeasonMethod
{
    private GrowingSeasonMethod(string key, string name, int runDays, Source source)
    {
        Evidence = new Method(key, name, source, new Domain("places whose winter has a run of days below 5 °C"));
        RunDays = runDays;
    }

    /// <summary>Runs of six days: the definition of the international expert team on climate indices.</summary>
    public static GrowingSeasonMethod Etccdi { get; } = new(
        "growing-season.etccdi",
        "growing season by runs of six days",
        6,
        new Source(
            "etccdi-core-indices",
            "Climate change indices: definitions of the 27 core indices",
            "Expert Team on Climate Change Detection and Indices",
            null,
            "http://etccdi.pacificclimate.org/list_27_indices.shtml"));

    /// <summary>Runs of five days: the definition of the United Kingdom's statistics.</summary>
    public static GrowingSeasonMethod Defra { get; } = new(
        "growing-season.defra",
        "growing season by runs of five days",
        5,
        new Source(
            "defra-growing-season",
            "Key facts about global atmosphere: length of the growing season 1772-2004",
            "Department for Environment, Food and Rural Affairs",
            2005,
            "https://webarchive.nationalarchives.gov.uk/20051104120000/http:/www.defra.gov.uk/environment/statistics/globatmos/kf/gakf19.htm"));

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<GrowingSeasonMethod> All { get; } = ValueList<GrowingSeasonMethod>.Of([Etccdi, Defra]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>How many days a run must have.</summary>
    public int RunDays { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static GrowingSeasonMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>growing season by runs of six days</c>.</returns>
    public override string ToString() => Evidence.Name;
}
