using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// Many invented sites of thirty seasons with known chances: the estimates must come out right on average, and intervals of 90 % must hold
/// the truth in 90 % of the sites, both within three standard errors of so many sites.
/// </summary>
public class FreezeSimulationStudy
{
    private const int Sites = 300;
    private const double Mean = 230;

    // Wide, so that whole days matter little.
    private const double Deviation = 20;
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);
    private static readonly Ratio Ninety = Ratio.FromPercent(90);

    // The standard normal deviate with 10 % above it.
    private const double TenthAbove = 1.2815515655446004;

    // 0.9 ± 3 √(0.9 × 0.1 / 300).
    private const double LeastCovered = 0.9 - 0.052;
    private const double MostCovered = 0.9 + 0.052;

    private static FreezeBootstrap Draw(int site, double share, FreezeDateMethod? method = null) => new FreezeBootstrap(
        FreezeClimate.FromDaily(FreezeWeather.Site(site, share, Mean, Deviation), Zero, new FreezeClimateOptions(Hemisphere.Northern, method: method)),
        seed: site,
        resamples: 400);

    private static double FromCut(MonthDay date) => MonthDay.Wrapped(date.DayOfYear - FreezeWeather.Cut.DayOfYear);

    [Theory]
    [InlineData(1.0, 0.1)]
    [InlineData(1.0, 0.5)]
    [InlineData(0.6, 0.3)]
    public void Sites_WithFreezesInAllOrSomeSeasons_GiveTheTrueDateAndCoverIt(double share, double chance)
    {
        double deviate = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 1 - chance / share);
        double truth = Mean + Deviation * deviate;
        double sum = 0;
        double squares = 0;
        int covered = 0;
        for (int site = 0; site < Sites; site++)
        {
            FreezeDateInterval interval = Draw(site, share).DateWithChanceOfLaterFreeze(Ratio.FromPercent(100 * chance), Ninety);
            double error = FromCut(interval.Date!.Value) - truth;
            sum += error;
            squares += error * error;

            bool above = interval.Earliest is not MonthDay earliest || FromCut(earliest) <= truth;
            covered += above && interval.Latest is MonthDay latest && truth <= FromCut(latest) ? 1 : 0;
        }

        double standardError = Math.Sqrt(squares / Sites / Sites);

        // Half a day is left to the bias of a standard deviation of so few, 1/(4n) of it, and of the share.
        Assert.InRange(sum / Sites, -3 * standardError - 0.5, 3 * standardError + 0.5);
        Assert.InRange(covered / (double)Sites, LeastCovered, MostCovered);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.6)]
    public void Sites_WithFreezes_CoverTheTrueChance(double share)
    {
        MonthDay date = MonthDay.Nearest(FreezeWeather.Cut.DayOfYear + Mean + 18);
        double truth = share * (1 - MathNet.Numerics.Distributions.Normal.CDF(0, Deviation, FromCut(date) - Mean));
        double sum = 0;
        int covered = 0;
        for (int site = 0; site < Sites; site++)
        {
            Estimate<Ratio> chance = Draw(1000 + site, share).ChanceOfFreezeAfter(date, Ninety);
            sum += chance.Value.DecimalFractions - truth;
            covered += chance.Range!.Low.DecimalFractions <= truth && truth <= chance.Range.High.DecimalFractions ? 1 : 0;
        }

        Assert.InRange(sum / Sites, -0.012, 0.012); // Three standard errors and the bias of thirty seasons.
        Assert.InRange(covered / (double)Sites, LeastCovered, MostCovered);
    }

    [Fact]
    public void Sites_WithNextToNoFreezes_AreBoundedBySafeIntervals()
    {
        // One season in twenty freezes; after the mean date one in forty. The exact interval covers at least as often as it says.
        int covered = 0;
        int without = 0;
        for (int site = 0; site < Sites; site++)
        {
            FreezeBootstrap sure = Draw(2000 + site, 0.05);
            without += sure.Climate.LastInSpring.Share == 0 ? 1 : 0;
            Estimate<Ratio> chance = sure.ChanceOfFreezeAfter(MonthDay.Nearest(FreezeWeather.Cut.DayOfYear + Mean), Ninety);
            covered += chance.Range!.Low.DecimalFractions <= 0.025 && 0.025 <= chance.Range.High.DecimalFractions ? 1 : 0;
        }

        Assert.True(covered >= LeastCovered * Sites, $"{covered} of {Sites}");
        Assert.InRange(without, 30, 100); // 0.95^30 = 21 % of the sites.
    }

    [Fact]
    public void Sites_WithoutFreezes_HaveNoDateAndAnExactBound()
    {
        FreezeBootstrap sure = Draw(1, 0);
        FreezeDateInterval date = sure.DateWithChanceOfLaterFreeze(Ratio.FromPercent(10), Ninety);
        Assert.Equal((null, null, null), (date.Earliest, date.Date, date.Latest));
        Estimate<Ratio> chance = sure.ChanceOfFreezeBefore(new MonthDay(11, 1), Ninety);
        Assert.Equal(0, chance.Value.Percent);
        Assert.Equal(100 * (1 - Math.Pow(0.05, 1 / 30.0)), chance.Range!.High.Percent, 1e-6);
    }

    [Fact]
    public void Sites_Ranked_PassTheirDateAsOftenAsItSays()
    {
        // A thirty-first season lies beyond the third rank from the rare side in 3 of 31 cases, whatever the distribution.
        int passed = 0;
        SeededRandom random = new(7);
        for (int site = 0; site < 4 * Sites; site++)
        {
            DailyTemperatures days = FreezeWeather.Site(3000 + site, 1, Mean, Deviation);
            LastSpringFreeze spring = FreezeClimate.FromDaily(
                days, Zero, new FreezeClimateOptions(Hemisphere.Northern, method: FreezeDateMethod.Ranked())).LastInSpring;
            double date = FromCut(spring.DateWithChanceOfLaterFreeze(Ratio.FromPercent(300 / 31.0))!.Value);
            // Whole days: half of the cases on the very day.
            double day = Math.Round(Mean + Deviation * FreezeWeather.Normal(ref random));
            passed += day > date || (day == date && random.Below(2) == 0) ? 1 : 0;
        }

        double expected = 3 / 31.0;
        Assert.InRange(passed / (4.0 * Sites), expected - 3 * Math.Sqrt(expected / (4 * Sites)), expected + 3 * Math.Sqrt(expected / (4 * Sites)));
    }
}
