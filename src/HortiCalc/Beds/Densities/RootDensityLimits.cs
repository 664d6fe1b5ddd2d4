using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Published densities at which soil hinders roots, by texture.</summary>
public static class RootDensityLimits
{
    private static readonly Source Nrcs = new(
        "nrcs-root-density", "General relationship of soil bulk density to root growth (NRCS table)", "Modesto Junior College quoting NRCS", null, "https://info.5y1.org/bulk-density-table_1_58c807.html");

    private static readonly Source Problems = new(
        "illinois-root-problems", "Bulk densities at which roots begin to have problems", "University of Illinois, NRES 201 lecture notes", 2011, "https://www.coursehero.com/file/6307366/RelativeResourceManager8/");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RootDensityLimit> Published { get; } = ValueList<RootDensityLimit>.Of(
    [
        Of("sandy", 1.6, 1.8, Nrcs),
        Of("silty", 1.4, 1.65, Nrcs),
        Of("clayey", 1.1, 1.47, Nrcs),
        Of("sands and loamy sands, except loamy very fine sand", null, 1.8, Problems),
        Of("very fine sand and loamy very fine sand", null, 1.77, Problems),
        Of("sandy loams", null, 1.75, Problems),
        Of("loam and sandy clay loam", null, 1.7, Problems),
        Of("clay loam", null, 1.65, Problems),
        Of("sandy clay", null, 1.6, Problems),
        Of("silt and silt loam", null, 1.55, Problems),
        Of("silty clay loam", null, 1.5, Problems),
        Of("silty clay", null, 1.45, Problems),
        Of("clay", null, 1.4, Problems),
    ]);

    private static RootDensityLimit Of(string texture, double? ideal, double restricts, Source source) => new(
        texture, ideal is double below ? Density.FromKilogramsPerLiter(below) : null, Density.FromKilogramsPerLiter(restricts), source);
}
