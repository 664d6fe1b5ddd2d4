using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Reference;
using HortiCalc.Units;

namespace HortiCalc.Pictures;

/// <summary>
/// Writes docs/images/degree-day-methods.svg: one day, with the area that each method and cutoff counts of it. What is drawn is measured and
/// compared with what the library counts; a difference is an error.
/// </summary>
public static class DegreeDayPicture
{
    private const double Width = 1080;
    private const double LeftOfPanels = 56;
    private const double PanelPitch = 250;
    private const double PlotWidth = 218;
    private const double PlotHeight = 124;
    private const double CaptionHeight = 62;
    private const double RowPitch = 212;

    // The straight lines between the corners of a drawn curve lie this near to it.
    private const double DrawnWithinCelsiusDays = 0.002;

    private const string Style = """
        text { font-family: 'Segoe UI', 'Helvetica Neue', Helvetica, Arial, 'DejaVu Sans', sans-serif; font-size: 13px; fill: #25323b }
        .paper { fill: #fcfbf8 }
        .title { font-size: 27px; font-weight: 600 }
        .heading { font-size: 19px; font-weight: 600 }
        .lead { font-size: 15px; fill: #46535c }
        .method { font-size: 14px; font-weight: 600 }
        .quiet { fill: #5a6670 }
        .sum { font-weight: 600; fill: #0b5c8f }
        .tick { font-size: 12px; fill: #5a6670 }
        .field { fill: #ffffff; stroke: #dcd8cf }
        .grid { fill: none; stroke: #ece8df }
        .base { fill: none; stroke: #0b5c8f; stroke-width: 1.2; stroke-dasharray: 5 3 }
        .upper { fill: none; stroke: #a8480a; stroke-width: 1.2; stroke-dasharray: 5 3 }
        .base-word { font-size: 12px; fill: #0b5c8f }
        .upper-word { font-size: 12px; fill: #a8480a }
        .counted { fill: #56b4e9; fill-opacity: .62 }
        .hour { fill: #56b4e9; fill-opacity: .62; stroke: #ffffff; stroke-width: .8 }
        .taken { fill: url(#hatch); stroke: #d55e00; stroke-width: .8 }
        .void { fill: none; stroke: #8b949b; stroke-width: 1; stroke-dasharray: 2 2 }
        .course { fill: none; stroke: #25323b; stroke-width: 1.8; stroke-linejoin: round }
        .faint { fill: none; stroke: #a4abb0; stroke-width: 1.2 }
        .move { fill: none; stroke: #25323b; stroke-width: 1.2 }
        .read { fill: #25323b }
        .extreme { fill: #ffffff; stroke: #25323b; stroke-width: 1.3 }
        """;

    private static readonly DrawnDay Day = new(Minimum: 5, Maximum: 37, NextMinimum: 13, Lower: 10, Upper: 30);

    private static readonly DrawnDay HotDay = new(Minimum: 26, Maximum: 40, NextMinimum: 26, Lower: 8, Upper: 20);

    private static readonly (DegreeDayMethod Method, UpperCutoff Cutoff)[] Averages =
    [
        (DegreeDayMethod.SimpleAverage, UpperCutoff.None),
        (DegreeDayMethod.SimpleAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.CappedMaximumAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.ReflectedMaximumAverage, UpperCutoff.Intermediate),
        (DegreeDayMethod.ClampedAverage, UpperCutoff.None),
        (DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.CappedAndRaisedAverage, UpperCutoff.None),
        (DegreeDayMethod.CappedAndRaisedAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.FourCase, UpperCutoff.None),
        (DegreeDayMethod.MaximumOnly, UpperCutoff.Intermediate),
    ];

    private static readonly DegreeDayMethod[] Courses =
    [
        DegreeDayMethod.SingleTriangle, DegreeDayMethod.DoubleTriangle, DegreeDayMethod.SingleSine, DegreeDayMethod.DoubleSine,
        DegreeDayMethod.HourlySine,
    ];

    private static readonly UpperCutoff[] Cutoffs =
        [UpperCutoff.None, UpperCutoff.Horizontal, UpperCutoff.Intermediate, UpperCutoff.Vertical];

