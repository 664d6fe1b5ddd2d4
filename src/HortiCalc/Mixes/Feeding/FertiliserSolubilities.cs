using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>
/// Solubilities of fertilisers by temperature, in grams per litre of solution, as a published table has them.
/// </summary>
/// <remarks>
/// They are those of one fertiliser alone: an ion in common with another lowers both. Potassium nitrate is printed low up to 20 °C, which errs on
/// the safe side.
/// </remarks>
/// <example><code>
/// Estimate&lt;MassConcentration&gt; most = FertiliserSolubilities.PotassiumNitrate.At(Temperature.FromDegreesCelsius(20));
/// double gramsPerLitre = most.Value.GramsPerLiter;   // 209
/// </code></example>
public static class FertiliserSolubilities
{
    /// <summary>Potassium nitrate, KNO3.</summary>
    public static FertiliserSolubility PotassiumNitrate { get; } =
        new("potassium-nitrate", "potassium nitrate", (5, 133), (10, 170), (20, 209), (25, 316), (30, 370), (40, 458));

    /// <summary>Ammonium nitrate, NH4NO3.</summary>
    public static FertiliserSolubility AmmoniumNitrate { get; } = new("ammonium-nitrate", "ammonium nitrate", (5, 1183), (10, 1510), (20, 1920));

    /// <summary>Ammonium sulfate, (NH4)2SO4.</summary>
    public static FertiliserSolubility AmmoniumSulfate { get; } = new("ammonium-sulfate", "ammonium sulfate", (5, 710), (10, 730), (20, 750));

    /// <summary>Calcium nitrate of fertiliser grade.</summary>
    public static FertiliserSolubility CalciumNitrate { get; } = new("greenhouse-calcium-nitrate", "calcium nitrate", (5, 1020), (10, 1130), (20, 1290));

    /// <summary>Magnesium nitrate.</summary>
    public static FertiliserSolubility MagnesiumNitrate { get; } =
        new("magnesium-nitrate", "magnesium nitrate", (5, 680), (10, 690), (20, 710), (25, 720));

    /// <summary>Monoammonium phosphate, NH4H2PO4.</summary>
    public static FertiliserSolubility MonoammoniumPhosphate { get; } =
        new("monoammonium-phosphate", "monoammonium phosphate", (5, 250), (10, 295), (20, 374), (25, 410), (30, 464), (40, 567));

    /// <summary>Monopotassium phosphate, KH2PO4.</summary>
    public static FertiliserSolubility MonopotassiumPhosphate { get; } =
        new("monopotassium-phosphate", "monopotassium phosphate", (5, 110), (10, 180), (20, 230), (25, 250), (30, 300), (40, 340));

    /// <summary>Potassium chloride, KCl.</summary>
    public static FertiliserSolubility PotassiumChloride { get; } =
        new("potassium-chloride", "potassium chloride", (5, 229), (10, 238), (20, 255), (25, 264), (30, 275));

    /// <summary>Potassium sulfate, K2SO4.</summary>
    public static FertiliserSolubility PotassiumSulfate { get; } =
        new("potassium-sulfate", "potassium sulfate", (5, 80), (10, 90), (20, 111), (25, 120));

    /// <summary>Urea.</summary>
    public static FertiliserSolubility Urea { get; } = new("urea", "urea", (5, 780), (10, 850), (20, 1060), (25, 1200));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FertiliserSolubility> All { get; } = ValueList<FertiliserSolubility>.Of(
    [
        PotassiumNitrate, AmmoniumNitrate, AmmoniumSulfate, CalciumNitrate, MagnesiumNitrate,
        MonoammoniumPhosphate, MonopotassiumPhosphate, PotassiumChloride, PotassiumSulfate, Urea,
    ]);

    /// <summary>Finds a fertiliser by its key.</summary>
    /// <param name="key">The <see cref="FertiliserSolubility.Key"/>, for instance <c>potassium-nitrate</c>.</param>
    /// <returns>Its solubilities.</returns>
    /// <exception cref="ArgumentException">There is no such fertiliser, or the key is empty.</exception>
    public static FertiliserSolubility FromKey(string key)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        return All.FirstOrDefault(one => one.Key == key)
            ?? throw new ArgumentException($"{nameof(key)} was '{key}'; allowed: {string.Join(", ", All.Select(one => one.Key))}.", nameof(key));
    }

    /// <summary>The solubility of a salt at a temperature in g/L, or <see langword="null"/> where the table does not say.</summary>
    internal static double? OfSalt(string key, double celsius)
    {
        string printed = key == "calcium-nitrate" ? "greenhouse-calcium-nitrate" : key;
        FertiliserSolubility? known = All.FirstOrDefault(one => one.Key == printed);
        return known?.Reaches(celsius) == true ? known.GramsPerLitre(celsius) : null;
    }
}
