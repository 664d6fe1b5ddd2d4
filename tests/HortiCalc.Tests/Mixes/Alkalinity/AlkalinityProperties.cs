using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of acid in water.</summary>
[Properties(EndSize = 1_000_000)]
public class AlkalinityProperties
{
    private static Temperature Degrees(PositiveInt value) => Temperature.FromDegreesCelsius(value.Get % 51);

    private static SourceWater Water(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature) => new(
        VolumetricCharge.FromMilliequivalentsPerLitre(0.5 + alkalinity.Get % 80 / 10.0), new Ph(6.8 + ph.Get % 17 / 10.0), Degrees(temperature));

    private static AcidProduct Acid(PositiveInt value) => AcidProducts.All[value.Get % AcidProducts.All.Count];

    private static GasExchange Exchange(bool open) => open ? GasExchange.OpenToAir : GasExchange.Closed;

    [Property]
    public bool ToPh_ThenAdded_GivesThatPh(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid, PositiveInt target, bool open)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        Ph wanted = new(4.5 + target.Get % 21 / 10.0);
        AcidDose dose = AcidInjection.ToPh(water, Acid(acid), wanted, Exchange(open));
        AcidDose added = AcidInjection.Add(water, Acid(acid), dose.Amount, Exchange(open));
        return Math.Abs(added.Ph - wanted) < 1e-8 && Math.Abs(dose.Ph - wanted) < 1e-12
            && Math.Abs(added.Alkalinity.MilliequivalentsPerLitre - dose.Alkalinity.MilliequivalentsPerLitre) < 1e-7;
    }

    [Property]
    public bool ToAlkalinity_ThenAdded_LeavesThatAlkalinity(
        PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid, PositiveInt target, bool open)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        VolumetricCharge wanted = water.Alkalinity * (target.Get % 95 / 100.0);
        AcidDose dose = AcidInjection.ToAlkalinity(water, Acid(acid), wanted, Exchange(open));
        AcidDose added = AcidInjection.Add(water, Acid(acid), dose.Amount, Exchange(open));
        return Math.Abs(added.Alkalinity.MilliequivalentsPerLitre - wanted.MilliequivalentsPerLitre) < 1e-7;
    }

    [Property]
    public bool Add_MoreAcid_LowersThePh(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid, PositiveInt amount, bool open)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        Molarity less = Molarity.FromMillimolesPerLiter(amount.Get % 100 / 20.0);
        AcidDose first = AcidInjection.Add(water, Acid(acid), less, Exchange(open));
        AcidDose second = AcidInjection.Add(water, Acid(acid), less + Molarity.FromMillimolesPerLiter(0.1), Exchange(open));
        return second.Ph < first.Ph && second.Alkalinity <= first.Alkalinity;
    }

    [Property]
    public bool ToPh_ALowerTarget_TakesMoreAcid(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid, PositiveInt target, bool open)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        Ph higher = new(4.6 + target.Get % 20 / 10.0);
        return AcidInjection.ToPh(water, Acid(acid), new Ph(higher.Value - 0.1), Exchange(open)).Amount
            > AcidInjection.ToPh(water, Acid(acid), higher, Exchange(open)).Amount;
    }

    [Property]
    public bool Add_OfNothing_LeavesTheWaterAsItIs(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        AcidDose none = AcidInjection.Add(water, Acid(acid), Molarity.Zero, GasExchange.Closed);
        return Math.Abs(none.Ph - water.Ph) < 1e-9 && Near.Equal(none.Alkalinity.MilliequivalentsPerLitre, water.Alkalinity.MilliequivalentsPerLitre);
    }

    [Property]
    public bool Add_OfNitricAcid_TakesItsOwnChargeOfAlkalinity(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt share, bool open)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        double milliequivalents = water.Alkalinity.MilliequivalentsPerLitre * (1 + share.Get % 95) / 100;
        AcidDose dose = AcidInjection.Add(water, AcidProducts.Nitric67, Molarity.FromMillimolesPerLiter(milliequivalents), Exchange(open));
        return Math.Abs(water.Alkalinity.MilliequivalentsPerLitre - dose.Alkalinity.MilliequivalentsPerLitre - milliequivalents) < 1e-9;
    }

    [Property]
    public bool Add_OfSulfuricAcid_TakesTwiceItsMoles(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt share)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        double millimoles = water.Alkalinity.MilliequivalentsPerLitre * (1 + share.Get % 90) / 200;
        AcidDose dose = AcidInjection.Add(water, AcidProducts.Sulfuric93, Molarity.FromMillimolesPerLiter(millimoles), GasExchange.Closed);

        // The little that stays as hydrogen sulfate is the tenth part of a per cent at the pH of a feed.
        return Math.Abs(dose.EquivalentsPerMole - 2) < 0.005;
    }

    [Property]
    public bool HydrogensPerMole_WithRisingPh_RiseAndKeepWithinTheFormula(PositiveInt ph, PositiveInt temperature, PositiveInt strength)
    {
        Ph low = new(3 + ph.Get % 80 / 10.0);
        Ph high = new(low.Value + 0.2);
        Molarity ionicStrength = Molarity.FromMillimolesPerLiter(strength.Get % 100);
        return AcidProducts.All.All(acid =>
        {
            double first = acid.HydrogensPerMole(low, Degrees(temperature), ionicStrength);
            double second = acid.HydrogensPerMole(high, Degrees(temperature), ionicStrength);
            double most = acid.Acid switch
            {
                WaterAcid.Nitric => 1,
                WaterAcid.Sulfuric => 2,
                _ => 3,
            };
            return second >= first && first > 0 && second <= most;
        });
    }

    [Property]
    public bool SharesOfCarbon_AtAnyPh_AreAllOfIt(PositiveInt ph, PositiveInt temperature, PositiveInt strength)
    {
        CarbonateShares shares = WaterChemistry.SharesOfCarbon(
            new Ph(3 + ph.Get % 90 / 10.0), Degrees(temperature), Molarity.FromMillimolesPerLiter(strength.Get % 500));
        return Near.Equal(shares.CarbonDioxide.Percent + shares.Bicarbonate.Percent + shares.Carbonate.Percent, 100);
    }

    [Property]
    public bool SharesOfCarbon_AtTheFirstPkWithoutSalts_AreEqual(PositiveInt temperature)
    {
        CarbonateShares shares = WaterChemistry.SharesOfCarbon(
            new Ph(WaterChemistry.FirstPkOfCarbonicAcid(Degrees(temperature))), Degrees(temperature), Molarity.Zero);
        return Near.Equal(shares.CarbonDioxide.Percent, shares.Bicarbonate.Percent);
    }

    [Property]
    public bool FromTitration_OfAnySampleToTheEndPoint_FindsTheAlkalinityAndTheEndPointsOwn(PositiveInt milliequivalents, PositiveInt millilitres)
    {
        // The acid of the method to pH 4.5, as a burette would add it: what is found is the alkalinity, but for some per cent of a milliequivalent.
        double meq = 1 + milliequivalents.Get % 60 / 10.0;
        Volume sample = Volume.FromMilliliters(10 + millilitres.Get % 500);
        SourceWater water = new(VolumetricCharge.FromMilliequivalentsPerLitre(meq), new Ph(8), Temperature.FromDegreesCelsius(25));
        double needed = AcidInjection.ToPh(water, AcidProducts.Nitric67, new Ph(4.5), GasExchange.OpenToAir).Amount.MillimolesPerLiter;
        VolumetricCharge found = WaterAlkalinity.FromTitration(sample * needed / 20, VolumetricCharge.FromMilliequivalentsPerLitre(20), sample);
        return found.MilliequivalentsPerLitre - meq is > 0 and < 0.05;
    }

    [Property]
    public bool Alkalinity_ThereAndBack_IsTheSame(PositiveInt value)
    {
        VolumetricCharge alkalinity = VolumetricCharge.FromMilliequivalentsPerLitre(value.Get % 1000 / 100.0);
        return Near.Equal(WaterAlkalinity.FromCalciumCarbonate(WaterAlkalinity.ToCalciumCarbonate(alkalinity)).CentimolesPerLitre, alkalinity.CentimolesPerLitre)
            && Near.Equal(WaterAlkalinity.FromBicarbonate(WaterAlkalinity.ToBicarbonate(alkalinity)).CentimolesPerLitre, alkalinity.CentimolesPerLitre)
            && Near.Equal(WaterAlkalinity.FromCalciumOxide(WaterAlkalinity.ToCalciumOxide(alkalinity)).CentimolesPerLitre, alkalinity.CentimolesPerLitre);
    }

    [Property]
    public bool Dose_ForMoreWater_IsInProportionInEveryUnit(PositiveInt alkalinity, PositiveInt ph, PositiveInt volume)
    {
        AcidDose dose = AcidInjection.ToPh(Water(alkalinity, ph, ph), AcidProducts.Phosphoric75, new Ph(6), GasExchange.Closed);
        double litres = 1 + volume.Get % 5000;
        return Near.Equal(dose.VolumeFor(Volume.FromLiters(litres)).Milliliters, litres * dose.VolumeFor(Volume.FromLiters(1)).Milliliters)
            && Near.Equal(
                dose.VolumeFor(Volume.FromUsGallons(Volume.FromLiters(litres).UsGallons)).UsOunces, dose.VolumeFor(Volume.FromLiters(litres)).UsOunces)
            && Near.Equal(dose.MassFor(Volume.FromLiters(litres)).Grams, dose.VolumeFor(Volume.FromLiters(litres)).Liters * 1580);
    }

    [Property]
    public bool Dose_OfAWeakerProduct_TakesMoreOfItAndBringsTheSame(PositiveInt alkalinity, PositiveInt ph, PositiveInt strength)
    {
        AcidProduct full = new(WaterAcid.Phosphoric, MassFraction.FromPercent(80), Density.FromKilogramsPerLiter(1.6));
        double share = 0.1 + strength.Get % 80 / 100.0;
        AcidProduct weaker = new(WaterAcid.Phosphoric, MassFraction.FromPercent(80 * share), Density.FromKilogramsPerLiter(1.6));
        AcidDose one = AcidInjection.ToPh(Water(alkalinity, ph, ph), full, new Ph(6), GasExchange.Closed);
        AcidDose other = AcidInjection.ToPh(Water(alkalinity, ph, ph), weaker, new Ph(6), GasExchange.Closed);
        return Near.Equal(other.ProductMass.MilligramsPerLiter * share, one.ProductMass.MilligramsPerLiter)
            && Near.Equal(other.Phosphorus.MilligramsPerLiter, one.Phosphorus.MilligramsPerLiter);
    }

    [Property]
    public bool Add_ThenOpenedToTheAir_HasAHigherPh(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid, PositiveInt share)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        AcidDose closed = AcidInjection.ToAlkalinity(water, Acid(acid), water.Alkalinity * (0.1 + share.Get % 50 / 100.0), GasExchange.Closed);
        AcidDose open = AcidInjection.Add(water, Acid(acid), closed.Amount, GasExchange.OpenToAir);
        return open.Ph > closed.Ph;
    }

    [Property]
    public bool Titration_OfAnyWater_FallsAndAgreesWithAdd(PositiveInt alkalinity, PositiveInt ph, PositiveInt temperature, PositiveInt acid)
    {
        SourceWater water = Water(alkalinity, ph, temperature);
        IReadOnlyList<TitrationPoint> curve = AcidInjection.Titration(water, Acid(acid), Molarity.FromMillimolesPerLiter(6), 7, GasExchange.Closed);
        return curve.Count == 7 && curve.Zip(curve.Skip(1)).All(pair => pair.Second.Ph < pair.First.Ph)
            && Math.Abs(curve[3].Ph - AcidInjection.Add(water, Acid(acid), Molarity.FromMillimolesPerLiter(3), GasExchange.Closed).Ph) < 1e-12;
    }

    [Property]
    public bool PhOf_WithMoreStrongBase_Rises(PositiveInt base_, PositiveInt temperature)
    {
        double millimoles = base_.Get % 60 / 10.0;
        return Of(millimoles + 0.1) > Of(millimoles);

        double Of(double sodium) => WaterChemistry.PhOf(
            new SolutionIons(
                new IonConcentration(SolutionIon.Sodium, Molarity.FromMillimolesPerLiter(sodium)),
                new IonConcentration(SolutionIon.Bicarbonate, Molarity.FromMillimolesPerLiter(2)),
                new IonConcentration(SolutionIon.DihydrogenPhosphate, Molarity.FromMillimolesPerLiter(1)),
                new IonConcentration(SolutionIon.DihydrogenCitrate, Molarity.FromMillimolesPerLiter(0.5))),
            Degrees(temperature),
            GasExchange.Closed).Value.Value;
    }

    [Property]
    public bool PhOf_AWaterWithItsAcid_AgreesWithInjection(PositiveInt alkalinity, PositiveInt acid, PositiveInt temperature)
    {
        // A water of sodium bicarbonate alone, of known pH, into which phosphoric acid goes: by the dose, and by what is dissolved in all.
        double sodium = 1 + alkalinity.Get % 40 / 10.0;
        double phosphate = sodium * (5 + acid.Get % 60) / 100;
        IonConcentration Of(SolutionIon ion, double millimoles) => new(ion, Molarity.FromMillimolesPerLiter(millimoles));
        Ph before = WaterChemistry.PhOf(
            new SolutionIons(Of(SolutionIon.Sodium, sodium), Of(SolutionIon.Bicarbonate, sodium)), Degrees(temperature), GasExchange.Closed).Value;

        // The ionic strength of such a water, half sodium and half the anions, exceeds the sodium by what carbonate adds.
        Speciation state = Speciation.Balanced(
            new WeakTotals(sodium / 1000, sodium / 2000) { Carbon = sodium / 1000 }, new EquilibriumConstants(Degrees(temperature).DegreesCelsius));
        SourceWater water = new(
            VolumetricCharge.FromMilliequivalentsPerLitre(sodium), before, Degrees(temperature), Molarity.FromMolesPerLiter(state.IonicStrength));
        Ph dosed = AcidInjection.Add(water, AcidProducts.Phosphoric75, Molarity.FromMillimolesPerLiter(phosphate), GasExchange.Closed).Ph;
        Ph dissolved = WaterChemistry.PhOf(
            new SolutionIons(Of(SolutionIon.Sodium, sodium), Of(SolutionIon.Bicarbonate, sodium), Of(SolutionIon.DihydrogenPhosphate, phosphate)),
            Degrees(temperature),
            GasExchange.Closed).Value;
        return Math.Abs(dosed - dissolved) < 1e-6;
    }
}
