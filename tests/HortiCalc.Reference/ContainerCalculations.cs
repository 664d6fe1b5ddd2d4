using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class ContainerCalculations
{
    private const double CubicInchesPerUsBushel = 2150.42;
    private const double CubicInchesPerUsDryQuart = 2150.42 / 32;

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["frustum_volume_L"] = inputs => Frustum(inputs).BrimVolume.Liters,
        ["frustum_volume_cm3"] = inputs => Frustum(inputs).BrimVolume.CubicCentimeters,
        ["frustum_volume_m3"] = inputs => Frustum(inputs).BrimVolume.CubicMeters,
        ["frustum_volume_in3"] = inputs => FrustumOfInches(inputs).BrimVolume.CubicInches,
        ["frustum_within_walls_in3"] = inputs => FrustumOfInches(inputs)
            .WithinWalls(Length.FromInches(inputs.Number("wall_in")), Length.FromInches(inputs.Number("floor_in"))).BrimVolume.CubicInches,
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
        ["crop-room-volume-high"] = inputs => Room(inputs, row => row.VolumeHigh is not null).VolumeHigh!.Value.UsGallons,
        ["addition-other-kg-m3"] = inputs => Addition(inputs).Rate.KilogramsPerCubicMeter,
        ["addition-base-part-kg-m3"] = inputs => MediumAdditions.All.Where(addition =>
            addition.Source.Key == "john-innes-metric" && addition.Mix == inputs["mix"] && addition.Material.EndsWith(", of the base", StringComparison.Ordinal))
            .Sum(addition => addition.Rate.KilogramsPerCubicMeter),
        ["addition-oz-8-imperial-gal"] = inputs => Addition(inputs).For(Volume.FromImperialGallons(8)).Value.Ounces,
        ["nursery-class-of"] = inputs => NurseryClass.Of(Amount(inputs))?.Name ?? "none",
        ["nursery-class-low"] = inputs => Class(inputs).Low.CubicInches,
        ["nursery-class-high"] = inputs => Class(inputs).High.CubicInches,
        ["carbon-ratio-low"] = inputs => Carbon(inputs).Low,
        ["carbon-ratio-high"] = inputs => Carbon(inputs).High!.Value,
        ["nitrogen-turn"] = inputs => CarbonRatios.TurnAt(inputs.Number("carbon_to_nitrogen")) switch
        {
            NitrogenTurn.Releases => "mineralises",
            NitrogenTurn.TiesUp => "immobilises",
            _ => "between",
        },
        ["mix-carbon-lb"] = inputs => Balance(inputs).Carbon.Pounds,
        ["mix-nitrogen-lb"] = inputs => Balance(inputs).Nitrogen.Pounds,
        ["mix-carbon-to-nitrogen"] = inputs => Balance(inputs).CarbonToNitrogen!.Value,
        ["pot-weight-kg"] = inputs => Weight(inputs).Kilograms,
        ["pot-load-kg-m2"] = inputs => PotWeight.Load(Weight(inputs), Area.FromSquareMeters(inputs.Number("area_m2"))).KilogramsForcePerSquareMeter,
        ["square-frustum-cm3"] = inputs => SquareFrustum(inputs).BrimVolume.CubicCentimeters,
        ["square-frustum-m3"] = inputs => SquareFrustum(inputs).BrimVolume.CubicMeters,
        ["half-sphere-cm3"] = inputs => HalfSphere(inputs).BrimVolume.CubicCentimeters,
        ["half-sphere-L"] = inputs => HalfSphere(inputs).BrimVolume.Liters,
        ["half-sphere-to-cm3"] = inputs => HalfSphere(inputs).VolumeTo(Length.FromCentimeters(inputs.Number("depth_cm"))).CubicCentimeters,
        ["half-sphere-rest-cm3"] = inputs =>
            (HalfSphere(inputs).BrimVolume - HalfSphere(inputs).VolumeTo(Length.FromCentimeters(inputs.Number("depth_cm")))).CubicCentimeters,
        ["bowl-cm3"] = inputs => Container
            .Bowl(Length.FromCentimeters(inputs.Number("diameter_cm")), Length.FromCentimeters(inputs.Number("height_cm"))).BrimVolume.CubicCentimeters,
        ["half-round-L"] = inputs => HalfPipe(Length.FromCentimeters(inputs.Number("width_cm")), Length.FromCentimeters(inputs.Number("length_cm"))).Liters,
        ["half-round-gal"] = inputs => HalfPipe(Length.FromInches(inputs.Number("width_in")), Length.FromFeet(inputs.Number("length_ft"))).UsGallons,
        ["two-half-barrels-cm3"] = inputs => 2 * HalfBarrel(inputs).CubicCentimeters,
        ["two-half-barrels-L"] = inputs => 2 * HalfBarrel(inputs).Liters,
        ["box-liquid-qt"] = inputs => Box(inputs).UsQuarts,
        ["box-in3"] = inputs => Box(inputs).CubicInches,
        ["box-cm3"] = inputs => BoxOfCentimetres(inputs).CubicCentimeters,
        ["box-cm-L"] = inputs => BoxOfCentimetres(inputs).Liters,
        ["box-cm-m3"] = inputs => BoxOfCentimetres(inputs).CubicMeters,
        ["half-sphere-ft3"] = inputs => Container.HalfSphere(Length.FromFeet(inputs.Number("diameter_ft"))).BrimVolume.CubicFeet,
        ["box-load-kg-m2"] = inputs => BoxLoad(inputs).KilogramsForcePerSquareMeter,
        ["box-load-kN-m2"] = inputs => BoxLoad(inputs).Kilopascals,
        ["addition-g"] = inputs => Addition(inputs).For(Volume.FromLiters(inputs.Number("batch_L"))).Value.Grams,
        ["addition-kg-m3-high"] = inputs => Addition(inputs).RateHigh!.Value.KilogramsPerCubicMeter,
        ["box-L"] = inputs => Box(inputs).Liters,
        ["box-mL"] = inputs => Box(inputs).Milliliters,
        ["cylinder-dry-qt"] = inputs => Cylinder(inputs).BrimVolume.CubicInches / CubicInchesPerUsDryQuart,
        ["tray-mL"] = inputs => Tray(inputs).Milliliters,
        ["tray-L"] = inputs => Tray(inputs).Liters,
        ["pots-whole"] = inputs => inputs.Has("mix_L")
            ? PottingMedium.PotsFrom(Volume.FromLiters(inputs.Number("mix_L")), Volume.FromLiters(inputs.Number("pot_L")), Ratio.Zero).Pots
            : PottingMedium.PotsFrom(Volume.FromCubicFeet(inputs.Number("mix_ft3")), Volume.FromUsGallons(inputs.Number("pot_gal")), Ratio.Zero).Pots,
        ["pot_brim_gal"] = inputs => Size(inputs).Shape!.BrimVolume.UsGallons,
        ["pot_size_gal_high"] = inputs => Size(inputs).VolumeHigh!.Value.UsGallons,
        ["pot_size_L_high"] = inputs => Size(inputs).VolumeHigh!.Value.Liters,
        ["cylinder_gal"] = inputs => Cylinder(inputs).BrimVolume.UsGallons,
        ["cylinder_in_L"] = inputs => Cylinder(inputs).BrimVolume.Liters,
        ["box_gal"] = inputs => Box(inputs).UsGallons,
        ["pot_size_mL"] = inputs => Size(inputs).Volume.Milliliters,
        ["pot_size_fl_oz"] = inputs => Size(inputs).Volume.UsOunces,
        ["pot_size_pint"] = inputs => Size(inputs).Volume.UsPints,
        ["recipe-parts"] = inputs => Portion(inputs, Volume.FromLiters(inputs.Number("batch_L"))).Liters,
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

    private static NurseryClass Class(Inputs inputs) => NurseryClass.All.Single(one => one.Name == inputs["name"]);

    private static CarbonRatio Carbon(Inputs inputs) => CarbonRatios.All.Single(row => row.Source.Key == inputs["source"] && row.Material == inputs["material"]);

    private static Volume Amount(Inputs inputs) => inputs switch
    {
        _ when inputs.Has("volume_L") => Volume.FromLiters(inputs.Number("volume_L")),
        _ when inputs.Has("volume_gal") => Volume.FromUsGallons(inputs.Number("volume_gal")),
        _ => Volume.FromCubicInches(inputs.Number("volume_in3")),
    };

    private static MixBalance Balance(Inputs inputs) => new(
        [.. inputs.Numbers("mass_lb").Zip(inputs.Numbers("carbon_pct"), inputs.Numbers("nitrogen_pct")).Select((row, at) => new BalancePart(
            $"material {at + 1}",
            Mass.FromPounds(row.First) / Density.FromKilogramsPerCubicMeter(200),
            Density.FromKilogramsPerCubicMeter(200),
            MassFraction.FromPercent(row.Second),
            MassFraction.FromPercent(row.Third)))],
        Ratio.Zero);

    private static Mass Weight(Inputs inputs) => PotWeight.Wet(
        Volume.FromCubicMeters(inputs.Number("medium_m3")),
        Density.FromKilogramsPerCubicMeter(inputs.Number("density_kg_m3")),
        Ratio.Zero,
        Mass.FromKilograms(inputs.Number("rest_kg")));

    private static SquareContainer SquareFrustum(Inputs inputs) => Container.SquareTapered(
        Length.FromCentimeters(inputs.Number("top_cm")),
        Length.FromCentimeters(inputs.Number("base_cm")),
        Length.FromCentimeters(inputs.Number("height_cm")));

    private static BowlContainer HalfSphere(Inputs inputs) => Container.HalfSphere(Length.FromCentimeters(inputs.Number("diameter_cm")));

    private static Volume HalfPipe(Length width, Length length) => Container.HalfRound(width, length, width / 2).BrimVolume;

    private static Volume HalfBarrel(Inputs inputs) => Container.Barrel(
        Length.FromCentimeters(inputs.Number("belly_cm")),
        Length.FromCentimeters(inputs.Number("head_cm")),
        Length.FromCentimeters(inputs.Number("half_height_cm"))).BrimVolume;

    private static Volume Box(Inputs inputs) => Container.Rectangular(
        Length.FromInches(inputs.Number("length_in")), Length.FromInches(inputs.Number("width_in")), Length.FromInches(inputs.Number("height_in"))).BrimVolume;

    private static Volume BoxOfCentimetres(Inputs inputs) => Container.Rectangular(
        Length.FromCentimeters(inputs.Number("length_cm")),
        Length.FromCentimeters(inputs.Number("width_cm")),
        Length.FromCentimeters(inputs.Number("height_cm"))).BrimVolume;

    private static Pressure BoxLoad(Inputs inputs) => PotWeight.Load(
        PotWeight.Dry(BoxOfCentimetres(inputs), Density.FromKilogramsPerCubicMeter(inputs.Number("density_kg_m3")), Mass.Zero),
        Area.FromSquareCentimeters(inputs.Number("length_cm") * inputs.Number("width_cm")));

    // A cell of the printed volume: a cylinder of a square centimetre, so many centimetres high.
    private static Volume Tray(Inputs inputs) => new CellTray(
        Container.Round(Length.FromCentimeters(2 / Math.Sqrt(Math.PI)), Length.FromCentimeters(inputs.Number("cell_mL"))),
        (int)inputs.Number("rows"),
        (int)inputs.Number("columns")).BrimVolume;

    private static RoundContainer Frustum(Inputs inputs) => Container.RoundTapered(
        Length.FromCentimeters(inputs.Number("top_cm")),
        Length.FromCentimeters(inputs.Number("base_cm")),
        Length.FromCentimeters(inputs.Number("height_cm")));

    private static RoundContainer FrustumOfInches(Inputs inputs) => Container.RoundTapered(
        Length.FromInches(inputs.Number("top_in")), Length.FromInches(inputs.Number("base_in")), Length.FromInches(inputs.Number("height_in")));

    private static RoundContainer Cylinder(Inputs inputs) =>
        Container.Round(Length.FromInches(inputs.Number("diameter_in")), Length.FromInches(inputs.Number("height_in")));

    private static CropRoom Room(Inputs inputs, Func<CropRoom, bool> has) => CropRooms.All.First(row =>
        row.Source.Key == inputs["source"] && row.Crop.Replace(", ", "|", StringComparison.Ordinal) == inputs["crop"] && has(row));

    private static MediumAddition Addition(Inputs inputs) => MediumAdditions.All.Single(addition =>
        addition.Source.Key == inputs["source"] && addition.Mix.Replace(", ", "|", StringComparison.Ordinal) == inputs["mix"] && addition.Material.Replace(", ", "|", StringComparison.Ordinal) == inputs["material"]);

    private static PotSize Size(Inputs inputs) => PotSizes.Named(inputs["source"], inputs["name"]);

    private static Volume Portion(Inputs inputs, Volume batch) =>
        MediumRecipes.Named(inputs["recipe"]).ForBatch(batch, Ratio.Zero).VolumeOf(inputs["component"]);

    /// <summary>Pots with the fraction that the left-over would fill.</summary>
    private static double Exact(PotYield yield) => yield.Pots + yield.LeftOver / yield.MediumPerPot;
}
