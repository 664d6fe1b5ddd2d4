using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

/// <summary>Conversions between the trade's units (<c>value</c>, <c>from</c>, <c>to</c>) and arithmetic of pH.</summary>
internal static class UnitCalculations
{
    private static readonly Dictionary<string, Unit<Volume>> Volumes = new(StringComparer.Ordinal)
    {
        ["L"] = Of(VolumeUnit.Liter),
        ["mL"] = Of(VolumeUnit.Milliliter),
        ["m3"] = Of(VolumeUnit.CubicMeter),
        ["in3"] = Of(VolumeUnit.CubicInch),
        ["ft3"] = Of(VolumeUnit.CubicFoot),
        ["yd3"] = Of(VolumeUnit.CubicYard),
        ["us_gal"] = Of(VolumeUnit.UsGallon),
        ["us_qt"] = Of(VolumeUnit.UsQuart),
        ["us_pt"] = Of(VolumeUnit.UsPint),
        ["us_cup"] = Of(VolumeUnit.UsCustomaryCup),
        ["us_fl_oz"] = Of(VolumeUnit.UsOunce),
        ["us_tbsp"] = Of(VolumeUnit.UsTablespoon),
        ["us_tsp"] = Of(VolumeUnit.UsTeaspoon),
        ["metric_cup"] = Of(VolumeUnit.MetricCup),
        ["metric_tsp"] = Of(VolumeUnit.MetricTeaspoon),
        ["metric_tbsp"] = new(Volume.FromMetricTablespoons, volume => volume.MetricTablespoons),
        ["imp_gal"] = Of(VolumeUnit.ImperialGallon),
        ["imp_qt"] = Of(VolumeUnit.ImperialQuart),
        ["imp_pt"] = Of(VolumeUnit.ImperialPint),
        ["imp_fl_oz"] = Of(VolumeUnit.ImperialOunce),
        ["us_bu"] = new(Volume.FromUsBushels, volume => volume.UsBushels),
        ["us_pk"] = new(Volume.FromUsPecks, volume => volume.UsPecks),
        ["us_dry_qt"] = new(Volume.FromUsDryQuarts, volume => volume.UsDryQuarts),
        ["us_dry_pt"] = new(Volume.FromUsDryPints, volume => volume.UsDryPints),
        ["imp_bu"] = new(Volume.FromImperialBushels, volume => volume.ImperialBushels),
        ["acre_in"] = new(Volume.FromAcreInches, volume => volume.AcreInches),
        ["acre_ft"] = new(value => Volume.FromAcreInches(12 * value), volume => volume.AcreInches / 12),
    };

    private static readonly Dictionary<string, Unit<Mass>> Masses = new(StringComparer.Ordinal)
    {
        ["kg"] = Of(MassUnit.Kilogram),
        ["g"] = Of(MassUnit.Gram),
        ["t"] = Of(MassUnit.Tonne),
        ["lb"] = Of(MassUnit.Pound),
        ["oz"] = Of(MassUnit.Ounce),
        ["us_ton"] = Of(MassUnit.ShortTon),
        ["uk_ton"] = Of(MassUnit.LongTon),
    };

    private static readonly Dictionary<string, Unit<Length>> Lengths = new(StringComparer.Ordinal)
    {
        ["m"] = Of(LengthUnit.Meter),
        ["cm"] = Of(LengthUnit.Centimeter),
        ["mm"] = Of(LengthUnit.Millimeter),
        ["km"] = Of(LengthUnit.Kilometer),
        ["in"] = Of(LengthUnit.Inch),
        ["ft"] = Of(LengthUnit.Foot),
        ["yd"] = Of(LengthUnit.Yard),
        ["mile"] = Of(LengthUnit.Mile),
        ["L_m2"] = new(Length.FromLitersPerSquareMeter, length => length.LitersPerSquareMeter),
        ["us_gal_ft2"] = new(Length.FromUsGallonsPerSquareFoot, length => length.UsGallonsPerSquareFoot),
        ["yd3_1000ft2"] = new(Length.FromCubicYardsPerThousandSquareFeet, length => length.CubicYardsPerThousandSquareFeet),
        ["m3_ha"] = new(Length.FromCubicMetersPerHectare, length => length.CubicMetersPerHectare),
    };

    private static readonly Dictionary<string, Unit<Area>> Areas = new(StringComparer.Ordinal)
    {
        ["m2"] = Of(AreaUnit.SquareMeter),
        ["ha"] = Of(AreaUnit.Hectare),
        ["ft2"] = Of(AreaUnit.SquareFoot),
        ["yd2"] = Of(AreaUnit.SquareYard),
        ["acre"] = Of(AreaUnit.Acre),
    };

