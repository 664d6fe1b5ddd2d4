using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How sure the dates, chances and lengths of a freeze climate are: confidence intervals by drawing its seasons again.</summary>
/// <remarks>
/// <para>
/// The seasons of the record are drawn with replacement, as many as there are, and each draw is fitted as the record was. The
/// spread of the answers over the draws is how much the answer depends on the seasons that happened to come. The ends are
/// percentiles of them, moved outward for short records after Hesterberg (2015), because plain percentiles are too narrow there;
/// an interval always holds its estimate. Seasons are taken as alike and independent: a trend in the record is not in the interval.
/// </para>
/// <para>
/// Chances where fewer than five seasons had a freeze are bounded by the exact interval of Clopper and Pearson instead, for draws
/// of next to nothing tell nothing. For years resampled from months the interval is that of the ranked seasons of the record,
/// moved to the estimate: the resampled years are many, the seasons they come from are not.
/// </para>
/// <para>
/// The same seed gives the same interval. Making one draws once; asking is then quick. Immutable; equal when climate, seed and number are.
/// </para>
/// </remarks>
/// <example><code>
/// double[] minima = [.. Enumerable.Range(0, 30 * 365).Select(day => 5 - 9 * Math.Cos(day * Math.Tau / 365) + day * 7919 % 11 - 5)];
/// DailyTemperatures days = DailyTemperatures.FromMinima(new DateOnly(1991, 1, 1), minima, TemperatureUnit.DegreeCelsius);
/// FreezeClimate climate = FreezeClimate.FromDaily(days, Temperature.FromDegreesCelsius(0), new FreezeClimateOptions(Hemisphere.Northern));
///
/// FreezeBootstrap sure = new(climate, seed: 1);
/// FreezeDateInterval plantOut = sure.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10), confidence: Ratio.FromPercent(90));
/// IReadOnlyList&lt;FreezeCurvePoint&gt; curve = sure.CurveOfChanceOfFreezeAfter(confidence: Ratio.FromPercent(90));
/// </code></example>
public sealed record FreezeBootstrap
{
    private const double HalfYear = MonthDay.DaysOfYear / 2.0;

    private readonly Side spring;
    private readonly Side autumn;
    private readonly double[] lengths;
    private readonly double[][] drawnLengths;

    /// <summary>Draws the seasons of a climate.</summary>
    /// <param name="climate">The climate.</param>
    /// <param name="seed">The seed; the same one gives the same intervals.</param>
    /// <param name="resamples">How many times to draw, from 200 to 100,000; 2,000 tell the ends of 95 % well enough.</param>
    /// <exception cref="ArgumentNullException">The climate is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resamples are not from 200 to 100,000.</exception>
    public FreezeBootstrap(FreezeClimate climate, int seed, int resamples = 2000)
    {
        Climate = Guard.NotNull(climate);
        Seed = seed;
        Guard.Within(resamples, 200, 100_000, "resamples");
        Resamples = resamples;
        SeededRandom random = new(seed);
        spring = new Side(climate.LastInSpring, FreezeSide.Spring, climate.Seasons.Where(season => season.IsSpringKnown).Select(season => season.LastFreeze), climate, resamples, ref random);
        autumn = new Side(climate.FirstInAutumn, FreezeSide.Autumn, climate.Seasons.Where(season => season.IsAutumnKnown).Select(season => season.FirstFreeze), climate, resamples, ref random);
        lengths = [.. climate.SeasonWithoutFreeze.Years.Select(year => (double)year.Days).Order()];
        drawnLengths = new double[lengths.Length == 0 ? 0 : resamples][];
        for (int draw = 0; draw < drawnLengths.Length; draw++)
        {
            double[] drawn = new double[lengths.Length];
            for (int year = 0; year < drawn.Length; year++)
                drawn[year] = lengths[random.Below(lengths.Length)];
            Array.Sort(drawn);
            drawnLengths[draw] = drawn;
        }
    }

    /// <summary>The climate whose seasons are drawn.</summary>
    public FreezeClimate Climate { get; }

