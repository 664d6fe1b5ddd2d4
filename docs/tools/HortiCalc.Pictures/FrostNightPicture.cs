using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/frost-night.svg: how an invented evening cools, how sure that is, and what harms the blossom.</summary>
public static class FrostNightPicture
{
    private const string Style = """
        .harm { fill: #d55e00; fill-opacity: .3 }
        .harmful { fill: none; stroke: #d55e00; stroke-width: 1.6 }
        .ten { fill: none; stroke: #d55e00; stroke-width: 1.6; stroke-dasharray: 7 4 }
        .ninety { fill: none; stroke: #d55e00; stroke-width: 1.6; stroke-dasharray: 2 3 }
        .freezing { fill: none; stroke: #5a6670; stroke-width: 1.2 }
        .dew { fill: none; stroke: #5a6670; stroke-width: 1.4; stroke-dasharray: 9 3 2 3 }
        .moment { fill: none; stroke: #a4abb0; stroke-width: 1.2 }
        .spot { stroke: #ffffff; stroke-width: 1.5 }
        .quiet { fill: #46535c }
        """;

    private const double WarmestCelsius = 5.5;
    private const double ColdestCelsius = -5;

    public static string FilePath { get; } = Looks.FileOf("frost-night.svg");

    /// <summary>The evening of docs/samples/tonight.cs, the nights of shared/demo, apples in full bloom by the table that prints both shares.</summary>
    public static FrostNight Night() => new(
        new FrostEvening(
            new DateTime(2027, 4, 20, 20, 4, 0),
            new DateTime(2027, 4, 21, 6, 2, 0),
            Temperature.FromDegreesCelsius(4.2),
            Temperature.FromDegreesCelsius(-3.1),
            Speed.FromMetersPerSecond(0.8),
            isClear: true),
        new NightMinimumModel(NightMinimumFitting.FromKey("night-minimum.two-step"), Nights()),
        [CriticalTemperatures.For("apple", "full bloom").First(line => line.TenPercentKill is not null && line.NinetyPercentKill is not null)]);

    public static string Write()
    {
        FrostNight night = Night();
        CriticalTemperature buds = night.Crop[0];
        double ten = buds.TenPercentKill!.Value.DegreesCelsius;
        double ninety = buds.NinetyPercentKill!.Value.DegreesCelsius;
        EstimateRange<Temperature> range = night.Minimum.Range!;
        NightCooling coldest = WithMinimum(night, range.Low);
        NightCooling mildest = WithMinimum(night, range.High);
        DateTime midnight = night.Evening.Sunset.Date.AddDays(1);
        double sunrise = Hour(night.Evening.Sunrise);

        Plot plot = new(84, 110, 770, 340, -4, 9, ColdestCelsius, WarmestCelsius);
        Svg svg = Looks.Begin(
            "A frost night: from the evening's reading to the blossom",
            $"Invented: {Degrees(night.Evening.Temperature)} two hours after sunset, dew point {Degrees(night.Evening.DewPoint)}, clear and calm; apples in full bloom.",
            Description(night),
            Style);
        Looks.Field(svg, plot);
        for (int celsius = -4; celsius < WarmestCelsius; celsius += 2)
        {
            plot.Level(svg, celsius, "grid");
            svg.Text(plot.Left - 10, plot.Y(celsius) + 5, $"{Whole(celsius)} °C", "tick", "end");
            svg.Text(plot.Right + 10, plot.Y(celsius) + 5, $"{Looks.Tenths(celsius * 1.8 + 32)} °F", "tick");
        }

        for (int hour = -3; hour < 9; hour++)
        {
            svg.Stroke(plot.X(hour), plot.Top, plot.X(hour), plot.Bottom, "grid");
            svg.Text(plot.X(hour), plot.Bottom + 20, midnight.AddHours(hour).ToString("HH", CultureInfo.InvariantCulture) + " h", "tick", "middle");
        }

        svg.Begin("Levels: freezing, dew point, critical temperatures");
        Level(0, "freezing", -7, "freezing", Temperature.FromDegreesCelsius(0), "quiet");
        Level(night.Harmful.DegreesCelsius, "harmful", -7, "harm begins", night.Harmful, "warm-word");
        Level(ten, "ten", 17, "10 % of the blossom dies", buds.TenPercentKill.Value, "warm-word");
        Level(night.Evening.DewPoint.DegreesCelsius, "dew", 17, "dew point", night.Evening.DewPoint, "quiet");
        Level(ninety, "ninety", 17, "90 % dies", buds.NinetyPercentKill.Value, "warm-word");
        svg.End();

        svg.Begin("Sunset and sunrise");
        foreach ((DateTime time, string word) in new[] { (night.Evening.Sunset, "sunset"), (night.Evening.Sunrise, "sunrise") })
        {
            svg.Stroke(plot.X(Hour(time)), plot.Top, plot.X(Hour(time)), plot.Bottom, "moment");
            svg.Text(plot.X(Hour(time)) + 6, plot.Top + 18, $"{word} {Clock(time)}", "quiet");
        }

        svg.End();

        svg.Begin("The cooling curve with its range");
        svg.Path(plot.Area(Course(mildest).Concat(Course(coldest).Reverse())), "cold-band");
        if (night.TimeOfHarm is DateTime begins)
        {
            double harmful = night.Harmful.DegreesCelsius;
            IEnumerable<Point> below = Course(night.Cooling).Where(point => point.X > Hour(begins));
            svg.Path(plot.Area([new Point(Hour(begins), harmful), .. below, new Point(sunrise, harmful)]), "harm");
        }

        svg.Path(plot.Line(Course(night.Cooling)), "cold");
        svg.Dot(plot.X(Hour(night.Cooling.Start)), plot.Y(night.Evening.Temperature.DegreesCelsius), 5, "cold-dot spot");
        svg.Text(plot.X(Hour(night.Cooling.Start)) + 12, plot.Y(night.Evening.Temperature.DegreesCelsius), $"read at {Clock(night.Cooling.Start)}", "cold-word");
        svg.Dot(plot.X(sunrise), plot.Y(night.Minimum.Value.DegreesCelsius), 5, "cold-dot spot");
        double lowest = plot.Y(night.Minimum.Value.DegreesCelsius);
        svg.Text(plot.X(sunrise) + 14, lowest - 4, "minimum", "cold-word");
        svg.Text(plot.X(sunrise) + 14, lowest + 14, Degrees(night.Minimum.Value), "cold-word");
        svg.End();

        svg.Text(84, Looks.Height - 64, $"Harm {Harm(night)}, up to sunrise; chance that the night gets so cold: {Math.Round(night.ChanceOfHarm.Value.Percent, MidpointRounding.AwayFromZero)} %.", "lead");
        svg.Text(84, Looks.Height - 42, $"Blue band: {range.Meaning}.", "lead");
        svg.Text(84, Looks.Height - 20, $"Critical temperatures: {buds.Source.Publisher}.", "lead");
        return svg.Finish();

        void Level(double celsius, string look, double below, string word, Temperature temperature, string wordLook)
        {
            svg.Stroke(plot.Left, plot.Y(celsius), plot.X(sunrise), plot.Y(celsius), look);
            svg.Text(plot.Left + 10, plot.Y(celsius) + below, $"{word}, {Degrees(temperature)}", wordLook);
        }

        double Hour(DateTime time) => (time - midnight).TotalHours;

        IEnumerable<Point> Course(NightCooling cooling)
        {
            // It falls fastest at first: the steps are short there and grow.
            const int steps = 60;
            TimeSpan span = cooling.Sunrise - cooling.Start;
            for (int step = 0; step < steps; step++)
                yield return At(cooling.Start + span * (step * step / (double)(steps * steps)));
            yield return At(cooling.Sunrise);

            Point At(DateTime time) => new(Hour(time), cooling.At(time).DegreesCelsius);
        }
    }

