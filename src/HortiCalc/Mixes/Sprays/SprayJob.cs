using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>An area, a spray volume and a tank: how many tanks, how much in the last, and how much product in each.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SprayJob job = new(Area.FromSquareMeters(1200), VolumeRate.FromLitresPerHectare(200), tank: Volume.FromLiters(10));
/// Volume inFull = job.ProductIn(job.Tank, VolumeRate.FromLitresPerHectare(5));       // 250 mL
/// Volume inLast = job.ProductIn(job.LastTank, VolumeRate.FromLitresPerHectare(5));   // 100 mL in the last 4 L
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SprayJob : IFormattable, IDisplayable
{
    private const double MostTanks = 1_000_000;

    /// <summary>Describes a job.</summary>
    /// <param name="area">The area to spray; more than 0.</param>
    /// <param name="rate">The spray on an area, as calibrated; more than 0.</param>
    /// <param name="tank">What the tank holds; more than 0, such that a million tanks are enough.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public SprayJob(Area area, VolumeRate rate, Volume tank)
    {
        Guard.Positive(Boundary.SquareMetres(area), "m²", nameof(area));
        Guard.Positive(rate.LitresPerHectare, "L/ha", nameof(rate));
        Rate = rate;
        double litres = Boundary.Litres(rate.Over(area));
        Guard.AtLeast(Guard.Positive(Boundary.Litres(tank), "L", nameof(tank)), litres / MostTanks, "L", nameof(tank));
        Area = HouseUnits.Normalise(area);
        Tank = HouseUnits.Normalise(tank);
    }

    /// <summary>The area to spray.</summary>
    public Area Area { get; }

    /// <summary>The spray on an area.</summary>
    public VolumeRate Rate { get; }

    /// <summary>What the tank holds.</summary>
    public Volume Tank { get; }

    /// <summary>All the spray of the job.</summary>
    [JsonIgnore]
    public Volume Total => Rate.Over(Area);

    /// <summary>How many full tanks; a hair less than a tank, left by binary fractions, counts as one.</summary>
    [JsonIgnore]
    public int FullTanks => (int)Math.Floor((Boundary.Litres(Total) / Boundary.Litres(Tank)) + 1e-9);

    /// <summary>What is left for a last tank that is not full; 0 where full tanks do it.</summary>
    [JsonIgnore]
    public Volume LastTank
    {
        get
        {
            double litres = Boundary.Litres(Total) - (FullTanks * Boundary.Litres(Tank));
            return Volume.FromLiters(litres > 1e-9 * Boundary.Litres(Tank) ? litres : 0);
        }
    }

    /// <summary>What to take care of: the label, drift, skin and eyes.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = MixCautions.Spraying;

    /// <summary>The product that goes into a volume of this spray.</summary>
    /// <param name="spray">The volume of spray: a full tank or the last; 0 or more.</param>
    /// <param name="product">The liquid product on an area, from the label.</param>
    /// <returns>The volume of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    public Volume ProductIn(Volume spray, VolumeRate product)
    {
        double litres = Guard.NotNegative(Boundary.Litres(spray), "L", nameof(spray));
        return Volume.FromLiters(litres * product.LitresPerHectare / Rate.LitresPerHectare);
    }

    /// <summary>The product that goes into a volume of this spray.</summary>
    /// <param name="spray">The volume of spray: a full tank or the last; 0 or more.</param>
    /// <param name="product">The powder or granule on an area, from the label; 0 or more.</param>
    /// <returns>The mass of product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is negative or not finite.</exception>
    public Mass ProductIn(Volume spray, AreaDensity product)
    {
        double litres = Guard.NotNegative(Boundary.Litres(spray), "L", nameof(spray));
        double gramsPerSquareMetre = Guard.NotNegative(Boundary.GramsPerSquareMetre(product), "g/m²", nameof(product));
        return Mass.FromGrams(litres * gramsPerSquareMetre * 10_000 / Rate.LitresPerHectare);
    }

    /// <summary>The job in metric units and invariant culture.</summary>
    /// <returns>One line: spray, tanks, last tank.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The job as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: spray, tanks, last tank.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string tank = QuantityText.Of(Tank, style);
        string part = QuantityText.Of(LastTank, style);
        string tanks = (FullTanks, Boundary.Litres(LastTank) > 0) switch
        {
            (0, _) => $"one tank of {tank}, filled to {part}",
            (1, false) => $"1 full tank of {tank}",
            (1, true) => $"1 full tank of {tank} and {part} in the last",
            (_, false) => $"{QuantityText.Of(FullTanks, style)} full tanks of {tank}",
            _ => $"{QuantityText.Of(FullTanks, style)} full tanks of {tank} and {part} in the last",
        };
        return $"{QuantityText.Of(Total, style)} of spray on {QuantityText.Of(Area, style)}: {tanks}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{QuantityText.Of(Total, style)} of spray")
    {
        Rows =
        [
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("area", QuantityText.Of(Area, style)),
            new DisplayRow("rate", Rate.ToString(style.Format, style.Culture)),
            new DisplayRow("full tanks", QuantityText.Of(FullTanks, style)),
            new DisplayRow("last tank", QuantityText.Of(LastTank, style)),
        ],
    };
}