    private static readonly (DegreeDayMethod Method, UpperCutoff Cutoff)[] WhereTheyPart =
    [
        (DegreeDayMethod.SimpleAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.CappedMaximumAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.CappedAndRaisedAverage, UpperCutoff.Horizontal),
        (DegreeDayMethod.SingleSine, UpperCutoff.Horizontal),
        (DegreeDayMethod.SingleSine, UpperCutoff.Intermediate),
        (DegreeDayMethod.SingleSine, UpperCutoff.IntermediateBelowZero),
        (DegreeDayMethod.SingleSine, UpperCutoff.Vertical),
    ];

    public static string FilePath { get; } = Path.Combine(ReferenceLibrary.RepositoryRoot, "docs", "images", "degree-day-methods.svg");

    /// <summary>Draws the picture.</summary>
    /// <returns>The SVG.</returns>
    /// <exception cref="InvalidOperationException">An area is not what the library counts, or a method or cutoff has no panel.</exception>
    public static string Write()
    {
        RequireEveryMethodAndCutoff();
        double averagesTop = 214;
        double coursesTop = averagesTop + 3 * RowPitch + 92;
        double hotTop = coursesTop + Courses.Length * RowPitch + 92;
        double height = hotTop + 2 * RowPitch + 20;
        Svg svg = new(Width, height, "One day, counted by every method of degree days", Description(), Style);
        svg.Define("""<pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#fbe3d2"/><path d="M0 0V6" stroke="#d55e00" stroke-width="2.4"/></pattern>""");
        svg.Rectangle(0, 0, Width, height, "paper", 10);
        svg.Text(LeftOfPanels, 54, "One day, counted by every method of degree days", "title");
        svg.Text(LeftOfPanels, 84, $"The same day in every panel: coldest {Both(Day.Minimum)}, warmest {Both(Day.Maximum)}, next morning {Both(Day.NextMinimum)}.", "lead");
        svg.Text(LeftOfPanels, 106, $"Growth is counted above the base, {Both(Day.Lower)}, and meets its upper threshold at {Both(Day.Upper)}.", "lead");

        Heading(svg, averagesTop, "From the two extremes alone", "The day becomes a block: as high as the mean above the base, and a whole day long.");
        for (int panel = 0; panel < Averages.Length; panel++)
            Panel(svg, Day, Averages[panel].Method, Averages[panel].Cutoff, panel % 4, averagesTop + panel / 4 * RowPitch, panel >= 8);
        Legend(svg, LeftOfPanels + 2 * PanelPitch, averagesTop + 2 * RowPitch);

        Heading(svg, coursesTop, "Along a course through the extremes", "The area above the base; the cutoff says what becomes of the time above the upper threshold.");
        for (int row = 0; row < Courses.Length; row++)
        {
            for (int column = 0; column < Cutoffs.Length; column++)
                Panel(svg, Day, Courses[row], Cutoffs[column], column, coursesTop + row * RowPitch, row == Courses.Length - 1);
        }

        Heading(
            svg,
            hotTop,
            "Where agreement ends: a day too hot all day long",
            $"Coldest {Both(HotDay.Minimum)}, warmest {Both(HotDay.Maximum)}; base {Both(HotDay.Lower)}, upper threshold {Both(HotDay.Upper)}.");
        for (int panel = 0; panel < WhereTheyPart.Length; panel++)
            Panel(svg, HotDay, WhereTheyPart[panel].Method, WhereTheyPart[panel].Cutoff, panel % 4, hotTop + panel / 4 * RowPitch, panel >= 4);
        return svg.Finish();
    }

    private static void Heading(Svg svg, double panelsTop, string heading, string lead)
    {
        svg.Text(LeftOfPanels, panelsTop - 44, heading, "heading");
        svg.Text(LeftOfPanels, panelsTop - 20, lead, "lead");
    }

