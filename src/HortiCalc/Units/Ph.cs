using System.Globalization;
using UnitsNet;

namespace HortiCalc.Units;

/// <summary>A pH: the negative decimal logarithm of the hydrogen-ion activity in moles per litre.</summary>
/// <remarks>
/// From 0 to 14. A difference between two is a plain number of pH units; a sum has no meaning and no operator.
/// The default value is pH 0. Whether a soil's pH was read in water or in calcium chloride is the caller's to know:
/// methods say which they expect.
/// </remarks>
public readonly record struct Ph : IComparable<Ph>, IFormattable
{
    /// <summary>Makes a pH.</summary>
    /// <param name="value">From 0 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not from 0 to 14.</exception>
    public Ph(double value) => Value = Guard.Within(value, 0, 14, "pH");

    /// <summary>The number, from 0 to 14.</summary>
    public double Value { get; }

    /// <summary>The hydrogen-ion activity, taken as a concentration: 10 to the power of minus the pH, in moles per litre.</summary>
    public Molarity HydrogenActivity => Molarity.FromMolesPerLiter(Math.Pow(10, -Value));

    /// <summary>The pH of a hydrogen-ion activity.</summary>
    /// <param name="activity">The activity, taken as a concentration; from 10⁻¹⁴ to 1 mol/L.</param>
    /// <returns>The negative decimal logarithm of the activity in moles per litre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The activity is outside 10⁻¹⁴ to 1 mol/L.</exception>
    public static Ph FromHydrogenActivity(Molarity activity)
    {
        double molesPerLitre = Guard.Positive(activity.MolesPerLiter, "mol/L", nameof(activity));
        double value = -Math.Log10(molesPerLitre);
        return value is >= 0 and <= 14
            ? new Ph(value)
            : throw Guard.Refused(nameof(activity), molesPerLitre, "mol/L", "from 1E-14 to 1 mol/L");
    }

    /// <summary>The difference in pH units.</summary>
    /// <param name="left">The pH to subtract from.</param>
    /// <param name="right">The pH to subtract.</param>
    /// <returns>The difference; a plain number.</returns>
    public static double operator -(Ph left, Ph right) => left.Value - right.Value;

    /// <summary>The difference in pH units.</summary>
    /// <param name="left">The pH to subtract from.</param>
    /// <param name="right">The pH to subtract.</param>
    /// <returns>The difference; a plain number.</returns>
    public static double Subtract(Ph left, Ph right) => left - right;

    /// <summary>Whether one is lower than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <(Ph left, Ph right) => left.Value < right.Value;

    /// <summary>Whether one is higher than the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >(Ph left, Ph right) => left.Value > right.Value;

    /// <summary>Whether one is at most the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator <=(Ph left, Ph right) => left.Value <= right.Value;

    /// <summary>Whether one is at least the other.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns>The comparison of the numbers.</returns>
    public static bool operator >=(Ph left, Ph right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(Ph other) => Value.CompareTo(other.Value);

    /// <summary>The pH with its letters, in invariant culture and with every digit.</summary>
    /// <returns>For instance <c>pH 6.5</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The pH with its letters; every digit is kept.</summary>
    /// <param name="format">Not used: a pH reads the same everywhere.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>pH 6.5</c>.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        "pH " + Value.ToString("R", formatProvider ?? CultureInfo.InvariantCulture);
}
