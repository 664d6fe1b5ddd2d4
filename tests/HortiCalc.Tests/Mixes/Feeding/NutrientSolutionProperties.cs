using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of nutrient solutions: nothing is lost, charges balance, the solver is right.</summary>
[Properties(EndSize = 1_000_000)]
public class NutrientSolutionProperties
{
    private static readonly NutrientSalt[] Independent =
    [
        NutrientSalts.CalciumNitrate, NutrientSalts.PotassiumNitrate, NutrientSalts.MonopotassiumPhosphate, NutrientSalts.MagnesiumSulfate,
        NutrientSalts.AmmoniumNitrate, NutrientSalts.BoricAcid, NutrientSalts.ManganeseSulfate,
    ];

    private static double Draw(PositiveInt seed, int i) => 0.02 + (seed.Get * 7919L + i * 104_729L) % 997 / 400.0;

    private static SaltAmount[] Amounts(PositiveInt seed, IReadOnlyList<NutrientSalt> salts) =>
        [.. salts.Select((salt, i) => new SaltAmount(salt, MassConcentration.FromGramsPerLiter(Draw(seed, i))))];

    private static SolutionIons Target(PositiveInt seed)
    {
        SolutionIon[] ions =
        [
            SolutionIon.Potassium, SolutionIon.Calcium, SolutionIon.Magnesium, SolutionIon.Ammonium,
            SolutionIon.Nitrate, SolutionIon.DihydrogenPhosphate, SolutionIon.Sulfate,
        ];
        return new SolutionIons([.. ions.Select((ion, i) => new IonConcentration(ion, Molarity.FromMillimolesPerLiter(Draw(seed, i) * 4)))]);
    }

    private static SolutionIons Water(PositiveInt seed) => new(
        new IonConcentration(SolutionIon.Calcium, Molarity.FromMillimolesPerLiter(Draw(seed, 1))),
        new IonConcentration(SolutionIon.Sodium, Molarity.FromMillimolesPerLiter(Draw(seed, 2))),
        new IonConcentration(SolutionIon.Bicarbonate, Molarity.FromMillimolesPerLiter(2 * Draw(seed, 1) + Draw(seed, 2))));

    [Property]
    public bool IonsOf_AnySalts_ConserveEveryElement(PositiveInt seed)
    {
        SaltAmount[] amounts = Amounts(seed, NutrientSalts.All);
        SolutionIons ions = NutrientSolution.IonsOf(amounts);
        return Enum.GetValues<NutrientElement>().All(element => Near.Equal(
            ions.Element(element).MilligramsPerLiter,
            amounts.Sum(amount => amount.Concentration.MilligramsPerLiter * amount.Salt.Share(element).DecimalFractions)));
    }

    [Property]
    public bool IonsOf_AnySaltsAndWater_BalanceInCharge(PositiveInt seed) =>
        Math.Abs(NutrientSolution.IonsOf(Amounts(seed, NutrientSalts.All), Water(seed)).ChargeImbalance.DecimalFractions) < 1e-12;

    [Property]
    public bool IonsOf_SaltsInTwoParts_AreTheSumOfBoth(PositiveInt seed)
    {
        SaltAmount[] amounts = Amounts(seed, Independent);
        SolutionIons whole = NutrientSolution.IonsOf(amounts);
        SolutionIons sum = NutrientSolution.IonsOf(amounts[..3]) + NutrientSolution.IonsOf(amounts[3..]);
        return Enum.GetValues<SolutionIon>().All(ion => Near.Equal(whole[ion].MolesPerLiter, sum[ion].MolesPerLiter));
    }

    [Property]
    public bool IonsOf_AnySolution_ScalesWithItsAmounts(PositiveInt seed)
    {
        SaltAmount[] twice = [.. Amounts(seed, Independent).Select(amount => new SaltAmount(amount.Salt, amount.Concentration * 2))];
        SolutionIons doubled = NutrientSolution.IonsOf(Amounts(seed, Independent)) * 2;
        return Enum.GetValues<SolutionIon>().All(ion => Near.Equal(NutrientSolution.IonsOf(twice)[ion].MolesPerLiter, doubled[ion].MolesPerLiter));
    }

    [Property]
    public bool IonConcentration_InEveryUnit_IsTheSame(PositiveInt seed) => Enum.GetValues<SolutionIon>().All(ion =>
    {
        IonConcentration one = new(ion, Molarity.FromMillimolesPerLiter(Draw(seed, (int)ion)));
        bool mass = Near.Equal(IonConcentration.FromMass(ion, one.Mass).Concentration.MolesPerLiter, one.Concentration.MolesPerLiter);
        bool charge = one.Charge.CentimolesPerLitre == 0
            || Near.Equal(IonConcentration.FromCharge(ion, one.Charge).Concentration.MolesPerLiter, one.Concentration.MolesPerLiter);
        bool element = one.OfElement.MilligramsPerLiter == 0
            || Near.Equal(IonConcentration.FromElement(ion, one.OfElement).Concentration.MolesPerLiter, one.Concentration.MolesPerLiter);
        return mass && charge && element;
    });

