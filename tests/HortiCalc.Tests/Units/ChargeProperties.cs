using System.Globalization;
using FsCheck.Xunit;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class ChargeProperties
{
    [Property]
    public bool BothUnits_OfOneCharge_AreTheSameNumber(ushort a) =>
        ByMass(a) == ExchangeableCharge.FromMilliequivalentsPer100Grams(a / 16.0)
        && ByVolume(a) == VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(a / 16.0);

    [Property]
    public bool Subtraction_UndoesAddition(ushort a, ushort b) =>
        ByMass(a) + ByMass(b) - ByMass(b) == ByMass(a) && ByVolume(a) + ByVolume(b) - ByVolume(b) == ByVolume(a);

    [Property]
    public bool BulkDensity_ThereAndBack_GivesTheChargeBack(ushort a, ushort density)
    {
        Density bulk = Density.FromKilogramsPerCubicMeter(1 + density / 32.0);
        return Close.To(ByMass(a).CentimolesPerKilogram, (ByMass(a) * bulk / bulk).CentimolesPerKilogram, 1e-14);
    }

    [Property]
    public bool BulkDensity_InPoundsPerCubicFoot_GivesTheSameCharge(ushort a, ushort density)
    {
        Density metric = Density.FromKilogramsPerCubicMeter(1 + density / 32.0);
        return Close.To((ByMass(a) * metric).CentimolesPerLitre, (ByMass(a) * Density.FromPoundsPerCubicFoot((1 + density / 32.0) * 0.028316846592 / 0.45359237)).CentimolesPerLitre);
    }

    [Property]
    public bool Addition_BeforeOrAfterBulkDensity_IsTheSame(ushort a, ushort b, ushort density)
    {
        Density bulk = Density.FromKilogramsPerCubicMeter(1 + density / 32.0);
        return Close.To(((ByMass(a) + ByMass(b)) * bulk).CentimolesPerLitre, (ByMass(a) * bulk + ByMass(b) * bulk).CentimolesPerLitre, 1e-14);
    }

    [Property]
    public bool Division_OfAPartByTheWhole_IsAShareOfOne(ushort a, ushort b)
    {
        if (a + b == 0)
            return true;
        double share = ByMass(a) / (ByMass(a) + ByMass(b));
        return share is >= 0 and <= 1 && Close.To(1, share + ByMass(b) / (ByMass(a) + ByMass(b)), 1e-15);
    }

    [Property]
    public bool Parse_OfTheRoundTripText_GivesTheChargeBackInAnyCulture(int a, bool german)
    {
        CultureInfo culture = german ? CultureScope.German : CultureInfo.InvariantCulture;
        ExchangeableCharge byMass = ExchangeableCharge.FromCentimolesPerKilogram(Math.Abs((double)a) / 7);
        VolumetricCharge byVolume = VolumetricCharge.FromCentimolesPerLitre(Math.Abs((double)a) / 7);
        return ExchangeableCharge.Parse(byMass.ToString("R", culture), culture) == byMass
            && VolumetricCharge.Parse(byVolume.ToString("R", culture), culture) == byVolume;
    }

    [Property]
    public bool Comparison_OfTwo_IsThatOfTheirNumbers(ushort a, ushort b) =>
        (ByMass(a) < ByMass(b)) == (a < b) && (ByMass(a) >= ByMass(b)) == (a >= b)
        && (ByVolume(a) > ByVolume(b)) == (a > b) && (ByVolume(a) <= ByVolume(b)) == (a <= b);

    private static ExchangeableCharge ByMass(ushort a) => ExchangeableCharge.FromCentimolesPerKilogram(a / 16.0);

    private static VolumetricCharge ByVolume(ushort a) => VolumetricCharge.FromCentimolesPerLitre(a / 16.0);
}
