using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A recipe in water as its source prints it: doses, contact time, rinse, use.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. <see cref="SanitisingRecipes"/> and <see cref="FoliarRecipes"/> hold published
/// ones. A recipe whose ingredients must not meet cannot be made.
/// </remarks>
public sealed record MixRecipe
{
    /// <summary>Describes a recipe.</summary>
    /// <param name="key">A short stable name, for translation and storage.</param>
    /// <param name="name">The name in plain English.</param>
    /// <param name="uses">What it is for; at least one.</param>
    /// <param name="basis">What the doses are printed for.</param>
    /// <param name="doses">The ingredients apart from water; at least one.</param>
    /// <param name="contactTime">
    /// The least time that surfaces must stay wet or under, or <see langword="null"/> where the source prints none.
    /// </param>
    /// <param name="rinse">What the source says about rinsing.</param>
    /// <param name="source">Where the recipe comes from.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentException">
    /// A text or list is empty, two ingredients must not meet, or liquids leave no room for water; the message gives every such pair and why.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The contact time is not above 0.</exception>
    public MixRecipe(
        string key,
        string name,
        IReadOnlyList<MixUse> uses,
        DoseBasis basis,
        IReadOnlyList<RecipeDose> doses,
        Duration? contactTime,
        RinseAdvice rinse,
        Source source,
        IReadOnlyList<Caution> cautions)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Uses = ValueList<MixUse>.Of(Guard.NotNull(uses));
        Basis = Guard.Defined(basis);
        Doses = ValueList<RecipeDose>.Of(Guard.NotNull(doses));
        Rinse = Guard.Defined(rinse);
        Source = Guard.NotNull(source);
        Cautions = ValueList<Caution>.Of(Guard.NotNull(cautions));
        if (Uses.Count == 0)
            throw new ArgumentException("uses was empty; allowed: at least one use.", nameof(uses));
        if (Doses.Count == 0)
            throw new ArgumentException("doses was empty; allowed: at least one dose.", nameof(doses));
        if (contactTime is Duration known)
        {
            Guard.Positive(Boundary.Days(known) * 1440, "min", nameof(contactTime));
            ContactTime = HouseUnits.Normalise(known);
        }

        Hazards.Refuse(Hazards.Of(Doses.Select(dose => dose.Ingredient)), nameof(doses));
        if (Basis == DoseBasis.FinishedMix && LitresPerLitre.High > 1)
        {
            throw new ArgumentException(
                $"doses took {Guard.Number(LitresPerLitre.High * 100)} % of the finished mix; allowed: up to 100 %.", nameof(doses));
        }
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The name in plain English.</summary>
    public string Name { get; }

    /// <summary>What it is for.</summary>
    public IReadOnlyList<MixUse> Uses { get; }

    /// <summary>What the doses are printed for.</summary>
    public DoseBasis Basis { get; }

    /// <summary>The ingredients apart from water.</summary>
    public IReadOnlyList<RecipeDose> Doses { get; }

    /// <summary>The least time that surfaces must stay wet or under, or <see langword="null"/> where the source prints none.</summary>
    public Duration? ContactTime { get; }

    /// <summary>What the source says about rinsing.</summary>
    public RinseAdvice Rinse { get; }

    /// <summary>Where the recipe comes from.</summary>
    public Source Source { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The amounts for a batch that fills the volume given, ingredients included.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <returns>
    /// Amounts with the recipe's range, water, contact time and cautions. Volumes of liquids are taken to add up; powders add none.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <example><code>
    /// RecipeBatch bucket = SanitisingRecipes.PotsAndToolsPennState.MakeUpTo(Volume.FromLiters(10));
    /// Console.WriteLine(bucket);   // 1 L of household bleach and 9 L of water make 10 L; ...
    /// </code></example>
    public RecipeBatch MakeUpTo(Volume total)
    {
        double totalLitres = Guard.Positive(Boundary.Litres(total), "L", nameof(total));
        (double low, double high) = LitresPerLitre;
        return Basis == DoseBasis.FinishedMix
            ? Batch(totalLitres, totalLitres, totalLitres * (1 - low), totalLitres * (1 - high))
            : Batch(totalLitres, totalLitres, totalLitres / (1 + low), totalLitres / (1 + high));
    }

    /// <summary>The amounts for a volume of water; the finished mix is larger by the liquids.</summary>
    /// <param name="water">The volume of water; more than 0.</param>
    /// <returns>Amounts with the recipe's range, contact time and cautions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="InvalidOperationException">The recipe takes no water.</exception>
    public RecipeBatch AddTo(Volume water)
    {
        double waterLitres = Guard.Positive(Boundary.Litres(water), "L", nameof(water));
        (double low, double high) = LitresPerLitre;
        if (Basis == DoseBasis.Water)
            return Batch(waterLitres * (1 + low), waterLitres * (1 + high), waterLitres, waterLitres);
        return high < 1
            ? Batch(waterLitres / (1 - low), waterLitres / (1 - high), waterLitres, waterLitres)
            : throw new InvalidOperationException($"'{Name}' is used undiluted, so that it cannot be added to water.");
    }

    /// <summary>The name and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Name} [{Source}]";

    private (double Low, double High) LitresPerLitre =>
        (Doses.Sum(dose => dose.LitresPerLitre.Low), Doses.Sum(dose => dose.LitresPerLitre.High));

    // At the high dose there is less water in the same mix, or more mix of the same water.
    private RecipeBatch Batch(double lowTotalLitres, double highTotalLitres, double lowWaterLitres, double highWaterLitres)
    {
        bool perWater = Basis == DoseBasis.Water;
        Volume lowBasis = Volume.FromLiters(perWater ? lowWaterLitres : lowTotalLitres);
        Volume highBasis = Volume.FromLiters(perWater ? highWaterLitres : highTotalLitres);
        return new RecipeBatch(
            this,
            [.. Doses.Select(dose => dose.For(lowBasis, highBasis))],
            new VolumeAmount(
                MixIngredients.Water,
                Volume.FromLiters(Math.Min(lowWaterLitres, highWaterLitres)),
                Volume.FromLiters(Math.Max(lowWaterLitres, highWaterLitres))),
            Volume.FromLiters(lowTotalLitres),
            Volume.FromLiters(highTotalLitres));
    }
}
