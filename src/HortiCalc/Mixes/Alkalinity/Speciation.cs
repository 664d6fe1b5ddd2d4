using HortiCalc.Units;
using MathNet.Numerics.RootFinding;

namespace HortiCalc.Mixes;

/// <summary>
/// The weak acids of a water at one pH and ionic strength. pH is the activity of hydrogen; all else is in moles per litre. Ion pairs with metals are
/// left out.
/// </summary>
internal sealed class Speciation
{
    private const double Tolerance = 1e-13;
    private const double MostIonicStrength = 0.5;

    // Some units in the last place of a pH of 14: less, and the search would never end.
    private const double RootAccuracy = 1e-13;

    // The search takes a charge below its accuracy for zero, and in pure water all charges are near 1e-7 mol/L: it sees them in micromoles.
    private const double MicromolesPerMole = 1e6;

    private readonly WeakTotals totals;
    private readonly double first;
    private readonly double second;
    private readonly double third;
    private readonly double hydrogenActivity;
    private readonly EquilibriumConstants constants;

    public Speciation(WeakTotals totals, EquilibriumConstants constants, double ph, double ionicStrength)
    {
        this.totals = totals;
        this.constants = constants;
        Ph = ph;
        first = Activity.Coefficient(1, ionicStrength, constants.Celsius);
        second = Activity.Coefficient(2, ionicStrength, constants.Celsius);
        third = Activity.Coefficient(3, ionicStrength, constants.Celsius);
        hydrogenActivity = Math.Pow(10, -ph);
        Hydrogen = hydrogenActivity / first;
        Hydroxide = Math.Pow(10, -constants.Water) / hydrogenActivity / first;
        double bicarbonatePerGas = Step(constants.FirstCarbonic, 1, first);
        double carbonatePerBicarbonate = Step(constants.SecondCarbonic, first, second);
        double sum = 1 + bicarbonatePerGas * (1 + carbonatePerBicarbonate);
        CarbonDioxide = totals.OpenCarbonDioxideMolesPerLitre ?? totals.Carbon / sum;
        Bicarbonate = CarbonDioxide * bicarbonatePerGas;
        Carbonate = Bicarbonate * carbonatePerBicarbonate;
    }

    public double Ph { get; }

    public double Hydrogen { get; }

    public double Hydroxide { get; }

    public double CarbonDioxide { get; }

    public double Bicarbonate { get; }

    public double Carbonate { get; }

    public double Carbon => CarbonDioxide + Bicarbonate + Carbonate;

    /// <summary>What acid the carbonates take up to the point where they are all carbon dioxide; below zero where free acid is left.</summary>
    public double Alkalinity => Bicarbonate + 2 * Carbonate + Hydroxide - Hydrogen;

    /// <summary>Charge of a mole of phosphate without its sign: 0 as H3PO4 to 3 as PO4.</summary>
    public double ChargePerPhosphate => Triprotic(constants.FirstPhosphoric, constants.SecondPhosphoric, constants.ThirdPhosphoric).Charge;

    public double ChargePerCitrate => Triprotic(constants.FirstCitric, constants.SecondCitric, constants.ThirdCitric).Charge;

    public double ChargePerSulfate => 1 + ShareOfSulfate;

    /// <summary>What charge is left over; zero in a real water, and falling as pH rises.</summary>
    public double ExcessCharge => totals.StrongCharge - Alkalinity
        - totals.Phosphate * ChargePerPhosphate - totals.Citrate * ChargePerCitrate - totals.Sulfate * ChargePerSulfate
        + totals.Ammonia * ShareOfAmmonium;

    public double IonicStrength => totals.StrongIonicStrength
        + (Hydrogen + Hydroxide + Bicarbonate + 4 * Carbonate
            + totals.Phosphate * Triprotic(constants.FirstPhosphoric, constants.SecondPhosphoric, constants.ThirdPhosphoric).ChargeSquared
            + totals.Citrate * Triprotic(constants.FirstCitric, constants.SecondCitric, constants.ThirdCitric).ChargeSquared
            + totals.Sulfate * (1 + 3 * ShareOfSulfate)
            + totals.Ammonia * ShareOfAmmonium) / 2;

    /// <summary>The state of a water whose charges cancel.</summary>
    public static Speciation Balanced(WeakTotals totals, EquilibriumConstants constants) => Settled(
        totals, constants, ionicStrength => Root(ph => new Speciation(totals, constants, ph, ionicStrength).ExcessCharge));

    /// <summary>The state at a given pH; its charges need not cancel.</summary>
    public static Speciation AtPh(WeakTotals totals, EquilibriumConstants constants, double ph) => Settled(totals, constants, _ => ph);

    /// <summary>The state at which the carbonates hold a given alkalinity; its charges need not cancel.</summary>
    public static Speciation AtAlkalinity(WeakTotals totals, EquilibriumConstants constants, double molesPerLitre) => Settled(
        totals, constants, ionicStrength => Root(ph => molesPerLitre - new Speciation(totals, constants, ph, ionicStrength).Alkalinity));

    // The ionic strength decides the activities, these the pH, and that the ionic strength: a few rounds settle it.
    private static Speciation Settled(WeakTotals totals, EquilibriumConstants constants, Func<double, double> phAt)
    {
        double ionicStrength = totals.StrongIonicStrength;
        for (int round = 0; ; round++)
        {
            Guard.Within(ionicStrength, 0, MostIonicStrength, "mol/L", nameof(ionicStrength));
            Speciation state = new(totals, constants, phAt(ionicStrength), ionicStrength);
            double change = Math.Abs(state.IonicStrength - ionicStrength);
            ionicStrength = state.IonicStrength;
            if (change <= Tolerance || round > 200)
                return state;
        }
    }

    private static double Root(Func<double, double> falling) => falling(0) <= 0 ? 0
        : falling(14) >= 0 ? 14
        : Brent.FindRoot(ph => falling(ph) * MicromolesPerMole, 0, 14, RootAccuracy, 500);

    private double ShareOfSulfate => 1 / (1 + 1 / Step(constants.Bisulfate, first, second));

    private double ShareOfAmmonium => 1 / (1 + Math.Pow(10, -constants.Ammonium) * first / hydrogenActivity);

    /// <summary>How much of the next form there is for one of the form before it.</summary>
    private double Step(double pk, double coefficientBefore, double coefficientAfter) =>
        Math.Pow(10, -pk) * coefficientBefore / (hydrogenActivity * coefficientAfter);

    private (double Charge, double ChargeSquared) Triprotic(double pk1, double pk2, double pk3)
    {
        double one = Step(pk1, 1, first);
        double two = one * Step(pk2, first, second);
        double three = two * Step(pk3, second, third);
        double sum = 1 + one + two + three;
        return ((one + 2 * two + 3 * three) / sum, (one + 4 * two + 9 * three) / sum);
    }
}