    private static NightCooling WithMinimum(FrostNight night, Temperature minimum) =>
        new(night.Evening.Sunset, night.Evening.Sunrise, night.Evening.Temperature, minimum);

    private static IReadOnlyList<PastNight> Nights() => [.. File.ReadLines(Looks.DemoFile("frost-nights.csv"))
        .Where(line => line.Length > 0 && (char.IsDigit(line[0]) || line[0] == '-'))
        .Select(line => line.Split(','))
        .Select(fields => new PastNight(At(fields, "evening_c"), At(fields, "dew_point_c"), At(fields, "minimum_c")))];

    private static Temperature At(string[] fields, string column)
    {
        string header = File.ReadLines(Looks.DemoFile("frost-nights.csv")).First(line => !line.StartsWith('#'));
        return Temperature.FromDegreesCelsius(double.Parse(fields[Array.IndexOf(header.Split(','), column)], CultureInfo.InvariantCulture));
    }

    private static string Description(FrostNight night) =>
        $"The air temperature of an invented night falls from {Degrees(night.Evening.Temperature)} two hours after sunset to "
        + $"{Degrees(night.Minimum.Value)} at sunrise, {night.Minimum.Range!.Meaning}: {Degrees(night.Minimum.Range.Low)} to {Degrees(night.Minimum.Range.High)}. "
        + $"Apples in full bloom lose 10 % of their blossom at {Degrees(night.Crop[0].TenPercentKill!.Value)}, 90 % at {Degrees(night.Crop[0].NinetyPercentKill!.Value)}. Harm {Harm(night)}.";

    private static string Harm(FrostNight night) => night.TimeOfHarm is DateTime begins
        ? $"from {Clock(begins)}, for {Looks.Tenths(night.DurationOfHarm.Hours)} hours"
        : "not on the middle course";

    private static string Clock(DateTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Degrees(Temperature temperature) => $"{Looks.Tenths(temperature.DegreesCelsius)} °C ({Looks.Tenths(temperature.DegreesFahrenheit)} °F)";

    private static string Whole(int celsius) => celsius.ToString("0;−0", CultureInfo.InvariantCulture);
}
