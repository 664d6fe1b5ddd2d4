using System.Text.Json.Serialization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes every public input and result of this library as JSON, without reflection, so that it works when
/// trimmed and compiled ahead of time.
/// </summary>
/// <remarks>
/// <para>
/// A quantity is an object with its value and the abbreviation of its unit, every digit kept: <c>{"value":1.5,"unit":"kg/m²"}</c>. Where a
/// keyboard has no °, ², ³ or ·, a unit is also read as <c>m2</c>, <c>m3</c>, <c>degC</c>, <c>degC.d</c>. Unknown units and malformed values
/// give a <see cref="System.Text.Json.JsonException"/> that says which quantity it was, what was found and what was expected.
/// </para>
/// <para>
/// To use it with options of your own, see <see cref="HortiCalcJson.AddHortiCalc"/>.
/// </para>
/// </remarks>
/// <example><code>
/// Estimate&lt;Mass&gt; dose = Liming.FromTexture(SoilTexture.Loam, new Ph(5.5), new Ph(6.5)).Over(bed.Area);
/// string json = JsonSerializer.Serialize(dose, HortiCalcJsonContext.Default.EstimateMass);
/// </code></example>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    WriteIndented = false,
    RespectNullableAnnotations = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    Converters =
    [
        typeof(LengthConverter),
        typeof(AreaConverter),
        typeof(VolumeConverter),
        typeof(MassConverter),
        typeof(AreaDensityConverter),
        typeof(DensityConverter),
        typeof(MassConcentrationConverter),
        typeof(VolumeConcentrationConverter),
        typeof(MassFractionConverter),
        typeof(RatioConverter),
        typeof(TemperatureConverter),
        typeof(TemperatureDeltaConverter),
        typeof(DurationConverter),
        typeof(AngleConverter),
        typeof(ReciprocalAreaConverter),
        typeof(PhConverter),
        typeof(ThermalTimeConverter),
        typeof(ExchangeableChargeConverter),
        typeof(VolumetricChargeConverter),
    ])]

// Evidence
[JsonSerializable(typeof(Source))]
[JsonSerializable(typeof(Method))]
[JsonSerializable(typeof(Caution))]
[JsonSerializable(typeof(Domain))]
[JsonSerializable(typeof(Estimate<Length>))]
[JsonSerializable(typeof(Estimate<Temperature>))]
[JsonSerializable(typeof(Estimate<Duration>))]
[JsonSerializable(typeof(Estimate<ThermalTime>))]
[JsonSerializable(typeof(Estimate<Ph>))]
[JsonSerializable(typeof(Estimate<DateOnly>))]
[JsonSerializable(typeof(Estimate<int>))]

// Units
[JsonSerializable(typeof(Area))]
[JsonSerializable(typeof(Density))]
[JsonSerializable(typeof(MassConcentration))]
[JsonSerializable(typeof(VolumeConcentration))]
[JsonSerializable(typeof(MassFraction))]
[JsonSerializable(typeof(Ratio))]
[JsonSerializable(typeof(TemperatureDelta))]
[JsonSerializable(typeof(Angle))]
[JsonSerializable(typeof(ReciprocalArea))]
[JsonSerializable(typeof(ExchangeableCharge))]
[JsonSerializable(typeof(VolumetricCharge))]

// Soil
[JsonSerializable(typeof(Estimate<AreaDensity>))]
[JsonSerializable(typeof(Estimate<Mass>))]

// Beds
[JsonSerializable(typeof(Estimate<Volume>))]

// Containers

// Mixes

// Climate

// Season
public sealed partial class HortiCalcJsonContext : JsonSerializerContext;
