using FsCheck;
using FsCheck.Fluent;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>A freeze at one end of the season: any mean, a spread of 1 to 35 days, a freeze in 5 % to 100 % of the seasons.</summary>
public sealed record AnyFreeze(double MeanDayOfYear, double StandardDeviationDays, double Share)
{
    public NormalFreezeDates Dates => new(MeanDayOfYear, Duration.FromDays(StandardDeviationDays));

    public LastSpringFreeze Spring => new(Ratio.FromPercent(Share * 100), Dates);

    public FirstAutumnFreeze Autumn => new(Ratio.FromPercent(Share * 100), Dates);

    /// <summary>The same freeze in every season.</summary>
    public AnyFreeze Always => this with { Share = 1 };
}

/// <summary>A chance from 1 % to 99 %, in steps of a tenth.</summary>
public readonly record struct AnyChance(double Fraction)
{
    public Ratio Ratio => Ratio.FromDecimalFractions(Fraction);
}

/// <summary>Fourteen seasons of an invented record, each with one or two freezes or none, and gaps.</summary>
public sealed record AnyFreezeRecord(int Seed)
{
    public const int FirstYear = 2001;
    public const int LastYear = 2014;

    /// <summary>The freezes by the days from the cut, of the seasons in order.</summary>
    public IReadOnlyList<IReadOnlyList<int>> FreezesFromCut
    {
        get
        {
            Random random = new(Seed);
            return [.. Enumerable.Range(FirstYear, LastYear - FirstYear).Select(_ => (IReadOnlyList<int>)(random.Next(5) switch
            {
                0 => [],
                1 => [random.Next(60, 300)],
                _ => [random.Next(60, 180), random.Next(181, 300)],
            }))];
        }
    }
}

public static class FreezeArbitraries
{
    public static Arbitrary<AnyFreeze> Freezes() => (
        from mean in Gen.Choose(0, 36_499)
        from deviation in Gen.Choose(10, 350)
        from share in Gen.Choose(5, 100)
        select new AnyFreeze(1 + mean / 100.0, deviation / 10.0, share / 100.0)).ToArbitrary();

    public static Arbitrary<AnyChance> Chances() => Gen.Choose(10, 990).Select(tenths => new AnyChance(tenths / 1000.0)).ToArbitrary();

    public static Arbitrary<MonthDay> Days() => Gen.Choose(0, 365).Select(day => MonthDay.From(new DateOnly(2000, 1, 1).AddDays(day))).ToArbitrary();

    public static Arbitrary<AnyFreezeRecord> Records() => Gen.Choose(0, 1_000_000).Select(seed => new AnyFreezeRecord(seed)).ToArbitrary();
}
