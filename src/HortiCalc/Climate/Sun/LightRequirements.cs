using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Published light of a day by crop and by place.</summary>
public static class LightRequirements
{
    private static readonly Source Encyclopedia = new(
        "encyclopedia-dli", "Daily light integral", "Encyclopedia article", null, "https://probsee.com/p/Daily_light_integral");

    private static readonly Source EncyclopediaCopy = new(
        "encyclopedia-dli-copy",
        "Daily light integral, another copy of the article",
        "Encyclopedia article",
        null,
        "https://userz.net/post/361139dc3fcc8b04f18d57dd4cdc9ab6");

    private static readonly Source YoungPlants = new(
        "hortscience-54-52",
        "HortScience 54(1), page 52: light for young plants",
        "American Society for Horticultural Science",
        2019,
        "https://journals.ashs.org/hortsci/view/journals/hortsci/54/1/article-p52.xml");

    private static readonly Source HortAmericas = new(
        "hort-americas-ppfd",
        "Conversion: instantaneous PPFD to integrated PPFD",
        "Hort Americas",
        null,
        "https://hortamericas.com/grower-resources/conversion-instantaneous-ppfd-to-integrated-ppfd/");

    /// <summary>Every one there is.</summary>
    public static IReadOnlyList<LightRequirement> All { get; } = ValueList<LightRequirement>.Of(
    [
        Of("African violet", 4, 6, Encyclopedia),
        Of("tomato, greenhouse, high yield", 20, 30, Encyclopedia),
        Of("fruiting vegetables", 20, 25, EncyclopediaCopy),
        Of("most ornamentals, upper need", null, 12, EncyclopediaCopy),
        Of("young plants, bedding plugs", 10, 12, YoungPlants),
        Of("outdoors, natural range", 5, 60, Encyclopedia),
        Of("inside greenhouses, range", 1, 30, Encyclopedia),
        Of("sunny summer day outdoors", 50, 60, HortAmericas),
    ]);

    /// <summary>Finds one by its subject.</summary>
    /// <param name="subject">The <see cref="LightRequirement.Subject"/>.</param>
    /// <returns>The requirement.</returns>
    /// <exception cref="ArgumentException">There is no such subject, or it is empty.</exception>
    public static LightRequirement Named(string subject) =>
        All.FirstOrDefault(one => one.Subject == Guard.NotBlank(subject))
        ?? throw new ArgumentException($"subject was '{subject}'; allowed: {string.Join("; ", All.Select(one => one.Subject))}.", nameof(subject));

    private static LightRequirement Of(string subject, double? low, double high, Source source) => new(
        subject,
        low is double moles ? DailyLightIntegral.FromMolesPerSquareMetreDay(moles) : null,
        DailyLightIntegral.FromMolesPerSquareMetreDay(high),
        source);
}
