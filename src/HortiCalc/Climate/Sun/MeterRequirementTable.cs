using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The published table behind <see cref="MeterRequirement.All"/>.</summary>
internal static class MeterRequirementTable
{
    private static readonly Source Column = new(
        "greenhouse-light-management",
        "Light management of greenhouse horticultural crops",
        "Biotech Articles",
        2014,
        "https://biotecharticles.com/Agriculture-Article/Light-Management-of-Green-House-Horticultural-Crops-3413.html");

    public static ValueList<MeterRequirement> All { get; } = ValueList<MeterRequirement>.Of(
    [
        Of("low light house plants", 100, 200),
        Of("most seedlings and flowering bulbs", 750, 750),
        Of("orchids, roses, succulents", 1500, 1500),
        Of("leafy vegetables", 2800, 2800),
        Of("fruits and vegetables", 5000, 5000),
    ]);

    private static MeterRequirement Of(string plants, double low, double high) =>
        new(plants, Illuminance.FromFootcandles(low), Illuminance.FromFootcandles(high), Column);
}
