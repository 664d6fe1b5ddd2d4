using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

public class DaylightProperties
{
    private const double Rounding = 1e-9;

    [Property]
    public void Length_AnyDay_IsWithinTheDay(ushort place, ushort day)
    {
        foreach (DaylightMethod method in DaylightMethod.All)
            Assert.InRange(Hours(Latitude(place), Date(day), method), 0, 24);
    }

    [Property]
    public void Length_OtherHemisphere_IsTheNightOfThisOneGeometrically(ushort place, ushort day)
    {
        double here = Hours(Latitude(place), Date(day), DaylightMethod.Geometric);
        double there = Hours(-Latitude(place), Date(day), DaylightMethod.Geometric);

        Assert.Equal(24, here + there, Rounding);
    }

    [Property]
    public void Length_Almanac_IsLongerThanTheNightOfTheOtherHemisphere(ushort place, ushort day)
    {
        // Refraction and the radius of the sun lengthen the day everywhere.
        double latitude = Latitude(place) * 0.7;

        Assert.True(Hours(latitude, Date(day), DaylightMethod.Almanac) + Hours(-latitude, Date(day), DaylightMethod.Almanac) > 24.2);
    }

    [Property]
    public void Length_AtTheEquator_IsTwelveHoursGeometrically(ushort day) =>
        Assert.Equal(12, Hours(0, Date(day), DaylightMethod.Geometric), Rounding);

    [Property]
    public void Length_FurtherTowardsTheSummerPole_NeverShortens(ushort place, byte step, ushort day)
    {
        double latitude = Latitude(place);
        double sign = Math.Sign(Daylight.Declination(Date(day), DaylightMethod.Geometric).Value.Degrees);
        double further = Math.Clamp(latitude + sign * step / 10.0, -90, 90);

        Assert.True(Hours(further, Date(day), DaylightMethod.Geometric) >= Hours(latitude, Date(day), DaylightMethod.Geometric) - Rounding);
    }

    [Property]
    public void Declination_AnyDay_StaysWithinTheTropics(ushort day)
    {
        foreach (DaylightMethod method in DaylightMethod.All)
            Assert.InRange(Daylight.Declination(Date(day), method).Value.Degrees, -23.45, 23.45);
    }

    [Property]
    public void Declination_TwoMethods_DifferByLessThanADegree(ushort day) => Assert.Equal(
        Daylight.Declination(Date(day), DaylightMethod.Geometric).Value.Degrees,
        Daylight.Declination(Date(day), DaylightMethod.Almanac).Value.Degrees,
        1.0);

    [Property]
    public void Length_LatitudeInRadians_IsTheSame(ushort place, ushort day)
    {
        Angle degrees = Angle.FromDegrees(Latitude(place));

        Assert.Equal(
            Daylight.Length(degrees, Date(day), DaylightMethod.Almanac).Value.Hours,
            Daylight.Length(Angle.FromRadians(degrees.Radians), Date(day), DaylightMethod.Almanac).Value.Hours,
            1e-6);
    }

    [Theory]
    [InlineData(90, 6, 24)]
    [InlineData(90, 12, 0)]
    [InlineData(-90, 12, 24)]
    [InlineData(69.6, 6, 24)]
    [InlineData(69.6, 12, 0)]
    public void Length_PolarDayAndNight_IsWhatItIs(double latitude, int month, double hours)
    {
        // Twilight lasts through the polar night of this place; at the pole itself there is none at midwinter.
        foreach (DaylightMethod method in DaylightMethod.All.Where(method => method != DaylightMethod.CivilTwilight || Math.Abs(latitude) == 90))
        {
            Estimate<Duration> length = Daylight.Length(Angle.FromDegrees(latitude), new DateOnly(2025, month, 21), method);

            Assert.Equal(hours, length.Value.Hours, Rounding);
            Assert.Empty(length.Cautions);
        }
    }

    [Theory]
    [InlineData(90.1)]
    [InlineData(-91)]
    public void Length_NoLatitude_IsRefusedWithTheRange(double degrees)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => Hours(degrees, new DateOnly(2025, 1, 1), DaylightMethod.Geometric));

        Assert.Equal("latitude", refusal.ParamName);
        Assert.Contains("from -90 to 90 °", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Length_YearOutsideTheMethod_IsRefusedAndTheDomainSaysSo()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => Hours(50, new DateOnly(1899, 1, 1), DaylightMethod.Almanac));

        Assert.Equal("date", refusal.ParamName);
        Assert.Contains("from 1900 to 2100", refusal.Message, StringComparison.Ordinal);
        Assert.False(DaylightMethod.Almanac.Evidence.Domain.Contains("date", 1899));
        Assert.InRange(Hours(50, new DateOnly(1500, 1, 1), DaylightMethod.Geometric), 7, 9);
    }

    [Fact]
    public void Length_LeapDay_LiesBetweenItsNeighbours()
    {
        double before = Hours(50, new DateOnly(2024, 2, 28), DaylightMethod.Almanac);
        double leap = Hours(50, new DateOnly(2024, 2, 29), DaylightMethod.Almanac);
        double after = Hours(50, new DateOnly(2024, 3, 1), DaylightMethod.Almanac);

        Assert.True(before < leap && leap < after);
    }

    [Fact]
    public void FromKey_EveryMethod_IsFoundAndAnotherRefused()
    {
        Assert.All(DaylightMethod.All, method => Assert.Same(method, DaylightMethod.FromKey(method.Evidence.Key)));
        Assert.Contains("almanac", Assert.Throws<ArgumentException>(() => DaylightMethod.FromKey("sundial")).Message, StringComparison.Ordinal);
    }

    private static double Hours(double latitude, DateOnly date, DaylightMethod method) =>
        Daylight.Length(Angle.FromDegrees(latitude), date, method).Value.Hours;

    private static double Latitude(ushort place) => -90 + 180.0 * place / ushort.MaxValue;

    private static DateOnly Date(ushort day) => new DateOnly(1990, 1, 1).AddDays(day % 20_000);
}
