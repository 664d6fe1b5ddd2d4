using System.Globalization;
using System.Text.Json.Serialization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>
/// The three figures on the bag of a soluble fertiliser: nitrogen, phosphate as P₂O₅ and potash as K₂O. The elements are given beside them.
/// </summary>
/// <remarks>Immutable; equal by value. Where a label states the elements, as in Australia, make it by <see cref="FromElements"/>.</remarks>
/// <example><code>
/// FeedGrade grade = FeedGrade.Parse("20-10-20");
/// double phosphorus = grade.Phosphorus.Percent;   // 4.36
/// </code></example>
public sealed record FeedGrade : IFormattable
{
    /// <summary>States a grade as labels with oxides do.</summary>
    /// <param name="nitrogen">Nitrogen; from 0 to 100 %.</param>
    /// <param name="phosphate">Phosphate as P₂O₅; from 0 to 100 %.</param>
    /// <param name="potash">Potash as K₂O; from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 100 %, all are 0, or together they are more than the bag.</exception>
    public FeedGrade(MassFraction nitrogen, MassFraction phosphate, MassFraction potash)
    {
        double sum = Percent(nitrogen, nameof(nitrogen)) + Percent(phosphate, nameof(phosphate)) + Percent(potash, nameof(potash));
        Guard.Positive(sum, "% by mass together", nameof(nitrogen));
        if (sum > 100 + 1e-9)
            throw Guard.Refused(nameof(nitrogen), sum, "% by mass together with phosphate and potash", "100 % or less");
        Nitrogen = HouseUnits.Normalise(nitrogen);
        Phosphate = HouseUnits.Normalise(phosphate);
        Potash = HouseUnits.Normalise(potash);
    }

    /// <summary>Nitrogen, N.</summary>
    public MassFraction Nitrogen { get; }

    /// <summary>Phosphate, as P₂O₅.</summary>
    public MassFraction Phosphate { get; }

    /// <summary>Potash, as K₂O.</summary>
    public MassFraction Potash { get; }

    /// <summary>Phosphorus, as the element.</summary>
    [JsonIgnore]
    public MassFraction Phosphorus => NutrientOxides.ToElement(NutrientOxide.Phosphate, Phosphate);

    /// <summary>Potassium, as the element.</summary>
    [JsonIgnore]
    public MassFraction Potassium => NutrientOxides.ToElement(NutrientOxide.Potash, Potash);

    /// <summary>States a grade by its elements.</summary>
    /// <param name="nitrogen">Nitrogen; from 0 to 100 %.</param>
    /// <param name="phosphorus">Phosphorus as the element; up to 43.6 %.</param>
    /// <param name="potassium">Potassium as the element; up to 83 %.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside what is allowed.</exception>
    public static FeedGrade FromElements(MassFraction nitrogen, MassFraction phosphorus, MassFraction potassium) => new(
        nitrogen,
        NutrientOxides.FromElement(NutrientOxide.Phosphate, phosphorus),
        NutrientOxides.FromElement(NutrientOxide.Potash, potassium));

    /// <summary>Reads a grade with oxides, as bags print it.</summary>
    /// <param name="text">Three numbers with hyphens, with a point where they have decimals: <c>20-10-20</c>.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="FormatException">The text is not three such numbers from 0 to 100.</exception>
    public static FeedGrade Parse(string text)
    {
        string[] parts = Guard.NotNull(text).Split('-', StringSplitOptions.TrimEntries);
        double[] percents = new double[3];
        bool read = parts.Length == 3;
        for (int i = 0; read && i < 3; i++)
            read = double.TryParse(parts[i], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out percents[i]) && percents[i] <= 100;
        return read && percents.Sum() is > 0 and <= 100
            ? new FeedGrade(MassFraction.FromPercent(percents[0]), MassFraction.FromPercent(percents[1]), MassFraction.FromPercent(percents[2]))
            : throw new FormatException($"'{text}' is not a grade; expected N-P2O5-K2O such as '20-10-20'.");
    }

    /// <summary>The grade in invariant culture.</summary>
    /// <returns>For instance <c>20-10-20</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The grade as text.</summary>
    /// <param name="format">Not used: a grade is the same in every system of units.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>20-10-20</c>.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        IFormatProvider culture = formatProvider ?? CultureInfo.InvariantCulture;
        return string.Join(
            "-", new[] { Nitrogen, Phosphate, Potash }.Select(share => (Boundary.MassFraction(share) * 100).ToString("0.##", culture)));
    }

    /// <summary>The share of an element that a grade states, as a fraction.</summary>
    internal double FractionOf(NutrientElement element) => element switch
    {
        NutrientElement.Nitrogen => Boundary.MassFraction(Nitrogen),
        NutrientElement.Phosphorus => Boundary.MassFraction(Phosphorus),
        NutrientElement.Potassium => Boundary.MassFraction(Potassium),
        _ => throw new ArgumentException($"{nameof(element)} was {element}; allowed: Nitrogen, Phosphorus, Potassium, which a grade states.", nameof(element)),
    };

    private static double Percent(MassFraction share, string parameter) =>
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "% by mass", parameter);
}
