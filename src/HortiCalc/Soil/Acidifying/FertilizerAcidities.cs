using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Published acidities of fertilisers, source by source.</summary>
public static class FertilizerAcidities
{
    private const string SulfurDoubt = "one part of sulfur neutralises 3.12 of calcium carbonate by molar masses";
    private const string PhosphateDoubt = "monoammonium phosphate is 11-52-0; 18-46-0, as printed, is diammonium phosphate";

    /// <summary>Every acidity there is, source by source.</summary>
    public static IReadOnlyList<FertilizerAcidity> All { get; } = ValueList<FertilizerAcidity>.Of([.. Alabama(), .. Norganics(), .. ByNitrogen()]);

    /// <summary>The acidity of a fertiliser by one source.</summary>
    /// <param name="source">The <see cref="Source.Key"/> of the source.</param>
    /// <param name="material">The fertiliser as the source names it, capitals or not.</param>
    /// <returns>The acidity.</returns>
    /// <exception cref="ArgumentException">The source has no such fertiliser, or a text is empty.</exception>
    public static FertilizerAcidity Named(string source, string material)
    {
        Guard.NotBlank(source);
        return Compare(material).FirstOrDefault(acidity => acidity.Source.Key == source)
            ?? throw new ArgumentException(
                $"material was '{material}' of '{source}'; allowed: the fertilisers of {string.Join(", ", All.Select(acidity => acidity.Source.Key).Distinct())}.",
                nameof(material));
    }

    /// <summary>What every source prints of a fertiliser.</summary>
    /// <param name="material">The fertiliser, capitals or not.</param>
    /// <returns>The acidities; none where no source has it.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<FertilizerAcidity> Compare(string material)
    {
        Guard.NotBlank(material);
        return ValueList<FertilizerAcidity>.Of(All.Where(acidity => acidity.Material.Equals(material, StringComparison.OrdinalIgnoreCase)));
    }

    // Pounds of calcium carbonate for 100 lb; the source prints acid as negative. Rows with a range or without a figure are left out.
    private static IEnumerable<FertilizerAcidity> Alabama() =>
    [
        Material(AcidSources.Alabama, "Ammonium nitrate", -61, 34),
        Material(AcidSources.Alabama, "Ammonium nitrate limestone", 0, 20),
        Material(AcidSources.Alabama, "Ammonium nitrate sulfate", -71, 30),
        Material(AcidSources.Alabama, "Ammonium sulfate", -110, 21),
        Material(AcidSources.Alabama, "Anhydrous ammonia", -148, 82),
        Material(AcidSources.Alabama, "Calcium cyanamide", 63, 21),
        Material(AcidSources.Alabama, "Calcium nitrate", 20, 15),
        Material(AcidSources.Alabama, "Calcium nitrate/urea", -36, 34),
        Material(AcidSources.Alabama, "UAN solution 32%", -55, 32),
        Material(AcidSources.Alabama, "UAN solution 30%", -52, 30),
        Material(AcidSources.Alabama, "UAN solution 28%", -49, 28),
        Material(AcidSources.Alabama, "Ammonium nitrate solution 21%", -37, 21),
        Material(AcidSources.Alabama, "Ammonium nitrate solution 19%", -33, 19),
        Material(AcidSources.Alabama, "Potassium nitrate", 26, 13),
        Material(AcidSources.Alabama, "Sodium nitrate", 29, 16),
        Material(AcidSources.Alabama, "Urea", -81, 45),
        Material(AcidSources.Alabama, "Sulfur coated urea", -118),
    ];

    private static IEnumerable<FertilizerAcidity> Norganics() =>
    [
        Material(AcidSources.Norganics, "Ammonium nitrate", -60),
        Material(AcidSources.Norganics, "Ammonium sulfate", -110),
        Material(AcidSources.Norganics, "Animal tankage", 10),
        Material(AcidSources.Norganics, "Basic slag", 70),
        Material(AcidSources.Norganics, "Bone meal", 20),
        Material(AcidSources.Norganics, "Calcitic lime", 98),
        Material(AcidSources.Norganics, "Calcium nitrate", 20),
        Material(AcidSources.Norganics, "Cottonseed meal", -9),
        Material(AcidSources.Norganics, "Dolomitic lime", 100),
        Material(AcidSources.Norganics, "Dried blood", -22),
        Material(AcidSources.Norganics, "Epsom salt", 0),
        Material(AcidSources.Norganics, "Fish scraps", -8),
        Material(AcidSources.Norganics, "Gypsum", 0),
        Material(AcidSources.Norganics, "Magnesium oxide", 250),
        Material(AcidSources.Norganics, "Monoammonium phosphate", -65),
        Material(AcidSources.Norganics, "Diammonium phosphate", -70),
        Material(AcidSources.Norganics, "Phosphate rock", 10),
        Material(AcidSources.Norganics, "Potassium magnesium sulfate", 0),
        Material(AcidSources.Norganics, "Potassium nitrate", 26),
        Material(AcidSources.Norganics, "Potassium sulfate", 0),
        Material(AcidSources.Norganics, "Sodium nitrate", 29),
        Material(AcidSources.Norganics, "Sulfur", -218, doubt: SulfurDoubt),
        Material(AcidSources.Norganics, "Sulfur coated urea", -118),
        Material(AcidSources.Norganics, "Urea", -84),
        Material(AcidSources.Norganics, "Wood ash", 60),
    ];

    private static IEnumerable<FertilizerAcidity> ByNitrogen() =>
    [
        Nitrogen(AcidSources.ServiTech, "Anhydrous ammonia", 1.8, 82),
        Nitrogen(AcidSources.ServiTech, "Urea", 1.8, 45),
        Nitrogen(AcidSources.ServiTech, "Ammonium sulfate", 5.4, 21),
        Nitrogen(AcidSources.ServiTech, "UAN solution", 1.8, null),
        Nitrogen(AcidSources.ServiTech, "Monoammonium phosphate", 5.4, null, PhosphateDoubt),
        Nitrogen(AcidSources.ServiTech, "Diammonium phosphate", 3.6, 18),
        Nitrogen(AcidSources.CornellNitrogen, "Urea", 1.8, null),
        Nitrogen(AcidSources.CornellNitrogen, "Ammonium sulfate", 5.4, null),
        Nitrogen(AcidSources.TeagascNitrogen, "Calcium ammonium nitrate or urea", 2, null),
    ];

    private static FertilizerAcidity Material(Source source, string material, double printed, double? nitrogenPercent = null, string? doubt = null) => new(
        material, AcidityBasis.Material, Ratio.FromPercent(0 - printed), source, Share(nitrogenPercent), doubt);

    private static FertilizerAcidity Nitrogen(Source source, string material, double carbonate, double? nitrogenPercent, string? doubt = null) => new(
        material, AcidityBasis.Nitrogen, Ratio.FromPercent(carbonate * 100), source, Share(nitrogenPercent), doubt);

    private static MassFraction? Share(double? percent) => percent is { } share ? MassFraction.FromPercent(share) : null;
}
