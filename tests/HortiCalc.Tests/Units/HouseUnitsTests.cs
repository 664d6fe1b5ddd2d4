using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class HouseUnitsTests
{
    public static TheoryData<string> Quantities() => [.. BoundaryQuantity.All.Select(quantity => quantity.Name)];

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Normalise_EveryUnit_TwiceIsOnceAndTheUnitIsAlwaysTheSame(string name)
    {
        BoundaryQuantity quantity = BoundaryQuantity.All.Single(one => one.Name == name);
        HashSet<Enum> units = [];
        foreach (Enum unit in quantity.Units)
        {
            foreach (double value in (double[])(unit is UnitsNet.Units.AngleUnit.Tilt ? [0.07, 0.1] : [0.07, 0.1, 7, 12.3]))
            {
                IQuantity once = HouseUnits.Normalise(Quantity.From(value, unit));
                IQuantity twice = HouseUnits.Normalise(once);
                Assert.Equal(once.Unit, twice.Unit);
                Assert.Equal((double)once.Value, (double)twice.Value);
                Close.Assert(quantity.Convert(Quantity.From(value, unit)), quantity.Convert(once), 1e-13);
                units.Add(once.Unit);
            }
        }

        Assert.Single(units);
    }

    [Fact]
    public void Normalise_TypedQuantity_KeepsItsTypeAndEqualsByValue()
    {
        Length inch = HouseUnits.Normalise(Length.FromInches(1));
        Assert.Equal(HouseUnits.Normalise(Length.FromMillimeters(25.4)), inch);
        Assert.Equal(HouseUnits.Normalise(Mass.FromPounds(16)), HouseUnits.Normalise(Mass.FromOunces(256)));
    }

    [Property]
    public bool Normalise_OfOneLengthInSeveralUnits_IsOneNumber(ushort a)
    {
        Length metres = HouseUnits.Normalise(Length.FromMeters(a * 254 / 10_000.0));
        return metres.Equals((object)HouseUnits.Normalise(Length.FromInches(a)))
            && metres.Equals((object)HouseUnits.Normalise(Length.FromFeet(a / 12.0)))
            && metres.Equals((object)HouseUnits.Normalise(Length.FromCentimeters(a * 254 / 100.0)));
    }

    [Property]
    public bool Normalise_InTheHouseUnit_KeepsEveryBit(NormalFloat value) =>
        HouseUnits.Normalise(Volume.FromLiters(value.Get)).Value.Equals(value.Get);

    [Fact]
    public void Normalise_PercentAndFraction_AreOneNumber() =>
        Assert.Equal(HouseUnits.Normalise(Ratio.FromPercent(7)), HouseUnits.Normalise(Ratio.FromDecimalFractions(0.07)));

    [Fact]
    public void Normalise_Percent_KeepsItsLastDigit()
    {
        Assert.Equal(7, HouseUnits.Normalise(VolumeConcentration.FromPercent(7)).Value);
        Assert.Equal(7, HouseUnits.Normalise(MassFraction.FromPercent(7)).Value);
        Assert.Equal(7, HouseUnits.Normalise(Ratio.FromPercent(7)).Value);
    }

    [Fact]
    public void Normalise_QuantityTheLibraryDoesNotUseYet_GoesToItsBaseUnit()
    {
        Force force = HouseUnits.Normalise(Force.FromKilonewtons(101.325));
        Assert.Equal(UnitsNet.Units.ForceUnit.Newton, force.Unit);
        Assert.Equal(101_325, force.Value, 1e-9);
    }

    [Fact]
    public void Normalise_NotAQuantity_PassesUnchanged()
    {
        Assert.Equal(new DateOnly(2024, 2, 29), HouseUnits.Normalise(new DateOnly(2024, 2, 29)));
        Assert.Equal(3, HouseUnits.Normalise(3));
        Assert.Equal(new Ph(6.5), HouseUnits.Normalise(new Ph(6.5)));
    }
}
