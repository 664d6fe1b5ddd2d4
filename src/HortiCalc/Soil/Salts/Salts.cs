using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Salts and sodium in soils, media and waters: ratios, classes, gypsum and leaching.</summary>
/// <example><code>
/// VolumetricCharge sodium = Ion.Sodium.Charge(MassConcentration.FromMilligramsPerLiter(178));
/// VolumetricCharge calcium = Ion.Calcium.Charge(MassConcentration.FromMilligramsPerLiter(46.5));
/// VolumetricCharge magnesium = Ion.Magnesium.Charge(MassConcentration.FromMilligramsPerLiter(17.5));
/// double ratio = Salts.SodiumAdsorptionRatio(sodium, calcium, magnesium);
/// Console.WriteLine(Salts.ExchangeableSodium(ratio));
/// Console.WriteLine(Salts.Class(ElectricConductivity.FromMillisiemensPerCentimeter(4.6), ratio));
/// Console.WriteLine(Salts.LeachingRequirement(
///     ElectricConductivity.FromMillisiemensPerCentimeter(1.2), ElectricConductivity.FromMillisiemensPerCentimeter(2.5), LeachingMethod.Rhoades));
/// </code></example>
public static class Salts
{
    private const double EquivalentOfGypsumGrams = (40.078 + 32.065 + 4 * 15.9994 + 2 * (2 * 1.00794 + 15.9994)) / 2;
    private const double SodiumIntercept = -0.0126;
    private const double SodiumSlope = 0.01475;

    // Upper bounds of the levels, in dS/m, the bound included: the source calls a pour-through reading of 2.6, at the edge, low.
    private static readonly double[] OneToTwoBounds = [0.3, 0.8, 1.3, 1.8, 2.3];
    private static readonly double[] SaturatedBounds = [0.8, 2.0, 3.5, 5.0, 6.0];
    private static readonly double[] PourThroughBounds = [1.0, 2.6, 4.6, 6.5, 7.8];

    private static readonly double[] RankBounds = [2, 4, 8, 16];

    // Row 1.00 of the table of FAO-29, in meq/L by the conductivity of the water in dS/m; other rows follow by the power -2/3 of their ratio.
    private static readonly double[] CalciumConductivities = [0.1, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 8.0];
    private static readonly double[] CalciumAtRatioOne = [1.79, 1.85, 1.89, 1.96, 2.01, 2.07, 2.16, 2.23, 2.35, 2.44, 2.59, 2.71];

    /// <summary>The sodium adsorption ratio: sodium divided by the root of half of calcium and magnesium, all in meq/L.</summary>
    /// <remarks>Defined so; the ratio has the unit √(meq/L), which custom leaves away.</remarks>
    /// <param name="sodium">Sodium in the water or the extract.</param>
    /// <param name="calcium">Calcium.</param>
    /// <param name="magnesium">Magnesium; not zero together with calcium.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Calcium and magnesium are both zero.</exception>
    public static double SodiumAdsorptionRatio(VolumetricCharge sodium, VolumetricCharge calcium, VolumetricCharge magnesium)
    {
        double alkalineEarths = Guard.Positive(Milliequivalents(calcium) + Milliequivalents(magnesium), "meq/L", nameof(calcium));
        return Milliequivalents(sodium) / Math.Sqrt(alkalineEarths / 2);
    }

