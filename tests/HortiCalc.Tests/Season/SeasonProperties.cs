using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using HortiCalc.Climate;
using HortiCalc.Season;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Season;

public sealed class SeasonProperties
{
    [Property(MaxTest = 15)]
    public void PlantOut_HigherAcceptedChance_IsNotLater(PositiveInt a, PositiveInt b)
    {
        (double low, double high) = Ordered(a, b, 1, 60);
        Assert.True(Out(low) >= Out(high));
    }

    [Property(MaxTest = 15)]
    public void BringIndoors_HigherAcceptedChance_IsNotEarlier(PositiveInt a, PositiveInt b)
    {
        (double low, double high) = Ordered(a, b, 1, 60);
        Assert.True(In(low) <= In(high));
    }

    [Property(MaxTest = 15)]
    public void PlantOut_TendererCrop_IsNotEarlier(PositiveInt a, PositiveInt b)
    {
        (double hardy, double tender) = Ordered(a, b, -6, 4);
        Assert.True(Out(10, hardy) <= Out(10, tender));
    }

    [Property(MaxTest = 15)]
    public void PlantOut_CropThatWaitsForWarmth_IsNotEarlierThanOneThatDoesNot(PositiveInt a)
    {
        double warm = Within(a, 1, 18);
        Crop waits = Invented.Crop(warmCelsius: warm);
        DateOnly? date = SeasonPlan.For(Invented.Bed(waits), SeasonFiles.DemoWeather).Date(PlanStep.PlantOut).Date;
        Assert.True(date >= Out(10));
    }

    [Property(MaxTest = 10)]
    public void Harvest_MoreWarmthNeeded_IsNotEarlier(PositiveInt a, PositiveInt b)
    {
        (double less, double more) = Ordered(a, b, 50, 800);
        Assert.True(HarvestByHeat(less, 20) <= HarvestByHeat(more, 20));
    }

    [Property(MaxTest = 10)]
    public void Harvest_HigherChanceOfLater_IsNotLater(PositiveInt a, PositiveInt b)
    {
        (double low, double high) = Ordered(a, b, 1, 99);
        Assert.True(HarvestByHeat(500, low) >= HarvestByHeat(500, high));
    }

    [Property(MaxTest = 20)]
    public void Start_IsAsManyWeeksBeforePlantingOutAsGiven(PositiveInt a)
    {
        int weeks = (int)Within(a, 1, 20);
        SeasonPlan plan = SeasonPlan.For(
            Invented.Bed(Invented.Crop(raising: new Raising(Propagule.Seed, Ratio.FromPercent(80), weeks))), SeasonFiles.Seattle);
        Assert.Equal(plan.Date(PlanStep.PlantOut).Date!.Value.AddDays(-7 * weeks), plan.Date(PlanStep.Sow).Date);
    }

    [Property(MaxTest = 30)]
    public void Lime_LargerBed_IsInProportion(PositiveInt a, PositiveInt b)
    {
        double metres = Within(a, 1, 30);
        double factor = Within(b, 1, 5);
        Assert.Equal(factor * LimeKilograms(metres, 5.6), LimeKilograms(metres * factor, 5.6), 6);
    }

    [Property(MaxTest = 30)]
    public void Lime_MoreAcidSoil_IsNotLess(PositiveInt a, PositiveInt b)
    {
        (double acid, double mild) = Ordered(a, b, 5.0, 5.9);
        Assert.True(LimeKilograms(3, acid) >= LimeKilograms(3, mild) - 1e-9);
    }

    [Property]
    public void PlantGrid_LargerBed_HoldsNoFewer(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        double width = Within(a, 0.2, 5);
        (double shorter, double longer) = Ordered(b, c, 0.2, 20);
        Assert.True(Count(width, shorter) <= Count(width, longer));
    }

    [Property]
    public void PlantGrid_BedTurnedRound_HoldsTheSame(PositiveInt a, PositiveInt b)
    {
        double width = Within(a, 0.2, 5);
        double length = Within(b, 0.2, 20);
        Assert.Equal(Count(width, length), Count(length, width));
    }

