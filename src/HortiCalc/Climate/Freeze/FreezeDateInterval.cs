using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Between which dates the date of a chance lies, by a confidence.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. An end is <see langword="null"/> where the record cannot rule out that there is no
/// date at all, because too many seasons have no freeze: then no date need be waited for, or feared. Days of the year have no order
/// across New Year, so that this is no <see cref="EstimateRange{T}"/>.
/// </remarks>
public sealed record FreezeDateInterval
{
    /// <summary>Describes an interval.</summary>
    /// <param name="earliest">The earlier end; <see langword="null"/> where it may be that there is no date (in spring).</param>
    /// <param name="date">The date itself; <see langword="null"/> where there is none.</param>
    /// <param name="latest">The later end; <see langword="null"/> where it may be that there is no date (in autumn), or none at all.</param>
    /// <param name="confidence">How often such an interval holds the true date, above 0 % and below 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is not above 0 % and below 100 %.</exception>
    public FreezeDateInterval(MonthDay? earliest, Estimate<MonthDay>? date, MonthDay? latest, Ratio confidence)
    {
        Earliest = earliest;
        Date = date;
        Latest = latest;
        Guard.Between(Boundary.Fraction(confidence) * 100, 0, 100, "%", nameof(confidence));
        Confidence = HouseUnits.Normalise(confidence);
    }

    /// <summary>The earlier end.</summary>
    public MonthDay? Earliest { get; }

    /// <summary>The date itself, with its method and cautions.</summary>
    public Estimate<MonthDay>? Date { get; }

    /// <summary>The later end.</summary>
    public MonthDay? Latest { get; }

    /// <summary>How often such an interval holds the true date.</summary>
    public Ratio Confidence { get; }

    /// <summary>The date and both ends.</summary>
    /// <returns>For instance <c>2 May (28 Apr to 7 May, 90 % confidence)</c>.</returns>
    public override string ToString() =>
        $"{Date?.Value.ToString() ?? "none"} ({Earliest?.ToString() ?? "none"} to {Latest?.ToString() ?? "none"}, {Guard.Number(Boundary.Fraction(Confidence) * 100)} % confidence)";
}
