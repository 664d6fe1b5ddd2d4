using System.Globalization;

namespace HortiCalc.Reference;

/// <summary>One published value beside what the library gives.</summary>
public sealed record Comparison(ReferenceValue Value, Computed Computed)
{
    public static Comparison Run(ReferenceValue value) => new(value, Calculations.All[value.Calculation](value.Inputs));

    public double Difference => Value.IsText ? 0 : Value.DifferenceTo(Computed.Number);

    /// <summary>Whether the printed value is met. A hair is allowed for the arithmetic of binary fractions.</summary>
    public bool Agrees => Value.IsText
        ? Computed.Text == Value.Expected
        : Difference <= Value.Tolerance * (1 + 1e-9) + 1e-12 * Math.Abs(Value.Number);

    /// <summary>Whether the outcome is the one recorded: agreement, or disagreement where that is known.</summary>
    public bool IsAsRecorded => Agrees == (Value.Status == ReferenceStatus.Agrees);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Value.Key}: {Value.Calculation}({Value.Inputs}) printed {Value.Expected} {Value.Unit}, computed {(Value.IsText ? Computed.Text : Computed.Number.ToString("R", CultureInfo.InvariantCulture))}, difference {Difference:G6}, tolerance {Value.Tolerance:G6}, recorded as {Value.Status}; {Value.Source.Title}, {Value.Source.Publisher}, {Value.Source.Year}");
}
