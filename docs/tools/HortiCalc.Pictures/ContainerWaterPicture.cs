using System.Globalization;
using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/container-water.svg: water and air by height for three media in three pots.</summary>
public static class ContainerWaterPicture
{
    private const double PixelsPerCentimetre = 9;
    private const double Wide = 190;

    private const string Style = """
        .solid { fill: #b9a68a }
        .wet { fill: #0072b2; fill-opacity: .72 }
        .airy { fill: #ffffff }
        .pot { fill: none; stroke: #25323b; stroke-width: 1.4 }
        .head { font-weight: 600 }
        .share { font-size: 13px }
        """;

    public static string FilePath { get; } = Looks.FileOf("container-water.svg");

    /// <summary>Peat from its four published points with 20 % of water that no suction draws; sand and coarse gravel as published.</summary>
    public static IReadOnlyList<(string Name, RetentionCurve Curve)> Media { get; } =
    [
        ("sphagnum growth peat", RetentionFit.VanGenuchten([.. PublishedRetentions.SphagnumPeat], Ratio.FromPercent(20)).Curve),
        ("sand", PublishedRetentions.Named("sand").Curve),
        ("gravel without fines", PublishedRetentions.Named("matrix-free gravel").Curve),
    ];

    public static IReadOnlyList<(string Name, Container Pot)> Pots { get; } =
    [
        ("tray cell, 5 cm", Container.SquareTapered(Length.FromCentimeters(4), Length.FromCentimeters(2.5), Length.FromCentimeters(5))),
        ("pot, 13 cm", Container.RoundTapered(Length.FromCentimeters(17), Length.FromCentimeters(12), Length.FromCentimeters(13))),
        ("tall pot, 30 cm", Container.RoundTapered(Length.FromCentimeters(30), Length.FromCentimeters(22), Length.FromCentimeters(30))),
    ];

    public static DrainedMedium Drained(int medium, int pot) => new(Media[medium].Curve, Pots[pot].Pot, Length.Zero);

    public static string Write()
    {
        const double height = 720;
        Svg svg = new(
            Looks.Width,
            height,
            "Water and air by height",
            "Three media in three pots, soaked and drained. Across: the shares of solids, water and air at each height. "
                + string.Join("; ", Enumerable.Range(0, 3).SelectMany(medium => Enumerable.Range(0, 3).Select(pot => $"{Media[medium].Name} in the {Pots[pot].Name}: {Shares(medium, pot)}"))) + ".",
            Looks.Common + "\n" + Style);
        svg.Rectangle(0, 0, Looks.Width, height, "paper", round: 8);
        svg.Text(36, 46, "Water and air by height", "title");
        svg.Text(36, 74, "Soaked and drained. Each column is as high as the pot; across it, the shares of the volume at that height.", "lead");
        Legend(svg);
        for (int pot = 0; pot < 3; pot++)
            svg.Text(Left(pot) + Wide / 2, 140, Pots[pot].Name, "head", "middle");
        double bottom = 0;
        for (int medium = 0; medium < 3; medium++)
        {
            // The rows are as high as the tallest pot would need, drawn at a scale of its own.
            bottom = 300 + medium * 180;
            svg.Text(36, bottom - 70, Media[medium].Name, "head");
            for (int pot = 0; pot < 3; pot++)
                Column(svg, medium, pot, bottom);
        }

        return svg.Finish();
    }

    private static void Column(Svg svg, int medium, int pot, double bottom)
    {
        DrainedMedium drained = Drained(medium, pot);
        double centimetres = Pots[pot].Pot.Height.Centimeters;
        double tall = centimetres * PixelsPerCentimetre * 14 / 30;
        Plot plot = new(Left(pot), bottom - tall, Wide, tall, 0, 100, 0, centimetres);
        double solids = drained.Solids.Percent;
        Point[] edge = [.. Enumerable.Range(0, 61).Select(step =>
        {
            double at = Math.Min(centimetres * step / 60, centimetres * (1 - 1e-12));
            return new Point(solids + drained.WaterAt(Length.FromCentimeters(at)).Percent, at);
        })];
        svg.Begin($"{Media[medium].Name} in the {Pots[pot].Name}: {Shares(medium, pot)}");
        svg.Rectangle(plot.Left, plot.Top, plot.Width, plot.Height, "airy");
        svg.Rectangle(plot.Left, plot.Top, plot.X(solids) - plot.Left, plot.Height, "solid");
        svg.Path(plot.Area([new Point(solids, 0), .. edge, new Point(solids, centimetres)]), "wet");
        svg.Rectangle(plot.Left, plot.Top, plot.Width, plot.Height, "pot");
        svg.Text(plot.Left + plot.Width / 2, bottom + 20, Shares(medium, pot), "share", "middle");
        svg.End();
    }

    private static void Legend(Svg svg)
    {
        (string Look, string Word)[] parts = [("solid", "solids"), ("wet", "water"), ("airy", "air")];
        for (int index = 0; index < parts.Length; index++)
        {
            svg.Rectangle(36 + index * 100, 92, 16, 16, parts[index].Look);
            svg.Rectangle(36 + index * 100, 92, 16, 16, "pot");
            svg.Text(60 + index * 100, 105, parts[index].Word, "tick");
        }
    }

    private static double Left(int pot) => 240 + pot * 230;

    private static string Shares(int medium, int pot)
    {
        DrainedMedium drained = Drained(medium, pot);
        return $"{Whole(drained.ContainerCapacity)} % water, {Whole(drained.AirSpace)} % air";
    }

    private static string Whole(Ratio share) => Math.Round(share.Percent, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
