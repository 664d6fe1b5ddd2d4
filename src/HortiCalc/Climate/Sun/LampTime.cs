using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How long a lamp must burn each day to bring the light of a place up to what a crop needs.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LampTime : IFormattable, IDisplayable
{
    /// <summary>Describes how long a lamp must burn.</summary>
    /// <param name="needed">The light the crop needs.</param>
    /// <param name="natural">The light there is without the lamp.</param>
    /// <param name="lamp">The light of the lamp at the leaves.</param>
    /// <param name="time">How long it must burn each day; more than 24 h where it is too weak.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public LampTime(
        DailyLightIntegral needed,
        DailyLightIntegral natural,
        PhotonFluxDensity lamp,
        Duration time,
        IReadOnlyList<Caution>? cautions = null)
    {
        Guard.NotNegative(Boundary.Days(time) * 24, "h", nameof(time));
        Needed = needed;
        Natural = natural;
        Lamp = lamp;
        Time = HouseUnits.Normalise(time);
        Cautions = ValueList<Caution>.Of(cautions);
    }

    /// <summary>The light the crop needs.</summary>
    public DailyLightIntegral Needed { get; }

    /// <summary>The light there is without the lamp.</summary>
    public DailyLightIntegral Natural { get; }

    /// <summary>The light of the lamp at the leaves.</summary>
    public PhotonFluxDensity Lamp { get; }

    /// <summary>How long it must burn each day; more than 24 h where it is too weak.</summary>
    public Duration Time { get; }

    /// <summary>Whether a day is long enough: otherwise a stronger lamp is needed.</summary>
    [JsonIgnore]
    public bool FitsInADay => Boundary.Days(Time) <= 1;

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The time in invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The time as one line of text.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing: hours and moles are the same in every country.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Words(style))
    {
        Rows =
        [
            new DisplayRow("needed", QuantityText.Of(Needed, style)),
            new DisplayRow("without the lamp", QuantityText.Of(Natural, style)),
            new DisplayRow("lamp", QuantityText.Of(Lamp, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private string Words(TextStyle style)
    {
        string hours = $"{QuantityText.Number(Boundary.Days(Time) * 24, style)} h a day";
        return FitsInADay ? hours : $"not reached in 24 h ({hours}): a stronger lamp is needed";
    }

    private string ToString(TextStyle style)
    {
        string cautions = Cautions.Count == 0 ? "" : Cautions.Count == 1 ? "; 1 caution" : $"; {Cautions.Count} cautions";
        return $"{Words(style)}, from {QuantityText.Of(Natural, style)} to {QuantityText.Of(Needed, style)} with {QuantityText.Of(Lamp, style)}{cautions}";
    }
}
