using HortiCalc.Climate;
using HortiCalc.Season;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/frost-dates.svg: the chance of a freeze still to come in spring and already come in autumn, each with its band.</summary>
public static class FrostDatesPicture
{
    private const int Year = 2027;
    private const int Seed = 1;

    private const string Style = """
        .mark { fill: none; stroke: #5a6670; stroke-width: 1; stroke-dasharray: 4 3 }
        .spot { stroke: #ffffff; stroke-width: 1.5 }
        .happened { fill-opacity: .55 }
        """;

    private static readonly double[] Chances = [10, 50, 90];

    public static string FilePath { get; } = Looks.FileOf("frost-dates.svg");

    /// <summary>The freezes of the invented demo at 0 °C, over all seasons.</summary>
    public static FreezeClimate Climate()
    {
        using StreamReader reader = File.OpenText(Looks.DemoFile("weather.csv"));
        return FreezeClimate.FromDaily(WeatherCsv.Read(reader), Temperature.FromDegreesCelsius(0), new FreezeClimateOptions(Hemisphere.Northern));
    }

    public static string Write()
    {
        FreezeClimate climate = Climate();
        FreezeBootstrap sure = new(climate, Seed);
        Ratio confidence = Ratio.FromPercent(95);
        List<FreezeDateInterval> spring = [.. Chances.Select(chance => sure.DateWithChanceOfLaterFreeze(Ratio.FromPercent(chance), confidence))];
        List<FreezeDateInterval> autumn = [.. Chances.Select(chance => sure.DateWithChanceOfEarlierFreeze(Ratio.FromPercent(chance), confidence))];

        Plot plot = new(84, 110, 836, 350, Day(new MonthDay(3, 1)), Day(new MonthDay(11, 30)) + 1, 0, 100);
        Svg svg = Looks.Begin(
            "Last frost in spring, first frost in autumn",
            $"Chance of a night at 0 °C (32 °F) or colder. {climate.LastInSpring.Seasons} springs and {climate.FirstInAutumn.Seasons} autumns of an invented place; band: 95 % confidence.",
            Description(climate, spring, autumn),
            Style);
        Looks.Field(svg, plot);
        Looks.MonthsAcross(svg, plot, Year);
        foreach (double percent in (double[])[0, 10, 50, 90, 100])
        {
            if (percent is > 0 and < 100)
                plot.Level(svg, percent, "mark");
            svg.Text(plot.Left - 10, plot.Y(percent) + 5, $"{percent} %", "tick", "end");
        }

        svg.Begin("Chance of a freeze on that day or later in spring");
        Curve(svg, plot, sure.CurveOfChanceOfFreezeAfter(confidence), "cold", date => date.Month is >= 3 and <= 7);
        Spots(svg, plot, spring, "cold", side: 1);
        Happened(svg, plot, climate.Seasons.Where(season => season.IsSpringKnown).Select(season => season.LastFreeze), "cold");
        svg.Text(plot.X(Day(new MonthDay(4, 25))), plot.Y(72), "a freeze still to come", "cold-word");
        svg.End();
        svg.Begin("Chance of a freeze on that day or earlier in autumn");
        Curve(svg, plot, sure.CurveOfChanceOfFreezeBefore(confidence), "warm", date => date.Month is >= 8 and <= 11);
        Spots(svg, plot, autumn, "warm", side: -1);
        Happened(svg, plot, climate.Seasons.Where(season => season.IsAutumnKnown).Select(season => season.FirstFreeze), "warm");
        svg.Text(plot.X(Day(new MonthDay(10, 22))), plot.Y(72), "a freeze already come", "warm-word", "end");
        svg.End();
        svg.Text(plot.Left, Looks.Height - 44, "Small dots: the last and the first freeze of each season. Large dots: dates to plan with.", "lead");
        svg.Text(plot.Left, Looks.Height - 22, "INVENTED weather (shared/demo). Curves: mixed normal distribution; bands: 2000 resamples of its seasons.", "lead");
        return svg.Finish();
    }

    private static double Day(MonthDay date) => date.InYear(Year).DayOfYear;

    private static void Curve(Svg svg, Plot plot, IEnumerable<FreezeCurvePoint> points, string look, Func<MonthDay, bool> isShown)
    {
        List<FreezeCurvePoint> shown = [.. points.Where(point => isShown(point.Date)).OrderBy(point => Day(point.Date))];
        IEnumerable<Point> upper = shown.Select(point => new Point(Day(point.Date), point.High.Percent));
        IEnumerable<Point> lower = shown.Select(point => new Point(Day(point.Date), point.Low.Percent)).Reverse();
        svg.Path(plot.Area(upper.Concat(lower)), look + "-band");
        svg.Path(plot.Line(shown.Select(point => new Point(Day(point.Date), point.Chance.Percent))), look);
    }

    private static void Spots(Svg svg, Plot plot, List<FreezeDateInterval> dates, string look, int side)
    {
        for (int index = 0; index < Chances.Length; index++)
        {
            MonthDay date = dates[index].Date!.Value;
            double x = plot.X(Day(date));
            double y = plot.Y(Chances[index]);
            svg.Dot(x, y, 5, look + "-dot spot");
            svg.Text(x + side * 26, y - 7, date.ToString(), look + "-word", side > 0 ? "start" : "end");
        }
    }

    // Dots of the same day stand on one another.
    private static void Happened(Svg svg, Plot plot, IEnumerable<DateOnly?> freezes, string look)
    {
        foreach (IGrouping<double, double> day in freezes.Where(freeze => freeze is not null)
            .Select(freeze => Day(MonthDay.From(freeze!.Value))).Order().GroupBy(day => day))
        {
            int place = 0;
            foreach (double x in day)
                svg.Dot(plot.X(x), plot.Bottom - 6 - 6 * place++, 2.6, look + "-dot happened");
        }
    }

    private static string Description(FreezeClimate climate, List<FreezeDateInterval> spring, List<FreezeDateInterval> autumn) =>
        $"Two curves over the months, from invented weather, at {climate.Threshold}. The falling one is the chance of a freeze on a day or later in spring: "
        + $"{Told(spring)}. The rising one is the chance of a freeze on a day or earlier in autumn: {Told(autumn)}.";

    private static string Told(List<FreezeDateInterval> dates) => string.Join("; ", Chances.Select((chance, index) => $"{chance} % at {dates[index]}"));
}
