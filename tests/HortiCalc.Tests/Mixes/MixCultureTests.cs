using System.Globalization;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>The culture of the machine decides nothing; a culture that is given decides the decimal separator.</summary>
public class MixCultureTests
{
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    [Fact]
    public void ToString_OnAMachineWithDecimalCommas_IsInvariant()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = German;
            Assert.Contains("one in 2.5 of the mix", MixRatio.OneIn(2.5).ToString(), StringComparison.Ordinal);
            Assert.Equal("7.5 % by volume", Strength.ByVolume(VolumeConcentration.FromPercent(7.5)).ToString());
            Assert.StartsWith("2.5 L of concentrate", Dilution.MakeUpTo(Volume.FromLiters(5), MixRatio.OneIn(2)).ToString(), StringComparison.Ordinal);
            Assert.StartsWith(
                "1.5 L of household bleach", SanitisingRecipes.PotsAndToolsPennState.MakeUpTo(Volume.FromLiters(15)).ToString(), StringComparison.Ordinal);
            ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => MixRatio.OneIn(0.5));
            Assert.Contains("was 0.5 parts", refused.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ToString_WithACulture_UsesItsSeparator()
    {
        Assert.StartsWith("2,5 L of concentrate", Dilution.MakeUpTo(Volume.FromLiters(5), MixRatio.OneIn(2)).ToString("M", German), StringComparison.Ordinal);
        Assert.StartsWith(
            "1,5 L of household bleach", SanitisingRecipes.PotsAndToolsPennState.MakeUpTo(Volume.FromLiters(15)).ToString("M", German), StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_InUsCustomaryUnits_ShowsSpoonsOuncesAndGallons()
    {
        RecipeBatch one = SanitisingRecipes.FoodSurfacesOneTablespoon.AddTo(Volume.FromUsGallons(1));
        RecipeBatch five = SanitisingRecipes.SurfacesFiveTablespoons.AddTo(Volume.FromUsGallons(1));
        Assert.StartsWith("3 tsp of household bleach and 1 gal (US) of water", one.ToString("U", null), StringComparison.Ordinal);
        Assert.StartsWith("2.5 fl oz of household bleach and 1 gal (US) of water", five.ToString("U", null), StringComparison.Ordinal);
    }
}
