using System.Globalization;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

/// <summary>Conversions, means and mixtures of pH, and the pH of crops.</summary>
internal static class ReactionCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["ph-convert"] = inputs => Convert(inputs, inputs.Number("ph")),
        ["ph-convert-back"] = inputs => PhConversion.FromKey(inputs["conversion"]).ConvertBack(new Ph(inputs.Number("ph"))).Value.Value,
        ["ph-convert-in-range"] = inputs =>
        {
            HortiCalc.Evidence.EstimateRange<Ph> range = PhConversion.FromKey(inputs["conversion"]).Convert(new Ph(inputs.Number("ph"))).Range!;
            return inputs.Number("printed") >= range.Low.Value && inputs.Number("printed") <= range.High.Value ? "inside" : "outside";
        },
        ["ph-conversion-slope"] = inputs => Convert(inputs, 7) - Convert(inputs, 6),
        ["ph-conversion-at-zero"] = inputs => 7 * Convert(inputs, 6) - 6 * Convert(inputs, 7),
        ["ph-conversion-log-slope"] = inputs => (Convert(inputs, 8) - Convert(inputs, 4)) / Math.Log10(2),
        ["ph-conversion-log-at-one"] = inputs => Convert(inputs, 4) - 2 * (Convert(inputs, 8) - Convert(inputs, 4)),
        ["ph-conversion-linear-term"] = inputs => Convert(inputs, 4) / 2 - Convert(inputs, 8) / 8,
        ["ph-conversion-square-term"] = inputs => (Convert(inputs, 8) / 8 - Convert(inputs, 4) / 4) / 4,
        ["ph-offset"] = inputs => 6 - Convert(inputs, 6),
        ["ph-offset-least"] = inputs => 6 - PhConversion.FromKey(inputs["conversion"]).Convert(new Ph(6)).Range!.High.Value,
        ["ph-offset-most"] = inputs => 6 - PhConversion.FromKey(inputs["conversion"]).Convert(new Ph(6)).Range!.Low.Value,
        ["ph-mean-solutions"] = inputs => Mean(inputs, PhMeanMethod.Solutions).Value.Value,
        ["ph-mean-solutions-low"] = inputs => Mean(inputs, PhMeanMethod.Solutions).Range!.Low.Value,
        ["ph-mean-solutions-high"] = inputs => Mean(inputs, PhMeanMethod.Solutions).Range!.High.Value,
        ["ph-mean-soil"] = inputs => Mean(inputs, PhMeanMethod.SoilSamples).Value.Value,
        ["ph-layers"] = inputs => SoilPh.OfLayers([.. inputs.Numbers("thickness_cm").Zip(
            inputs.Numbers("pH"), (centimetres, ph) => new PhLayer(Length.FromCentimeters(centimetres), new Ph(ph)))]).Value.Value,
        ["crop-ph-four"] = inputs =>
        {
            CropPh row = Crop(inputs);
            return string.Join(' ', new[] { row.Minimum, row.OptimumLow, row.OptimumHigh, row.Maximum }.Select(
                ph => ph!.Value.Value.ToString(CultureInfo.InvariantCulture)));
        },
        ["crop-ph-minimum"] = inputs => Crop(inputs).Minimum!.Value.Value,
        ["crop-ph-minimum-high"] = inputs => Crop(inputs).MinimumHigh!.Value.Value,
        ["crop-ph-optimum-low"] = inputs => Crop(inputs).OptimumLow!.Value.Value,
        ["crop-ph-optimum-high"] = inputs => Crop(inputs).OptimumHigh!.Value.Value,
        ["crop-ph-target"] = inputs => Crop(inputs).Target!.Value.Value,
    };

    private static double Convert(Inputs inputs, double ph) => PhConversion.FromKey(inputs["conversion"]).Convert(new Ph(ph)).Value.Value;

    private static HortiCalc.Evidence.Estimate<Ph> Mean(Inputs inputs, PhMeanMethod method) =>
        SoilPh.Mean([.. inputs.Numbers("pH").Select(value => new Ph(value))], method);

    private static CropPh Crop(Inputs inputs) => CropPhs.Named(inputs["source"], inputs["crop"], inputs.Has("conditions") ? inputs["conditions"] : null);
}
