using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What a liming material is made of, by mass; the rest neutralises nothing.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// LimeComposition stone = new(calciumCarbonate: MassFraction.FromPercent(52), magnesiumCarbonate: MassFraction.FromPercent(40));
/// LimingMaterial material = LimingMaterial.FromComposition("dolomitic limestone", stone);
/// Console.WriteLine(material);   // 99.4 % calcium carbonate equivalent
/// </code></example>
public sealed record LimeComposition
{
    /// <summary>Describes what a liming material is made of.</summary>
    /// <param name="calciumCarbonate">CaCO₃.</param>
    /// <param name="magnesiumCarbonate">MgCO₃.</param>
    /// <param name="calciumHydroxide">Ca(OH)₂.</param>
    /// <param name="magnesiumHydroxide">Mg(OH)₂.</param>
    /// <param name="calciumOxide">CaO.</param>
    /// <param name="magnesiumOxide">MgO.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is not from 0 to 100 %, or together they are nothing or more than 100 %.</exception>
    public LimeComposition(
        MassFraction calciumCarbonate = default,
        MassFraction magnesiumCarbonate = default,
        MassFraction calciumHydroxide = default,
        MassFraction magnesiumHydroxide = default,
        MassFraction calciumOxide = default,
        MassFraction magnesiumOxide = default)
    {
        CalciumCarbonate = Share(calciumCarbonate, nameof(calciumCarbonate));
        MagnesiumCarbonate = Share(magnesiumCarbonate, nameof(magnesiumCarbonate));
        CalciumHydroxide = Share(calciumHydroxide, nameof(calciumHydroxide));
        MagnesiumHydroxide = Share(magnesiumHydroxide, nameof(magnesiumHydroxide));
        CalciumOxide = Share(calciumOxide, nameof(calciumOxide));
        MagnesiumOxide = Share(magnesiumOxide, nameof(magnesiumOxide));
        double percent = 100 * Parts().Sum(part => part.Fraction);
        if (!(percent > 0 && percent <= 100 * (1 + 1e-9)))
            throw Guard.Refused(nameof(calciumCarbonate), percent, "% together", "above 0 and up to 100 % of all parts together");
    }

    /// <summary>CaCO₃.</summary>
    public MassFraction CalciumCarbonate { get; }

    /// <summary>MgCO₃.</summary>
    public MassFraction MagnesiumCarbonate { get; }

    /// <summary>Ca(OH)₂.</summary>
    public MassFraction CalciumHydroxide { get; }

    /// <summary>Mg(OH)₂.</summary>
    public MassFraction MagnesiumHydroxide { get; }

    /// <summary>CaO.</summary>
    public MassFraction CalciumOxide { get; }

    /// <summary>MgO.</summary>
    public MassFraction MagnesiumOxide { get; }

    /// <summary>The parts in invariant culture.</summary>
    /// <returns>For instance <c>52 % calcium carbonate, 40 % magnesium carbonate</c>.</returns>
    public override string ToString() => string.Join(
        ", ", Parts().Where(part => part.Fraction > 0).Select(part => $"{Guard.Number(part.Fraction * 100)} % {part.Material.Name}"));

    internal double EquivalentFraction => Parts().Sum(part => part.Fraction * part.Material.Fraction);

    internal double MagnesiumFraction => Parts().Sum(part => part.Fraction * Boundary.MassFraction(part.Material.Magnesium!.Value));

    /// <summary>The most caustic form that is in it.</summary>
    internal LimeForm Form => Parts().Where(part => part.Fraction > 0).Max(part => part.Material.Form);

    private (double Fraction, LimingMaterial Material)[] Parts() =>
    [
        (Boundary.MassFraction(CalciumCarbonate), LimingMaterial.CalciumCarbonate),
        (Boundary.MassFraction(MagnesiumCarbonate), LimingMaterial.MagnesiumCarbonate),
        (Boundary.MassFraction(CalciumHydroxide), LimingMaterial.CalciumHydroxide),
        (Boundary.MassFraction(MagnesiumHydroxide), LimingMaterial.MagnesiumHydroxide),
        (Boundary.MassFraction(CalciumOxide), LimingMaterial.CalciumOxide),
        (Boundary.MassFraction(MagnesiumOxide), LimingMaterial.MagnesiumOxide),
    ];

    private static MassFraction Share(MassFraction share, string parameter)
    {
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "%", parameter);
        return HouseUnits.Normalise(share);
    }
}
