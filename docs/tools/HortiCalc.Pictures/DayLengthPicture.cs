using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/day-length.svg: from sunrise to sunset, over the year, by latitude.</summary>
public static class DayLengthPicture
{
    private const int Year = 2027;

    // From yellow-brown to dark blue: lightness falls with latitude, so that the order is seen without colour too.
    private const string Style = """
        .line { fill: none; stroke-width: 2.4; stroke-linejoin: round }
        .south { stroke-dasharray: 7 4 }
        .place { font-weight: 600 }
        .l0 { stroke: #d55e00 }
        .l1 { stroke: #c58a00 }
        .l2 { stroke: #7a9a2f }
        .l3 { stroke: #009e73 }
        .l4 { stroke: #2c8fc9 }
        .l5 { stroke: #0061a8 }
        .l6 { stroke: #1b2a6b }
        .l7 { stroke: #8a4f7d }
        .turn { fill: none; stroke: #a4abb0; stroke-width: 1; stroke-dasharray: 3 3 }
        """;

    private static readonly double[] Latitudes = [0, 23.4, 40, 52, 60, 66.6, 70, -35];

    public static string FilePath { get; } = Looks.FileOf("day-length.svg");

    /// <summary>The length of each day of the year, in hours: 24 where the sun does not set, 0 where it does not rise.</summary>
    public static IReadOnlyList<double> Hours(double latitude) => [.. Enumerable.Range(0, 365)
        .Select(day => Daylight.Length(Angle.FromDegrees(latitude), new DateOnly(Year, 1, 1).AddDays(day), DaylightMethod.Almanac).Value.Hours)];

    public static string Write()
    {
        Dictionary<double, IReadOnlyList<double>> lengths = Latitudes.ToDictionary(latitude => latitude, Hours);
        Plot plot = new(84, 110, 664, 380, 1, 366, 0, 24);
        Svg svg = Looks.Begin(
            "Day length over the year",
            "From sunrise to sunset as almanacs print them: upper limb on a level horizon, with refraction.",
            $"The length of the day over the year, in hours, by latitude. Shortest and longest: {string.Join("; ", Latitudes.Select(latitude => $"{Name(latitude)} {Span(lengths[latitude])}"))}.",
            Style);
        Looks.Field(svg, plot);
        Looks.MonthsAcross(svg, plot, Year);
        for (int hours = 0; hours <= 24; hours += 4)
        {
            if (hours is > 0 and < 24)
                plot.Level(svg, hours, "grid");
            svg.Text(plot.Left - 10, plot.Y(hours) + 5, $"{hours} h", "tick", "end");
        }

        foreach ((int month, int day) in new[] { (3, 20), (6, 21), (9, 23), (12, 21) })
        {
            double x = plot.X(new DateOnly(Year, month, day).DayOfYear);
            svg.Stroke(x, plot.Top, x, plot.Bottom, "turn");
        }

        for (int index = 0; index < Latitudes.Length; index++)
        {
            double latitude = Latitudes[index];
            IReadOnlyList<double> hours = lengths[latitude];
            svg.Begin($"{Name(latitude)}: {Span(hours)}");
            svg.Path(plot.Line(hours.Select((length, day) => new Point(day + 1, length))), $"line l{index}{(latitude < 0 ? " south" : "")}");
            double y = plot.Y(hours[^1]) + (latitude == 70 ? 0 : 5);
            svg.Text(plot.Right + 10, y, Name(latitude), "place");
            svg.Text(plot.Right + 78, y, Span(hours), "tick");
            svg.End();
        }

        svg.Text(plot.Left, Looks.Height - 22, "At 24 h the sun does not set, at 0 h it does not rise. Dashed upright: equinoxes and solstices of 2027.", "lead");
        return svg.Finish();
    }

    private static string Name(double latitude) => latitude == 0 ? "equator" : $"{Svg.Number(Math.Abs(latitude))}° {(latitude > 0 ? 'N' : 'S')}";

    private static string Span(IReadOnlyList<double> hours) => $"{Looks.Tenths(hours.Min())} to {Looks.Tenths(hours.Max())} h";
}