    [Property]
    public void PlantGrid_WholePlants_NeedNoMoreThanTheArea(PositiveInt a, PositiveInt b)
    {
        double width = Within(a, 0.6, 5);
        double length = Within(b, 0.6, 20);
        Assert.True(Count(width, length) * 0.45 * 0.6 <= width * length * (1 + 1e-9));
    }

    [Property]
    public void StartsNeeded_IsEnoughAndOneFewerIsNot(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        int plants = (int)Within(a, 1, 200);
        double success = Within(b, 5, 99) / 100;
        double accepted = Within(c, 1, 50) / 100;
        int starts = StartsNeeded.For(plants, success, accepted);
        Assert.True(StartsNeeded.Shortfall(starts, plants, success) <= accepted);
        Assert.True(starts == plants || StartsNeeded.Shortfall(starts - 1, plants, success) > accepted);
    }

    [Property]
    public void StartsNeeded_BetterSuccess_NeedsNoMore(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        int plants = (int)Within(a, 1, 200);
        (double poor, double good) = Ordered(b, c, 5, 100);
        Assert.True(StartsNeeded.For(plants, poor / 100, 0.1) >= StartsNeeded.For(plants, good / 100, 0.1));
    }

    [Property(MaxTest = 30)]
    public void TextWrap_AnyWidth_KeepsEveryWordAndTheWidth(PositiveInt a)
    {
        int width = (int)Within(a, 12, 60);
        const string Sentence = "days reach a mean of 13 °C; 5 % chance of 0 °C or colder, 10 % in 4 to 6 weeks [c,13]";
        List<string> lines = TextWrap.Lines(Sentence, width);
        Assert.Equal(Sentence, string.Join(' ', lines));
        Assert.All(lines, line => Assert.True(line.Length <= width, line));
        Assert.All(lines.SkipLast(1), line => Assert.False(char.IsAsciiDigit(line[^1]), line));
    }

    private static double Within(PositiveInt number, double low, double high) => low + (high - low) * ((number.Get - 1) % 101 / 100.0);

    private static (double Low, double High) Ordered(PositiveInt a, PositiveInt b, double low, double high)
    {
        double first = Within(a, low, high);
        double second = Within(b, low, high);
        return (Math.Min(first, second), Math.Max(first, second));
    }

    private static DateOnly Out(double acceptedPercent, double hurtAtCelsius = 0) => SeasonPlan.For(
        Invented.Bed(Invented.Crop(hurtAtCelsius), chances: Invented.Chances(acceptedPercent)), SeasonFiles.DemoWeather).Date(PlanStep.PlantOut).Date!.Value;

    private static DateOnly In(double acceptedPercent) => SeasonPlan.For(
        Invented.Pots(Invented.Crop(), chances: Invented.Chances(acceptedPercent)), SeasonFiles.DemoWeather).Date(PlanStep.BringIndoors).Date!.Value;

    private static DateOnly HarvestByHeat(double celsiusDays, double laterPercent)
    {
        HeatToMaturity heat = new(ThermalTime.FromCelsiusDays(celsiusDays), new DegreeDayThresholds(Temperature.FromDegreesCelsius(8)));
        AcceptedChances usual = AcceptedChances.Usual;
        AcceptedChances chances = new(
            usual.ColdAfterPlantingOut, usual.FreezeBeforePruningHeals, usual.ColdBeforeIndoors, Ratio.FromPercent(laterPercent), usual.TooFewPlants);
        return SeasonPlan.For(Invented.Bed(Invented.Crop(maturity: heat), chances: chances), SeasonFiles.DemoWeather).Date(PlanStep.Harvest).Date!.Value;
    }

    private static double LimeKilograms(double lengthMetres, double ph) => SeasonPlan.For(
        Invented.Bed(Invented.Crop(), Invented.Site(soil: Invented.Loam(ph)), Bed.Rectangle(Length.FromMeters(1), Length.FromMeters(lengthMetres))),
        SeasonFiles.Seattle).Supplies.OfType<LimeSupply>().Single().Dose.Value.Kilograms;

    private static int Count(double widthMetres, double lengthMetres) =>
        PlantGrid.Count(Bed.Rectangle(Length.FromMeters(widthMetres), Length.FromMeters(lengthMetres)), Invented.Spacing);
}
