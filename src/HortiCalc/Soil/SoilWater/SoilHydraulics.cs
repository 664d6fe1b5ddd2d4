using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>How a soil holds and conducts water, estimated from its texture and organic matter by Saxton and Rawls 2006.</summary>
/// <remarks>
/// <para>Immutable; equal when the soil is. The soil must have particles and organic matter; gravel, compaction and salts count where they are given.</para>
/// <para>
/// The figures are of the fine earth below 2 mm; those <c>WithGravel</c> are of the whole soil. Field capacity is at 33 kPa and the wilting point at
/// 1500 kPa. Published for clay up to 60 %, organic matter up to 8 % and a density of 0.9 to 1.3 times the normal one. Within that there are soils for
/// which the regressions contradict themselves, as pure sand without organic matter, which would wilt below no water at all; they are refused.
/// </para>
/// </remarks>
/// <example><code>
/// SoilComposition loam = SoilComposition.FromParticles(
///     ParticleSizes.FromSandAndClay(sand: MassFraction.FromPercent(40), clay: MassFraction.FromPercent(20)),
///     organicMatter: MassFraction.FromPercent(2.5));
/// SoilHydraulics water = new(loam);
/// Console.WriteLine(water.AvailableWater.Value.Percent.ToString("F1", System.Globalization.CultureInfo.InvariantCulture));   // 14.3
/// Pressure tensiometer = water.TensionAt(VolumeConcentration.FromPercent(25));
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record SoilHydraulics : IFormattable, IDisplayable
{
    // A share that passes through per cent and back loses its last digit; an end must not hang on it.
    private const double Hair = 1e-12;
    private readonly SaxtonRawlsKernel.Soil soil;
    private readonly double gravelMass;
    private readonly double gravelVolume;
    private readonly double salinity;

    /// <summary>Estimates how a soil holds and conducts water.</summary>
    /// <param name="soil">The soil, with particles and organic matter.</param>
    /// <exception cref="ArgumentNullException">There is no soil.</exception>
    /// <exception cref="ArgumentException">The particles or the organic matter are not given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Clay, organic matter or compaction are outside what the method was published for, or the regressions leave no order of wilting point, field
    /// capacity and saturation.
    /// </exception>
    public SoilHydraulics(SoilComposition soil)
    {
        Soil = Guard.NotNull(soil);
        ParticleSizes particles = soil.Particles
            ?? throw new ArgumentException("soil has no Particles; allowed: a soil whose particle sizes were measured.", nameof(soil));
        MassFraction matter = soil.OrganicMatter
            ?? throw new ArgumentException("soil has no OrganicMatter; allowed: a soil whose organic matter was measured.", nameof(soil));
        double clay = Method.Require(particles.ClayPercent, "%", "clay");
        double organicMatter = Method.Require(Boundary.MassFraction(matter) * 100, "%", "organicMatter");
        double compaction = Method.Require(soil.Compaction is { } density ? Boundary.Fraction(density) * 100 : 100, "%", "compaction");
        this.soil = SaxtonRawlsKernel.Of(particles.SandPercent / 100, clay / 100, organicMatter, compaction / 100);
        RequireOrder(this.soil);
        gravelMass = soil.Gravel is { } gravel ? Boundary.MassFraction(gravel) : 0;
        gravelVolume = SaxtonRawlsKernel.GravelVolume(this.soil, gravelMass);
        salinity = soil.Salinity is { } salts ? Boundary.DecisiemensPerMetre(salts) : 0;
    }

    /// <summary>The method, its source and what it was published for.</summary>
    public static Method Method { get; } = new(
        "soil-water-saxton-rawls",
        "water from texture and organic matter, Saxton and Rawls 2006",
        SoilWaterSources.SaxtonRawls,
        new Domain(
            "soils of the United States, fine earth; field capacity at 33 kPa",
            new DomainLimit("clay", 0, 60, "%"),
            new DomainLimit("organicMatter", 0, 8, "%"),
            new DomainLimit("compaction", 90, 130, "%")));

    /// <summary>The soil.</summary>
    public SoilComposition Soil { get; }

    /// <summary>The water held at 1500 kPa, where plants wilt for good.</summary>
    [JsonIgnore]
    public VolumeConcentration WiltingPoint => Share(soil.WiltingPoint);

    /// <summary>The water held at 33 kPa, after drainage.</summary>
    [JsonIgnore]
    public VolumeConcentration FieldCapacity => Share(soil.FieldCapacity);

    /// <summary>The water that fills every pore.</summary>
    [JsonIgnore]
    public VolumeConcentration Saturation => Share(soil.Saturation);

    /// <summary>The water between field capacity and wilting point in the fine earth, salts left out.</summary>
    [JsonIgnore]
    public Estimate<VolumeConcentration> AvailableWater =>
        new(Share(soil.FieldCapacity - soil.WiltingPoint), Method, cautions: [SoilWaterCautions.Estimated]);

    /// <summary>The mass of dry fine earth per volume, compaction counted.</summary>
    [JsonIgnore]
    public Density BulkDensity => Grams(soil.BulkGramsPerCubicCentimetre);

    /// <summary>
    /// The tension at which the largest pores empty; <see langword="null"/> where the regression gives none between 0 and 33 kPa, as for very loose or
    /// very compacted soils.
    /// </summary>
    [JsonIgnore]
    public Pressure? AirEntry =>
        soil.AirEntryKilopascals is >= 0 and < SaxtonRawlsKernel.FieldCapacityKilopascals ? Pressure.FromKilopascals(soil.AirEntryKilopascals) : null;

    /// <summary>How fast the fine earth conducts water when every pore is full.</summary>
    [JsonIgnore]
    public WaterRate SaturatedConductivity => WaterRate.FromMillimetresPerHour(SaxtonRawlsKernel.SaturatedMillimetresPerHour(soil));

    /// <summary>The slope of the logarithm of moisture over that of tension: the pore size index, called λ.</summary>
    [JsonIgnore]
    public double PoreSizeIndex => 1 / soil.B;

    /// <summary>The gravel by volume of the whole soil.</summary>
    [JsonIgnore]
    public VolumeConcentration GravelVolume => Share(gravelVolume);

    /// <summary>The available water in the whole soil: gravel holds none.</summary>
    [JsonIgnore]
    public Estimate<VolumeConcentration> AvailableWaterWithGravel =>
        new(Share((soil.FieldCapacity - soil.WiltingPoint) * (1 - gravelVolume)), Method, cautions: [SoilWaterCautions.Estimated]);

    /// <summary>The mass of the dry whole soil per volume.</summary>
    [JsonIgnore]
    public Density BulkDensityWithGravel =>
        Grams(soil.BulkGramsPerCubicCentimetre * (1 - gravelVolume) + SaxtonRawlsKernel.ParticleGramsPerCubicCentimetre * gravelVolume);

    /// <summary>How fast the whole soil conducts water when every pore is full; water goes round the gravel.</summary>
    [JsonIgnore]
    public WaterRate SaturatedConductivityWithGravel => WaterRate.FromMillimetresPerHour(
        SaxtonRawlsKernel.SaturatedMillimetresPerHour(soil) * SaxtonRawlsKernel.GravelConductivityShare(soil, gravelMass));

    /// <summary>
    /// The available water where salts pull as well: down to the water at which soil and salts together hold it with 1500 kPa. Zero where the salts
    /// alone do so at field capacity.
    /// </summary>
    [JsonIgnore]
    public Estimate<VolumeConcentration> AvailableWaterWithSalts
    {
        get
        {
            if (salinity == 0)
                return AvailableWater;
            double last = LastWaterWithSalts();
            return new Estimate<VolumeConcentration>(
                Share(soil.FieldCapacity - last),
                Method,
                cautions: last >= soil.FieldCapacity
                    ? [SoilWaterCautions.Estimated, SoilWaterCautions.SaltsFromMemory, SoilWaterCautions.NothingLeft]
                    : [SoilWaterCautions.Estimated, SoilWaterCautions.SaltsFromMemory]);
        }
    }

    /// <summary>How firmly the fine earth holds its water.</summary>
    /// <param name="water">The water by volume, from the wilting point to saturation.</param>
    /// <returns>The tension: the suction that a tensiometer reads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The water is not from the wilting point to saturation, or is above field capacity in a soil without <see cref="AirEntry"/>.
    /// </exception>
    public Pressure TensionAt(VolumeConcentration water)
    {
        double share = Within(water, soil.WiltingPoint, nameof(water));
        if (share <= soil.FieldCapacity + Hair)
            return Pressure.FromKilopascals(SaxtonRawlsKernel.DryTensionKilopascals(soil, share));
        RequireAirEntry(share * 100, "%", $"up to field capacity, {Guard.Number(soil.FieldCapacity * 100)} %", nameof(water));
        return Pressure.FromKilopascals(SaxtonRawlsKernel.WetTensionKilopascals(soil, share));
    }

    /// <summary>The water that the fine earth holds against a tension.</summary>
    /// <param name="tension">The tension, from 0 to 1500 kPa.</param>
    /// <returns>The water by volume; saturation below the tension of air entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The tension is not from 0 to 1500 kPa, or is below 33 kPa in a soil without <see cref="AirEntry"/>.
    /// </exception>
    public VolumeConcentration WaterAt(Pressure tension)
    {
        double kilopascals = Guard.Within(Boundary.Kilopascals(tension), 0, SaxtonRawlsKernel.WiltingPointKilopascals, "kPa", nameof(tension));
        if (kilopascals >= SaxtonRawlsKernel.FieldCapacityKilopascals)
            return Share(SaxtonRawlsKernel.DryWater(soil, kilopascals));
        RequireAirEntry(kilopascals, "kPa", "from 33 to 1500 kPa", nameof(tension));
        return Share(Math.Min(soil.Saturation, SaxtonRawlsKernel.WetWater(soil, kilopascals)));
    }

    /// <summary>How fast the fine earth conducts water that does not fill it.</summary>
    /// <param name="water">The water by volume, from 0 to saturation.</param>
    /// <returns>The conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water is not from 0 to saturation.</exception>
    public WaterRate ConductivityAt(VolumeConcentration water) =>
        WaterRate.FromMillimetresPerHour(SaxtonRawlsKernel.MillimetresPerHour(soil, Within(water, 0, nameof(water))));

    /// <summary>How firmly salts hold the water, beside the soil: 36 kPa for each dS/m at saturation, more as it dries.</summary>
    /// <param name="water">The water by volume, from the wilting point to saturation.</param>
    /// <returns>The osmotic tension; none without salinity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water is not from the wilting point to saturation.</exception>
    public Estimate<Pressure> OsmoticTensionAt(VolumeConcentration water) => new(
        Pressure.FromKilopascals(SaxtonRawlsKernel.OsmoticKilopascals(soil, salinity, Within(water, soil.WiltingPoint, nameof(water)))),
        Method,
        cautions: [SoilWaterCautions.SaltsFromMemory]);

    /// <summary>The figures in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The figures as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The soil, its wilting point, field capacity, saturation and conductivity.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    /// <summary>Equal soils are held and conduct alike.</summary>
    /// <param name="other">Another one.</param>
    /// <returns>Whether the soils are equal.</returns>
    public bool Equals(SoilHydraulics? other) => other is not null && Soil == other.Soil;

    /// <inheritdoc/>
    public override int GetHashCode() => Soil.GetHashCode();

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            new DisplayRow("wilting point", QuantityText.Of(WiltingPoint, style)),
            new DisplayRow("field capacity", QuantityText.Of(FieldCapacity, style)),
            new DisplayRow("saturation", QuantityText.Of(Saturation, style)),
            new DisplayRow("available water", QuantityText.Of(AvailableWater.Value, style)),
            new DisplayRow("available water with gravel", QuantityText.Of(AvailableWaterWithGravel.Value, style)),
            new DisplayRow("saturated conductivity", SaturatedConductivity.ToString(style.Format, style.Culture)),
            new DisplayRow("bulk density", QuantityText.Of(BulkDensity, style)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    private static void RequireOrder(SaxtonRawlsKernel.Soil soil)
    {
        string? fault = soil switch
        {
            { WiltingPoint: <= 0 } => $"a wilting point of {Percent(soil.WiltingPoint)}",
            _ when soil.FieldCapacity <= soil.WiltingPoint =>
                $"a field capacity of {Percent(soil.FieldCapacity)} below the wilting point, {Percent(soil.WiltingPoint)}",
            _ when soil.Saturation <= soil.FieldCapacity =>
                $"a saturation of {Percent(soil.Saturation)} below the field capacity, {Percent(soil.FieldCapacity)}",
            { Saturation: >= 1 } => $"a saturation of {Percent(soil.Saturation)}",
            _ => null,
        };
        if (fault is not null)
            throw new ArgumentOutOfRangeException(
                nameof(soil),
                $"soil was one for which '{Method.Name}' gives {fault}; allowed: soils whose wilting point is above 0 %, field capacity above that, "
                + "saturation above that and below 100 %.");
    }

    private static string Percent(double share) => $"{Guard.Number(Math.Round(share * 100, 2, MidpointRounding.AwayFromZero))} %";

    private static VolumeConcentration Share(double share) => VolumeConcentration.FromPercent(share * 100);

    private static Density Grams(double gramsPerCubicCentimetre) => Density.FromKilogramsPerCubicMeter(gramsPerCubicCentimetre * 1000);

    /// <summary>The share, brought onto the ends where only the last digits lie beyond them.</summary>
    private double Within(VolumeConcentration water, double low, string parameter)
    {
        double share = Boundary.VolumeFraction(water);
        if (share < low && share >= low - Hair)
            return low;
        if (share > soil.Saturation && share <= soil.Saturation + Hair)
            return soil.Saturation;
        return Guard.Within(share * 100, low * 100, soil.Saturation * 100, "%", parameter) / 100;
    }

    private void RequireAirEntry(double value, string unit, string allowed, string parameter)
    {
        if (AirEntry is null)
            throw Guard.Refused(parameter, value, unit, $"{allowed}, as the regression of air entry gives {Guard.Number(soil.AirEntryKilopascals)} kPa for this soil");
    }

    // Both tensions fall as water rises, so that there is one answer between the wilting point and field capacity, or none.
    private double LastWaterWithSalts()
    {
        double Excess(double water) => SaxtonRawlsKernel.DryTensionKilopascals(soil, water)
            + SaxtonRawlsKernel.OsmoticKilopascals(soil, salinity, water) - SaxtonRawlsKernel.WiltingPointKilopascals;
        return Excess(soil.FieldCapacity) >= 0 ? soil.FieldCapacity : Brent.FindRoot(Excess, soil.WiltingPoint, soil.FieldCapacity, 1e-13, 200);
    }

    private string ToString(TextStyle style) =>
        $"{Soil.ToString(style.Format, style.Culture)}: wilting point {QuantityText.Of(WiltingPoint, style)}, field capacity "
        + $"{QuantityText.Of(FieldCapacity, style)}, saturation {QuantityText.Of(Saturation, style)}, "
        + $"{SaturatedConductivity.ToString(style.Format, style.Culture)}; {Method.Name} [{Method.Source}]";
}