    [Property]
    public bool Plan_OfWhatIndependentSaltsMake_FindsTheirAmounts(PositiveInt seed)
    {
        SaltAmount[] amounts = Amounts(seed, Independent);
        NutrientPlan plan = NutrientSolution.Plan(NutrientSolution.IonsOf(amounts), [.. Independent.Select(salt => new SaltOffer(salt))]);
        return plan.GreatestDifference.DecimalFractions < 1e-9 && plan.Amounts.Zip(amounts).All(
            pair => Math.Abs(pair.First.Concentration.MilligramsPerLiter - pair.Second.Concentration.MilligramsPerLiter) < 1e-4);
    }

    [Property]
    public bool Plan_OfAnyTarget_HasNoNegativeAmount(PositiveInt seed)
    {
        NutrientPlan plan = NutrientSolution.Plan(Target(seed), [.. NutrientSalts.All.Select(salt => new SaltOffer(salt))], Water(seed));
        return plan.Amounts.All(amount => amount.Concentration.MilligramsPerLiter >= 0);
    }

    [Property]
    public bool Plan_ComparedWithEveryPointOfAGrid_IsTheNearest(PositiveInt seed)
    {
        NutrientSalt[] salts = [Independent[seed.Get % 4], NutrientSalts.PotassiumSulfate, NutrientSalts.AmmoniumSulfate];
        SaltOffer[] offers = [.. salts.Select(salt => new SaltOffer(salt))];
        PlanRows rows = new(Target(seed), offers, Water(seed), 1);
        double[,] cells = rows.Scaled();
        double[] missing = rows.ScaledMissing();
        double found = Error([.. NutrientSolution.Plan(Target(seed), offers, Water(seed)).Amounts.Select(amount => amount.Concentration.GramsPerLiter)]);
        for (int i = 0; i < 12 * 12 * 12; i++)
        {
            if (Error([i % 12 * 0.15, i / 12 % 12 * 0.15, i / 144 * 0.15]) < found - 1e-9)
                return false;
        }

        return true;

        double Error(double[] gramsPerLitre) => Enumerable.Range(0, missing.Length).Sum(row => Math.Pow(
            Enumerable.Range(0, gramsPerLitre.Length).Sum(column => cells[row, column] * gramsPerLitre[column]) - missing[row], 2));
    }

    [Property]
    public bool Plan_WithIonsOfTheWater_CountsThem(PositiveInt seed)
    {
        SaltAmount[] amounts = Amounts(seed, Independent);
        NutrientPlan plan = NutrientSolution.Plan(
            NutrientSolution.IonsOf(amounts, Water(seed)), [.. Independent.Select(salt => new SaltOffer(salt))], Water(seed));
        return plan.Amounts.Zip(amounts).All(
            pair => Math.Abs(pair.First.Concentration.MilligramsPerLiter - pair.Second.Concentration.MilligramsPerLiter) < 1e-4);
    }

    [Property]
    public bool Plan_WithWeakerProducts_TakesMoreOfThem(PositiveInt seed)
    {
        NutrientSalt[] weak = [.. Independent.Select(salt => salt.WithPurity(MassFraction.FromPercent(50)))];
        SolutionIons target = NutrientSolution.IonsOf(Amounts(seed, Independent));
        NutrientPlan pure = NutrientSolution.Plan(target, [.. Independent.Select(salt => new SaltOffer(salt))]);
        NutrientPlan half = NutrientSolution.Plan(target, [.. weak.Select(salt => new SaltOffer(salt))]);
        return pure.Amounts.Zip(half.Amounts).All(pair => Math.Abs(pair.Second.Concentration / pair.First.Concentration - 2) < 1e-6);
    }

    [Property]
    public bool Plan_WithAcidAgainstBicarbonate_LeavesWhatWasWanted(PositiveInt seed)
    {
        SolutionIons target = NutrientSolution.IonsOf(Amounts(seed, [NutrientSalts.CalciumNitrate, NutrientSalts.PotassiumNitrate]), Water(seed));
        SolutionIons withoutAlkalinity = new([.. target.Concentrations.Select(ion =>
            ion.Ion == SolutionIon.Bicarbonate ? new IonConcentration(ion.Ion, ion.Concentration * 0.25)
            : ion.Ion == SolutionIon.Nitrate ? new IonConcentration(ion.Ion, ion.Concentration + target[SolutionIon.Bicarbonate] * 0.75)
            : ion)]);
        NutrientPlan plan = NutrientSolution.Plan(
            withoutAlkalinity,
            [new SaltOffer(NutrientSalts.CalciumNitrate), new SaltOffer(NutrientSalts.PotassiumNitrate), new SaltOffer(NutrientSalts.NitricAcid)],
            Water(seed));
        return plan.GreatestDifference.DecimalFractions < 1e-9 && plan.Ions[SolutionIon.Hydrogen].MolesPerLiter == 0
            && plan.Cautions.Any(caution => caution.Code == "acid.into-water");
    }

