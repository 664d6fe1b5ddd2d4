using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The water that an Australian field texture holds, in all or between two tensions.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record FieldGradeWater
{
    /// <summary>Holds a printed value.</summary>
    /// <param name="grade">The field texture.</param>
    /// <param name="water">The water by volume, from 0 to 100 %.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="fullAt">The tension at which the soil counts as full, where it is printed; 0 or more.</param>
    /// <param name="refillAt">The tension down to which the water counts, where it is printed; not below that at which the soil is full.</param>
    /// <param name="low">The low end, where a range is printed; not above the high end.</param>
    /// <param name="high">The high end, where a range is printed; up to 100 %.</param>
    /// <exception cref="ArgumentNullException">The source is missing.</exception>
    /// <exception cref="ArgumentException">The texture is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FieldGradeWater(
        string grade,
        VolumeConcentration water,
        Source source,
        Pressure? fullAt = null,
        Pressure? refillAt = null,
        VolumeConcentration? low = null,
        VolumeConcentration? high = null)
    {
        Grade = Guard.NotBlank(grade);
        Guard.Within(Boundary.VolumeFraction(water) * 100, 0, 100, "%", nameof(water));
        Water = HouseUnits.Normalise(water);
        Source = Guard.NotNull(source);
        double full = fullAt is { } wet ? Guard.NotNegative(Boundary.Kilopascals(wet), "kPa", nameof(fullAt)) : 0;
        if (refillAt is { } dry)
            Guard.AtLeast(Boundary.Kilopascals(dry), full, "kPa", nameof(refillAt));
        FullAt = fullAt is { } given ? HouseUnits.Normalise(given) : null;
        RefillAt = refillAt is { } until ? HouseUnits.Normalise(until) : null;
        if (high is { } most)
        {
            double highest = Guard.Within(Boundary.VolumeFraction(most) * 100, 0, 100, "%", nameof(high));
            if (low is { } least)
                Guard.Within(Boundary.VolumeFraction(least) * 100, 0, highest, "%", nameof(low));
            High = HouseUnits.Normalise(most);
        }

        Low = low is { } end ? HouseUnits.Normalise(end) : null;
    }

    /// <summary>The field texture.</summary>
    public string Grade { get; }

    /// <summary>The water by volume.</summary>
    public VolumeConcentration Water { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The tension at which the soil counts as full, where it is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Pressure? FullAt { get; }

    /// <summary>The tension down to which the water counts, where it is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Pressure? RefillAt { get; }

    /// <summary>The low end, where a range is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumeConcentration? Low { get; }

    /// <summary>The high end, where a range is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumeConcentration? High { get; }

    /// <summary>The value in words.</summary>
    /// <returns>For instance <c>sandy loam: 4.6 % by volume from 8 to 20 kPa [...]</c>.</returns>
    public override string ToString()
    {
        string span = FullAt is { } full && RefillAt is { } refill
            ? $" from {Guard.Number(Boundary.Kilopascals(full))} to {Guard.Number(Boundary.Kilopascals(refill))} kPa"
            : "";
        return $"{Grade}: {Guard.Number(Boundary.VolumeFraction(Water) * 100)} % by volume{span} [{Source}]";
    }

    /// <summary>Whether it is all the available water, down to the wilting point, and not a part of it.</summary>
    internal bool IsTotal => RefillAt is not { } refill || Boundary.Kilopascals(refill) >= SaxtonRawlsKernel.WiltingPointKilopascals;
}
