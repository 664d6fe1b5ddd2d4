using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>How a shopping list gets home: which trips carry what.</summary>
/// <remarks>
/// Immutable; equal when items and vehicle are equal. The heaviest things go in first, each into the first trip that has weight and room
/// left. That is rarely more than the best packing needs; <see cref="FewestPossible"/> says what no packing can beat.
/// </remarks>
/// <example><code>
/// BagPurchase bags = Bags.ToBuy(Volume.FromLiters(800), Volume.FromLiters(40));
/// HaulItem compost = HaulItem.Of(bags, BulkDensities.Named("massdep-recycling-weights", "finished compost"));
/// HaulPlan plan = new([compost], new Vehicle(payload: Mass.FromKilograms(400), space: Volume.FromLiters(600)));
/// int trips = plan.Trips.Count; // 2
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record HaulPlan : IFormattable, IDisplayable
{
    /// <summary>Packs things into trips.</summary>
    /// <param name="items">What is to be carried.</param>
    /// <param name="vehicle">What carries it.</param>
    /// <exception cref="ArgumentOutOfRangeException">One thing alone is heavier than the payload or larger than the space.</exception>
    public HaulPlan(IReadOnlyList<HaulItem> items, Vehicle vehicle)
    {
        Items = ValueList<HaulItem>.Of(Guard.NotNull(items));
        Vehicle = Guard.NotNull(vehicle);
        double payloadKilograms = Boundary.Kilograms(vehicle.Payload);
        double spaceLitres = vehicle.Space is Volume space ? Boundary.Litres(space) : double.PositiveInfinity;
        foreach (HaulItem item in Items)
        {
            if (item.Count > 0 && Boundary.Kilograms(item.Mass) > payloadKilograms * (1 + Noise))
                throw Guard.Refused(nameof(items), Boundary.Kilograms(item.Mass), "kg", $"things up to the payload of {Guard.Number(payloadKilograms)} kg each");
            if (item.Count > 0 && Boundary.Litres(item.Volume) > spaceLitres * (1 + Noise))
                throw Guard.Refused(nameof(items), Boundary.Litres(item.Volume), "L", $"things up to the space of {Guard.Number(spaceLitres)} L each");
        }

        Trips = ValueList<Trip>.Of(Pack(Items, payloadKilograms, spaceLitres));
        double massKilograms = Items.Sum(item => item.Count * Boundary.Kilograms(item.Mass));
        double volumeLitres = Items.Sum(item => item.Count * Boundary.Litres(item.Volume));
        Mass = UnitsNet.Mass.FromKilograms(massKilograms);
        FewestPossible = Math.Max(
            WholeCount.Covering(massKilograms / payloadKilograms, "trips", nameof(items)),
            WholeCount.Covering(volumeLitres / spaceLitres, "trips", nameof(items)));
        Cautions = Items.Any(item => item.Count > 0 && Boundary.Kilograms(item.Mass) >= BedCautions.LiftingGuidelineKilograms)
            ? ValueList<Caution>.Of([BedCautions.HeavyLoad])
            : ValueList<Caution>.Empty;
    }

    /// <summary>What is to be carried.</summary>
    public IReadOnlyList<HaulItem> Items { get; }

    /// <summary>What carries it.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>The trips, in the order they were filled.</summary>
    public IReadOnlyList<Trip> Trips { get; }

    /// <summary>What everything weighs.</summary>
    public Mass Mass { get; }

    /// <summary>The trips below which no packing can be, by weight and by room.</summary>
    public int FewestPossible { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    private const double Noise = 1e-9;

    /// <summary>The plan in metric units and invariant culture.</summary>
    /// <returns>For instance <c>2 trips for 641 kg</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The plan as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number of trips and the mass.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Trips.Select((trip, index) => new DisplayRow(
                FormattableString.Invariant($"trip {index + 1}"),
                $"{string.Join(", ", trip.Items.Select(item => $"{QuantityText.Of(item.Count, style)} × {item.Name}"))}: {QuantityText.Of(trip.Mass, style)}")),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private static List<Trip> Pack(IReadOnlyList<HaulItem> items, double payloadKilograms, double spaceLitres)
    {
        List<(double Kilograms, double Litres, List<HaulItem> Items)> trips = [];
        foreach (HaulItem item in items.OrderByDescending(item => Boundary.Kilograms(item.Mass)).ThenByDescending(item => Boundary.Litres(item.Volume)))
        {
            double kilograms = Boundary.Kilograms(item.Mass);
            double litres = Boundary.Litres(item.Volume);
            int left = item.Count;
            for (int index = 0; left > 0; index++)
            {
                if (index == trips.Count)
                    trips.Add((0, 0, []));
                (double loadedKilograms, double loadedLitres, List<HaulItem> loaded) = trips[index];
                double most = Math.Min((payloadKilograms - loadedKilograms) / kilograms, (spaceLitres - loadedLitres) / litres);
                int taken = (int)Math.Min(left, Math.Floor(Math.Max(0, most * (1 + Noise) + Noise)));
                if (taken == 0)
                    continue;
                loaded.Add(new HaulItem(item.Name, taken, item.Mass, item.Volume));
                trips[index] = (loadedKilograms + taken * kilograms, loadedLitres + taken * litres, loaded);
                left -= taken;
            }
        }

        return [.. trips.Select(trip => new Trip(trip.Items))];
    }

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Trips.Count, style)} {(Trips.Count == 1 ? "trip" : "trips")} for {QuantityText.Of(Mass, style)}";
}
