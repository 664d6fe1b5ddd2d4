using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Published lines from the conductivity of a thin extract to that of the saturated extract, side by side.</summary>
/// <remarks>
/// The number in a key is that of the study in the list of the article which collected the lines. For a soil of known texture the lines of
/// study 60 are the ones to choose: the only set for coarse, medium and fine soils that has both 1:1 and 1:2. For 1:5 the line that asks for
/// the water content at saturation, <see cref="SlavichPetterson"/>, fits the soil itself.
/// </remarks>
public static class ExtractConversions
{
    /// <summary>Every line that needs nothing but the reading.</summary>
    public static IReadOnlyList<ExtractConversion> All { get; } = ValueList<ExtractConversion>.Of(
    [
        Line("extract-1-1-theory", SoilExtract.OneToOne, ExtractTexture.Any, 3, 0),
        Line("extract-1-1-60-coarse", SoilExtract.OneToOne, ExtractTexture.Coarse, 3.01, -0.06, 0.98),
        Line("extract-1-1-60-medium", SoilExtract.OneToOne, ExtractTexture.Medium, 3.01, -0.77, 0.98),
        Line("extract-1-1-60-fine", SoilExtract.OneToOne, ExtractTexture.Fine, 2.66, -0.97, 0.98),
        Line("extract-1-1-67", SoilExtract.OneToOne, ExtractTexture.Any, 1.85, 0, 0.85),
        Line("extract-1-1-68-coarse", SoilExtract.OneToOne, ExtractTexture.Coarse, 3.01, -0.06),
        Line("extract-1-1-68-medium", SoilExtract.OneToOne, ExtractTexture.Medium, 3.01, -0.77),
        Line("extract-1-1-68-fine", SoilExtract.OneToOne, ExtractTexture.Fine, 2.96, -0.95),
        Line("extract-1-1-69", SoilExtract.OneToOne, ExtractTexture.Any, 1.93, -0.57),
        Line("extract-1-1-63-sandy", SoilExtract.OneToOne, ExtractTexture.Sandy, 2.72, -1.27, 0.99),
        Line("extract-1-1-63-sandy-origin", SoilExtract.OneToOne, ExtractTexture.Sandy, 2.42, 0, 0.98),
        Line("extract-1-1-63-loamy", SoilExtract.OneToOne, ExtractTexture.Loamy, 2.15, -0.44, 0.99),
        Line("extract-1-1-63-loamy-origin", SoilExtract.OneToOne, ExtractTexture.Loamy, 2.06, 0, 0.98),
        Line("extract-1-1-63", SoilExtract.OneToOne, ExtractTexture.Any, 2.23, -0.58, 0.98),
        Line("extract-1-1-63-origin", SoilExtract.OneToOne, ExtractTexture.Any, 2.11, 0, 0.98),
        Line("extract-1-1-69-origin", SoilExtract.OneToOne, ExtractTexture.Any, 3.35, 0, 0.95),
        Line("extract-1-2-60-coarse", SoilExtract.OneToTwo, ExtractTexture.Coarse, 2.79, 0.71, 0.91),
        Line("extract-1-2-60-medium", SoilExtract.OneToTwo, ExtractTexture.Medium, 2.35, -0.36, 0.95),
        Line("extract-1-2-60-fine", SoilExtract.OneToTwo, ExtractTexture.Fine, 2.16, 0.03, 0.97),
        Australian("talsma-1968", 6.4, 0),
        Australian("loveday-1972", 6.5, 0),
        Australian("murray-1980", 6.44, -0.102),
        Australian("shaw-1981", 6.08, -0.937),
        Australian("lyons-2003", 6.29, -0.27),
    ]);

    /// <summary>The 1:5 line of a soil by its water content at saturation: the factor is 2.46 + 3.03 divided by that content.</summary>
    /// <param name="saturationWater">The water in the saturated paste by mass of dry soil; above 0 and up to 150 %, our own bound.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The content lies outside the bound.</exception>
    public static ExtractConversion SlavichPetterson(Ratio saturationWater)
    {
        double content = Boundary.Fraction(saturationWater);
        if (!(content > 0 && content <= 1.5))
            throw Guard.Refused(nameof(saturationWater), content * 100, "%", "above 0 and up to 150 %");
        return new ExtractConversion(
            new Method(
                "extract-1-5-slavich-petterson",
                "saturated extract from 1:5 by the water content at saturation",
                SaltSources.Slavich,
                new Domain(
                    $"soils of Australia; this line for {Guard.Number(content * 100)} % of water at saturation",
                    new DomainLimit("measured", 0, double.PositiveInfinity, "dS/m"))),
            SoilExtract.OneToFive,
            ExtractTexture.Any,
            2.46 + 3.03 / content,
            ElectricConductivity.Zero);
    }

    /// <summary>The lines for an extract.</summary>
    /// <param name="extract">The extract.</param>
    /// <returns>The lines, in the order of the sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such extract.</exception>
    public static IReadOnlyList<ExtractConversion> For(SoilExtract extract)
    {
        Guard.Defined(extract);
        return ValueList<ExtractConversion>.Of(All.Where(line => line.Extract == extract));
    }

    /// <summary>Finds a line by its key.</summary>
    /// <param name="key">The key of its method, for instance <c>extract-1-1-60-medium</c>.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentException">There is no such line, or the key is empty.</exception>
    public static ExtractConversion FromKey(string key) => SoilKeys.Find(All, line => line.Method.Key, key);

    private static ExtractConversion Line(
        string key, SoilExtract extract, ExtractTexture texture, double slope, double intercept, double? determination = null)
    {
        string soils = texture == ExtractTexture.Any ? "soils of several textures" : $"{Word(texture)} soils";
        return Make(key, SaltSources.ExtractEquations, soils, extract, texture, slope, intercept, determination);
    }

    private static ExtractConversion Australian(string study, double slope, double intercept) => Make(
        $"extract-1-5-{study}", SaltSources.AustralianExtracts, "soils of Australia", SoilExtract.OneToFive, ExtractTexture.Any, slope, intercept, null);

    private static ExtractConversion Make(
        string key, Source source, string soils, SoilExtract extract, ExtractTexture texture, double slope, double intercept, double? determination)
    {
        string ratio = extract switch { SoilExtract.OneToOne => "1:1", SoilExtract.OneToTwo => "1:2", _ => "1:5" };
        string added = intercept == 0 ? "" : intercept.ToString(" + 0.###; - 0.###", CultureInfo.InvariantCulture);
        DomainLimit limit = new("measured", ExtractConversion.LowestDecisiemens(slope, intercept), double.PositiveInfinity, "dS/m");
        return new ExtractConversion(
            new Method(key, $"saturated extract from {ratio}, {Guard.Number(slope)} x EC{added}", source, new Domain(soils, limit)),
            extract,
            texture,
            slope,
            ElectricConductivity.FromMillisiemensPerCentimeter(intercept),
            determination);
    }

    private static string Word(ExtractTexture texture) => texture switch
    {
        ExtractTexture.Coarse => "coarse",
        ExtractTexture.Medium => "medium",
        ExtractTexture.Fine => "fine",
        ExtractTexture.Sandy => "sandy",
        _ => "loamy",
    };
}
