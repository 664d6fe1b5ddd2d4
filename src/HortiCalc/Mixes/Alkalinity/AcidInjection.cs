using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Acid against the alkalinity of water: how much for a pH or an alkalinity, what an amount does, and the titration curve.</summary>
/// <remarks>
/// <para>
/// By the equilibria of carbonate, phosphate, citrate and sulfate at the water's temperature and ionic strength, so that the hydrogens a mole of phosphoric
/// or citric acid gives up depend on the pH reached. Constants of the U.S. Geological Survey's databases, activities by Davies, no ion pairs.
/// </para>
/// <para>
/// Alkalinity here is that of the carbonates and hydroxide, which is what acid is meant to take away. A laboratory that titrates to pH 4.5 counts the second
/// hydrogen of phosphate and the citrates too. The volume of the acid, below a part in a thousand, is left out. So are the pairs that calcium and
/// magnesium form with hydrogen phosphate and citrate: in hard water these two acids take away a little more than is said here.
/// </para>
/// <para>
/// Charts count a fixed number of hydrogens: two for sulfuric and one for nitric acid, which is right, and one for phosphoric, which is right below pH 6; some
/// count three for it, which is never right for irrigation water.
/// </para>
/// </remarks>
public static class AcidInjection
{
    internal static readonly Method Method = new(
        "water.acid-by-equilibrium",
        "acid by the equilibria of carbonates and of the acid",
        AlkalinitySources.Constants,
        new Domain(
            "irrigation water whose alkalinity is of carbonates; activities by Davies, no ion pairs",
            new DomainLimit("temperature", 0, 50, "°C"),
            new DomainLimit("ionicStrength", 0, 0.5, "mol/L"),
            new DomainLimit("target", 4, 10, "pH"),
            new DomainLimit("most", 0, 0.1, "mol/L"),
            new DomainLimit("amount", 0, 0.1, "mol/L")));

    /// <summary>Acid to bring a water to a pH.</summary>
    /// <param name="water">The water before.</param>
    /// <param name="acid">The acid as it is bought.</param>
    /// <param name="target">The pH wanted; from 4 to 10.</param>
    /// <param name="exchange">
    /// Whether the carbon dioxide that is set free stays, as at the injector, or leaves, as in a bucket over night. Held in, a pH needs less acid.
    /// </param>
    /// <returns>The dose; none, with a caution, where the water is at that pH or below.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The target is outside what the method is for.</exception>
    /// <example><code>
    /// SourceWater well = new(
    ///     WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesCelsius(20));
    /// AcidDose dose = AcidInjection.ToPh(well, AcidProducts.Phosphoric75, new Ph(6), GasExchange.Closed);
    /// double millilitres = dose.VolumeFor(Volume.FromCubicMeters(1)).Milliliters;   // 258
    /// double phosphorus = dose.Phosphorus.MilligramsPerLiter;                       // 97
    /// </code></example>
    public static AcidDose ToPh(SourceWater water, AcidProduct acid, Ph target, GasExchange exchange)
    {
        Guard.NotNull(water);
        Guard.NotNull(acid);
        double ph = Method.Require(target.Value, "pH", nameof(target));
        WeakTotals totals = water.TotalsWith(Guard.Defined(exchange));
        if (Speciation.Balanced(totals, water.Constants).Ph <= ph)
            return NothingToDo(water, acid, exchange);
        return ForState(water, acid, exchange, with => Speciation.AtPh(with, water.Constants, ph));
    }

    /// <summary>Acid to bring a water to an alkalinity.</summary>
    /// <param name="water">The water before.</param>
    /// <param name="acid">The acid as it is bought.</param>
    /// <param name="target">The alkalinity wanted, of the carbonates.</param>
    /// <param name="exchange">Whether the carbon dioxide stays or leaves; it decides the pH, and the acid only where its hydrogens depend on pH.</param>
    /// <returns>The dose; none, with a caution, where the water has no more alkalinity than that.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The exchange is not a defined one.</exception>
    /// <example><code>
    /// SourceWater well = new(
    ///     WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(250)), new Ph(7.6), Temperature.FromDegreesCelsius(20));
    /// AcidDose dose = AcidInjection.ToAlkalinity(
    ///     well, AcidProducts.Sulfuric93, WaterAlkalinity.FromCalciumCarbonate(MassConcentration.FromMilligramsPerLiter(150)), GasExchange.Closed);
    /// double millilitres = dose.VolumeFor(Volume.FromUsGallons(100)).Milliliters;   // 21.7
    /// </code></example>
    public static AcidDose ToAlkalinity(SourceWater water, AcidProduct acid, VolumetricCharge target, GasExchange exchange)
    {
        Guard.NotNull(water);
        Guard.NotNull(acid);
        Guard.Defined(exchange);
        double molesPerLitre = target.MilliequivalentsPerLitre / 1000;
        if (target >= water.Alkalinity)
            return NothingToDo(water, acid, exchange);
        return ForState(water, acid, exchange, with => Speciation.AtAlkalinity(with, water.Constants, molesPerLitre));
    }

