using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Pores, water and air of container media.</summary>
internal static class MediumPhysicsCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["porometer-porosity"] = inputs => Reading(inputs).TotalPorosity.Percent,
        ["porometer-density"] = inputs => Reading(inputs).DryBulkDensity.GramsPerCubicCentimeter,
        ["soak-porosity"] = inputs => new SoakReading(
            Volume.FromMilliliters(inputs.Number("medium_mL")), Volume.FromMilliliters(inputs.Number("filled_mL")), Volume.Zero).TotalPorosity.Percent,
        ["soak-solids-mL"] = inputs => inputs.Number("medium_mL") - new SoakReading(
            Volume.FromMilliliters(inputs.Number("medium_mL")), Volume.FromMilliliters(inputs.Number("filled_mL")), Volume.Zero).Filled.Milliliters,
        ["water-retained"] = inputs => Retained(inputs).Percent,
        ["water-retained-share"] = inputs => Retained(inputs).DecimalFractions,
        ["water-retained-mL"] = inputs => Retained(inputs).DecimalFractions * inputs.Number("medium_mL"),
        ["air-volume-dry-g-mL"] = _ => 1000 * (Air(200, 500) - Air(100, 500)) / 100,
        ["suction-of-height-kPa"] = inputs =>
            inputs.Number("height_mm") / RetentionPoint.OfPressure(Pressure.FromKilopascals(1), Ratio.Zero).Suction.Millimeters,
        ["pores-from-densities"] = inputs => MediumPorosity.FromDensities(
            Density.FromGramsPerCubicCentimeter(inputs.Number("bulk_g_cm3")), Density.FromGramsPerCubicCentimeter(inputs.Number("particle_g_cm3"))).Percent,
        ["pore-space-constant"] = _ => Pores(0),
        ["pore-space-slope"] = _ => (Pores(400) - Pores(100)) / 300,
        ["air-volume-constant"] = _ => Air(100, 500) - 100 * (Air(200, 500) - Air(100, 500)) / 100 - 0.5 * (Air(100, 600) - Air(100, 500)) / 0.1,
        ["air-volume-dry"] = _ => (Air(200, 500) - Air(100, 500)) / 100,
        ["air-volume-drained"] = _ => (Air(100, 600) - Air(100, 500)) / 0.1,
        ["retention-parameter"] = inputs =>
        {
            VanGenuchtenRetention curve = (VanGenuchtenRetention)PublishedRetentions.Named(inputs["medium"]).Curve;
            return inputs["parameter"] switch
            {
                "residual" => curve.Residual.DecimalFractions,
                "saturated" => curve.Saturated.DecimalFractions,
                "alpha" => curve.Alpha.InverseMeters,
                _ => curve.N,
            };
        },
        ["peat-point"] = inputs => PublishedRetentions.SphagnumPeat
            .Single(point => Math.Abs(point.Suction.Meters * 9.80665 - inputs.Number("kpa")) < 1e-9 * inputs.Number("kpa")).Water.Percent,
        ["medium-range-low"] = inputs => Range(inputs).Low.Percent,
        ["medium-range-high"] = inputs => Range(inputs).High!.Value.Percent,
        ["medium-range-low-ml-L"] = inputs => Range(inputs).Low.Percent * 10,
        ["medium-range-high-ml-L"] = inputs => Range(inputs).High!.Value.Percent * 10,
        ["solids-of-pores"] = inputs => new DrainedMedium(
            new LogLogisticRetention(Ratio.Zero, Ratio.FromPercent(inputs.Number("pores_percent")), Length.FromCentimeters(30), 1),
            Container.Round(Length.FromCentimeters(10), Length.FromCentimeters(10)),
            Length.Zero).Solids.Percent,
        ["drained-capacity"] = inputs => Drained(inputs).ContainerCapacity.Percent,
        ["drained-air"] = inputs => Drained(inputs).AirSpace.Percent,
        ["drained-available"] = inputs => Drained(inputs).AvailableWater(Length.FromCentimeters(inputs.Number("suction_cm"))).Milliliters,
        ["retention-fit"] = inputs => Parameter(inputs).Value,
        ["retention-fit-error"] = inputs => Parameter(inputs).StandardError,
        ["retention-fit-deviation"] = inputs => Fit(inputs).ResidualDeviation.Percent,
    };

    private static Ratio Retained(Inputs inputs) => PotWatering.Retained(
        Volume.FromMilliliters(inputs.Number("medium_mL")), Volume.FromMilliliters(inputs.Number("given_mL")), Volume.FromMilliliters(inputs.Number("drained_mL")));

    private static PorometerReading Reading(Inputs inputs)
    {
        double dry = inputs.Number("bulk_g_cm3");
        return new PorometerReading(
            Volume.FromLiters(1),
            Volume.FromLiters(inputs.Number("air_percent") / 100),
            Mass.FromKilograms(dry + inputs.Number("capacity_percent") / 100),
            Mass.FromKilograms(dry));
    }

    private static double Pores(double gramsPerLitre) => MediumPorosity.FromBulkDensity(Density.FromGramsPerLiter(gramsPerLitre)).Value.Percent;

    private static double Air(double dryGramsPerLitre, double drainedGramsPerLitre) => MediumPorosity.AirFromDensities(
        Density.FromGramsPerLiter(dryGramsPerLitre), Density.FromGramsPerLiter(drainedGramsPerLitre)).Value.Percent;

    private static MediumRange Range(Inputs inputs) => MediumRanges.All.Single(range =>
        range.Source.Key == inputs["source"]
        && range.Property == Enum.Parse<MediumProperty>(inputs["property"])
        && range.Conditions.Replace(", ", "|", StringComparison.Ordinal) == inputs["conditions"]);

    private static DrainedMedium Drained(Inputs inputs)
    {
        Length top = Length.FromCentimeters(inputs.Number("top_cm"));
        Length bottom = Length.FromCentimeters(inputs.Number("base_cm"));
        Length height = Length.FromCentimeters(inputs.Number("height_cm"));
        return new DrainedMedium(
            PublishedRetentions.Named(inputs["medium"]).Curve,
            inputs["shape"] == "round" ? Container.RoundTapered(top, bottom, height) : Container.SquareTapered(top, bottom, height),
            Length.FromCentimeters(inputs.Number("headspace_cm")),
            Length.FromCentimeters(inputs.Number("water_table_cm")));
    }

    private static RetentionFit Fit(Inputs inputs)
    {
        RetentionPoint[] points =
        [
            .. inputs.Numbers("suction_m").Zip(inputs.Numbers("water_percent"), (metres, percent) =>
                new RetentionPoint(Length.FromMeters(metres), Ratio.FromPercent(percent))),
        ];
        Ratio? residual = inputs.Has("residual_percent") ? Ratio.FromPercent(inputs.Number("residual_percent")) : null;
        return inputs["form"] == "van-genuchten" ? RetentionFit.VanGenuchten(points, residual) : RetentionFit.LogLogistic(points, residual);
    }

    private static FittedParameter Parameter(Inputs inputs) => Fit(inputs).Parameters.Single(parameter =>
        parameter.Name.Split(',')[0].Replace(' ', '_') == inputs["parameter"]);
}