    private static void Panel(Svg svg, DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff, int column, double top, bool isLastRow)
    {
        ThermalTime count = day.Count(method, cutoff);
        CountedArea area = CountedArea.Of(day, method, cutoff);
        if (Math.Abs(area.CelsiusDays - count.CelsiusDays) > DrawnWithinCelsiusDays)
        {
            throw new InvalidOperationException(string.Create(
                CultureInfo.InvariantCulture, $"{method}, {cutoff}: {area.CelsiusDays} °C·d are drawn, the library counts {count.CelsiusDays}."));
        }

        // On this day the two intermediate cutoffs are one; a panel shows both.
        bool both = cutoff == UpperCutoff.Intermediate && method.Cutoffs.Contains(UpperCutoff.IntermediateBelowZero)
            && count == day.Count(method, UpperCutoff.IntermediateBelowZero);
        string cutoffWords = both ? "intermediate, both kinds" : Words(cutoff);
        string sum = Sum(count);
        Plot plot = new(LeftOfPanels + column * PanelPitch, top + CaptionHeight, PlotWidth, PlotHeight, 0, 24, 0, 42);
        svg.Begin($"{Name(method)}, cutoff {cutoffWords}: {sum}");
        svg.Text(plot.Left, top + 14, Name(method), "method");
        svg.Text(plot.Left, top + 32, $"cutoff: {cutoffWords}", "quiet");
        svg.Text(plot.Left, top + 51, sum, "sum");
        Field(svg, plot, day, column, isLastRow);
        Areas(svg, plot, area, method);
        plot.Level(svg, day.Lower, "base");
        plot.Level(svg, day.Upper, "upper");
        bool isBlock = CountedArea.Extremes(day, method, cutoff) is not null || method == DegreeDayMethod.FourCase;
        svg.Path(plot.Line(Enumerable.Range(0, 97).Select(step => new Point(step / 4.0, day.At(step / 4.0, method)))), isBlock ? "faint" : "course");
        if (isBlock)
            Extremes(svg, plot, day, method, cutoff);
        svg.End();
    }

    private static void Field(Svg svg, Plot plot, DrawnDay day, int column, bool isLastRow)
    {
        svg.Rectangle(plot.Left, plot.Top, plot.Width, plot.Height, "field");
        for (int celsius = 10; celsius <= 40; celsius += 10)
            plot.Level(svg, celsius, "grid");
        for (int hour = 6; hour < 24; hour += 6)
            svg.Stroke(plot.X(hour), plot.Top, plot.X(hour), plot.Bottom, "grid");
        for (int celsius = 0; celsius <= 40; celsius += 10)
        {
            string look = celsius == day.Lower ? "base-word" : celsius == day.Upper ? "upper-word" : "tick";
            if (column == 0)
                svg.Text(plot.Left - 6, plot.Y(celsius) + 4, Svg.Number(celsius) + (celsius == 40 ? " °C" : ""), look, "end");
            if (column == 3)
                svg.Text(plot.Right + 6, plot.Y(celsius) + 4, Svg.Number(Fahrenheit(celsius)) + (celsius == 40 ? " °F" : ""), look);
        }

        if (!isLastRow)
            return;
        foreach (int hour in (ReadOnlySpan<int>)[0, 6, 12, 18, 24])
            svg.Text(plot.X(hour), plot.Bottom + 16, Svg.Number(hour) + (hour == 24 ? " h" : ""), "tick", "middle");
    }

    private static void Areas(Svg svg, Plot plot, CountedArea area, DegreeDayMethod method)
    {
        string look = area.CountsNothing ? "void" : method == DegreeDayMethod.HourlySine ? "hour" : "counted";
        foreach (IReadOnlyList<Point> corners in area.Counted)
            svg.Path(plot.Area(corners), look);
        foreach (IReadOnlyList<Point> corners in area.TakenAway)
            svg.Path(plot.Area(corners), area.CountsNothing ? "void" : "taken");
    }

    /// <summary>The minimum and the maximum as they were, and what the method reads them as.</summary>
    private static void Extremes(Svg svg, Plot plot, DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff)
    {
        (double low, double high) = CountedArea.Extremes(day, method, cutoff) ?? (day.Minimum, day.Maximum);
        if (method != DegreeDayMethod.MaximumOnly)
            Extreme(svg, plot, 0, day.Minimum, low);
        Extreme(svg, plot, 12, day.Maximum, high);
    }

    private static void Extreme(Svg svg, Plot plot, double hour, double celsius, double readAs)
    {
        if (celsius != readAs)
        {
            svg.Stroke(plot.X(hour), plot.Y(celsius), plot.X(hour), plot.Y(readAs), "move");
            svg.Dot(plot.X(hour), plot.Y(celsius), 3.4, "extreme");
        }

        svg.Dot(plot.X(hour), plot.Y(readAs), 3.8, "read");
    }

