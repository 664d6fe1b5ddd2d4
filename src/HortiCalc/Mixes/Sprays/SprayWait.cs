using System.Globalization;
using System.Text.Json.Serialization;
using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>When a sprayed place may be entered and when its crop may be picked.</summary>
public sealed record SprayWait
{
    /// <summary>Describes a wait.</summary>
    /// <param name="entryFrom">The first moment of entry without protection.</param>
    /// <param name="harvestFrom">The first moment of harvest; not before entry.</param>
    /// <exception cref="ArgumentOutOfRangeException">Harvest is before entry.</exception>
    public SprayWait(DateTime entryFrom, DateTime harvestFrom)
    {
        EntryFrom = entryFrom;
        HarvestFrom = harvestFrom >= entryFrom
            ? harvestFrom
            : throw new ArgumentOutOfRangeException(
                nameof(harvestFrom),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"harvestFrom was {harvestFrom:yyyy-MM-dd HH:mm}; allowed: {entryFrom:yyyy-MM-dd HH:mm} or later."));
    }

    /// <summary>The first moment of entry without protection.</summary>
    public DateTime EntryFrom { get; }

    /// <summary>The first moment of harvest.</summary>
    public DateTime HarvestFrom { get; }

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = MixCautions.Waiting;

    /// <summary>Both moments.</summary>
    /// <returns>For instance <c>entry from 2027-06-02 18:00, harvest from 2027-06-03 18:00</c>.</returns>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"entry from {EntryFrom:yyyy-MM-dd HH:mm}, harvest from {HarvestFrom:yyyy-MM-dd HH:mm}");
}
