using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Tests.Units;
using UnitsNet;

namespace HortiCalc.Tests.Evidence;

public class EvidenceProperties
{
    [Property]
    public bool Domain_AskedFirst_SaysWhatTheMethodThenDoes(short tenths)
    {
        double current = tenths / 100.0;
        bool allowed = Samples.Method.Domain.Contains(nameof(current), current);
        bool refused = false;
        try
        {
            Samples.Method.Require(current, "pH");
        }
        catch (ArgumentOutOfRangeException)
        {
            refused = true;
        }

        return allowed != refused && allowed == (current is >= 5 and <= 6.5);
    }

    [Property]
    public bool Limit_OfAnyEnds_ContainsBothAndNothingBeyond(short a, short b)
    {
        DomainLimit limit = new("depth", Math.Min(a, b), Math.Max(a, b), "cm");
        return limit.Contains(limit.Low) && limit.Contains(limit.High) && !limit.Contains(limit.Low - 1) && !limit.Contains(limit.High + 1);
    }

    [Property]
    public bool Select_OfTwoSteps_IsTheStepOfBoth(ushort value, byte factor)
    {
        Estimate<double> estimate = Of(value);
        return estimate.Select(number => number * factor).Select(number => number + 1) == estimate.Select(number => number * factor + 1);
    }

    [Property]
    public bool Select_OfNothing_ChangesNothing(ushort value) => Of(value).Select(number => number) == Of(value);

    [Property]
    public bool Select_ByAnyFactor_KeepsTheValueInItsRange(ushort value, short factor)
    {
        Estimate<double> scaled = Of(value).Select(number => number * factor);
        return scaled.Range!.Low <= scaled.Value && scaled.Value <= scaled.Range.High;
    }

    [Property]
    public bool AdjustedBy_AnyNumberOfRules_KeepsThemAll(byte rules)
    {
        Estimate<double> estimate = Of(1);
        for (int i = 0; i < rules; i++)
            estimate = estimate.AdjustedBy(Samples.Rule, number => number);
        return estimate.Adjustments.Count == rules && estimate.Value == 1;
    }

    [Property]
    public bool WithCautions_Again_AddsNothing(bool danger)
    {
        Caution caution = danger ? Samples.Danger : Samples.Note;
        Estimate<double> once = Of(1).WithCautions(caution);
        return once == once.WithCautions(caution) && once.Cautions.Count == 1;
    }

    [Property]
    public bool Equality_OfAQuantityInOtherUnits_IsByValue(ushort inches) =>
        new Estimate<Length>(Length.FromInches(inches), Samples.Method) == new Estimate<Length>(Length.FromMillimeters(inches * 254 / 10.0), Samples.Method);

    [Property]
    public bool ValueList_OfTheSameItems_IsEqualAndHashesAlike(int[] items)
    {
        ValueList<int> one = ValueList<int>.Of(items);
        ValueList<int> other = ValueList<int>.Of(items.ToList());
        return one.Equals(other) && one.GetHashCode() == other.GetHashCode() && one.SequenceEqual(items);
    }

    [Property]
    public bool ValueList_OfAnotherOrder_IsNotEqual(PositiveInt a, PositiveInt b) =>
        a.Get == b.Get || !ValueList<int>.Of([a.Get, b.Get]).Equals(ValueList<int>.Of([b.Get, a.Get]));

    [Property]
    public bool Text_InAnyUnitsAndCulture_IsOneLine(ushort value, bool us, bool german)
    {
        string text = new Estimate<Length>(Length.FromMillimeters(value), Samples.Method, null, [Samples.Rule], [Samples.Danger])
            .ToString(us ? "U" : "M", german ? CultureScope.German : null);
        return !text.Contains('\n', StringComparison.Ordinal) && text.Contains(Samples.Source.Title, StringComparison.Ordinal);
    }

    [Property]
    public bool Range_OfEndsTheWrongWayRound_IsRefused(int low, int high)
    {
        try
        {
            EstimateRange<int> range = new(low, high, "a span");
            return low <= high && range.Low == low && range.High == high;
        }
        catch (ArgumentException refused)
        {
            return low > high && refused.ParamName == "low";
        }
    }

    private static Estimate<double> Of(double value) =>
        new(value, Samples.Method, new EstimateRange<double>(value - 1, value + 1, "a span"));
}
