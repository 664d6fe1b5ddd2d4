using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class ContainerCalculations
{
    private const double CubicInchesPerUsBushel = 2150.42;

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["frustum_volume_L"] = inputs => Frustum(inputs).BrimVolume.Liters,
        ["frustum_volume_cm3"] = inputs => Frustum(inputs).BrimVolume.CubicCentimeters,
        ["cylinder_volume_in3"] = inputs => Cylinder(inputs).BrimVolume.CubicInches,
        ["cylinder_volume_ft3"] = inputs => Cylinder(inputs).BrimVolume.CubicFeet,
        ["pots_per_yd3"] = inputs => Exact(PottingMedium.PotsFrom(Volume.FromCubicYards(1), Cylinder(inputs), Length.Zero, Ratio.Zero)),
        ["pots_exact"] = inputs => Exact(inputs.Has("mix_L")
            ? PottingMedium.PotsFrom(
                Volume.FromLiters(inputs.Number("mix_L")),
                Volume.FromLiters(inputs.Number("pot_L")),
                Ratio.FromPercent(inputs.Number("allowance_pct")))
            : PottingMedium.PotsFrom(
                Volume.FromCubicFeet(inputs.Number("mix_ft3")), Volume.FromUsGallons(inputs.Number("pot_gal")), Ratio.Zero)),
        ["medium_ft3"] = inputs => PottingMedium
            .ForPots(Volume.FromUsGallons(inputs.Number("pot_gal")), (int)inputs.Number("pots"), Ratio.Zero).CubicFeet,
        ["crop-room-depth-low"] = inputs => Room(inputs, row => row.Depth is not null).Depth!.Value.Inches,
        ["crop-room-depth-high"] = inputs => Room(inputs, row => row.DepthHigh is not null).DepthHigh!.Value.Inches,
        ["crop-room-diameter"] = inputs => Room(inputs, row => row.Diameter is not null).Diameter!.Value.Inches,
        ["crop-room-volume"] = inputs => Room(inputs, row => row.Volume is not null).Volume!.Value.UsGallons,
        ["crop-room-plants"] = inputs => Room(inputs, row => row.Plants is not null).Plants!.Value,
        ["crop-room-plants-high"] = inputs => Room(inputs, row => row.PlantsHigh is not null).PlantsHigh!.Value,
        ["addition-kg-m3"] = inputs => Addition(inputs).Rate.KilogramsPerCubicMeter,
        ["addition-lb-yd3"] = inputs => Addition(inputs).For(Volume.FromCubicYards(1)).Value.Pounds,
        ["addition-oz-uk-bushel"] = inputs => Addition(inputs).For(Volume.FromImperialGallons(8)).Value.Ounces,
        ["addition-oz-half-us-bushel"] = inputs => Addition(inputs).For(Volume.FromCubicInches(CubicInchesPerUsBushel / 2)).Value.Ounces,
        ["addition-oz-half-us-bushel-high"] = inputs => Addition(inputs).For(Volume.FromCubicInches(CubicInchesPerUsBushel / 2)).Range!.High.Ounces,
        ["pot-height-share"] = inputs => PotClasses.HeightOf(Length.FromInches(10), Enum.Parse<PotClass>(inputs["class"])).Value.Inches / 10,
        ["pot-cast-diameter"] = inputs => PotCast.All.Single(cast => cast.Name == inputs["name"]).Diameter.Inches,
        ["pot-cast-pots"] = inputs => PotCast.All.Single(cast => cast.Name == inputs["name"]).PotsPerCast!.Value,
        ["pot-size-in3"] = inputs => Size(inputs).Volume.CubicInches,
        ["tray-cells"] = inputs => new CellTray(
            Container.Round(Length.FromCentimeters(2), Length.FromCentimeters(4)), (int)inputs.Number("rows"), (int)inputs.Number("columns")).Cells,
        ["pot_brim_L"] = inputs => Size(inputs).Shape!.BrimVolume.Liters,
        ["pot_size_L"] = inputs => Size(inputs).Volume.Liters,
        ["pot_size_gal"] = inputs => Size(inputs).Volume.UsGallons,
        ["pot_size_ft3"] = inputs => Size(inputs).Volume.CubicFeet,
        ["pot_size_yd3"] = inputs => Size(inputs).Volume.CubicYards,
        ["pot_size_in3"] = inputs => Size(inputs).Volume.CubicInches,
        ["mix_portion_L"] = inputs => Portion(inputs, Volume.FromLiters(inputs.Number("batch_L"))).Liters,
        ["mix_portion_gal"] = inputs => Portion(inputs, Volume.FromUsGallons(inputs.Number("batch_gal"))).UsGallons,
        ["mix_portion_imperial_gal"] = inputs => Portion(inputs, Volume.FromImperialGallons(inputs.Number("batch_imperial_gal"))).ImperialGallons,
        ["mix_portion_yd3"] = inputs => Portion(inputs, Volume.FromCubicYards(inputs.Number("batch_yd3"))).CubicYards,
        ["mix_portion_bushel"] = inputs => Portion(
            inputs, Volume.FromCubicInches(inputs.Number("batch_bushel") * CubicInchesPerUsBushel)).CubicInches / CubicInchesPerUsBushel,
    };

    private static RoundContainer Frustum(Inputs inputs) => Container.RoundTapered(
        Length.FromCentimeters(inputs.Number("top_cm")),
        Length.FromCentimeters(inputs.Number("base_cm")),
        Length.FromCentimeters(inputs.Number("height_cm")));

    private static RoundContainer Cylinder(Inputs inputs) =>
        Container.Round(Length.FromInches(inputs.Number("diameter_in")), Length.FromInches(inputs.Number("height_in")));

    private static CropRoom Room(Inputs inputs, Func<CropRoom, bool> has) => CropRooms.All.First(row =>
        row.Source.Key == inputs["source"] && row.Crop.Replace(", ", "|", StringComparison.Ordinal) == inputs["crop"] && has(row));

    private static MediumAddition Addition(Inputs inputs) => MediumAdditions.All.Single(addition =>
        addition.Source.Key == inputs["source"] && addition.Mix.Replace(", ", "|", StringComparison.Ordinal) == inputs["mix"] && addition.Material == inputs["material"]);

    private static PotSize Size(Inputs inputs) => PotSizes.Named(inputs["source"], inputs["name"]);

    private static Volume Portion(Inputs inputs, Volume batch) =>
        MediumRecipes.Named(inputs["recipe"]).ForBatch(batch, Ratio.Zero).VolumeOf(inputs["component"]);

    /// <summary>Pots with the fraction that the left-over would fill.</summary>
    private static double Exact(PotYield yield) => yield.Pots + yield.LeftOver / yield.MediumPerPot;
}
