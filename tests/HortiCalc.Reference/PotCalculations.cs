using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Pots by their dimensions and their names, what crops want of them, and suctions as pF.</summary>
internal static class PotCalculations
{
    private const double CubicInchesPerUsDryGallon = 268.8025;

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["cylinder-L"] = inputs => Cylinder(inputs).Liters,
        ["cylinder-gal"] = inputs => Cylinder(inputs).UsGallons,
        ["cylinder-dry-gal"] = inputs => Cylinder(inputs).CubicInches / CubicInchesPerUsDryGallon,
        ["tapered-gal"] = inputs => Container.RoundTapered(
            Length.FromInches(inputs.Number("top_in")), Length.FromInches(inputs.Number("base_in")), Length.FromInches(inputs.Number("height_in"))).BrimVolume.UsGallons,
        ["window-box-ft3"] = inputs => Container.Rectangular(
            Length.FromFeet(inputs.Number("length_ft")), Length.FromInches(inputs.Number("width_in")), Length.FromInches(inputs.Number("height_in"))).BrimVolume.CubicFeet,
        ["pot-size-qt"] = inputs => Size(inputs).Volume.UsQuarts,
        ["pot-size-L-high"] = inputs => Size(inputs).VolumeHigh!.Value.Liters,
        ["crop-room-L"] = inputs => Room(inputs).Volume!.Value.Liters,
        ["crop-room-L-high"] = inputs => Room(inputs).VolumeHigh!.Value.Liters,
        ["crop-room-depth-cm"] = inputs => Room(inputs).Depth!.Value.Centimeters,
        ["crop-room-diameter-cm"] = inputs => Room(inputs).Diameter!.Value.Centimeters,
        ["suction-of-pf-cm"] = inputs => At(inputs).Suction.Centimeters,
        ["suction-of-pf-kPa"] = inputs => At(inputs).Suction / RetentionPoint.OfPressure(Pressure.FromKilopascals(1), Ratio.Zero).Suction,
        ["pf-of-suction"] = inputs => (inputs.Has("suction_cm")
            ? new RetentionPoint(Length.FromCentimeters(inputs.Number("suction_cm")), Ratio.Zero)
            : RetentionPoint.OfPressure(Pressure.FromHectopascals(inputs.Number("suction_hPa")), Ratio.Zero)).Pf!.Value,
    };

    private static Volume Cylinder(Inputs inputs) =>
        Container.Round(Length.FromInches(inputs.Number("diameter_in")), Length.FromInches(inputs.Number("height_in"))).BrimVolume;

    private static PotSize Size(Inputs inputs) => PotSizes.Named(inputs["source"], inputs["name"]);

    private static CropRoom Room(Inputs inputs) => CropRooms.All.Single(row => row.Source.Key == inputs["source"] && row.Crop == inputs["crop"]);

    private static RetentionPoint At(Inputs inputs) => RetentionPoint.OfPf(inputs.Number("pf"), Ratio.Zero);
}