    /// <summary>
    /// The sodium adsorption ratio with the calcium that will stay dissolved in the soil near the surface, where lime settles out or dissolves.
    /// </summary>
    /// <remarks>
    /// Method of Suarez, as in FAO-29; from memory. The table's calcium follows its ratio of bicarbonate to calcium by the power −2/3, which is
    /// taken for ratios between the rows; between the columns a straight line.
    /// </remarks>
    /// <param name="sodium">Sodium in the water.</param>
    /// <param name="calcium">Calcium; above zero.</param>
    /// <param name="magnesium">Magnesium.</param>
    /// <param name="bicarbonate">Bicarbonate; from 0.05 to 30 times calcium.</param>
    /// <param name="conductivity">The conductivity of the water; from 0.1 to 8 dS/m.</param>
    /// <returns>The adjusted ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input lies outside the table.</exception>
    public static Estimate<double> AdjustedSodiumAdsorptionRatio(
        VolumetricCharge sodium,
        VolumetricCharge calcium,
        VolumetricCharge magnesium,
        VolumetricCharge bicarbonate,
        ElectricConductivity conductivity)
    {
        double dissolved = Guard.Positive(Milliequivalents(calcium), "meq/L", nameof(calcium));
        double bicarbonatePerCalcium = Milliequivalents(bicarbonate) / dissolved;
        SaltMethods.AdjustedRatio.Require(bicarbonatePerCalcium, "", nameof(bicarbonatePerCalcium));
        double water = SaltMethods.AdjustedRatio.Require(Boundary.DecisiemensPerMetre(conductivity), "dS/m", nameof(conductivity));
        double staying = Interpolated(CalciumConductivities, CalciumAtRatioOne, water) * Math.Pow(bicarbonatePerCalcium, -2.0 / 3);
        return new Estimate<double>(
            Milliequivalents(sodium) / Math.Sqrt((staying + Milliequivalents(magnesium)) / 2),
            SaltMethods.AdjustedRatio,
            cautions: [SaltCautions.Laboratory]);
    }

