using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>How much of a material does the work of one part of elemental sulfur, by one source.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. The factors in print are rounded and do not say which hydrate they mean; by molar masses the
/// hydrate decides. Both are given, so that a recommendation can be followed as its source meant it.
/// </remarks>
/// <example><code>
/// foreach (AcidEquivalent equivalent in AcidEquivalent.Compare(AcidifyingMaterial.IronSulfate(7)))
///     Console.WriteLine(equivalent);   // 8.67 by molar masses; 8 by the RHS; 6 by Illinois and Minnesota
/// </code></example>
public sealed record AcidEquivalent
{
    /// <summary>Describes an equivalent.</summary>
    /// <param name="material">The material.</param>
    /// <param name="partsPerSulfur">The mass of it that does the work of one part by mass of elemental sulfur; above zero.</param>
    /// <param name="method">Who says so.</param>
    /// <exception cref="ArgumentNullException">The material or the method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The parts are not above zero.</exception>
    public AcidEquivalent(AcidifyingMaterial material, double partsPerSulfur, Method method)
    {
        Material = Guard.NotNull(material);
        PartsPerSulfur = Guard.Positive(partsPerSulfur, "");
        Method = Guard.NotNull(method);
    }

    /// <summary>The factors in print.</summary>
    public static IReadOnlyList<AcidEquivalent> Published { get; } = ValueList<AcidEquivalent>.Of(
    [
        Printed(AluminiumSulfate, 6, "how-to", AcidSources.HowTo),
        Printed(AluminiumSulfate, 6.9, "illinois", AcidSources.Illinois),
        Printed(AluminiumSulfate, 19.0 / 3, "georgia", AcidSources.Georgia),
        Printed(IronSulfate, 6, "illinois", AcidSources.Illinois),
        Printed(IronSulfate, 6, "minnesota", AcidSources.Minnesota),
        Printed(IronSulfate, 8, "rhs", AcidSources.Rhs),
        Printed(AcidifyingMaterial.AmmoniumSulfate, 100 / 33.3, "uk-exercise", AcidSources.UkExercise),
    ]);

    /// <summary>The material.</summary>
    public AcidifyingMaterial Material { get; }

    /// <summary>The mass of it that does the work of one part by mass of elemental sulfur.</summary>
    public double PartsPerSulfur { get; }

    /// <summary>Who says so.</summary>
    public Method Method { get; }

    /// <summary>The equivalent by what both neutralise.</summary>
    /// <param name="material">The material.</param>
    /// <returns>The equivalent.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    public static AcidEquivalent ByMolarMass(AcidifyingMaterial material) =>
        new(Guard.NotNull(material), AcidifyingMaterial.ElementalSulfur.Fraction / material.Fraction, AcidRules.ByMolarMass);

    /// <summary>The equivalent by molar masses, and the printed ones for materials of the same form.</summary>
    /// <param name="material">The material.</param>
    /// <returns>One or more, that by molar masses first.</returns>
    /// <exception cref="ArgumentNullException">The material is <see langword="null"/>.</exception>
    public static IReadOnlyList<AcidEquivalent> Compare(AcidifyingMaterial material) => ValueList<AcidEquivalent>.Of(
        [ByMolarMass(material), .. Published.Where(printed => printed.Material.Form == material.Form)]);

    /// <summary>The printed equivalent of a key.</summary>
    /// <param name="key">The <see cref="Method.Key"/>, for instance <c>acid-equivalent-rhs-iron-sulfate</c>.</param>
    /// <returns>The equivalent.</returns>
    /// <exception cref="ArgumentException">There is none of that key.</exception>
    public static AcidEquivalent FromKey(string key) => Published.FirstOrDefault(printed => printed.Method.Key == Guard.NotBlank(key))
        ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", Published.Select(printed => printed.Method.Key))}.", nameof(key));

    /// <summary>The parts, the material and who says so, in invariant culture.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        $"{Guard.Number(Math.Round(PartsPerSulfur, 2, MidpointRounding.AwayFromZero))} parts of {Material.Name} for 1 of sulfur; {Method}";

    // No source says which hydrate it means; the crystallised salts are taken, our reading.
    private static AcidifyingMaterial AluminiumSulfate => AcidifyingMaterial.AluminiumSulfate(18);

    private static AcidifyingMaterial IronSulfate => AcidifyingMaterial.IronSulfate(7);

    private static AcidEquivalent Printed(AcidifyingMaterial material, double parts, string who, Source source)
    {
        string form = material.Form switch
        {
            AcidForm.AluminiumSulfate => "aluminium-sulfate",
            AcidForm.IronSulfate => "iron-sulfate",
            _ => "ammonium-sulfate",
        };
        return new AcidEquivalent(material, parts, new Method(
            $"acid-equivalent-{who}-{form}",
            $"{form.Replace('-', ' ')} for sulfur as printed",
            source,
            new Domain("the source does not say which hydrate it means")));
    }
}
