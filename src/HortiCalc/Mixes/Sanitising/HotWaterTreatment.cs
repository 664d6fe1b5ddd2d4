using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A bath of hot water for seed: how hot and how long, for a crop, as a source prints it.</summary>
/// <remarks>Sources disagree; a degree or two too much kills the seed. Try a few seeds of the lot first.</remarks>
/// <example><code>
/// foreach (HotWaterTreatment bath in HotWaterTreatment.For("tomato"))
///     Console.WriteLine($"{bath.Water}, {bath.Time} [{bath.Source}]");
/// </code></example>
public sealed record HotWaterTreatment
{
    /// <summary>Describes a bath.</summary>
    /// <param name="crop">The crop, in lower-case letters.</param>
    /// <param name="water">How hot; from 0 to 100 °C.</param>
    /// <param name="time">How long; more than 0.</param>
    /// <param name="source">Who says so.</param>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public HotWaterTreatment(string crop, Temperature water, Duration time, Source source)
    {
        Crop = Guard.NotBlank(crop);
        Guard.Within(Boundary.Celsius(water), 0, 100, "°C", nameof(water));
        Guard.Positive(Boundary.Days(time) * 1440, "min", nameof(time));
        Water = HouseUnits.Normalise(water);
        Time = HouseUnits.Normalise(time);
        Source = Guard.NotNull(source);
    }

    /// <summary>All baths, a line a crop and source.</summary>
    public static IReadOnlyList<HotWaterTreatment> All { get; } = ValueList<HotWaterTreatment>.Of(
    [
        .. Group(122, 25, "Brussels sprouts", "eggplant", "spinach", "cabbage", "tomato"),
        .. Group(122, 20, "broccoli", "cauliflower", "carrot", "collard", "kale", "rutabaga", "turnip"),
        .. Group(122, 15, "mustard", "radish"),
        .. Group(125, 30, "pepper"),
        .. Group(118, 30, "lettuce", "celery", "celeriac"),
        new HotWaterTreatment("tomato", Temperature.FromDegreesFahrenheit(125), Duration.FromMinutes(20), SanitisingSources.HotWaterConnecticut),
        new HotWaterTreatment("pepper", Temperature.FromDegreesFahrenheit(122), Duration.FromMinutes(25), SanitisingSources.HotWaterConnecticut),
    ]);

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>How hot.</summary>
    public Temperature Water { get; }

    /// <summary>How long.</summary>
    public Duration Time { get; }

    /// <summary>Who says so.</summary>
    public Source Source { get; }

    /// <summary>The baths for a crop.</summary>
    /// <param name="crop">The crop, in any case. Cucumbers and their kin are not for hot water.</param>
    /// <returns>One from each source.</returns>
    /// <exception cref="ArgumentException">No bath is held for the crop.</exception>
    public static IReadOnlyList<HotWaterTreatment> For(string crop)
    {
        Guard.NotBlank(crop);
        HotWaterTreatment[] found = [.. All.Where(bath => string.Equals(bath.Crop, crop, StringComparison.OrdinalIgnoreCase))];
        return found.Length > 0
            ? ValueList<HotWaterTreatment>.Of(found)
            : throw new ArgumentException(
                $"crop was '{crop}'; allowed: {string.Join(", ", All.Select(bath => bath.Crop).Distinct())}.", nameof(crop));
    }

    private static IEnumerable<HotWaterTreatment> Group(double fahrenheit, double minutes, params string[] crops) => crops.Select(crop =>
        new HotWaterTreatment(crop, Temperature.FromDegreesFahrenheit(fahrenheit), Duration.FromMinutes(minutes), SanitisingSources.HotWater));

    /// <summary>The bath in metric units and invariant culture.</summary>
    /// <returns>For instance <c>tomato: 50 °C for 25 min</c>.</returns>
    public override string ToString() => $"{Crop}: {QuantityText.Of(Water, TextStyle.Default)} for {QuantityText.Of(Time, TextStyle.Default)} [{Source}]";
}
