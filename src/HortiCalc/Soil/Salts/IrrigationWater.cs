using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What a laboratory report says of an irrigation water. Every member may be absent; what is absent is not judged.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Sodium, chloride and bicarbonate are judged in meq/L, as FAO-29 prints them; a reprint that heads the
/// same figures mg/L is wrong. <see cref="Ion"/> turns a report in mg/L into charge.
/// </remarks>
/// <example><code>
/// IrrigationWater well = new()
/// {
///     Conductivity = ElectricConductivity.FromMillisiemensPerCentimeter(1.25),
///     Chloride = Ion.Chloride.Charge(MassConcentration.FromMilligramsPerLiter(177)),
///     Boron = MassConcentration.FromMilligramsPerLiter(0.5),
/// };
/// foreach (WaterFinding finding in well.Findings)
///     Console.WriteLine(finding);
/// </code></example>
public sealed record IrrigationWater
{
    // For each span of the sodium adsorption ratio: its top, the conductivity below which the restriction is severe, and that above which there is none.
    private static readonly (double Ratio, double Severe, double None)[] Infiltration =
        [(3, 0.2, 0.7), (6, 0.3, 1.2), (12, 0.5, 1.9), (20, 1.3, 2.9), (40, 2.9, 5.0)];

    /// <summary>The conductivity; zero or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ElectricConductivity? Conductivity
    {
        get;
        init
        {
            if (value is { } given)
                Salts.Reading(given, nameof(Conductivity));
            field = value is { } kept ? HouseUnits.Normalise(kept) : null;
        }
    }

    /// <summary>The dissolved solids; zero or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">They are negative.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassConcentration? DissolvedSolids
    {
        get;
        init => field = Kept(value, nameof(DissolvedSolids));
    }

    /// <summary>Sodium.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? Sodium { get; init; }

    /// <summary>Calcium.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? Calcium { get; init; }

    /// <summary>Magnesium.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? Magnesium { get; init; }

    /// <summary>Chloride.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? Chloride { get; init; }

    /// <summary>Bicarbonate.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? Bicarbonate { get; init; }

    /// <summary>Boron; zero or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassConcentration? Boron
    {
        get;
        init => field = Kept(value, nameof(Boron));
    }

    /// <summary>Nitrogen as nitrate, not nitrate itself; zero or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassConcentration? NitrateNitrogen
    {
        get;
        init => field = Kept(value, nameof(NitrateNitrogen));
    }

    /// <summary>The sodium adsorption ratio; <see langword="null"/> where sodium, calcium or magnesium is absent, or both of the latter are zero.</summary>
    [JsonIgnore]
    public double? SodiumAdsorptionRatio =>
        Sodium is { } sodium && Calcium is { } calcium && Magnesium is { } magnesium && Salts.Milliequivalents(calcium) + Salts.Milliequivalents(magnesium) > 0
            ? Salts.SodiumAdsorptionRatio(sodium, calcium, magnesium)
            : null;

    /// <summary>How far each hazard restricts the water, of those that the report allows to judge.</summary>
    /// <remarks>
    /// A value at a bound is slight to moderate. Wetted leaves have two classes alone. Above a sodium adsorption ratio of 40 the source is silent, and
    /// infiltration is not judged.
    /// </remarks>
    [JsonIgnore]
    public IReadOnlyList<WaterFinding> Findings => ValueList<WaterFinding>.Of(Found());

    /// <summary>What the report holds, in invariant culture.</summary>
    /// <returns>For instance <c>1.25 dS/m, 2 findings</c>.</returns>
    public override string ToString()
    {
        string conductivity = Conductivity is { } known ? $"{Guard.Number(Boundary.DecisiemensPerMetre(known))} dS/m, " : "";
        return $"{conductivity}{Guard.Number(Found().Count())} hazards judged";
    }

    private IEnumerable<WaterFinding> Found()
    {
        if (Conductivity is { } conductivity)
            yield return Guided(WaterHazard.Salinity, Boundary.DecisiemensPerMetre(conductivity), 0.7, 3.0);
        if (DissolvedSolids is { } solids)
            yield return Guided(WaterHazard.DissolvedSolids, Boundary.MilligramsPerLitre(solids), 450, 2000);
        if (SodiumAdsorptionRatio is { } ratio)
        {
            if (Conductivity is { } water && ratio <= 40)
                yield return ByInfiltration(ratio, Boundary.DecisiemensPerMetre(water));
            yield return Guided(WaterHazard.SodiumToRoots, ratio, 3, 9);
        }

        if (Sodium is { } sodium)
            yield return Guided(WaterHazard.SodiumToLeaves, Salts.Milliequivalents(sodium), 3, double.PositiveInfinity);
        if (Chloride is { } chloride)
        {
            yield return Guided(WaterHazard.ChlorideToRoots, Salts.Milliequivalents(chloride), 4, 10);
            yield return Guided(WaterHazard.ChlorideToLeaves, Salts.Milliequivalents(chloride), 3, double.PositiveInfinity);
        }

        if (Boron is { } boron)
            yield return Guided(WaterHazard.Boron, Boundary.MilligramsPerLitre(boron), 0.7, 3.0, SaltCautions.Boron);
        if (NitrateNitrogen is { } nitrate)
            yield return Judged(WaterHazard.Nitrate, Boundary.MilligramsPerLitre(nitrate), 5, 30, SaltMethods.WaterInfiltration);
        if (Bicarbonate is { } bicarbonate)
            yield return Judged(WaterHazard.Bicarbonate, Salts.Milliequivalents(bicarbonate), 1.5, 8.5, SaltMethods.WaterInfiltration);
    }

    private static WaterFinding Guided(WaterHazard hazard, double value, double none, double severe, params Caution[] cautions) =>
        Judged(hazard, value, none, severe, SaltMethods.Water, cautions);

    private static WaterFinding Judged(WaterHazard hazard, double value, double none, double severe, Method method, params Caution[] cautions) =>
        Finding(
            hazard,
            value < none ? WaterRestriction.None : value > severe ? WaterRestriction.Severe : WaterRestriction.SlightToModerate,
            method,
            cautions);

    private static WaterFinding ByInfiltration(double ratio, double decisiemensPerMetre)
    {
        (_, double severe, double none) = Array.Find(Infiltration, span => ratio <= span.Ratio);
        return Finding(
            WaterHazard.Infiltration,
            decisiemensPerMetre > none ? WaterRestriction.None
                : decisiemensPerMetre < severe ? WaterRestriction.Severe
                : WaterRestriction.SlightToModerate,
            SaltMethods.WaterInfiltration,
            []);
    }

    private static WaterFinding Finding(WaterHazard hazard, WaterRestriction restriction, Method method, Caution[] cautions) =>
        new(hazard, new Estimate<WaterRestriction>(restriction, method, cautions: [.. cautions, SaltCautions.Laboratory]));

    private static MassConcentration? Kept(MassConcentration? value, string name)
    {
        if (value is not { } given)
            return null;
        Guard.NotNegative(Boundary.MilligramsPerLitre(given), "mg/L", name);
        return HouseUnits.Normalise(given);
    }
}
