using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The Green-Ampt parameters of a class of texture, with the spread between its soils.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record GreenAmptSoil
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <param name="porosity">The pores by volume.</param>
    /// <param name="effectivePorosity">The pores that empty: porosity less what stays as residual water.</param>
    /// <param name="suction">The suction at the wet front, as a height of water.</param>
    /// <param name="conductivity">How fast the wetted soil conducts water; above zero.</param>
    /// <exception cref="ArgumentNullException">A parameter is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The class is unknown, or the conductivity not above zero.</exception>
    public GreenAmptSoil(
        SoilTexture texture,
        Estimate<VolumeConcentration> porosity,
        Estimate<VolumeConcentration> effectivePorosity,
        Estimate<Length> suction,
        WaterRate conductivity)
    {
        Texture = Guard.Defined(texture);
        Porosity = Guard.NotNull(porosity);
        EffectivePorosity = Guard.NotNull(effectivePorosity);
        Suction = Guard.NotNull(suction);
        Guard.Positive(conductivity.MillimetresPerHour, "mm/h", nameof(conductivity));
        Conductivity = conductivity;
    }

    /// <summary>The table and its source.</summary>
    public static Method Method { get; } = new(
        "green-ampt-rawls",
        "Green-Ampt parameters by texture, Rawls et al. 1983",
        SoilWaterSources.Rawls1983,
        new Domain("about 5000 horizons of soils of the United States; not silt"));

    /// <summary>The USDA class.</summary>
    public SoilTexture Texture { get; }

    /// <summary>The pores by volume.</summary>
    public Estimate<VolumeConcentration> Porosity { get; }

    /// <summary>The pores that empty.</summary>
    public Estimate<VolumeConcentration> EffectivePorosity { get; }

    /// <summary>The suction at the wet front, as a height of water.</summary>
    public Estimate<Length> Suction { get; }

    /// <summary>How fast the wetted soil conducts water.</summary>
    public WaterRate Conductivity { get; }

    /// <summary>The model of such a soil, from how moist it is.</summary>
    /// <param name="effectiveSaturation">The share of the pores that empty which is filled, from 0 to 100 %.</param>
    /// <returns>The model, with the means of the class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %.</exception>
    public GreenAmpt From(Ratio effectiveSaturation)
    {
        double filled = Guard.Within(Boundary.Fraction(effectiveSaturation) * 100, 0, 100, "%", nameof(effectiveSaturation)) / 100;
        return new GreenAmpt(Conductivity, Suction.Value, VolumeConcentration.FromPercent((1 - filled) * Boundary.VolumeFraction(EffectivePorosity.Value) * 100));
    }

    /// <summary>The class, the suction and the conductivity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Texture}: suction {Suction.Value.Inches.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)} in, {Conductivity} [{Method.Source}]";
}
