using HortiCalc.Beds;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class BedCalculations
{
    private const double CubicInchesPerUsBushel = 2150.42;

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["rectangle_area_ft2"] = inputs => Rectangle(inputs).Area.SquareFeet,
        ["circle_area_ft2"] = inputs => Bed.Circle(Length.FromFeet(2 * inputs.Number("radius_ft"))).Area.SquareFeet,
        ["bed_volume_ft3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicFeet,
        ["bed_volume_yd3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicYards,
        ["bed_volume_m3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicMeters,
        ["layer_volume_yd3"] = inputs => Amendment.VolumeFor(GroundOf(inputs), Size(inputs, "depth")).CubicYards,
        ["layer_depth_in"] = inputs => Amendment.Depth(Amount(inputs, "volume"), GroundOf(inputs)).Inches,
        ["coverage_ft2"] = inputs => Amendment.Coverage(Expanded(inputs, "volume"), Size(inputs, "depth")).SquareFeet,
        ["settled_layer_volume_m3"] = inputs => AmendmentLayer
            .LooseOnTop(Size(inputs, "depth"), Ratio.FromPercent(inputs.Number("allowance_pct")))
            .VolumeOver(Area.FromSquareMeters(inputs.Number("area_m2"))).CubicMeters,
        ["mixed_depth_in"] = inputs => Worked(inputs).MixedDepth!.Value.Inches,
        ["soil_share_pct"] = inputs => 100 - Worked(inputs).ShareOfMix!.Value.Percent,
        ["bags_to_buy"] = inputs => Purchase(inputs).Count,
        ["bags_exact"] = inputs => Purchase(inputs) is BagPurchase bags ? bags.Count - bags.LeftOver / bags.Bag : 0,
        ["mass_of_cubic_yard_lb"] = inputs => MassOf(inputs, Volume.FromCubicYards(1)).Pounds,
        ["mass_of_cubic_metre_t"] = inputs => MassOf(inputs, Volume.FromCubicMeters(1)).Tonnes,
        ["mass_of_us_bushel_lb"] = inputs => MassOf(inputs, Volume.FromCubicInches(CubicInchesPerUsBushel)).Pounds,
        ["volume_of_short_ton_yd3"] = inputs => Density(inputs).VolumeOf(Mass.FromShortTons(1)).Value.CubicYards,
    };

    private static RectangleBed Rectangle(Inputs inputs) => Bed.Rectangle(Size(inputs, "width"), Size(inputs, "length"));

    private static Area GroundOf(Inputs inputs) => Area.FromSquareFeet(inputs.Number("area_ft2"));

    private static AmendmentLayer Worked(Inputs inputs) => AmendmentLayer
        .LooseOnTop(Size(inputs, "layer"), Ratio.Zero)
        .WorkedIntoSoil(Size(inputs, "soil"));

    private static BagPurchase Purchase(Inputs inputs) => Bags.ToBuy(Amount(inputs, "volume"), Expanded(inputs, "bag"));

    private static BulkDensity Density(Inputs inputs) => BulkDensities.Named(inputs["source"], inputs["material"]);

    private static Mass MassOf(Inputs inputs, Volume volume)
    {
        Estimate<Mass> mass = Density(inputs).MassOf(volume);
        return !inputs.Has("end") ? mass.Value : inputs["end"] == "low" ? mass.Range!.Low : mass.Range!.High;
    }

    private static Length Size(Inputs inputs, string name) =>
        inputs.Has(name + "_in") ? Length.FromInches(inputs.Number(name + "_in"))
        : inputs.Has(name + "_ft") ? Length.FromFeet(inputs.Number(name + "_ft"))
        : Length.FromMeters(inputs.Number(name + "_m"));

    private static Volume Amount(Inputs inputs, string name) =>
        inputs.Has(name + "_yd3") ? Volume.FromCubicYards(inputs.Number(name + "_yd3"))
        : inputs.Has(name + "_ft3") ? Volume.FromCubicFeet(inputs.Number(name + "_ft3"))
        : inputs.Has(name + "_m3") ? Volume.FromCubicMeters(inputs.Number(name + "_m3"))
        : Volume.FromLiters(inputs.Number(name + "_L"));

    /// <summary>A volume on a label, times what it becomes when loosened.</summary>
    private static Volume Expanded(Inputs inputs, string name) =>
        Amount(inputs, name) * (inputs.Has("expansion") ? inputs.Number("expansion") : 1);
}