    /// <summary>What an amount of acid does to a water.</summary>
    /// <param name="water">The water before.</param>
    /// <param name="acid">The acid as it is bought.</param>
    /// <param name="amount">Moles of the acid per volume of water; from 0 to 0.1 mol/L.</param>
    /// <param name="exchange">Whether the carbon dioxide stays or leaves.</param>
    /// <returns>The pH, the alkalinity that is left and the nutrients.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is outside what the method is for.</exception>
    public static AcidDose Add(SourceWater water, AcidProduct acid, Molarity amount, GasExchange exchange)
    {
        Guard.NotNull(water);
        Guard.NotNull(acid);
        double molesPerLitre = Method.Require(Boundary.MolesPerLitre(amount), "mol/L", nameof(amount));
        return Dose(water, acid, exchange, molesPerLitre, After(water, acid, molesPerLitre, Guard.Defined(exchange)));
    }

    /// <summary>What a volume of acid does to a volume of water.</summary>
    /// <param name="water">The water before.</param>
    /// <param name="acid">The acid as it is bought; a liquid.</param>
    /// <param name="share">The volume of acid per volume of water; 0 or more.</param>
    /// <param name="exchange">Whether the carbon dioxide stays or leaves.</param>
    /// <returns>The pH, the alkalinity that is left and the nutrients.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative, or more than the method is for.</exception>
    /// <exception cref="ArgumentException">The acid is dry.</exception>
    public static AcidDose AddVolume(SourceWater water, AcidProduct acid, VolumeConcentration share, GasExchange exchange)
    {
        double fraction = Guard.NotNegative(Boundary.VolumeFraction(share), "L/L", nameof(share));
        return Guard.NotNull(acid).Molarity is Molarity molarity
            ? Add(water, acid, Molarity.FromMolesPerLiter(fraction * Boundary.MolesPerLitre(molarity)), exchange)
            : throw new ArgumentException($"{nameof(acid)} was {acid}, which has no density; allowed: a liquid.", nameof(acid));
    }

    /// <summary>The titration curve of a water.</summary>
    /// <param name="water">The water.</param>
    /// <param name="acid">The acid.</param>
    /// <param name="most">The acid of the last point; more than 0, at most 0.1 mol/L.</param>
    /// <param name="points">How many points, the first without acid and the others equally far apart; 2 or more.</param>
    /// <param name="exchange">Whether the carbon dioxide stays or leaves.</param>
    /// <returns>The points, with falling pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside what is allowed.</exception>
    public static IReadOnlyList<TitrationPoint> Titration(SourceWater water, AcidProduct acid, Molarity most, int points, GasExchange exchange)
    {
        Guard.NotNull(water);
        Guard.NotNull(acid);
        double last = Guard.Positive(Method.Require(Boundary.MolesPerLitre(most), "mol/L", nameof(most)), "mol/L", nameof(most));
        Guard.AtLeast(points, 2);
        Guard.Defined(exchange);
        return ValueList<TitrationPoint>.Of(Enumerable.Range(0, points).Select(i =>
        {
            double molesPerLitre = last * i / (points - 1);
            Speciation state = After(water, acid, molesPerLitre, exchange);
            return new TitrationPoint(Molarity.FromMolesPerLiter(molesPerLitre), new Ph(state.Ph), Charge(state.Alkalinity));
        }));
    }

    // A state at a known pH or alkalinity needs as much acid as charge is left over there; the acid in turn lifts the ionic strength.
    private static AcidDose ForState(SourceWater water, AcidProduct acid, GasExchange exchange, Func<WeakTotals, Speciation> stateOf)
    {
        WeakTotals without = water.TotalsWith(exchange);
        double molesPerLitre = 0;
        for (int round = 0; ; round++)
        {
            Speciation state = stateOf(acid.AddedTo(without, molesPerLitre));
            double needed = (without.StrongCharge - state.Alkalinity) / acid.HydrogensPerMole(state);
            double change = Math.Abs(needed - molesPerLitre);
            molesPerLitre = Math.Max(0, needed);
            if (change <= 1e-15 || round > 200)
                return Dose(water, acid, exchange, molesPerLitre, stateOf(acid.AddedTo(without, molesPerLitre)));
        }
    }

    private static Speciation After(SourceWater water, AcidProduct acid, double molesPerLitre, GasExchange exchange) =>
        Speciation.Balanced(acid.AddedTo(water.TotalsWith(exchange), molesPerLitre), water.Constants);

    private static AcidDose NothingToDo(SourceWater water, AcidProduct acid, GasExchange exchange)
    {
        AcidDose none = Dose(water, acid, exchange, 0, After(water, acid, 0, exchange));
        return new AcidDose(
            none.Product, none.Water, none.Amount, none.Ph, none.Alkalinity, none.FreeAcid, exchange, Method, [WaterAcidCautions.AlreadyThere]);
    }

    private static AcidDose Dose(SourceWater water, AcidProduct acid, GasExchange exchange, double molesPerLitre, Speciation state) => new(
        acid,
        water,
        Molarity.FromMolesPerLiter(molesPerLitre),
        new Ph(state.Ph),
        Charge(state.Alkalinity),
        Charge(-state.Alkalinity),
        exchange,
        Method,
        WaterAcidCautions.For(acid, exchange, molesPerLitre));

    private static VolumetricCharge Charge(double equivalentsPerLitre) =>
        VolumetricCharge.FromMilliequivalentsPerLitre(Math.Max(0, equivalentsPerLitre) * 1000);
}
