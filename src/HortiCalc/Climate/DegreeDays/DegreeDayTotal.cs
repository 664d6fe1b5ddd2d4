using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The degree days of a run of days by one method and cutoff.</summary>
/// <remarks>Immutable; equal when method, cutoff and sum are.</remarks>
public sealed record DegreeDayTotal : IFormattable
{
    /// <summary>Holds a total.</summary>
    /// <param name="method">The method that counted.</param>
    /// <param name="cutoff">What happened above the upper threshold.</param>
    /// <param name="sum">The degree days.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The cutoff is none of the defined ones.</exception>
    public DegreeDayTotal(DegreeDayMethod method, UpperCutoff cutoff, ThermalTime sum)
    {
        Method = Guard.NotNull(method);
        Cutoff = Guard.Defined(cutoff);
        Sum = sum;
    }

    /// <summary>The method that counted.</summary>
    public DegreeDayMethod Method { get; }

    /// <summary>What happened above the upper threshold.</summary>
    public UpperCutoff Cutoff { get; }

    /// <summary>The degree days.</summary>
    public ThermalTime Sum { get; }

    internal string Label => $"{Method}, cutoff {DegreeDayText.Of(Cutoff)}";

    /// <summary>The total in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1616.1 °C·d by single sine, cutoff none</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The total as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The sum, the method and the cutoff.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) => $"{QuantityText.Of(Sum, style)} by {Label}";
}