    [Property]
    public bool PlanAtLeastCost_WhereThereIsOne_KeepsTheToleranceAndCostsNoMore(PositiveInt seed)
    {
        SaltOffer[] offers =
        [
            .. Independent.Select((salt, i) => new SaltOffer(salt, (decimal)(0.5 + Draw(seed, i + 20)))),
            new SaltOffer(NutrientSalts.MagnesiumNitrate, 1.5m), new SaltOffer(NutrientSalts.MonoammoniumPhosphate, 2m),
        ];
        SolutionIons target = NutrientSolution.IonsOf(Amounts(seed, Independent));
        NutrientPlan nearest = NutrientSolution.Plan(target, offers);
        NutrientPlan? cheapest = NutrientSolution.PlanAtLeastCost(target, offers, Ratio.FromPercent(5));
        Volume tank = Volume.FromCubicMeters(1);
        return cheapest is not null && cheapest.GreatestDifference.DecimalFractions <= 0.05 + 1e-7
            && cheapest.CostFor(tank) <= nearest.CostFor(tank) + 0.0001m;
    }

    [Property]
    public bool InTanks_AnyPlan_KeepsCalciumApartAndWeighsItAll(PositiveInt seed, PositiveInt ratio)
    {
        NutrientPlan plan = new(SolutionIons.None + Target(seed), SolutionIons.None, Amounts(seed, Independent));
        MixRatio injector = MixRatio.OneIn(1 + ratio.Get % 200);
        StockPlan tanks = plan.InTanks(Volume.FromLiters(100), injector, Temperature.FromDegreesCelsius(15));
        double weighed = tanks.TankA.Concat(tanks.TankB).Sum(salt => salt.Mass.Kilograms);
        double needed = plan.Amounts.Sum(amount => amount.For(tanks.Solution).Kilograms);
        return Near.Equal(weighed, needed) && tanks.TankA.All(salt => salt.Salt == NutrientSalts.CalciumNitrate)
            && tanks.TankB.All(salt => !salt.Salt.Sets(SolutionIon.Calcium));
    }

    [Property]
    public bool Solubility_BetweenPrintedTemperatures_LiesBetweenPrintedFigures(PositiveInt value) => FertiliserSolubilities.All.All(salt =>
    {
        HortiCalc.Evidence.DomainLimit limit = salt.Evidence.Domain.Limits[0];
        double low = limit.Low + (limit.High - limit.Low) * (value.Get % 100) / 101.0;
        double high = low + (limit.High - limit.Low) / 101;
        return salt.At(Temperature.FromDegreesCelsius(high)).Value > salt.At(Temperature.FromDegreesCelsius(low)).Value;
    });

    [Property]
    public bool Conductivity_OfAStrongerSolution_IsHigherButLessThanInProportion(PositiveInt seed)
    {
        SolutionIons weak = NutrientSolution.IonsOf(Amounts(seed, Independent)) * 0.1;
        double once = SolutionConductivity.Of(weak).Value.MillisiemensPerCentimeter;
        double twice = SolutionConductivity.Of(weak * 2).Value.MillisiemensPerCentimeter;
        return twice > once && twice < 2 * once;
    }

    [Property]
    public bool Conductivity_WithCorrection_NeverExceedsTheLimitingSum(PositiveInt seed)
    {
        SolutionIons solution = NutrientSolution.IonsOf(Amounts(seed, Independent)) * 0.2;
        double limiting = solution.Concentrations.Sum(
            ion => ion.Concentration.MillimolesPerLiter * (SolutionConductivity.LimitingPerMillimole(ion.Ion)?.MillisiemensPerCentimeter ?? 0));
        return SolutionConductivity.Of(solution).Value.MillisiemensPerCentimeter < limiting;
    }

    [Property]
    public bool Conductivity_OfVeryDiluteWater_IsTheSameByBothMethods(PositiveInt seed)
    {
        SolutionIons solution = NutrientSolution.IonsOf(Amounts(seed, Independent)) * 1e-5;
        double corrected = SolutionConductivity.Of(solution).Value.MillisiemensPerCentimeter;
        double limiting = SolutionConductivity.Of(solution, ConductivityMethod.InfiniteDilution).Value.MillisiemensPerCentimeter;

        // At 1e-7 to 1e-6 mol/L the correction is of the order of the root of the ionic strength.
        return Math.Abs(corrected / limiting - 1) < 0.005;
    }
}