    /// <summary>The share of exchangeable sodium in the exchange capacity, ESP, from the sodium adsorption ratio of the saturated extract.</summary>
    /// <remarks>Regression of Handbook 60 of the U.S. Salinity Laboratory: the ratio of sodium to the other cations is −0.0126 + 0.01475 × SAR; never below zero.</remarks>
    /// <param name="sodiumAdsorptionRatio">The ratio; from 0 to 60.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio lies outside the domain.</exception>
    public static Estimate<Ratio> ExchangeableSodium(double sodiumAdsorptionRatio)
    {
        SaltMethods.ExchangeableSodium.Require(sodiumAdsorptionRatio, "");
        double ratio = Math.Max(0, SodiumIntercept + SodiumSlope * sodiumAdsorptionRatio);
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * ratio / (1 + ratio)), SaltMethods.ExchangeableSodium, cautions: [SaltCautions.SodiumRegression]);
    }

    /// <summary>The sodium adsorption ratio of the saturated extract of a soil with a share of exchangeable sodium: the regression backwards.</summary>
    /// <param name="exchangeableSodium">The share of exchangeable sodium; from 0 to below the share that belongs to a ratio of 60, 46.6 %.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside the domain.</exception>
    public static Estimate<double> SodiumAdsorptionRatio(Ratio exchangeableSodium)
    {
        double highest = SodiumIntercept + SodiumSlope * 60;
        double share = Guard.Within(
            Boundary.Fraction(exchangeableSodium) * 100, 0, 100 * highest / (1 + highest), "%", nameof(exchangeableSodium)) / 100;
        return new Estimate<double>(
            (share / (1 - share) - SodiumIntercept) / SodiumSlope, SaltMethods.ExchangeableSodium, cautions: [SaltCautions.SodiumRegression]);
    }

    /// <summary>The class of a salt-affected soil by its saturated extract: salty above 4 dS/m, sodic above a sodium adsorption ratio of 13.</summary>
    /// <param name="saturated">The conductivity of the saturated extract; zero or more.</param>
    /// <param name="sodiumAdsorptionRatio">The sodium adsorption ratio of the saturated extract; zero or more.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    public static Estimate<SaltAffectedClass> Class(ElectricConductivity saturated, double sodiumAdsorptionRatio) =>
        Class(saturated, Guard.NotNegative(sodiumAdsorptionRatio, "") > 13);

    /// <summary>The class of a salt-affected soil: salty above 4 dS/m, sodic above 15 % of exchangeable sodium.</summary>
    /// <param name="saturated">The conductivity of the saturated extract; zero or more.</param>
    /// <param name="exchangeableSodium">The share of exchangeable sodium; from 0 to 100 %.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input lies outside what is said above.</exception>
    public static Estimate<SaltAffectedClass> Class(ElectricConductivity saturated, Ratio exchangeableSodium) =>
        Class(saturated, Guard.Within(Boundary.Fraction(exchangeableSodium) * 100, 0, 100, "%", nameof(exchangeableSodium)) > 15);

    /// <summary>The rank of salinity of a soil by its saturated extract.</summary>
    /// <remarks>The ranks meet at their bounds in print; the bound is taken for the lower rank.</remarks>
    /// <param name="saturated">The conductivity of the saturated extract; zero or more.</param>
    /// <returns>The rank.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity is negative.</exception>
    public static Estimate<SalinityRank> Rank(ElectricConductivity saturated) =>
        new((SalinityRank)Above(RankBounds, Reading(saturated, nameof(saturated))), SaltMethods.SalinityRank, cautions: [SaltCautions.Laboratory]);

    /// <summary>How salty a soilless medium is, by any of three extracts, which are not interchangeable.</summary>
    /// <param name="measured">The reading; zero or more.</param>
    /// <param name="extract">How it was measured.</param>
    /// <returns>The level.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading is negative, or there is no such extract.</exception>
    public static Estimate<MediumSaltLevel> MediumLevel(ElectricConductivity measured, MediumExtract extract) => new(
        (MediumSaltLevel)Above(Bounds(extract), Reading(measured, nameof(measured))), SaltMethods.MediumLevel, cautions: [SaltCautions.Laboratory]);

    /// <summary>What a reading of one extract of a soilless medium comes to by another, by the bounds of the salt levels.</summary>
    /// <remarks>
    /// The source prints the levels alone: between the bounds of a level the reading is carried over in proportion, and the bounds of the level are
    /// the range. Above the last bound the method refuses.
    /// </remarks>
    /// <param name="measured">The reading; zero or more, and not extreme.</param>
    /// <param name="from">How it was measured.</param>
    /// <param name="to">The extract wanted.</param>
    /// <returns>The reading by the other extract.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading is negative or extreme, or there is no such extract.</exception>
    public static Estimate<ElectricConductivity> MediumReading(ElectricConductivity measured, MediumExtract from, MediumExtract to)
    {
        double[] given = Bounds(from);
        double[] wanted = Bounds(to);
        double reading = Guard.Within(Boundary.DecisiemensPerMetre(measured), 0, given[^1], "dS/m", nameof(measured));
        int level = Above(given, reading);
        (double low, double high) = (level == 0 ? 0 : given[level - 1], given[level]);
        (double lowWanted, double highWanted) = (level == 0 ? 0 : wanted[level - 1], wanted[level]);
        return new Estimate<ElectricConductivity>(
            Conductivity(lowWanted + (reading - low) / (high - low) * (highWanted - lowWanted)),
            SaltMethods.MediumConversion,
            new EstimateRange<ElectricConductivity>(Conductivity(lowWanted), Conductivity(highWanted), "the salt level of the reading"),
            cautions: [SaltCautions.TwoScales]);
    }

    /// <summary>The dissolved solids of a water from its conductivity.</summary>
    /// <param name="conductivity">The conductivity; zero or more, inside what the factor is for.</param>
    /// <param name="method">The factor; <see cref="DissolvedSolidsMethod.Irrigation"/> is usual.</param>
    /// <returns>The mass of dissolved solids.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity lies outside the factor's domain.</exception>
    /// <exception cref="ArgumentNullException">The factor is <see langword="null"/>.</exception>
    public static Estimate<MassConcentration> DissolvedSolids(ElectricConductivity conductivity, DissolvedSolidsMethod method) =>
        Guard.NotNull(method).Solids(conductivity);

    /// <summary>The conductivity of a water from its dissolved solids.</summary>
    /// <param name="solids">The mass of dissolved solids; zero or more.</param>
    /// <param name="method">The factor.</param>
    /// <returns>The conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The solids are negative, or the conductivity lies outside the factor's domain.</exception>
    /// <exception cref="ArgumentNullException">The factor is <see langword="null"/>.</exception>
    public static Estimate<ElectricConductivity> ConductivityOfSolids(MassConcentration solids, DissolvedSolidsMethod method) =>
        Guard.NotNull(method).Conductivity(solids);

    /// <summary>The exchangeable sodium that must give way to bring a soil to a target.</summary>
    /// <param name="capacity">The cation exchange capacity.</param>
    /// <param name="exchangeableSodium">The share of exchangeable sodium now; from 0 to 100 %.</param>
    /// <param name="target">The share wanted; from 0 to 100 %.</param>
    /// <returns>The sodium; zero where the soil is at or below the target.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share lies outside 0 to 100 %.</exception>
    public static ExchangeableCharge SodiumToReplace(ExchangeableCharge capacity, Ratio exchangeableSodium, Ratio target)
    {
        double now = Guard.Within(Boundary.Fraction(exchangeableSodium) * 100, 0, 100, "%", nameof(exchangeableSodium));
        double wanted = Guard.Within(Boundary.Fraction(target) * 100, 0, 100, "%", nameof(target));
        return ExchangeableCharge.FromCentimolesPerKilogram(capacity.CentimolesPerKilogram * Math.Max(0, now - wanted) / 100);
    }

    /// <summary>The gypsum that replaces an amount of exchangeable sodium in a layer of soil.</summary>
    /// <remarks>
    /// 0.861 g of pure gypsum, CaSO₄·2H₂O, for one cmol of sodium, by the molar masses; by the soil's own depth and bulk density; divided by the
    /// product's purity; times the allowance chosen.
    /// </remarks>
    /// <param name="sodium">The sodium to replace, as <see cref="SodiumToReplace"/> gives it.</param>
    /// <param name="layer">The soil to be treated.</param>
    /// <param name="purity">The share of gypsum in the product; above 0 and up to 100 %.</param>
    /// <param name="method">The allowance; <see cref="GypsumMethod.Ali"/> is usual.</param>
    /// <returns>The product per area.</returns>
    /// <exception cref="ArgumentNullException">The layer or the allowance is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The purity lies outside what is said above.</exception>
    /// <example><code>
    /// ExchangeableCharge sodium = Salts.SodiumToReplace(
    ///     ExchangeableCharge.FromMilliequivalentsPer100Grams(22), Ratio.FromPercent(35), Ratio.FromPercent(15));   // 4.4 meq/100 g
    /// SoilLayer layer = new(Length.FromCentimeters(30), Density.FromGramsPerCubicCentimeter(1.4));
    /// Estimate&lt;AreaDensity&gt; gypsum = Salts.GypsumRequirement(sodium, layer, Ratio.FromPercent(90), GypsumMethod.Ali);
    /// Console.WriteLine(gypsum);
    /// </code></example>
    public static Estimate<AreaDensity> GypsumRequirement(ExchangeableCharge sodium, SoilLayer layer, Ratio purity, GypsumMethod method)
    {
        Guard.NotNull(layer);
        Guard.NotNull(method);
        double share = Boundary.Fraction(purity);
        if (!(share > 0 && share <= 1))
            throw Guard.Refused(nameof(purity), share * 100, "%", "above 0 and up to 100 %");
        double molesPerSquareMetre = sodium.CentimolesPerKilogram / 100 * layer.KilogramsPerSquareMetre;
        double gramsPerSquareMetre = molesPerSquareMetre * EquivalentOfGypsumGrams / share;
        EstimateRange<AreaDensity>? range = method.HighestFactor > method.LowestFactor
            ? new EstimateRange<AreaDensity>(
                AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre * method.LowestFactor),
                AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre * method.HighestFactor),
                "lowest and highest allowance of the source")
            : null;
        return new Estimate<AreaDensity>(
            AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre * method.Factor),
            method.Method,
            range,
            cautions: gramsPerSquareMetre == 0 ? [SaltCautions.NoGypsum] : [SaltCautions.GypsumNeedsDrainage, SaltCautions.Laboratory]);
    }

    /// <summary>The share of the water that must run through the root zone to hold the salt of the soil.</summary>
    /// <param name="water">The conductivity of the irrigation water; zero or more.</param>
    /// <param name="allowed">The conductivity allowed, of what the form says; above zero.</param>
    /// <param name="method">The form; <see cref="LeachingMethod.Rhoades"/> with the crop's threshold is usual.</param>
    /// <returns>The share, from 0 to below 100 %.</returns>
    /// <exception cref="ArgumentNullException">The form is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A conductivity is out of range, or the water is so salty that no leaching holds the soil there.</exception>
    public static Estimate<Ratio> LeachingRequirement(ElectricConductivity water, ElectricConductivity allowed, LeachingMethod method)
    {
        Guard.NotNull(method);
        double share = method.Share(
            Reading(water, nameof(water)), Guard.Positive(Boundary.DecisiemensPerMetre(allowed), "dS/m", nameof(allowed)));
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * share),
            method.Method,
            cautions: share > 1.0 / 3 ? [SaltCautions.LeachAway, SaltCautions.TooSalty] : [SaltCautions.LeachAway]);
    }

    /// <summary>The depth of water to give so that a share runs through: what the plants use, divided by what stays.</summary>
    /// <param name="use">The water that the plants use; zero or more.</param>
    /// <param name="leaching">The share that is to run through; from 0 to below 100 %.</param>
    /// <returns>The depth to give.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input lies outside what is said above.</exception>
    public static Length WaterWithLeaching(Length use, Ratio leaching)
    {
        double metres = Guard.NotNegative(Boundary.Metres(use), "m", nameof(use));
        double share = Boundary.Fraction(leaching);
        if (!(share >= 0 && share < 1))
            throw Guard.Refused(nameof(leaching), share * 100, "%", "from 0 to below 100 %");
        return Length.FromMeters(metres / (1 - share));
    }

    /// <summary>The conductivity that the saturated extract comes to, averaged over the root zone, under a leaching fraction.</summary>
    /// <remarks>Equation 93 of FAO-56: (1 + LF) / LF × ECw / 5.</remarks>
    /// <param name="water">The conductivity of the irrigation water; zero or more.</param>
    /// <param name="leachingFraction">The share of the water that runs through; from 1 to 100 %.</param>
    /// <returns>The conductivity of the saturated extract.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input lies outside what is said above.</exception>
    public static Estimate<ElectricConductivity> SoilSalinity(ElectricConductivity water, Ratio leachingFraction)
    {
        double share = SaltMethods.SoilSalinity.Require(Boundary.Fraction(leachingFraction), "", nameof(leachingFraction));
        return new Estimate<ElectricConductivity>(
            Conductivity((1 + share) / share * Reading(water, nameof(water)) / 5), SaltMethods.SoilSalinity, cautions: [SaltCautions.Laboratory]);
    }

    internal static double Milliequivalents(VolumetricCharge charge) => charge.CentimolesPerLitre * 10;

    internal static double Reading(ElectricConductivity conductivity, string parameter) =>
        Guard.NotNegative(Boundary.DecisiemensPerMetre(conductivity), "dS/m", parameter);

    private static ElectricConductivity Conductivity(double decisiemensPerMetre) =>
        ElectricConductivity.FromMillisiemensPerCentimeter(decisiemensPerMetre);

    private static Estimate<SaltAffectedClass> Class(ElectricConductivity saturated, bool sodic)
    {
        bool saline = Reading(saturated, nameof(saturated)) > 4;
        SaltAffectedClass found = (saline, sodic) switch
        {
            (true, true) => SaltAffectedClass.SalineSodic,
            (true, false) => SaltAffectedClass.Saline,
            (false, true) => SaltAffectedClass.Sodic,
            _ => SaltAffectedClass.NotAffected,
        };
        return new Estimate<SaltAffectedClass>(found, SaltMethods.SaltAffected, cautions: [SaltCautions.Laboratory]);
    }

    private static double[] Bounds(MediumExtract extract) => Guard.Defined(extract) switch
    {
        MediumExtract.OneToTwo => OneToTwoBounds,
        MediumExtract.SaturatedMedium => SaturatedBounds,
        _ => PourThroughBounds,
    };

    private static int Above(double[] bounds, double value) => bounds.Count(bound => value > bound);

    private static double Interpolated(double[] places, double[] values, double place)
    {
        int above = Math.Max(1, Array.FindIndex(places, known => known >= place));
        return values[above - 1] + (place - places[above - 1]) / (places[above] - places[above - 1]) * (values[above] - values[above - 1]);
    }
}