    /// <summary>The seed.</summary>
    public int Seed { get; }

    /// <summary>How many times the seasons are drawn.</summary>
    public int Resamples { get; }

    /// <summary>The interval of <see cref="LastSpringFreeze.DateWithChanceOfLaterFreeze"/>.</summary>
    /// <param name="chance">The chance over all seasons, above 0 % and below 100 %.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The date and its interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is not above 0 % and below 100 %.</exception>
    public FreezeDateInterval DateWithChanceOfLaterFreeze(Ratio chance, Ratio confidence) =>
        spring.Date(Climate.LastInSpring.DateWithChanceOfLaterFreeze(chance), chance, confidence, givenAFreeze: false);

    /// <summary>The interval of <see cref="LastSpringFreeze.DateWithChanceOfLaterFreezeGivenAFreeze"/>.</summary>
    /// <param name="chance">The chance given that the season has a freeze, above 0 % and below 100 %.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The date and its interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is not above 0 % and below 100 %.</exception>
    public FreezeDateInterval DateWithChanceOfLaterFreezeGivenAFreeze(Ratio chance, Ratio confidence) =>
        spring.Date(Climate.LastInSpring.DateWithChanceOfLaterFreezeGivenAFreeze(chance), chance, confidence, givenAFreeze: true);

    /// <summary>The interval of <see cref="FirstAutumnFreeze.DateWithChanceOfEarlierFreeze"/>.</summary>
    /// <param name="chance">The chance over all seasons, above 0 % and below 100 %.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The date and its interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is not above 0 % and below 100 %.</exception>
    public FreezeDateInterval DateWithChanceOfEarlierFreeze(Ratio chance, Ratio confidence) =>
        autumn.Date(Climate.FirstInAutumn.DateWithChanceOfEarlierFreeze(chance), chance, confidence, givenAFreeze: false);

    /// <summary>The interval of <see cref="FirstAutumnFreeze.DateWithChanceOfEarlierFreezeGivenAFreeze"/>.</summary>
    /// <param name="chance">The chance given that the season has a freeze, above 0 % and below 100 %.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The date and its interval.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is not above 0 % and below 100 %.</exception>
    public FreezeDateInterval DateWithChanceOfEarlierFreezeGivenAFreeze(Ratio chance, Ratio confidence) =>
        autumn.Date(Climate.FirstInAutumn.DateWithChanceOfEarlierFreezeGivenAFreeze(chance), chance, confidence, givenAFreeze: true);

    /// <summary>The interval of <see cref="LastSpringFreeze.ChanceOfFreezeAfter"/>.</summary>
    /// <param name="date">The day.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The chance over all seasons, with the interval for its range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public Estimate<Ratio> ChanceOfFreezeAfter(MonthDay date, Ratio confidence) =>
        spring.Chance(Climate.LastInSpring.ChanceOfFreezeAfter(date), date, confidence, givenAFreeze: false, Meaning(confidence));

    /// <summary>The interval of <see cref="LastSpringFreeze.ChanceOfFreezeAfterGivenAFreeze"/>.</summary>
    /// <param name="date">The day.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The chance given that the season has a freeze, with the interval for its range; <see langword="null"/> where no season has one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public Estimate<Ratio>? ChanceOfFreezeAfterGivenAFreeze(MonthDay date, Ratio confidence) =>
        Climate.LastInSpring.ChanceOfFreezeAfterGivenAFreeze(date) is Estimate<Ratio> chance
            ? spring.Chance(chance, date, confidence, givenAFreeze: true, Meaning(confidence))
            : null;

    /// <summary>The interval of <see cref="FirstAutumnFreeze.ChanceOfFreezeBefore"/>.</summary>
    /// <param name="date">The day.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The chance over all seasons, with the interval for its range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public Estimate<Ratio> ChanceOfFreezeBefore(MonthDay date, Ratio confidence) =>
        autumn.Chance(Climate.FirstInAutumn.ChanceOfFreezeBefore(date), date, confidence, givenAFreeze: false, Meaning(confidence));

