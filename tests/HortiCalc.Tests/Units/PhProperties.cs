using System.Globalization;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Units;

namespace HortiCalc.Tests.Units;

public class PhProperties
{
    [Property]
    public bool FromHydrogenActivity_OfItsOwnActivity_GivesThePhBack(ushort a) =>
        Math.Abs(Ph.FromHydrogenActivity(Of(a).HydrogenActivity) - Of(a)) <= 1e-12;

    [Property]
    public bool Subtraction_OnePhUnit_IsATenfoldActivity(ushort a)
    {
        double value = a * 13.0 / ushort.MaxValue;
        return Close.To(10, new Ph(value).HydrogenActivity.MolesPerLiter / new Ph(value + 1).HydrogenActivity.MolesPerLiter, 1e-11);
    }

    [Property]
    public bool MeanOfSolutions_OfAny_LiesBetweenTheMostAcidAndThePlainMean(NonEmptyArray<ushort> readings)
    {
        Ph[] values = [.. readings.Get.Select(Of)];
        double mean = Ph.MeanOfSolutions(values).Value;
        return mean >= values.Min(value => value.Value) && mean <= values.Average(value => value.Value) + 1e-12;
    }

    [Property]
    public bool MeanOfSolutions_OfNAlike_MovesLessThanTheLogarithmOfN(NonEmptyArray<ushort> readings)
    {
        Ph[] values = [.. readings.Get.Select(Of)];
        return Ph.MeanOfSolutions(values).Value <= values.Min(value => value.Value) + Math.Log10(values.Length) + 1e-12;
    }

    [Property]
    public bool Means_OfOneReadingRepeated_AreThatReading(ushort a, PositiveInt times)
    {
        Ph[] values = [.. Enumerable.Repeat(Of(a), Math.Min(times.Get, 50))];
        return Math.Abs(Ph.MeanOfSolutions(values) - Of(a)) <= 1e-12 && Math.Abs(Ph.MeanOfSoilSamples(values) - Of(a)) <= 1e-12;
    }

    [Property]
    public bool Means_OfReadingsInAnotherOrder_AreTheSame(NonEmptyArray<ushort> readings)
    {
        Ph[] values = [.. readings.Get.Select(Of)];
        Ph[] reversed = [.. values.Reverse()];
        return Math.Abs(Ph.MeanOfSolutions(values) - Ph.MeanOfSolutions(reversed)) <= 1e-12
            && Math.Abs(Ph.MeanOfSoilSamples(values) - Ph.MeanOfSoilSamples(reversed)) <= 1e-12;
    }

    [Property]
    public bool MeanOfSoilSamples_OfAny_IsThePlainMean(NonEmptyArray<ushort> readings)
    {
        Ph[] values = [.. readings.Get.Select(Of)];
        return Math.Abs(Ph.MeanOfSoilSamples(values).Value - values.Average(value => value.Value)) <= 1e-12;
    }

    [Property]
    public bool Parse_OfTheRoundTripText_GivesThePhBackInAnyCulture(ushort a, bool german)
    {
        CultureInfo culture = german ? CultureScope.German : CultureInfo.InvariantCulture;
        return Ph.Parse(Of(a).ToString("R", culture), culture) == Of(a)
            && Math.Abs(Ph.Parse(Of(a).ToString(null, culture), culture) - Of(a)) <= 0.005 + 1e-12;
    }

    [Property]
    public bool Comparison_OfTwo_IsThatOfTheirNumbers(ushort a, ushort b) =>
        (Of(a) < Of(b)) == (a < b) && (Of(a) > Of(b)) == (a > b) && (Of(a) <= Of(b)) == (a <= b) && (Of(a) >= Of(b)) == (a >= b)
        && Math.Sign(Of(a).CompareTo(Of(b))) == a.CompareTo(b) / Math.Max(1, Math.Abs(a.CompareTo(b)));

    private static Ph Of(ushort a) => new(a * 14.0 / ushort.MaxValue);
}
