using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using UnitsNet;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of the choice of fertilisers: bounds kept, and nothing better found by trying everything.</summary>
public class FertilizerPlanProperties
{
    [Property]
    public void Plan_EveryGoal_NeverGivesMoreThanTheMostNorLessThanNothing(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        foreach (FertilizerGoal goal in Goals(needs, offers))
        {
            FertilizerPlan plan = Fertilizing.Plan(needs, offers, goal);
            Assert.All(plan.Lines, line => Assert.True(line.Rate.GramsPerSquareMeter >= 0));
            Assert.All(plan.Supplies, supply => Assert.True(
                supply.Given.GramsPerSquareMeter <= supply.Need.Most.GramsPerSquareMeter * (1 + 1e-9)));
        }
    }

    [Property]
    public void Plan_ByAProgramme_MeetsEveryNeed(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        foreach (FertilizerGoal goal in Goals(needs, offers).Where(goal => goal != FertilizerGoal.Closest))
        {
            Assert.All(Fertilizing.Plan(needs, offers, goal).Supplies, supply => Assert.True(
                supply.Given.GramsPerSquareMeter >= supply.Need.Least.GramsPerSquareMeter * (1 - 1e-9)));
        }
    }

    [Property(MaxTest = 15)]
    public void Plan_LeastCost_IsNoDearerThanAnyMixOnAGrid(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 3);
        double best = Grid(needs, offers, grams => Feasible(needs, offers, grams) ? Cost(offers, grams) : double.PositiveInfinity);
        if (!Fertilizing.CanMeet(needs, offers))
        {
            Assert.Equal(double.PositiveInfinity, best);
            return;
        }

