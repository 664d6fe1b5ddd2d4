using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A medium in a container after it was soaked and has drained: container capacity, where water lies and where air.</summary>
/// <remarks>
/// <para>Gravity draws at each height with the height above the free water, which stands at the base where the holes are; so the medium is wettest at the base,
/// and a flat pot of the same medium is wetter than a tall one. The retention curve is integrated over the true shape (R. R. Milks, W. C. Fonteno and
/// R. A. Larson, Hydrology of Horticultural Substrates II, Journal of the American Society for Horticultural Science 114, 1989).</para>
/// <para>Immutable; equal when curve, container, headspace and water table are.</para>
/// </remarks>
/// <example><code>
/// VanGenuchtenRetention sand = new(Ratio.FromPercent(1.3), Ratio.FromPercent(33.7), ReciprocalLength.FromInverseMeters(20.5), 2.92);
/// Container pot = Container.RoundTapered(Length.FromCentimeters(17), Length.FromCentimeters(12), Length.FromCentimeters(13));
/// DrainedMedium drained = new(sand, pot, headspace: Length.FromCentimeters(1));
/// Console.WriteLine(drained);                                            // water and air as shares of the medium
/// Console.WriteLine(drained.AirAt(Length.FromCentimeters(12)));          // near the top
/// Console.WriteLine(drained.AvailableWater(Length.FromCentimeters(100)));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record DrainedMedium : IFormattable, IDisplayable
{
    private const int Panels = 24;
    private const int PointsPerPanel = 16;

    /// <summary>Drains a medium in a container.</summary>
    /// <param name="curve">The retention curve of the medium, as packed in the container.</param>
    /// <param name="container">The container.</param>
    /// <param name="headspace">The room left below the brim; from zero to less than the height.</param>
    /// <param name="waterTable">How far the free water stands below the base: zero for a pot on a plate or in the air, more on a capillary mat or sand
    /// bed that draws. Zero or more.</param>
    /// <exception cref="ArgumentNullException">The curve or the container is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length lies outside what is said above, or the filled part holds nothing.</exception>
    public DrainedMedium(RetentionCurve curve, Container container, Length headspace, Length waterTable = default)
    {
        Curve = Guard.NotNull(curve);
        Container = Guard.NotNull(container);
        double heightMetres = Boundary.Metres(container.Height);
        double headspaceMetres = Boundary.Metres(headspace);
        if (!(headspaceMetres >= 0 && headspaceMetres < heightMetres))
            throw Guard.Refused(nameof(headspace), headspaceMetres, "m", $"from 0 to less than {Guard.Number(heightMetres)} m, the height of the container");
        Headspace = HouseUnits.Normalise(headspace);
        double belowMetres = Guard.NotNegative(Boundary.Metres(waterTable), "m", nameof(waterTable));
        WaterTable = HouseUnits.Normalise(waterTable);

        FillMetres = heightMetres - headspaceMetres;
        MediumCubicMetres = Guard.Positive(container.CubicMetresTo(FillMetres), "m³", nameof(container));
        WaterCubicMetres = Integrate(metres => curve.WaterFraction(metres + belowMetres));
    }

    /// <summary>The retention curve of the medium.</summary>
    public RetentionCurve Curve { get; }

    /// <summary>The container.</summary>
    public Container Container { get; }

    /// <summary>The room left below the brim.</summary>
    public Length Headspace { get; }

    /// <summary>How far the free water stands below the base.</summary>
    public Length WaterTable { get; }

    /// <summary>The volume of the medium.</summary>
    [JsonIgnore]
    public Volume Medium => Volume.FromLiters(MediumCubicMetres * 1000);

    /// <summary>The water in the medium.</summary>
    [JsonIgnore]
    public Volume Water => Volume.FromLiters(WaterCubicMetres * 1000);

    /// <summary>The air in the medium.</summary>
    [JsonIgnore]
    public Volume Air => Volume.FromLiters(1000 * Math.Max(0, Curve.SaturatedFraction * MediumCubicMetres - WaterCubicMetres));

    /// <summary>Container capacity: the water as a share of the medium's volume.</summary>
    [JsonIgnore]
    public Ratio ContainerCapacity => Ratio.FromPercent(100 * WaterCubicMetres / MediumCubicMetres);

    /// <summary>Air space: the air as a share of the medium's volume.</summary>
    [JsonIgnore]
    public Ratio AirSpace => Ratio.FromPercent(100 * Math.Max(0, Curve.SaturatedFraction - WaterCubicMetres / MediumCubicMetres));

    /// <summary>What is neither water nor air, as a share of the medium's volume: the solids, and pores that water never fills.</summary>
    [JsonIgnore]
    public Ratio Solids => Ratio.FromPercent(100 * (1 - Curve.SaturatedFraction));

    /// <summary>What to take care of when such an answer is used.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; } = ValueList<Caution>.Of([PhysicsCautions.Drying, PhysicsCautions.Packing]);

    private double FillMetres { get; }

    private double MediumCubicMetres { get; }

    private double WaterCubicMetres { get; }

    /// <summary>The water at a height above the base.</summary>
    /// <param name="height">The height; from zero to the top of the medium.</param>
    /// <returns>The water as a share of the volume there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height lies outside the medium.</exception>
    public Ratio WaterAt(Length height) => Ratio.FromPercent(100 * WaterFractionAt(height));

    /// <summary>The air at a height above the base.</summary>
    /// <param name="height">The height; from zero to the top of the medium.</param>
    /// <returns>The air as a share of the volume there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height lies outside the medium.</exception>
    public Ratio AirAt(Length height) => Ratio.FromPercent(100 * (Curve.SaturatedFraction - WaterFractionAt(height)));

    /// <summary>The water that plants can take until the medium is as dry as a suction leaves it.</summary>
    /// <param name="suction">The suction; zero or more: about 100 cm of water in pots, 150 m where plants wilt for good.</param>
    /// <returns>The water above what the medium holds at that suction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The suction is negative.</exception>
    public Volume AvailableWater(Length suction)
    {
        double left = Curve.WaterFraction(Guard.NotNegative(Boundary.Metres(suction), "m", nameof(suction)));
        double belowMetres = Boundary.Metres(WaterTable);
        return Volume.FromLiters(1000 * Integrate(metres => Math.Max(0, Curve.WaterFraction(metres + belowMetres) - left)));
    }

    /// <summary>How high the medium stands too wet for roots: the perched water.</summary>
    /// <remarks>It depends on the medium and not on the container. What a coarse layer at the base does is disputed, and is not computed.</remarks>
    /// <param name="leastAir">The air below which it counts as too wet, as a share of the volume; above zero and below <see cref="RetentionCurve.Saturated"/>
    /// less <see cref="RetentionCurve.Residual"/>.</param>
    /// <returns>The height above the base up to which there is less air; the whole fill where there is less everywhere, zero where there is more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside what is said above.</exception>
    public Length PerchedHeight(Ratio leastAir)
    {
        double percent = Guard.Between(
            Boundary.Fraction(leastAir) * 100, 0, 100 * (Curve.SaturatedFraction - Curve.ResidualFraction), "%", nameof(leastAir));
        double metres = Boundary.Metres(Curve.SuctionAt(Ratio.FromPercent(100 * Curve.SaturatedFraction - percent))) - Boundary.Metres(WaterTable);
        return Length.FromMeters(Math.Clamp(metres, 0, FillMetres));
    }

    /// <summary>The drained medium in metric units and invariant culture.</summary>
    /// <returns>For instance <c>1.94 L of medium: 27 % water, 6.7 % air, 66.3 % solids</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The drained medium as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The volume, and the shares of water, air and solids.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            new DisplayRow("medium", QuantityText.Of(Curve, style)),
            new DisplayRow("container", QuantityText.Of(Container, style)),
            new DisplayRow("water", QuantityText.Of(Water, style)),
            new DisplayRow("air", QuantityText.Of(Air, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Medium, style)} of medium: {QuantityText.Of(ContainerCapacity, style)} water, {QuantityText.Of(AirSpace, style)} air, {QuantityText.Of(Solids, style)} solids";

    private double WaterFractionAt(Length height) =>
        Curve.WaterFraction(Guard.Within(Boundary.Metres(height), 0, FillMetres, "m", nameof(height)) + Boundary.Metres(WaterTable));

    /// <summary>
    /// The integral of a share over the medium. Heights are taken as the square of an even step, which smooths the root-like beginning of the curves; Gauss
    /// and Legendre's rule on each panel.
    /// </summary>
    private double Integrate(Func<double, double> shareAtMetres)
    {
        double sum = 0;
        for (int panel = 0; panel < Panels; panel++)
        {
            sum += GaussLegendreRule.Integrate(
                step => Container.SquareMetresAt(FillMetres * step * step) * shareAtMetres(FillMetres * step * step) * 2 * FillMetres * step,
                (double)panel / Panels,
                (panel + 1.0) / Panels,
                PointsPerPanel);
        }

        return sum;
    }
}
