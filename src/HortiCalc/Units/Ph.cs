using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A pH: the negative decimal logarithm of the hydrogen-ion activity in moles per litre.</summary>
/// <remarks>
/// From 0 to 14. A difference between two is a plain number of pH units; a sum has no meaning and no operator.
/// The default value is pH 0. Whether a soil's pH was read in water or in calcium chloride is the caller's to know:
/// methods say which they expect.
/// </remarks>
/// <example><code>
/// Ph wanted = new(6.5);
/// Ph measured = Ph.Parse("pH 5.8", CultureInfo.InvariantCulture);
/// double toRaise = wanted - measured;   // 0.7
/// </code></example>
public readonly record struct Ph : IComparable<Ph>, IComparisonOperators<Ph, Ph, bool>, IFormattable, ISpanParsable<Ph>
{
    private const double Lowest = 0;
    private const double Highest = 14;

    /// <summary>Makes a pH.</summary>
    /// <param name="value">From 0 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not from 0 to 14.</exception>
    public Ph(double value) => Value = Guard.Within(value, Lowest, Highest, "pH");

    /// <summary>The number, from 0 to 14.</summary>
    public double Value { get; }

    /// <summary>The hydrogen-ion activity, taken as a concentration: 10 to the power of minus the pH, in moles per litre.</summary>
    public Molarity HydrogenActivity => Molarity.FromMolesPerLiter(MolesPerLitre(Value));

    /// <summary>The pH of a hydrogen-ion activity.</summary>
    /// <param name="activity">The activity, taken as a concentration; from 10⁻¹⁴ to 1 mol/L.</param>
    /// <returns>The negative decimal logarithm of the activity in moles per litre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The activity is outside 10⁻¹⁴ to 1 mol/L.</exception>
    public static Ph FromHydrogenActivity(Molarity activity)
    {
        double molesPerLitre = Guard.Positive(Boundary.MolesPerLitre(activity), "mol/L", nameof(activity));
        double value = -Math.Log10(molesPerLitre);
        return value is >= Lowest and <= Highest
            ? new Ph(value + 0.0)
            : throw Guard.Refused(nameof(activity), molesPerLitre, "mol/L", "from 1E-14 to 1 mol/L");
    }

    /// <summary>
    /// The pH of the mean hydrogen-ion activity, for solutions: irrigation water, leachate, stock solutions in equal parts.
    /// </summary>
    /// <param name="solutions">The pH of each; at least one.</param>
    /// <returns>The pH of the mean activity. It lies nearer to the most acid one than the plain mean does.</returns>
    /// <remarks>
    /// A pH is a logarithm, so the activities are averaged and the mean is turned back into a pH: U.S. Food and Drug
    /// Administration, Laboratory Manual, Volume III, 4.11 Statistics Applied to pH in Canned Foods, 2013,
    /// http://www.fda.gov/ScienceResearch/FieldScience/LaboratoryManual/ucm174295.htm. It describes readings, not what a
    /// blend of buffered waters would read: alkalinity decides that. For soils see <see cref="MeanOfSoilSamples"/>.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no solution.</exception>
    /// <example><code>
    /// Ph mean = Ph.MeanOfSolutions(new Ph(5.2), new Ph(5.4), new Ph(5.9));   // pH 5.41, where the plain mean is 5.5
    /// </code></example>
    public static Ph MeanOfSolutions(params ReadOnlySpan<Ph> solutions)
    {
        double sumMolesPerLitre = 0;
        (double lowest, double highest) = Extremes(solutions, nameof(solutions));
        foreach (Ph solution in solutions)
            sumMolesPerLitre += MolesPerLitre(solution.Value);
        return new Ph(Math.Clamp(-Math.Log10(sumMolesPerLitre / solutions.Length), lowest, highest));
    }

    /// <summary>The plain mean of pH readings, for soil samples that stand for one bed or field.</summary>
    /// <param name="samples">The pH of each, all read in the same way; at least one.</param>
    /// <returns>The arithmetic mean of the readings.</returns>
    /// <remarks>
    /// Soil colloids buffer, and the pH of a mixed sample is close to the mean of the readings, not to that of the activities:
    /// Conyers, European Journal of Soil Science, 2026, https://doi.org/10.1111/ejss.70329. Layers are another matter: the mean of
    /// a sour layer and a good one hides the sour one. For solutions see <see cref="MeanOfSolutions"/>.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no sample.</exception>
    /// <example><code>
    /// Ph mean = Ph.MeanOfSoilSamples(new Ph(5.2), new Ph(5.4), new Ph(5.9));   // pH 5.5
    /// </code></example>
    public static Ph MeanOfSoilSamples(params ReadOnlySpan<Ph> samples)
    {
        double sum = 0;
        (double lowest, double highest) = Extremes(samples, nameof(samples));
        foreach (Ph sample in samples)
            sum += sample.Value;
        return new Ph(Math.Clamp(sum / samples.Length, lowest, highest));
    }

    /// <summary>The difference in pH units.</summary>
    /// <param name="left">The pH to subtract from.</param>
    /// <param name="right">The pH to subtract.</param>
    /// <returns>The difference; a plain number.</returns>
    public static double operator -(Ph left, Ph right) => left.Value - right.Value;

    /// <inheritdoc cref="op_Subtraction"/>
    public static double Subtract(Ph left, Ph right) => left - right;

    /// <inheritdoc/>
    public static bool operator <(Ph left, Ph right) => left.Value < right.Value;

    /// <inheritdoc/>
    public static bool operator >(Ph left, Ph right) => left.Value > right.Value;

    /// <inheritdoc/>
    public static bool operator <=(Ph left, Ph right) => left.Value <= right.Value;

    /// <inheritdoc/>
    public static bool operator >=(Ph left, Ph right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(Ph other) => Value.CompareTo(other.Value);

    /// <summary>The pH with its letters, to two decimals, in invariant culture.</summary>
    /// <returns>For instance <c>pH 6.5</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The pH with its letters.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing for two decimals (a pH is the same in all units), <c>R</c> for every digit.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>pH 6.5</c>.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => "pH " + format switch
    {
        null or "" or "G" or "g" or "M" or "m" or "U" or "u" => QuantityNotation<Ph>.Rounded(Value, 2, formatProvider),
        "R" or "r" => QuantityNotation<Ph>.EveryDigit(Value, formatProvider),
        _ => throw new FormatException($"'{format}' is not a format; allowed: M, U (two decimals), R (every digit)."),
    };

    /// <summary>Reads a pH, with or without its letters.</summary>
    /// <param name="s">The text, for instance <c>pH 6.5</c> or <c>6.5</c>.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <returns>The pH.</returns>
    /// <exception cref="FormatException">The text is not a pH from 0 to 14.</exception>
    public static Ph Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => TryParse(s, provider, out Ph result)
        ? result
        : throw new FormatException(
            $"pH: '{s}' is not a number from 0 to 14 in the culture given; expected for instance '{new Ph(6.5).ToString(null, provider)}'.");

    /// <inheritdoc cref="Parse(ReadOnlySpan{char}, IFormatProvider?)"/>
    /// <exception cref="ArgumentNullException">The text is <see langword="null"/>.</exception>
    public static Ph Parse(string s, IFormatProvider? provider) => Parse(Guard.NotNull(s).AsSpan(), provider);

    /// <summary>Reads a pH, with or without its letters, where the text is one.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">The culture, or <see langword="null"/> for the invariant one; never that of the machine.</param>
    /// <param name="result">The pH.</param>
    /// <returns>Whether the text is a pH from 0 to 14.</returns>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Ph result)
    {
        ReadOnlySpan<char> number = s.TrimStart();
        if (number.StartsWith("pH", StringComparison.OrdinalIgnoreCase))
            number = number[2..];
        bool read = double.TryParse(number, NumberStyles.Float, provider ?? CultureInfo.InvariantCulture, out double value)
            && value is >= Lowest and <= Highest;
        result = read ? new Ph(value) : default;
        return read;
    }

    /// <inheritdoc cref="TryParse(ReadOnlySpan{char}, IFormatProvider?, out Ph)"/>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Ph result) =>
        TryParse(s.AsSpan(), provider, out result);

    private static double MolesPerLitre(double value) => Math.Pow(10, -value);

    private static (double Lowest, double Highest) Extremes(ReadOnlySpan<Ph> values, string parameter)
    {
        if (values.IsEmpty)
            throw new ArgumentException($"{parameter} was empty; allowed: one pH or more.", parameter);
        double lowest = Highest;
        double highest = Lowest;
        foreach (Ph value in values)
        {
            lowest = Math.Min(lowest, value.Value);
            highest = Math.Max(highest, value.Value);
        }

        return (lowest, highest);
    }
}