    private static void Legend(Svg svg, double left, double top)
    {
        svg.Begin("How to read the panels");
        svg.Text(left, top + 14, "How to read the panels", "method");
        double line = top + 38;
        double words = left + 52;
        svg.Rectangle(left, line - 11, 40, 14, "counted");
        svg.Text(words, line, "counted: this area is the day's degree days", "quiet");
        line += 24;
        svg.Rectangle(left, line - 11, 40, 14, "taken");
        svg.Text(words, line, "taken away again from what is counted", "quiet");
        line += 24;
        svg.Stroke(left, line - 4, left + 40, line - 4, "course");
        svg.Text(words, line, "the course that the method follows", "quiet");
        line += 24;
        svg.Stroke(left, line - 4, left + 40, line - 4, "faint");
        svg.Text(words, line, "a course that the method does not look at", "quiet");
        line += 24;
        svg.Stroke(left + 8, line - 4, left + 32, line - 4, "move");
        svg.Dot(left + 8, line - 4, 3.4, "extreme");
        svg.Dot(left + 32, line - 4, 3.8, "read");
        svg.Text(words, line, "an extreme, and what it is read as", "quiet");
        line += 24;
        svg.Stroke(left, line - 8, left + 40, line - 8, "upper");
        svg.Stroke(left, line, left + 40, line, "base");
        svg.Text(words, line, "upper threshold, base", "quiet");
        svg.Text(left, line + 26, "Across: hours from the coldest. Upwards: temperature, °C left, °F right.", "tick");
        svg.End();
    }

    private static void RequireEveryMethodAndCutoff()
    {
        HashSet<(DegreeDayMethod, UpperCutoff)> drawn = [.. Averages, .. Courses.SelectMany(course => Cutoffs.Select(cutoff => (course, cutoff)))];
        foreach (DegreeDayMethod method in DegreeDayMethod.All)
        {
            foreach (UpperCutoff cutoff in method.Cutoffs)
            {
                // The fifth has no panel of its own as long as it is the same on this day.
                bool isThere = cutoff == UpperCutoff.IntermediateBelowZero
                    ? Day.Count(method, cutoff) == Day.Count(method, UpperCutoff.Intermediate)
                    : drawn.Contains((method, cutoff));
                if (!isThere)
                    throw new InvalidOperationException($"{method}, {cutoff} has no panel.");
            }
        }
    }

    private static string Description()
    {
        IEnumerable<string> averages = Averages.Select(panel => Told(panel.Method, panel.Cutoff));
        IEnumerable<string> courses = Courses.SelectMany(course => Cutoffs.Select(cutoff => Told(course, cutoff)));
        return $"A day from {Both(Day.Minimum)} to {Both(Day.Maximum)} with the base {Both(Day.Lower)} and the upper threshold {Both(Day.Upper)}, "
            + $"shaded where each method counts. Degree days: {string.Join("; ", averages.Concat(courses))}.";

        static string Told(DegreeDayMethod method, UpperCutoff cutoff) => $"{Name(method)}, {Words(cutoff)}, {Celsius(Day.Count(method, cutoff))}";
    }

    private static string Name(DegreeDayMethod method) => method.Evidence.Key switch
    {
        "simple-average" => "simple average",
        "capped-maximum-average" => "average, maximum capped",
        "reflected-maximum-average" => "average, maximum reflected",
        "clamped-average" => "average, both clamped",
        "capped-and-raised-average" => "average, capped and raised",
        "maximum-only" => "maximum alone, reflected",
        "four-case" => "four cases",
        "hourly-sine" => "hours of the sine",
        _ => method.Evidence.Name,
    };

    private static string Words(UpperCutoff cutoff) => cutoff switch
    {
        UpperCutoff.Horizontal => "horizontal",
        UpperCutoff.Intermediate => "intermediate",
        UpperCutoff.IntermediateBelowZero => "intermediate, below zero",
        UpperCutoff.Vertical => "vertical",
        _ => "none",
    };

    private static string Sum(ThermalTime count) => $"{Celsius(count)}  =  {Tenths(count.FahrenheitDays)} °F·d";

    private static string Celsius(ThermalTime count) => $"{Tenths(count.CelsiusDays)} °C·d";

    private static string Tenths(double value) => value.ToString("0.0;−0.0", CultureInfo.InvariantCulture);

    private static string Both(double celsius) => $"{Svg.Number(celsius)} °C ({Math.Round(Fahrenheit(celsius), MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture)} °F)";

    private static double Fahrenheit(double celsius) => celsius * 1.8 + 32;
}