        Assert.True((double)Fertilizing.Plan(needs, offers, FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1))!.Value <= best + 1e-9);
    }

    [Property(MaxTest = 15)]
    public void Plan_LeastExcess_IsNoMoreThanOfAnyMixOnAGrid(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 3);
        if (!Fertilizing.CanMeet(needs, offers))
            return;
        double best = Grid(needs, offers, grams => Feasible(needs, offers, grams) ? Excess(needs, Given(needs, offers, grams)) : double.PositiveInfinity);
        FertilizerPlan plan = Fertilizing.Plan(needs, offers, FertilizerGoal.LeastExcess);
        Assert.True(Excess(needs, [.. plan.Supplies.Select(supply => supply.Given.GramsPerSquareMeter)]) <= best + 1e-9);
    }

    [Property(MaxTest = 15)]
    public void Plan_Closest_IsNoFartherThanAnyMixOnAGrid(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 3);
        double best = Grid(needs, offers, grams =>
        {
            double[] given = Given(needs, offers, grams);
            return given.Zip(needs).All(pair => pair.First <= pair.Second.Most.GramsPerSquareMeter) ? Distance(needs, given) : double.PositiveInfinity;
        });
        FertilizerPlan plan = Fertilizing.Plan(needs, offers, FertilizerGoal.Closest);
        Assert.True(Distance(needs, [.. plan.Supplies.Select(supply => supply.Given.GramsPerSquareMeter)]) <= best + 1e-7);
    }

    [Property]
    public void Plan_ClosestOfWhatCanBeMetExactly_IsExact(int seed)
    {
        Random random = new(seed);
        (NutrientNeed[] _, FertilizerOffer[] offers) = Case(seed, 4);
        double[] grams = [.. offers.Select(_ => (double)random.Next(1, 40))];
        Nutrient[] three = [Nutrient.Nitrogen, Nutrient.Phosphorus, Nutrient.Potassium];
        NutrientNeed[] needs = [.. three.Where(nutrient => Sum(nutrient) > 0).Select(nutrient =>
            NutrientNeed.WithSlack(nutrient, AreaDensity.FromGramsPerSquareMeter(Sum(nutrient)), Ratio.FromPercent(5)))];

        Assert.All(Fertilizing.Plan(needs, offers, FertilizerGoal.Closest).Supplies, supply => Assert.Equal(
            1, supply.Given.GramsPerSquareMeter / supply.Need.Least.GramsPerSquareMeter, 1e-6));

        double Sum(Nutrient nutrient) => offers.Select((offer, j) => offer.Product.Available(nutrient).DecimalFractions * grams[j]).Sum();
    }

    [Property]
    public void Plan_EverythingTwice_IsTwice(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        NutrientNeed[] twice = [.. needs.Select(need => new NutrientNeed(need.Nutrient, need.Least * 2, need.Most * 2))];
        foreach (FertilizerGoal goal in Goals(needs, offers))
        {
            double once = Fertilizing.Plan(needs, offers, goal).Supplies.Sum(supply => supply.Given.GramsPerSquareMeter);
            double doubled = Fertilizing.Plan(twice, offers, goal).Supplies.Sum(supply => supply.Given.GramsPerSquareMeter);
            if (goal != FertilizerGoal.LeastCost)
                Assert.Equal(1, doubled / (2 * once), 1e-5);
            Assert.True(doubled > once);
        }
    }

    [Property]
    public void Plan_MoreRoom_CostsNoMore(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        if (!Fertilizing.CanMeet(needs, offers))
            return;
        NutrientNeed[] wider = [.. needs.Select(need => new NutrientNeed(need.Nutrient, need.Least, need.Most * 1.5))];
        Assert.True(
            Fertilizing.Plan(wider, offers, FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1))
            <= Fertilizing.Plan(needs, offers, FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1)) + 1e-9m);
    }

    [Property]
    public void Plan_OneMoreProduct_CostsNoMore(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        FertilizerOffer[] fewer = offers[..3];
        if (!Fertilizing.CanMeet(needs, fewer))
            return;
        Assert.True(Fertilizing.CanMeet(needs, offers));
        Assert.True(
            Fertilizing.Plan(needs, offers, FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1))
            <= Fertilizing.Plan(needs, fewer, FertilizerGoal.LeastCost).Cost(Area.FromSquareMeters(1)) + 1e-9m);
    }

    [Property(MaxTest = 40)]
    public void Plan_Limiting_AreTheNutrientsGivenLeastOfInProportion(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        foreach (FertilizerGoal goal in Goals(needs, offers))
        {
            FertilizerPlan plan = Fertilizing.Plan(needs, offers, goal);
            double least = plan.Supplies.Min(Share);
            Assert.NotEmpty(plan.Limiting);
            Assert.All(plan.Supplies, supply => Assert.Equal(Share(supply) <= least + 1e-9, plan.Limiting.Contains(supply.Need.Nutrient)));
        }

        static double Share(NutrientSupply supply) => supply.Given.GramsPerSquareMeter / supply.Need.Least.GramsPerSquareMeter;
    }

    [Property(MaxTest = 40)]
    public void Plan_ExcessMissingAndRoom_AddUpToTheBounds(int seed)
    {
        (NutrientNeed[] needs, FertilizerOffer[] offers) = Case(seed, 4);
        foreach (NutrientSupply supply in Goals(needs, offers).SelectMany(goal => Fertilizing.Plan(needs, offers, goal).Supplies))
        {
            Assert.Equal(supply.Need.Least.GramsPerSquareMeter, (supply.Given + supply.Missing - supply.Excess).GramsPerSquareMeter, 1e-9);
            Assert.Equal(supply.Need.Most.GramsPerSquareMeter, (supply.Given + supply.Room).GramsPerSquareMeter, 1e-7);
        }
    }

    private static FertilizerGoal[] Goals(NutrientNeed[] needs, FertilizerOffer[] offers) => Fertilizing.CanMeet(needs, offers)
        ? Enum.GetValues<FertilizerGoal>()
        : [FertilizerGoal.Closest];

    private static (NutrientNeed[] Needs, FertilizerOffer[] Offers) Case(int seed, int products)
    {
        Random random = new(seed);
        NutrientNeed[] needs =
        [
            .. new[] { Nutrient.Nitrogen, Nutrient.Phosphorus, Nutrient.Potassium }.Select(nutrient => NutrientNeed.WithSlack(
                nutrient, AreaDensity.FromGramsPerSquareMeter(random.Next(1, 20)), Ratio.FromPercent(random.Next(0, 4) * 20))),
        ];
        FertilizerOffer[] offers =
        [
            .. Enumerable.Range(0, products).Select(j => new FertilizerOffer(
                Fertilizer.OfGrade(
                    $"product {j}",
                    MassFraction.FromPercent(random.Next(0, 30)),
                    MassFraction.FromPercent(random.Next(0, 30)),
                    MassFraction.FromPercent(random.Next(1, 30))),
                Mass.FromKilograms(25),
                random.Next(5, 60))),
        ];
        return (needs, offers);
    }

    /// <summary>The least over a grid of three amounts, each up to what alone would give most of any nutrient.</summary>
    private static double Grid(NutrientNeed[] needs, FertilizerOffer[] offers, Func<double[], double> measure)
    {
        const int Steps = 40;
        double[] top =
        [
            .. offers.Select(offer => needs.Max(need =>
                offer.Product.Available(need.Nutrient).DecimalFractions is > 0 and double share ? need.Most.GramsPerSquareMeter / share : 0)),
        ];
        double best = double.PositiveInfinity;
        for (int a = 0; a <= Steps; a++)
        {
            for (int b = 0; b <= Steps; b++)
            {
                for (int c = 0; c <= Steps; c++)
                    best = Math.Min(best, measure([top[0] * a / Steps, top[1] * b / Steps, top[2] * c / Steps]));
            }
        }

        return best;
    }

    private static double[] Given(NutrientNeed[] needs, FertilizerOffer[] offers, double[] grams) =>
        [.. needs.Select(need => offers.Select((offer, j) => offer.Product.Available(need.Nutrient).DecimalFractions * grams[j]).Sum())];

    private static bool Feasible(NutrientNeed[] needs, FertilizerOffer[] offers, double[] grams) => Given(needs, offers, grams).Zip(needs).All(pair =>
        pair.First >= pair.Second.Least.GramsPerSquareMeter && pair.First <= pair.Second.Most.GramsPerSquareMeter);

    private static double Cost(FertilizerOffer[] offers, double[] grams) => offers.Select((offer, j) => (double)offer.Price!.Value / 25 * grams[j] / 1000).Sum();

    private static double Excess(NutrientNeed[] needs, double[] given) =>
        given.Zip(needs).Sum(pair => pair.First / pair.Second.Least.GramsPerSquareMeter - 1);

    private static double Distance(NutrientNeed[] needs, double[] given) =>
        given.Zip(needs).Sum(pair => Math.Pow(pair.First / pair.Second.Least.GramsPerSquareMeter - 1, 2));
}
