using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>What a crop needs, with the sources of those figures.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record Crop
{
    /// <summary>Describes what a crop needs.</summary>
    /// <param name="name">The name, unique in the garden.</param>
    /// <param name="lowestPh">The lowest soil pH that suits it.</param>
    /// <param name="highestPh">The highest soil pH that suits it; above <paramref name="lowestPh"/>.</param>
    /// <param name="hurtAt">The night temperature that hurts it, in the shelter of a weather station: at this and below it should not stand outside.</param>
    /// <param name="spacing">How far apart plants stand in a bed.</param>
    /// <param name="sources">Where these figures come from; at least one.</param>
    /// <param name="warmEnoughAt">The mean temperature from which it grows outside, or <see langword="null"/> where only cold nights decide.</param>
    /// <param name="maturity">How long it takes to the first harvest, or <see langword="null"/> where it is not grown for one.</param>
    /// <param name="raising">How it is raised, or <see langword="null"/> where plants are bought or stand already.</param>
    /// <param name="prunedBeforeAutumn">Whether it is a shrub whose last pruning must heal before the first freeze of autumn.</param>
    /// <exception cref="ArgumentException">The name is empty or there is no source.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public Crop(
        string name,
        Ph lowestPh,
        Ph highestPh,
        Temperature hurtAt,
        Spacing spacing,
        IReadOnlyList<Source> sources,
        Temperature? warmEnoughAt = null,
        Maturity? maturity = null,
        Raising? raising = null,
        bool prunedBeforeAutumn = false)
    {
        Name = Guard.NotBlank(name);
        LowestPh = lowestPh;
        HighestPh = highestPh > lowestPh
            ? highestPh
            : throw Guard.Refused(nameof(highestPh), highestPh.Value, "pH", $"above the lowest, {Guard.Number(lowestPh.Value)} pH");
        Guard.Within(Boundary.Celsius(hurtAt), -40, 20, "°C", nameof(hurtAt));
        HurtAt = HouseUnits.Normalise(hurtAt);
        Spacing = Guard.NotNull(spacing);
        Sources = ValueList<Source>.Of(Guard.NotNull(sources));
        if (Sources.Count == 0)
            throw new ArgumentException("sources was empty; allowed: at least one.", nameof(sources));
        if (warmEnoughAt is Temperature warmth)
        {
            Guard.Within(Boundary.Celsius(warmth), -10, 40, "°C", nameof(warmEnoughAt));
            WarmEnoughAt = HouseUnits.Normalise(warmth);
        }

        Maturity = maturity;
        Raising = raising;
        PrunedBeforeAutumn = prunedBeforeAutumn;
    }

    /// <summary>The name, unique in the garden.</summary>
    public string Name { get; }

    /// <summary>The lowest soil pH that suits it.</summary>
    public Ph LowestPh { get; }

    /// <summary>The highest soil pH that suits it.</summary>
    public Ph HighestPh { get; }

    /// <summary>The night temperature that hurts it: at this and below it should not stand outside.</summary>
    public Temperature HurtAt { get; }

    /// <summary>How far apart plants stand in a bed.</summary>
    public Spacing Spacing { get; }

    /// <summary>Where these figures come from.</summary>
    public IReadOnlyList<Source> Sources { get; }

    /// <summary>The mean temperature from which it grows outside, or <see langword="null"/>.</summary>
    public Temperature? WarmEnoughAt { get; }

    /// <summary>How long it takes to the first harvest, or <see langword="null"/>.</summary>
    public Maturity? Maturity { get; }

    /// <summary>How it is raised, or <see langword="null"/> where plants are bought or stand already.</summary>
    public Raising? Raising { get; }

    /// <summary>Whether it is a shrub whose last pruning must heal before the first freeze of autumn.</summary>
    public bool PrunedBeforeAutumn { get; }

    /// <summary>The crop and what it stands, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>tomato: pH 5.5 to 6.8, hurt at 0 °C, 60 cm by 90 cm</c>.</returns>
    public override string ToString() =>
        $"{Name}: pH {Guard.Number(LowestPh.Value)} to {Guard.Number(HighestPh.Value)}, hurt at {QuantityText.Of(HurtAt, TextStyle.Default)}, {Spacing}";
}