    /// <summary>The interval of <see cref="FirstAutumnFreeze.ChanceOfFreezeBeforeGivenAFreeze"/>.</summary>
    /// <param name="date">The day.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The chance given that the season has a freeze, with the interval for its range; <see langword="null"/> where no season has one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public Estimate<Ratio>? ChanceOfFreezeBeforeGivenAFreeze(MonthDay date, Ratio confidence) =>
        Climate.FirstInAutumn.ChanceOfFreezeBeforeGivenAFreeze(date) is Estimate<Ratio> chance
            ? autumn.Chance(chance, date, confidence, givenAFreeze: true, Meaning(confidence))
            : null;

    /// <summary>The interval of <see cref="FreezeFreeSeason.LengthWithChanceOfLongerSeason"/>.</summary>
    /// <param name="chance">The chance of that length or a longer one, from 1/(n + 1) to n/(n + 1) for n years.</param>
    /// <param name="confidence">The confidence, above 0 % and below 100 %.</param>
    /// <returns>The length, with the interval for its range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chance is beyond the shortest or the longest year, or the confidence is not above 0 % and below 100 %.</exception>
    /// <exception cref="InvalidOperationException">There are fewer than five years.</exception>
    public Estimate<Duration> LengthWithChanceOfLongerSeason(Ratio chance, Ratio confidence)
    {
        Estimate<Duration> length = Climate.SeasonWithoutFreeze.LengthWithChanceOfLongerSeason(chance);
        double fraction = Fraction(confidence);
        double days = Boundary.Days(length.Value);
        double[] drawn = new double[drawnLengths.Length];
        double rank = (1 - Boundary.Fraction(chance)) * (lengths.Length + 1);
        for (int draw = 0; draw < drawn.Length; draw++)
            drawn[draw] = FreezeFreeSeason.DaysOfRank(drawnLengths[draw], rank);
        (double low, double high) = Ends(drawn, lengths.Length == 0 ? 0 : FreezeFreeSeason.DaysOfRank(lengths, rank), days, fraction, lengths.Length);
        return new Estimate<Duration>(
            length.Value,
            length.Method,
            new EstimateRange<Duration>(
                Duration.FromDays(Math.Clamp(low, 0, days)), Duration.FromDays(Math.Clamp(high, days, MonthDay.DaysOfYear)), Meaning(confidence)),
            length.Adjustments,
            length.Cautions);
    }

    /// <summary>The chance of a freeze on each day of the year or later in the cold season, with its band: the curve of the last freeze.</summary>
    /// <param name="confidence">The confidence of the band at each day by itself, above 0 % and below 100 %.</param>
    /// <returns>365 points from the first day of the cold season on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public IReadOnlyList<FreezeCurvePoint> CurveOfChanceOfFreezeAfter(Ratio confidence) => Curve(date => ChanceOfFreezeAfter(date, confidence));

    /// <summary>The chance of a freeze on each day of the year or earlier in the cold season, with its band: the curve of the first freeze.</summary>
    /// <param name="confidence">The confidence of the band at each day by itself, above 0 % and below 100 %.</param>
    /// <returns>365 points from the first day of the cold season on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public IReadOnlyList<FreezeCurvePoint> CurveOfChanceOfFreezeBefore(Ratio confidence) => Curve(date => ChanceOfFreezeBefore(date, confidence));

