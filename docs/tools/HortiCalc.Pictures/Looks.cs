using System.Globalization;
using HortiCalc.Reference;

namespace HortiCalc.Pictures;

/// <summary>What the pictures of frost and light share: letters, paper, axes. Blue and vermilion tell apart with any colour vision.</summary>
internal static class Looks
{
    public const double Width = 960;
    public const double Height = 560;

    public const string Common = """
        text { font-family: 'Segoe UI', 'Helvetica Neue', Helvetica, Arial, 'DejaVu Sans', sans-serif; font-size: 14px; fill: #25323b }
        .paper { fill: #fcfbf8 }
        .title { font-size: 24px; font-weight: 600 }
        .lead { font-size: 15px; fill: #46535c }
        .tick { font-size: 13px; fill: #5a6670 }
        .field { fill: #ffffff; stroke: #dcd8cf }
        .grid { fill: none; stroke: #ece8df }
        .cold { fill: none; stroke: #0072b2; stroke-width: 2.4; stroke-linejoin: round }
        .cold-band { fill: #0072b2; fill-opacity: .2 }
        .cold-dot { fill: #0072b2 }
        .cold-word { fill: #00588a; font-weight: 600 }
        .warm { fill: none; stroke: #d55e00; stroke-width: 2.4; stroke-linejoin: round }
        .warm-band { fill: #d55e00; fill-opacity: .2 }
        .warm-dot { fill: #d55e00 }
        .warm-word { fill: #a8480a; font-weight: 600 }
        """;

    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    public static string FileOf(string name) => Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "images", name);

    public static string DemoFile(string name) => Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "demo", name);

    /// <summary>A picture with its paper, its heading and a field that waits for curves.</summary>
    public static Svg Begin(string title, string lead, string description, string style)
    {
        Svg svg = new(Width, Height, title, description, Common + "\n" + style);
        svg.Rectangle(0, 0, Width, Height, "paper", round: 8);
        svg.Text(36, 46, title, "title");
        svg.Text(36, 74, lead, "lead");
        return svg;
    }

    public static void Field(Svg svg, Plot plot) => svg.Rectangle(plot.Left, plot.Top, plot.Width, plot.Height, "field");

    /// <summary>The first of each month across; its name in the middle of the month, as far as the field shows it.</summary>
    public static void MonthsAcross(Svg svg, Plot plot, int year)
    {
        for (int month = 1; month <= 12; month++)
        {
            double first = new DateOnly(year, month, 1).DayOfYear;
            double next = first + DateTime.DaysInMonth(year, month);
            if (first > plot.FromX && first < plot.ToX)
                svg.Stroke(plot.X(first), plot.Top, plot.X(first), plot.Bottom, "grid");
            if (first >= plot.FromX && next <= plot.ToX)
                svg.Text(plot.X((first + next) / 2), plot.Bottom + 20, Months[month - 1], "tick", "middle");
        }
    }

    public static string Tenths(double value) => value.ToString("0.0;−0.0", CultureInfo.InvariantCulture);
}
