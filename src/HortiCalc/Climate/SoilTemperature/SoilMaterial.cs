using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The thermal properties of a soil, or of what soil is made of, at one wetness, as a source prints them.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. <see cref="Diffusivity"/> is the printed one; printed to two digits, it differs by a few
/// per cent from the quotient of the two others.
/// </remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SoilMaterial : IFormattable, IDisplayable
{
    /// <summary>Describes a material.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="water">Its share of water by volume, 0 for dry; <see langword="null"/> where that has no meaning.</param>
    /// <param name="density">Its density, water included; greater than 0.</param>
    /// <param name="heatCapacity">The heat that warms a volume of it by a degree; greater than 0.</param>
    /// <param name="conductivity">How well it conducts heat; greater than 0.</param>
    /// <param name="diffusivity">How fast it levels out temperatures; greater than 0.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public SoilMaterial(
        string name,
        VolumeConcentration? water,
        Density density,
        VolumetricHeatCapacity heatCapacity,
        ThermalConductivity conductivity,
        ThermalDiffusivity diffusivity,
        Source source)
    {
        Name = Guard.NotBlank(name);
        if (water is VolumeConcentration share)
        {
            Guard.Within(Boundary.VolumeFraction(share) * 100, 0, 100, "%", nameof(water));
            Water = HouseUnits.Normalise(share);
        }

        Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(density));
        Guard.Positive(Boundary.JoulesPerCubicMetreKelvin(heatCapacity), "J/(m³·K)", nameof(heatCapacity));
        Guard.Positive(Boundary.WattsPerMetreKelvin(conductivity), "W/(m·K)", nameof(conductivity));
        Guard.Positive(diffusivity.SquareMillimetresPerSecond, "mm²/s", nameof(diffusivity));
        Density = HouseUnits.Normalise(density);
        HeatCapacity = HouseUnits.Normalise(heatCapacity);
        Conductivity = HouseUnits.Normalise(conductivity);
        Diffusivity = diffusivity;
        Source = Guard.NotNull(source);
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its share of water by volume; <see langword="null"/> where that has no meaning.</summary>
    public VolumeConcentration? Water { get; }

    /// <summary>Its density, water included.</summary>
    public Density Density { get; }

    /// <summary>The heat that warms a volume of it by a degree.</summary>
    public VolumetricHeatCapacity HeatCapacity { get; }

    /// <summary>How well it conducts heat.</summary>
    public ThermalConductivity Conductivity { get; }

    /// <summary>How fast it levels out temperatures.</summary>
    public ThermalDiffusivity Diffusivity { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The material in metric units and invariant culture.</summary>
    /// <returns>Name, wetness, diffusivity and source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The material as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Name, wetness, diffusivity and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(NameWords(style))
    {
        Rows =
        [
            new DisplayRow("density", QuantityText.Of(Density, style)),
            new DisplayRow("heat capacity", $"{QuantityText.Of(Boundary.JoulesPerCubicMetreKelvin(HeatCapacity) / 1_000_000, style)} MJ/(m³·K)"),
            new DisplayRow("conductivity", $"{QuantityText.Of(Boundary.WattsPerMetreKelvin(Conductivity), style)} W/(m·K)"),
            new DisplayRow("diffusivity", QuantityText.Of(Diffusivity, style)),
            new DisplayRow("source", Source.ToString()),
        ],
    };

    private string NameWords(TextStyle style) => Water is VolumeConcentration share ? $"{Name}, water {QuantityText.Of(share, style)}" : Name;

    private string ToString(TextStyle style) => $"{NameWords(style)}: {QuantityText.Of(Diffusivity, style)} [{Source}]";
}
