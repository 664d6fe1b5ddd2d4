using HortiCalc.Climate;

namespace HortiCalc.Pictures;

/// <summary>What a method counts of a day, as areas in hours by °C: what is counted, and what is taken away again.</summary>
/// <remarks>
/// Drawn from the meaning of each method and not by the library's formulas, so that <see cref="CelsiusDays"/>, measured on the corners
/// themselves, says whether the two are the same.
/// </remarks>
internal sealed class CountedArea
{
    private const double HoursAStep = 0.125;

    private readonly List<IReadOnlyList<Point>> counted = [];
    private readonly List<IReadOnlyList<Point>> takenAway = [];

    private CountedArea(DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff)
    {
        if (method == DegreeDayMethod.FourCase)
            FourCase(day);
        else if (method == DegreeDayMethod.HourlySine)
            Hours(day, method, cutoff);
        else if (Extremes(day, method, cutoff) is (double low, double high))
            Mean(day, (low + high) / 2, method == DegreeDayMethod.SimpleAverage ? cutoff : UpperCutoff.None);
        else
            Course(day, method, cutoff);
        CountsNothing = cutoff == UpperCutoff.Intermediate && Size(takenAway) > Size(counted);
    }

    public IReadOnlyList<IReadOnlyList<Point>> Counted => counted;

    public IReadOnlyList<IReadOnlyList<Point>> TakenAway => takenAway;

    /// <summary>Whether more is taken away than counted, by the cutoff that then counts nothing.</summary>
    public bool CountsNothing { get; }

    /// <summary>The degree days of what is drawn.</summary>
    public double CelsiusDays => CountsNothing ? 0 : Size(counted) - Size(takenAway);

    public static CountedArea Of(DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff) => new(day, method, cutoff);

    /// <summary>What a method takes the minimum and the maximum for, where it looks at nothing else.</summary>
    public static (double Low, double High)? Extremes(DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff)
    {
        double limit = cutoff == UpperCutoff.None ? double.PositiveInfinity : day.Upper;
        return method.Evidence.Key switch
        {
            "simple-average" => (day.Minimum, day.Maximum),
            "capped-maximum-average" => (day.Minimum, Math.Min(day.Maximum, limit)),
            "reflected-maximum-average" => (day.Minimum, day.ReflectedMaximum),
            "clamped-average" => (Math.Clamp(day.Minimum, day.Lower, limit), Math.Clamp(day.Maximum, day.Lower, limit)),
            "capped-and-raised-average" => (Math.Max(day.Minimum, day.Lower), Math.Min(day.Maximum, limit)),
            "maximum-only" => (day.ReflectedMaximum, day.ReflectedMaximum),
            _ => null,
        };
    }

    /// <summary>How far above the base a temperature counts; below zero where it takes away.</summary>
    private static double Rate(double temperature, DrawnDay day, UpperCutoff cutoff, bool isAbove) => cutoff switch
    {
        _ when temperature <= day.Lower => 0,
        UpperCutoff.Horizontal when isAbove => day.Upper - day.Lower,
        UpperCutoff.Vertical when isAbove => 0,
        UpperCutoff.Intermediate or UpperCutoff.IntermediateBelowZero when isAbove => 2 * day.Upper - temperature - day.Lower,
        _ => temperature - day.Lower,
    };

    private static double Size(IEnumerable<IReadOnlyList<Point>> areas) => areas.Sum(corners =>
    {
        double twice = 0;
        for (int corner = 0; corner < corners.Count; corner++)
        {
            Point here = corners[corner];
            Point next = corners[(corner + 1) % corners.Count];
            twice += here.X * next.Y - next.X * here.Y;
        }

        return Math.Abs(twice) / 2 / 24;
    });

    private static IReadOnlyList<Point> Block(double from, double to, double bottom, double top) =>
        [new(from, bottom), new(from, top), new(to, top), new(to, bottom)];

    /// <summary>The hours between which a course neither crosses a temperature at which the rate changes, nor turns.</summary>
    private static List<double> Breaks(DrawnDay day, DegreeDayMethod method)
    {
        List<double> breaks = [0, 12, 24];
        foreach (double temperature in (double[])[day.Lower, day.Upper, 2 * day.Upper - day.Lower])
        {
            foreach ((double cold, double warm) in (ReadOnlySpan<(double, double)>)[(0, 12), (24, 12)])
            {
                if (day.At(cold, method) >= temperature || day.At(warm, method) <= temperature)
                    continue;
                double below = cold;
                double above = warm;
                for (int halving = 0; halving < 60; halving++)
                {
                    double middle = (below + above) / 2;
                    (below, above) = day.At(middle, method) < temperature ? (middle, above) : (below, middle);
                }

                breaks.Add((below + above) / 2);
            }
        }

        breaks.Sort();
        return breaks;
    }

    /// <summary>The mean stands for all 24 hours.</summary>
    private void Mean(DrawnDay day, double mean, UpperCutoff cutoff)
    {
        double rate = Rate(mean, day, cutoff, mean > day.Upper);
        if (rate > 0)
            counted.Add(Block(0, 24, day.Lower, day.Lower + rate));
    }

    /// <summary>Half a day at the maximum less a quarter of a day at the minimum, or a quarter of a day at the maximum.</summary>
    private void FourCase(DrawnDay day)
    {
        if (day.Maximum <= day.Lower)
            return;
        if (day.Minimum >= day.Lower)
        {
            counted.Add(Block(0, 24, day.Lower, day.Mean));
            return;
        }

        double half = day.Mean >= day.Lower ? 6 : 3;
        counted.Add(Block(12 - half, 12 + half, day.Lower, day.Maximum));
        if (day.Mean < day.Lower)
            return;
        takenAway.Add(Block(0, 3, day.Minimum, day.Lower));
        takenAway.Add(Block(21, 24, day.Minimum, day.Lower));
    }

    /// <summary>The middle of each hour stands for it.</summary>
    private void Hours(DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff)
    {
        for (int hour = 0; hour < 24; hour++)
        {
            double temperature = day.At(hour + 0.5, method);
            double rate = Rate(temperature, day, cutoff, temperature > day.Upper);
            if (rate != 0)
                (rate > 0 ? counted : takenAway).Add(Block(hour, hour + 1, day.Lower, day.Lower + rate));
        }
    }

    /// <summary>The area between the base and the rate along the course.</summary>
    private void Course(DrawnDay day, DegreeDayMethod method, UpperCutoff cutoff)
    {
        List<double> breaks = Breaks(day, method);
        List<Point> corners = [];
        int sign = 0;
        for (int part = 0; part + 1 < breaks.Count; part++)
        {
            double from = breaks[part];
            double to = breaks[part + 1];
            bool isAbove = day.At((from + to) / 2, method) > day.Upper;
            int partSign = Math.Sign(Rate(day.At((from + to) / 2, method), day, cutoff, isAbove));
            if (partSign != sign)
            {
                Finish();
                sign = partSign;
            }

            if (sign == 0)
                continue;
            if (corners.Count == 0)
                corners.Add(new Point(from, day.Lower));
            int steps = (int)Math.Ceiling((to - from) / HoursAStep);
            for (int step = 0; step <= steps; step++)
            {
                double hour = from + (to - from) * step / steps;
                corners.Add(new Point(hour, day.Lower + Rate(day.At(hour, method), day, cutoff, isAbove)));
            }
        }

        Finish();

        void Finish()
        {
            if (corners.Count > 0)
            {
                corners.Add(new Point(corners[^1].X, day.Lower));
                (sign > 0 ? counted : takenAway).Add(corners);
            }

            corners = [];
        }
    }
}
