using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Containers;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>Suctions as pF, the logarithm of centimetres of water.</summary>
public class PfProperties
{
    [Property]
    public void Pf_OfAPointAtAPf_IsThatPf(PositiveInt hundredths)
    {
        double pf = hundredths.Get % 701 / 100.0;

        Assert.Equal(pf, RetentionPoint.OfPf(pf, Ratio.Zero).Pf!.Value, 1e-12);
    }

    [Property]
    public void Suction_OnePfMore_IsTenTimesAsMuch(PositiveInt hundredths)
    {
        double pf = hundredths.Get % 601 / 100.0;
        double Metres(double at) => RetentionPoint.OfPf(at, Ratio.Zero).Suction.Meters;

        Assert.Equal(10, Metres(pf + 1) / Metres(pf), 1e-9);
    }

    [Fact]
    public void Pf_AtNoSuction_HasNone() => Assert.Null(new RetentionPoint(Length.Zero, Ratio.FromPercent(90)).Pf);

    [Theory]
    [InlineData(-0.01)]
    [InlineData(7.01)]
    [InlineData(double.NaN)]
    public void OfPf_OutsideTheScale_IsRefused(double pf)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(nameof(pf), () => RetentionPoint.OfPf(pf, Ratio.Zero));

        Assert.Contains("from 0 to 7", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>Easily available water by a sheet that gives pF 1 and pF 1.7, 10 and 50 cm.</summary>
    [Fact]
    public void OfPf_SeventeenTenths_IsFiftyCentimetres() =>
        Assert.Equal(50, RetentionPoint.OfPf(1.7, Ratio.Zero).Suction.Centimeters, 0.2);
}
