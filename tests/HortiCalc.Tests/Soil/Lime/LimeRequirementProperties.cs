using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Soil;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of what is done with a rate: other materials, depths, areas and applications.</summary>
public class LimeRequirementProperties
{
    [Property]
    public bool As_AnotherMaterial_NeutralisesTheSame(PositiveInt rate, PositiveInt from, PositiveInt to)
    {
        LimingMaterial first = Product(Between(from, 1, 250));
        LimingMaterial second = Product(Between(to, 1, 250));
        LimeRequirement need = Given(Between(rate, 0, 2000), first);
        return Near(need.As(second).Grams() * second.CalciumCarbonateEquivalent.Percent, need.Grams() * first.CalciumCarbonateEquivalent.Percent);
    }

    [Property]
    public bool As_ThereAndBack_GivesTheRateAgain(PositiveInt rate, PositiveInt to)
    {
        LimeRequirement need = Given(Between(rate, 1, 2000));
        return Near(need.As(Product(Between(to, 1, 250))).As(need.Material).Grams(), need.Grams());
    }

    [Property]
    public bool FromCalciumOxideEquivalent_AnyValue_IsTheSameLimeAsItsCarbonate(PositiveInt seed)
    {
        double percentAsOxide = Between(seed, 1, 140);
        LimingMaterial material = LimingMaterial.FromCalciumOxideEquivalent("product", Ratio.FromPercent(percentAsOxide));
        double oxide = Given(100, material).As(LimingMaterial.CalciumOxide).Grams();
        return Near(oxide, percentAsOxide);
    }

    [Property]
    public bool ForDepth_AnyDepth_IsProportional(PositiveInt rate, PositiveInt from, PositiveInt to)
    {
        double assumed = Between(from, 5, 40);
        double actual = Between(to, 5, 40);
        LimeRequirement need = Given(Between(rate, 0, 2000), depth: Length.FromCentimeters(assumed));
        return Near(need.ForDepth(Length.FromCentimeters(actual)).Grams() * assumed, need.Grams() * actual);
    }

    [Property]
    public bool ForDepth_InTwoSteps_IsTheSameAsInOne(PositiveInt rate, PositiveInt first, PositiveInt second)
    {
        LimeRequirement need = Given(Between(rate, 0, 2000), depth: Length.FromInches(7));
        Length last = Length.FromInches(Between(second, 2, 12));
        return Near(need.ForDepth(Length.FromInches(Between(first, 2, 12))).ForDepth(last).Grams(), need.ForDepth(last).Grams());
    }

    [Property]
    public bool ForDepth_InchesAndCentimetres_AreTheSame(PositiveInt seed)
    {
        double inches = Between(seed, 1, 20);
        LimeRequirement need = Given(500, depth: Length.FromInches(7));
        return Near(need.ForDepth(Length.FromInches(inches)).Grams(), need.ForDepth(Length.FromCentimeters(inches * 2.54)).Grams());
    }

    [Property]
    public bool Over_TwoAreas_AddsUp(PositiveInt rate, PositiveInt first, PositiveInt second)
    {
        LimeRequirement need = Given(Between(rate, 0, 2000));
        Area one = Area.FromSquareMeters(Between(first, 0, 100));
        Area two = Area.FromSquareFeet(Between(second, 0, 1000));
        return Near(need.Over(one).Value.Kilograms + need.Over(two).Value.Kilograms, need.Over(one + two).Value.Kilograms);
    }

    [Property]
    public bool Split_EveryRule_AddsUpToTheWhole(PositiveInt rate, PositiveInt rule, PositiveInt material)
    {
        LimeRequirement need = Given(Between(rate, 1, 3000), Product(Between(material, 20, 200)));
        LimeSchedule schedule = need.Split(Splits[rule.Get % Splits.Count]);
        return Near(schedule.Rates.Sum(part => part.Value.GramsPerSquareMeter), need.Grams()) && schedule.Rates.All(part => part.Value.GramsPerSquareMeter > 0);
    }

