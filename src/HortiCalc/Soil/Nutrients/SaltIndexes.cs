using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>Published salt indices of fertilisers and salts.</summary>
public static class SaltIndexes
{
    /// <summary>Every index there is.</summary>
    public static IReadOnlyList<SaltIndex> All { get; } = ValueList<SaltIndex>.Of(
    [
        .. Rows(
            NutrientSources.SaltIndex,
            ("Ammonia", 47.1),
            ("Urea", 74.4),
            ("Ammonium nitrate", 104),
            ("Calcium nitrate", 65),
            ("Monoammonium phosphate", 26.7),
            ("Monopotassium phosphate", 8.4),
            ("Diammonium phosphate", 29.2),
            ("Monosodium phosphate", 36.2),
            ("Ammonium sulfate", 88.3),
            ("Triple superphosphate", 10.1),
            ("Potassium nitrate", 69.5),
            ("Single superphosphate", 7.8),
            ("Sodium nitrate", 100),
            ("Potassium chloride", 116.2),
            ("Calcium carbonate", 4.7),
            ("Potassium sulfate", 42.6),
            ("Calcium sulfate", 8.1),
            ("Sodium chloride", 153.8),
            ("Sodium sulfate", 74.2)),
    ]);

    /// <summary>What is printed of a material.</summary>
    /// <param name="material">The material, capitals or not: <c>urea</c>.</param>
    /// <returns>The indices; none where no source has the material.</returns>
    /// <exception cref="ArgumentException">The material is empty.</exception>
    public static IReadOnlyList<SaltIndex> Of(string material)
    {
        Guard.NotBlank(material);
        return ValueList<SaltIndex>.Of(All.Where(row => row.Material.Equals(material, StringComparison.OrdinalIgnoreCase)));
    }

    private static IEnumerable<SaltIndex> Rows(Source source, params (string Material, double Value)[] rows) =>
        rows.Select(row => new SaltIndex(row.Material, row.Value, source));
}
