using FsCheck;
using FsCheck.Fluent;
using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>A day of 5 to 22 hours, and the minimum after it, which is not above the maximum. Degrees Celsius and hours.</summary>
public sealed record AnyDiurnalDay(double Minimum, double Maximum, double NextMinimum, double Length)
{
    public double At(DiurnalCurve curve, double hours) => DiurnalCourse.AfterSunrise(
        Duration.FromHours(hours),
        Temperature.FromDegreesCelsius(Minimum),
        Temperature.FromDegreesCelsius(Maximum),
        Temperature.FromDegreesCelsius(NextMinimum),
        Duration.FromHours(Length),
        curve).Value.DegreesCelsius;

    /// <summary>Whether the curve needs no other day at that time: some hold to the clock and not to the sun.</summary>
    public bool Knows(DiurnalCurve curve, double hours) =>
        curve.Evidence.Domain.Limits.Count > 0 || (12 - Length / 2 + hours is double hour && hour >= 6.001 && hour < 24);
}

public static class DiurnalArbitraries
{
    public static Arbitrary<AnyDiurnalDay> Days() => (
        from minimum in Gen.Choose(-300, 300)
        from range in Gen.Choose(0, 250)
        from fall in Gen.Choose(0, 250)
        from minutes in Gen.Choose(5 * 60, 22 * 60)
        select new AnyDiurnalDay(minimum / 10.0, (minimum + range) / 10.0, (minimum + range - fall) / 10.0, minutes / 60.0)).ToArbitrary();
}