    [Property]
    public bool Split_RuleWithoutMostApplications_KeepsEveryApplicationWithinTheMaximum(PositiveInt rate, PositiveInt rule, PositiveInt material)
    {
        LimingMaterial product = Product(Between(material, 20, 200));
        LimeSplit[] open = [.. Splits.Where(split => split.MostApplications is null)];
        LimeSplit chosen = open[rule.Get % open.Length];
        LimeSchedule schedule = Given(Between(rate, 1, 3000), product).Split(chosen);
        double most = chosen.Maximum.GramsPerSquareMeter / product.CalciumCarbonateEquivalent.DecimalFractions;
        return schedule.Rates.All(part => part.Value.GramsPerSquareMeter <= most * (1 + 1e-8));
    }

    [Property]
    public bool Split_RuleWithoutMostApplications_UsesNoMoreApplicationsThanItMust(PositiveInt rate, PositiveInt rule)
    {
        LimeSplit[] open = [.. Splits.Where(split => split.MostApplications is null)];
        LimeSplit chosen = open[rule.Get % open.Length];
        double grams = Between(rate, 1, 3000);
        int count = Given(grams).Split(chosen).Count;
        return (count - 1) * chosen.Maximum.GramsPerSquareMeter < grams;
    }

    [Property]
    public bool Split_MoreLime_NeverTakesFewerApplications(PositiveInt first, PositiveInt second, PositiveInt rule)
    {
        double less = Math.Min(Between(first, 0, 3000), Between(second, 0, 3000));
        double more = Math.Max(Between(first, 0, 3000), Between(second, 0, 3000));
        LimeSplit chosen = Splits[rule.Get % Splits.Count];
        return Given(less).Split(chosen).Count <= Given(more).Split(chosen).Count;
    }

    [Property]
    public bool Split_FullThenRest_FillsAllButTheLast(PositiveInt rate)
    {
        LimeSplit lawn = LimeSplit.NorthCarolinaLawn;
        LimeSchedule schedule = Given(Between(rate, 1, 3000)).Split(lawn);
        return schedule.Rates.SkipLast(1).All(part => Near(part.Value.GramsPerSquareMeter, lawn.Maximum.GramsPerSquareMeter));
    }

    [Property]
    public bool Split_OverAnArea_AddsUpToTheDose(PositiveInt rate, PositiveInt area, PositiveInt rule)
    {
        LimeRequirement need = Given(Between(rate, 0, 3000));
        Area bed = Area.FromSquareMeters(Between(area, 0, 200));
        double sum = need.Split(Splits[rule.Get % Splits.Count]).Over(bed).Sum(dose => dose.Value.Kilograms);
        return Near(sum, need.Over(bed).Value.Kilograms);
    }

    [Property]
    public bool Json_AnyRequirement_ComesBackEqual(PositiveInt rate, PositiveInt cce, PositiveInt depth, bool hydrated)
    {
        LimeRequirement need = Given(Between(rate, 0, 2000), depth: Length.FromInches(Between(depth, 1, 12)))
            .ForDepth(Length.FromCentimeters(10))
            .As(hydrated ? LimingMaterial.CalciumHydroxide : Product(Between(cce, 10, 200)));
        string json = JsonSerializer.Serialize(need, HortiCalcJsonContext.Default.LimeRequirement);
        return JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.LimeRequirement) == need;
    }

    [Property]
    public bool Adjustments_AnyOrder_AreRecordedInOrder(bool depthFirst)
    {
        LimeRequirement need = Given(500, depth: Length.FromInches(7));
        LimeRequirement both = depthFirst
            ? need.ForDepth(Length.FromInches(5)).As(Product(80))
            : need.As(Product(80)).ForDepth(Length.FromInches(5));
        IEnumerable<string> expected = depthFirst ? ["lime-depth", "lime-material"] : ["lime-material", "lime-depth"];
        Estimate<AreaDensity> rate = both.Rate;
        return rate.Adjustments.Select(rule => rule.Key).SequenceEqual(expected) && Near(both.Grams(), 500 * 5.0 / 7 / 0.8);
    }
}
