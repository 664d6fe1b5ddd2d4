using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The average soil of a class of texture: its particles, density, and how it holds and conducts water.</summary>
/// <remarks>Immutable; equal when all members are equal. The columns are averaged one by one, so that they need not follow from one another.</remarks>
public sealed record AverageSoil
{
    /// <summary>Holds the averages of a class.</summary>
    /// <param name="texture">The USDA class.</param>
    /// <param name="sand">The sand by mass, from 0 to 100 %.</param>
    /// <param name="clay">The clay by mass, from 0 to 100 %.</param>
    /// <param name="bulkDensity">The mass of dry soil per volume; above zero.</param>
    /// <param name="fieldCapacity">The water after drainage, not below the wilting point, up to 100 %.</param>
    /// <param name="wiltingPoint">The water at which plants wilt for good, from 0 %.</param>
    /// <param name="porosity">The pores by volume, not below field capacity, up to 100 %.</param>
    /// <param name="saturatedConductivity">How fast it conducts water when every pore is full.</param>
    /// <param name="slope">The exponent b of the curve of Clapp and Hornberger; above zero.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AverageSoil(
        SoilTexture texture,
        MassFraction sand,
        MassFraction clay,
        Density bulkDensity,
        VolumeConcentration fieldCapacity,
        VolumeConcentration wiltingPoint,
        VolumeConcentration porosity,
        WaterRate saturatedConductivity,
        double slope,
        Source source)
    {
        Texture = Guard.Defined(texture);
        Guard.Within(Boundary.MassFraction(sand) * 100, 0, 100, "%", nameof(sand));
        Guard.Within(Boundary.MassFraction(clay) * 100, 0, 100, "%", nameof(clay));
        Guard.Positive(Boundary.KilogramsPerCubicMetre(bulkDensity), "kg/m³", nameof(bulkDensity));
        double pores = Guard.Within(Boundary.VolumeFraction(porosity) * 100, 0, 100, "%", nameof(porosity));
        double drained = Guard.Within(Boundary.VolumeFraction(fieldCapacity) * 100, 0, pores, "%", nameof(fieldCapacity));
        Guard.Within(Boundary.VolumeFraction(wiltingPoint) * 100, 0, drained, "%", nameof(wiltingPoint));
        Sand = HouseUnits.Normalise(sand);
        Clay = HouseUnits.Normalise(clay);
        BulkDensity = HouseUnits.Normalise(bulkDensity);
        FieldCapacity = HouseUnits.Normalise(fieldCapacity);
        WiltingPoint = HouseUnits.Normalise(wiltingPoint);
        Porosity = HouseUnits.Normalise(porosity);
        SaturatedConductivity = saturatedConductivity;
        Slope = Guard.Positive(slope, "");
        Source = Guard.NotNull(source);
    }

    /// <summary>The USDA class.</summary>
    public SoilTexture Texture { get; }

    /// <summary>The sand by mass.</summary>
    public MassFraction Sand { get; }

    /// <summary>The clay by mass.</summary>
    public MassFraction Clay { get; }

    /// <summary>The mass of dry soil per volume.</summary>
    public Density BulkDensity { get; }

    /// <summary>The water after drainage, at one third of a bar.</summary>
    public VolumeConcentration FieldCapacity { get; }

    /// <summary>The water at which plants wilt for good, at 15 bar.</summary>
    public VolumeConcentration WiltingPoint { get; }

    /// <summary>The pores by volume.</summary>
    public VolumeConcentration Porosity { get; }

    /// <summary>How fast it conducts water when every pore is full.</summary>
    public WaterRate SaturatedConductivity { get; }

    /// <summary>The exponent b of the curve of Clapp and Hornberger.</summary>
    public double Slope { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The class and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Texture}: field capacity {Guard.Number(Boundary.VolumeFraction(FieldCapacity) * 100)} %, wilting point "
        + $"{Guard.Number(Boundary.VolumeFraction(WiltingPoint) * 100)} % by volume [{Source}]";
}
