using System.Globalization;
using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>So many parts of one measure: three halves of a tablespoon.</summary>
public sealed record MeasureCount
{
    // Halves, quarters and eighths are told by eye; more parts are marks.
    private const int MostFractions = 8;

    /// <summary>Describes a count.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="count">How many of its parts; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1.</exception>
    public MeasureCount(KitchenMeasure measure, int count)
    {
        Measure = Guard.NotNull(measure);
        Count = Guard.AtLeast(count, 1);
    }

    /// <summary>The measure.</summary>
    public KitchenMeasure Measure { get; }

    /// <summary>How many of its parts.</summary>
    public int Count { get; }

    /// <summary>The volume.</summary>
    [JsonIgnore]
    public Volume Volume => Volume.FromLiters(Boundary.Litres(Measure.Volume) * Count / Measure.Parts);

    /// <summary>The count in words of the kitchen.</summary>
    /// <returns>For instance <c>1 1/2 US tablespoons</c>, or <c>7 mL with a 10 mL syringe</c> where there are marks to read.</returns>
    public override string ToString()
    {
        if (Measure.Parts > MostFractions)
            return $"{QuantityText.Of(Volume, TextStyle.Default)} with a {Measure.Name}";
        (int whole, int rest) = Math.DivRem(Count, Measure.Parts);
        int common = (int)System.Numerics.BigInteger.GreatestCommonDivisor(rest, Measure.Parts);
        string fraction = rest == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{rest / common}/{Measure.Parts / common}");
        string number = (whole, rest) switch
        {
            (0, _) => fraction,
            (_, 0) => whole.ToString(CultureInfo.InvariantCulture),
            _ => string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}"),
        };
        return Count > Measure.Parts ? $"{number} {Measure.Name}s" : $"{number} {Measure.Name}";
    }
}
