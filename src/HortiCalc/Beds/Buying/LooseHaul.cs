using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>Loose material fetched with a vehicle: how many trips, and how much at once.</summary>
/// <remarks>Immutable; equal when volume, density and vehicle are equal. Counted with the heavy end of what the density's source prints.</remarks>
/// <example><code>
/// LooseHaul gravel = new(
///     Volume.FromCubicMeters(1), BulkDensities.Named("uk-landscape-supplier", "decorative aggregate"),
///     new Vehicle(Mass.FromKilograms(500), Volume.FromLiters(900)));
/// int trips = gravel.Trips; // 4, limited by weight
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record LooseHaul : IFormattable, IDisplayable
{
    /// <summary>Counts the trips.</summary>
    /// <param name="volume">What is to be fetched; zero or more.</param>
    /// <param name="density">What it weighs, as wet as it will be.</param>
    /// <param name="vehicle">What carries it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public LooseHaul(Volume volume, BulkDensity density, Vehicle vehicle)
    {
        double litres = Guard.NotNegative(Boundary.Litres(volume), "L", nameof(volume));
        Volume = HouseUnits.Normalise(volume);
        Density = Guard.NotNull(density);
        Vehicle = Guard.NotNull(vehicle);
        double byWeightLitres = Boundary.Kilograms(vehicle.Payload) / Boundary.KilogramsPerCubicMetre(density.High) * 1000;
        double bySpaceLitres = vehicle.Space is UnitsNet.Volume space ? Boundary.Litres(space) : double.PositiveInfinity;
        LimitedBy = byWeightLitres <= bySpaceLitres ? LoadLimit.Weight : LoadLimit.Space;
        double atOnceLitres = Math.Min(byWeightLitres, bySpaceLitres);
        AtOnce = UnitsNet.Volume.FromLiters(atOnceLitres);
        Trips = WholeCount.Covering(litres / atOnceLitres, "trips", nameof(volume));
        Mass = density.MassOf(volume);
    }

    /// <summary>What is to be fetched.</summary>
    public Volume Volume { get; }

    /// <summary>What it weighs.</summary>
    public BulkDensity Density { get; }

    /// <summary>What carries it.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>How many trips.</summary>
    public int Trips { get; }

    /// <summary>The most that goes into one trip.</summary>
    public Volume AtOnce { get; }

    /// <summary>Whether weight or space sets that.</summary>
    public LoadLimit LimitedBy { get; }

    /// <summary>What all of it weighs, with its cautions.</summary>
    public Estimate<Mass> Mass { get; }

    /// <summary>The haul in metric units and invariant culture.</summary>
    /// <returns>For instance <c>4 trips of up to 313 L, limited by weight</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The haul as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The trips and what limits them.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            new DisplayRow("material", Density.Name),
            new DisplayRow("volume", QuantityText.Of(Volume, style)),
            new DisplayRow("mass", QuantityText.Of(Mass.Value, style)),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Trips, style)} {(Trips == 1 ? "trip" : "trips")} of up to {QuantityText.Of(AtOnce, style)},"
        + $" limited by {(LimitedBy == LoadLimit.Weight ? "weight" : "space")}";
}
