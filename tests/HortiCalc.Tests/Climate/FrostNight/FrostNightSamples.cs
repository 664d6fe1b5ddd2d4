using FsCheck;
using FsCheck.Fluent;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>Ten to thirty invented nights: a line of evening and dew point, and an error of up to two degrees.</summary>
public sealed record AnyNights(int Seed, int Count)
{
    public double PerEvening => 0.3 + Seed % 5 / 10.0;

    public double PerDewPoint => Seed % 3 / 10.0;

    public double Intercept => -6 - Seed % 7 / 4.0;

    public IReadOnlyList<PastNight> Nights => With(2);

    public IReadOnlyList<PastNight> OnALine => With(0);

    public double Celsius(double evening, double dewPoint) => PerEvening * evening + PerDewPoint * dewPoint + Intercept;

    private IReadOnlyList<PastNight> With(double error)
    {
        Random random = new(Seed);
        return
        [
            .. Enumerable.Range(0, Count).Select(_ =>
            {
                double evening = random.NextDouble() * 8;
                double dewPoint = evening - 1 - random.NextDouble() * 8;
                return FrostNightSamples.Night(evening, dewPoint, Celsius(evening, dewPoint) + (random.NextDouble() - 0.5) * 2 * error);
            }),
        ];
    }
}

/// <summary>A night of 6 to 16 hours that cools by 0.5 to 15 degrees.</summary>
public sealed record AnyCooling(int Minutes, int EveningTenths, int FallTenths)
{
    public static readonly DateTime Sunset = new(2027, 4, 20, 18, 37, 0);

    public NightCooling Night => new(
        Sunset,
        Sunset.AddMinutes(Minutes),
        Temperature.FromDegreesCelsius(EveningTenths / 10.0),
        Temperature.FromDegreesCelsius((EveningTenths - FallTenths) / 10.0));
}

/// <summary>A share from 0 to 1 in steps of a thousandth.</summary>
public readonly record struct AnyShare(double Share);

/// <summary>A dew point from -15 to 0 °C and a critical temperature from -6 to 0 °C.</summary>
public sealed record AnyDamp(double DewPoint, double Critical);

/// <summary>A line of the tables that prints both shares.</summary>
public sealed record AnyBud(CriticalTemperature Line)
{
    public double Ten => Line.TenPercentKill!.Value.DegreesCelsius;

    public double Ninety => Line.NinetyPercentKill!.Value.DegreesCelsius;
}

public static class FrostNightArbitraries
{
    public static Arbitrary<AnyNights> Nights() => (
        from seed in Gen.Choose(0, 1_000_000)
        from count in Gen.Choose(10, 30)
        select new AnyNights(seed, count)).ToArbitrary();

    public static Arbitrary<AnyCooling> Coolings() => (
        from minutes in Gen.Choose(360, 960)
        from evening in Gen.Choose(-30, 120)
        from fall in Gen.Choose(5, 150)
        select new AnyCooling(minutes, evening, fall)).ToArbitrary();

    public static Arbitrary<AnyShare> Shares() => Gen.Choose(0, 1000).Select(share => new AnyShare(share / 1000.0)).ToArbitrary();

    public static Arbitrary<AnyDamp> Damps() => (
        from dewPoint in Gen.Choose(-150, 0)
        from critical in Gen.Choose(-60, 0)
        select new AnyDamp(dewPoint / 10.0, critical / 10.0)).ToArbitrary();

    public static Arbitrary<AnyBud> Buds() =>
        Gen.Elements(CriticalTemperatures.All.Where(line => line.NinetyPercentKill is not null).ToArray()).Select(line => new AnyBud(line)).ToArbitrary();
}

internal static class FrostNightSamples
{
    /// <summary>The ten nights of the book.</summary>
    public static IReadOnlyList<PastNight> TenNights { get; } =
    [
        Night(3.2, -4.2, -3.1), Night(0.8, -8.8, -5), Night(0.2, -6.5, -6.3), Night(2.6, -6.2, -5.4), Night(4.4, -6.1, -4),
        Night(5.2, 2.6, -2.5), Night(2.7, -0.7, -4.8), Night(1.2, -1.7, -5), Night(4.5, -1.2, -4.4), Night(5.6, 0.1, -3.3),
    ];

    public static NightMinimumModel Model { get; } = new(NightMinimumFitting.TwoStep, TenNights);

    public static PastNight Night(double evening, double dewPoint, double minimum) => new(C(evening), C(dewPoint), C(minimum));

    public static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static Temperature F(double fahrenheit) => Temperature.FromDegreesFahrenheit(fahrenheit);

    public static FrostEvening Evening(
        double temperature, double dewPoint, double windMetresPerSecond = 1, bool isClear = true, bool? inversion = null) => new(
            new DateTime(2027, 4, 20, 20, 10, 0),
            new DateTime(2027, 4, 21, 6, 5, 0),
            C(temperature),
            C(dewPoint),
            Speed.FromMetersPerSecond(windMetresPerSecond),
            isClear,
            inversion);

    public static void AssertRefused<T>(Func<object?> act, string parameter, params string[] words)
        where T : ArgumentException
    {
        T refusal = Assert.ThrowsAny<T>(act);
        Assert.Equal(parameter, refusal.ParamName);
        Assert.All(words, word => Assert.Contains(word, refusal.Message, StringComparison.Ordinal));
    }
}