    private static readonly Dictionary<string, Unit<AreaDensity>> Rates = new(StringComparer.Ordinal)
    {
        ["g_m2"] = Of(AreaDensityUnit.GramPerSquareMeter),
        ["kg_ha"] = new(AreaDensity.FromKilogramsPerHectare, rate => rate.KilogramsPerHectare),
        ["t_ha"] = new(AreaDensity.FromTonnesPerHectare, rate => rate.TonnesPerHectare),
        ["lb_acre"] = new(AreaDensity.FromPoundsPerAcre, rate => rate.PoundsPerAcre),
        ["us_ton_acre"] = new(AreaDensity.FromShortTonsPerAcre, rate => rate.ShortTonsPerAcre),
        ["lb_100ft2"] = new(AreaDensity.FromPoundsPerHundredSquareFeet, rate => rate.PoundsPerHundredSquareFeet),
        ["lb_1000ft2"] = new(AreaDensity.FromPoundsPerThousandSquareFeet, rate => rate.PoundsPerThousandSquareFeet),
        ["oz_1000ft2"] = new(value => AreaDensity.FromPoundsPerThousandSquareFeet(value / 16), rate => rate.PoundsPerThousandSquareFeet * 16),
        ["oz_yd2"] = new(AreaDensity.FromOuncesPerSquareYard, rate => rate.OuncesPerSquareYard),
        ["g_100ft2"] = new(
            value => Mass.FromGrams(value) / Area.FromSquareFeet(100), rate => (rate * Area.FromSquareFeet(100)).Grams),
    };

    private static readonly Dictionary<string, Unit<Density>> Densities = new(StringComparer.Ordinal)
    {
        ["kg_m3"] = Of(DensityUnit.KilogramPerCubicMeter),
        ["lb_yd3"] = Of(DensityUnit.PoundPerCubicYard),
        ["lb_ft3"] = Of(DensityUnit.PoundPerCubicFoot),
    };

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["convert_volume"] = inputs => Convert(inputs, Volumes),
        ["convert_mass"] = inputs => Convert(inputs, Masses),
        ["convert_length"] = inputs => Convert(inputs, Lengths),
        ["convert_area"] = inputs => Convert(inputs, Areas),
        ["convert_rate"] = inputs => Convert(inputs, Rates),
        ["convert_density"] = inputs => Convert(inputs, Densities),
        ["mean_ph_of_solutions"] = inputs => Ph.MeanOfSolutions(Readings(inputs)).Value,
        ["mean_ph_of_soil_samples"] = inputs => Ph.MeanOfSoilSamples(Readings(inputs)).Value,
        ["mean_hydrogen_activity"] = inputs => Ph.MeanOfSolutions(Readings(inputs)).HydrogenActivity.MolesPerLiter,
        ["ph_of_hydrogen_activity"] = inputs => Ph.FromHydrogenActivity(Molarity.FromMolesPerLiter(inputs.Number("activity_mol_L"))).Value,
        ["hydrogen_activity_ratio"] = inputs =>
            new Ph(inputs.Number("more_acid_pH")).HydrogenActivity / new Ph(inputs.Number("less_acid_pH")).HydrogenActivity,
    };

    private static Computed Convert<T>(Inputs inputs, Dictionary<string, Unit<T>> units) =>
        units[inputs["to"]].Read(units[inputs["from"]].Make(inputs.Number("value")));

    private static Ph[] Readings(Inputs inputs) => [.. inputs.Numbers("pH").Select(value => new Ph(value))];

    private static Unit<Volume> Of(VolumeUnit unit) => new(value => new Volume(value, unit), volume => volume.As(unit));

    private static Unit<Mass> Of(MassUnit unit) => new(value => new Mass(value, unit), mass => mass.As(unit));

    private static Unit<Length> Of(LengthUnit unit) => new(value => new Length(value, unit), length => length.As(unit));

    private static Unit<Area> Of(AreaUnit unit) => new(value => new Area(value, unit), area => area.As(unit));

    private static Unit<AreaDensity> Of(AreaDensityUnit unit) => new(value => new AreaDensity(value, unit), rate => rate.As(unit));

    private static Unit<Density> Of(DensityUnit unit) => new(value => new Density(value, unit), density => density.As(unit));

    private sealed record Unit<T>(Func<double, T> Make, Func<T, double> Read);
}
