using System.Globalization;
using HortiCalc.Json;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/lime-methods.svg: the lime for one soil by every method, as published and brought to one depth and material.</summary>
public static class LimePicture
{
    private const double RowHeight = 25;

    private const string Style = """
        .name { font-size: 13px }
        .published { fill: #fcfbf8; stroke: #25323b; stroke-width: 1.6 }
        .moved { fill: none; stroke: #a4abb0; stroke-width: 2 }
        """;

    public static string FilePath { get; } = Looks.FileOf("lime-methods.svg");

    public static Ph Target { get; } = new(6.5);

    public static Length Depth { get; } = Length.FromCentimeters(15);

    /// <summary>The invented report of the demo.</summary>
    public static SoilReport Soil() => HortiCalcJson.Deserialize<SoilReport>(File.ReadAllText(Looks.DemoFile("soil-report.json")));

    public static LimeComparison Comparison() => Liming.Compare(Soil(), Target, Depth);

    /// <summary>What a method's own source says, in its own material and for its own depth, in grams per square metre.</summary>
    public static double AsPublished(LimeRequirement answer) =>
        Liming.Requirement(Soil(), Target, LimingMethod.All.Single(method => method.Method == answer.Rate.Method)).Rate.Value.GramsPerSquareMeter;

    public static string Write()
    {
        LimeComparison comparison = Comparison();
        LimeRequirement[] rows = [.. comparison.Answers
            .OrderBy(answer => answer.Depth is null)
            .ThenBy(answer => answer.Rate.Value.GramsPerSquareMeter)
            .ThenBy(answer => answer.Rate.Method.Name, StringComparer.Ordinal)];
        Plot plot = new(446, 124, 478, rows.Length * RowHeight + 14, 0, 800, 0, 1);
        Svg svg = Looks.Begin(
            "One soil, every method",
            $"Ground limestone for 15 cm of an invented silt loam, from {Soil().PhInWater} to {Target}.",
            "The lime that each published method gives for one soil, in grams per square metre: as its source prints it, and brought to 15 cm of soil and ground limestone. "
                + string.Join("; ", rows.Select(row => $"{row.Rate.Method.Name} {Whole(row)}{(row.Depth is null ? ", no depth given" : "")}")) + ".",
            Style);
        Legend(svg, plot);
        Looks.Field(svg, plot);
        for (int grams = 0; grams <= 800; grams += 100)
        {
            if (grams is > 0 and < 800)
                svg.Stroke(plot.X(grams), plot.Top, plot.X(grams), plot.Bottom, "grid");
            svg.Text(plot.X(grams), plot.Bottom + 20, grams.ToString(CultureInfo.InvariantCulture), "tick", "middle");
        }

        for (int index = 0; index < rows.Length; index++)
            Row(svg, plot, rows[index], plot.Top + 7 + (index + 0.5) * RowHeight);
        svg.Text(plot.Right, plot.Bottom + 42, "g/m²", "tick", "end");
        return svg.Finish();
    }

    private static void Row(Svg svg, Plot plot, LimeRequirement answer, double middle)
    {
        bool noDepth = answer.Depth is null;
        double published = AsPublished(answer);
        double compared = answer.Rate.Value.GramsPerSquareMeter;
        svg.Begin($"{answer.Rate.Method.Name}: {Whole(answer)} g/m²");
        svg.Text(plot.Left - 14, middle + 5, answer.Rate.Method.Name, noDepth ? "name warm-word" : "name", "end");
        svg.Stroke(plot.X(published), middle, plot.X(compared), middle, "moved");
        svg.Dot(plot.X(published), middle, 5, "published");
        svg.Dot(plot.X(compared), middle, 5.5, noDepth ? "warm-dot" : "cold-dot");
        svg.End();
    }

    private static void Legend(Svg svg, Plot plot)
    {
        double y = plot.Top - 20;
        svg.Dot(plot.Left + 6, y, 5, "published");
        svg.Text(plot.Left + 18, y + 5, "as published", "tick");
        svg.Dot(plot.Left + 126, y, 5.5, "cold-dot");
        svg.Text(plot.Left + 138, y + 5, "brought to 15 cm", "tick");
        svg.Dot(plot.Left + 270, y, 5.5, "warm-dot");
        svg.Text(plot.Left + 282, y + 5, "its source gives no depth", "tick");
    }

    private static string Whole(LimeRequirement answer) =>
        Math.Round(answer.Rate.Value.GramsPerSquareMeter, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
