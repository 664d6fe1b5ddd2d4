using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A fabric laid over a crop, and the degrees that a source gives it.</summary>
public sealed record RowCover
{
    private RowCover(string key, string name, Source source, double lowFahrenheit, double highFahrenheit)
    {
        TemperatureDelta low = TemperatureDelta.FromDegreesFahrenheit(lowFahrenheit);
        Gain = new Estimate<TemperatureDelta>(
            low,
            new Method(key, name, source, new Domain("clear, calm nights; covered before the ground has cooled")),
            new EstimateRange<TemperatureDelta>(low, TemperatureDelta.FromDegreesFahrenheit(highFahrenheit), "range printed by the source"),
            cautions: [FrostNightCautions.CoverBeforeDark, FrostNightCautions.Fire]);
    }

    /// <summary>A light cover: 2 to 3 °F.</summary>
    public static RowCover Light { get; } = new("row-cover.light", "light row cover", FrostNightSources.MaineStrawberry, 2, 3);

    /// <summary>A heavy cover: 4 to 6 °F.</summary>
    public static RowCover Heavy { get; } = new("row-cover.heavy", "heavy row cover", FrostNightSources.MaineStrawberry, 4, 6);

    /// <summary>A cover of 1.2 ounces a square yard, 41 g/m²: 4 to 5 °F.</summary>
    public static RowCover OunceAndAFifth { get; } = new(
        "row-cover.1-2-oz", "row cover of 1.2 oz a square yard", FrostNightSources.GrowerArticleStart, 4, 5);

    /// <summary>Every cover there is.</summary>
    public static IReadOnlyList<RowCover> All { get; } = ValueList<RowCover>.Of([Light, Heavy, OunceAndAFifth]);

    /// <summary>How much warmer the night is under it: the low end, and the range that the source prints.</summary>
    public Estimate<TemperatureDelta> Gain { get; }

    /// <summary>The key, name and source.</summary>
    public Method Evidence => Gain.Method;

    /// <summary>Finds a cover by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The cover.</returns>
    /// <exception cref="ArgumentException">There is no such cover, or the key is empty.</exception>
    public static RowCover FromKey(string key) => Keyed.Find(All, cover => cover.Evidence.Key, key);

    /// <summary>The cover's name.</summary>
    /// <returns>For instance <c>light row cover</c>.</returns>
    public override string ToString() => Evidence.Name;
}