    /// <summary>Whether another draws the same seasons as often from the same seed, and so answers the same.</summary>
    /// <param name="other">Another.</param>
    /// <returns><see langword="true"/> where both are the same.</returns>
    public bool Equals(FreezeBootstrap? other) =>
        other is not null && Climate == other.Climate && Seed == other.Seed && Resamples == other.Resamples;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Climate, Seed, Resamples);

    /// <summary>What is drawn, how often and from which seed.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Guard.Number(Resamples)} resamples with seed {Guard.Number(Seed)} of {Climate}";

    private ValueList<FreezeCurvePoint> Curve(Func<MonthDay, Estimate<Ratio>> chanceAt) => ValueList<FreezeCurvePoint>.Of(
        Enumerable.Range(0, MonthDay.DaysOfYear).Select(day =>
        {
            MonthDay date = MonthDay.Nearest(Climate.SeasonStart.DayOfYear + day);
            Estimate<Ratio> chance = chanceAt(date);
            EstimateRange<Ratio> band = chance.Range!;

            // Percent and fraction differ in the last digit.
            return new FreezeCurvePoint(
                date, chance.Value, band.Low < chance.Value ? band.Low : chance.Value, band.High > chance.Value ? band.High : chance.Value);
        }));

    private string Meaning(Ratio confidence) =>
        $"{Guard.Number(Fraction(confidence) * 100)} % bootstrap interval, {Guard.Number(Resamples)} resamples, seed {Guard.Number(Seed)}";

    private static double Fraction(Ratio confidence) => Guard.Between(Boundary.Fraction(confidence) * 100, 0, 100, "%", nameof(confidence)) / 100;

    /// <summary>
    /// The ends of an interval: percentiles of the draws, moved by as much as the estimate differs from that of the record ranked,
    /// and never so that the estimate lies outside.
    /// </summary>
    private static (double Low, double High) Ends(double[] drawn, double ofRecord, double estimate, double confidence, int seasons)
    {
        if (drawn.Length == 0)
            return (estimate, estimate);
        Array.Sort(drawn);
        double tail = (1 - confidence) / 2;
        if (seasons > 1)
        {
            // Hesterberg (2015), the expanded percentile interval.
            double student = StudentT.InvCDF(0, 1, seasons - 1, tail);
            tail = Normal.CDF(0, 1, student * Math.Sqrt(seasons / (seasons - 1.0)));
        }

        int outside = (int)(tail * (drawn.Length + 1));
        double move = double.IsFinite(estimate) && double.IsFinite(ofRecord) ? estimate - ofRecord : 0;
        double low = drawn[Math.Max(outside - 1, 0)] + move;
        double high = drawn[Math.Min(drawn.Length - outside, drawn.Length - 1)] + move;
        return (Math.Min(low, estimate), Math.Max(high, estimate));
    }

    /// <summary>One end of the cold season, its draws and what they answer.</summary>
    private sealed class Side
    {
        private readonly FreezeDateDistribution distribution;
        private readonly FreezeSide side;
        private readonly int seasons;
        private readonly int freezes;
        private readonly FreezeDates? record;
        private readonly double recordShare;
        private readonly RankedFreezeDates? ranked;
        private readonly (FreezeDates? Dates, double Share)[] draws;

        public Side(
            FreezeDateDistribution distribution, FreezeSide side, IEnumerable<DateOnly?> dates, FreezeClimate climate, int resamples, ref SeededRandom random)
        {
            this.distribution = distribution;
            this.side = side;
            int[] days = [.. dates.Select(date => date is DateOnly freeze ? FreezeFit.DaysFromCut(freeze, climate.SeasonStart) : -1)];
            int[] known = [.. days.Where(day => day >= 0)];
            seasons = days.Length;
            freezes = known.Length;
            record = FreezeFit.Of(known, climate.SeasonStart, climate.Method);
            recordShare = seasons == 0 ? 0 : (double)freezes / seasons;
            ranked = freezes == 0 ? null : new RankedFreezeDates(climate.SeasonStart, known, PlottingPosition.Weibull);
            draws = new (FreezeDates?, double)[freezes == 0 ? 0 : resamples];
            List<int> drawn = new(seasons);
            for (int draw = 0; draw < draws.Length; draw++)
            {
                drawn.Clear();
                for (int season = 0; season < seasons; season++)
                {
                    int day = days[random.Below(seasons)];
                    if (day >= 0)
                        drawn.Add(day);
                }

                // A draw of the normal kind stays one, however few its freezes are.
                FreezeDates? fitted = drawn.Count > 0 && record is NormalFreezeDates
                    ? FreezeFit.NormalFit(drawn, climate.SeasonStart)
                    : FreezeFit.Of(drawn, climate.SeasonStart, climate.Method);
                draws[draw] = (fitted, (double)drawn.Count / seasons);
            }
        }

        // No date is earlier than all dates in spring, later than all in autumn.
        private double NoDate => side == FreezeSide.Spring ? double.NegativeInfinity : double.PositiveInfinity;

        public FreezeDateInterval Date(Estimate<MonthDay>? date, Ratio chance, Ratio confidence, bool givenAFreeze)
        {
            double sure = Fraction(confidence);
            double fraction = Boundary.Fraction(chance);
            if (freezes == 0)
                return new FreezeDateInterval(null, date, null, confidence);
            double middle = distribution.GivenAFreeze?.MiddleDate.DayOfYear ?? record!.MiddleDate.DayOfYear;
            double estimate = Day(distribution.GivenAFreeze, distribution.Share, fraction, givenAFreeze, middle);
            double ofRecord = Day(record, recordShare, fraction, givenAFreeze, middle);
            double[] drawn = [.. Usable(givenAFreeze).Select(draw => Day(draw.Dates, draw.Share, fraction, givenAFreeze, middle))];
            (double low, double high) = Ends(drawn, ofRecord, estimate, sure, freezes);
            return new FreezeDateInterval(MonthDayOf(low), date, MonthDayOf(high), confidence);
        }

        public Estimate<Ratio> Chance(Estimate<Ratio> chance, MonthDay date, Ratio confidence, bool givenAFreeze, string meaning)
        {
            double sure = Fraction(confidence);
            double estimate = Boundary.Fraction(chance.Value);
            EstimateRange<Ratio> range;
            if (freezes < FreezeEvidence.FewestValues)
            {
                int years = givenAFreeze ? freezes : seasons;
                (double low, double high) = years == 0 ? (0, 1) : BinomialBounds.Of(ranked?.CountBeyond(date, side) ?? 0, years, sure);
                range = new EstimateRange<Ratio>(
                    Ratio.FromPercent(100 * Math.Min(low, estimate)),
                    Ratio.FromPercent(100 * Math.Max(high, estimate)),
                    $"{Guard.Number(sure * 100)} % interval of Clopper and Pearson, {Guard.Number(years)} years");
            }
            else
            {
                double[] drawn = [.. Usable(givenAFreeze).Select(draw => Beyond(draw.Dates, draw.Share, date, givenAFreeze))];
                (double low, double high) = Ends(drawn, Beyond(record, recordShare, date, givenAFreeze), estimate, sure, freezes);
                range = new EstimateRange<Ratio>(
                    Ratio.FromPercent(100 * Math.Clamp(low, 0, estimate)), Ratio.FromPercent(100 * Math.Clamp(high, estimate, 1)), meaning);
            }

            return new Estimate<Ratio>(chance.Value, chance.Method, range, chance.Adjustments, chance.Cautions);
        }

        // Given a freeze, a draw without one tells nothing.
        private IEnumerable<(FreezeDates? Dates, double Share)> Usable(bool givenAFreeze) => givenAFreeze ? draws.Where(draw => draw.Dates is not null) : draws;

        private double Beyond(FreezeDates? dates, double share, MonthDay date, bool givenAFreeze) =>
            dates is null || share == 0 ? 0 : dates.ChanceBeyond(date, side, givenAFreeze ? 1 : share);

        /// <summary>The day of a chance, laid within half a year of the middle.</summary>
        private double Day(FreezeDates? dates, double share, double chance, bool givenAFreeze, double middle)
        {
            if (dates is null || (!givenAFreeze && chance >= share - 1e-6))
                return NoDate;
            double day = dates.DayOfChance(chance, side, givenAFreeze ? 1 : share)
                ?? dates.MiddleDate.DayOfYear + (side == FreezeSide.Spring == chance < share / 2 ? HalfYear - 1 : 1 - HalfYear);
            return middle + MonthDay.Wrapped(day - middle + HalfYear) - HalfYear;
        }

        private static MonthDay? MonthDayOf(double day) => double.IsFinite(day) ? MonthDay.Nearest(day) : null;
    }
}
