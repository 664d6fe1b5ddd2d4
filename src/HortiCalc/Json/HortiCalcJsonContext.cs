using System.Text.Json.Serialization;
using HortiCalc.Beds;
using HortiCalc.Climate;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Soil;
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
/// SoilReport soil = new() { PhInWater = new Ph(5.5), Texture = SoilTexture.Loam };
/// Estimate&lt;Mass&gt; dose = Liming.Requirement(soil, new Ph(6.5), LimingMethod.UkGardenTexture).Over(Area.FromSquareMeters(4.8));
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
        typeof(MonthDayConverter),
        typeof(DailyTemperaturesConverter),
        typeof(DegreeDayMethodConverter),
        typeof(DegreeDaySeriesConverter),
        typeof(MixRatioConverter),
        typeof(LimingMethodConverter),
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
[JsonSerializable(typeof(SoilReport))]
[JsonSerializable(typeof(LimingMethod))]
[JsonSerializable(typeof(ResidualLime))]
[JsonSerializable(typeof(LimingMaterial))]
[JsonSerializable(typeof(LimeRequirement))]
[JsonSerializable(typeof(LimeSplit))]
[JsonSerializable(typeof(LimeSchedule))]

// Beds
[JsonSerializable(typeof(Estimate<Volume>))]
[JsonSerializable(typeof(Estimate<Density>))]
[JsonSerializable(typeof(Bed))]
[JsonSerializable(typeof(AmendmentLayer))]
[JsonSerializable(typeof(BagPurchase))]
[JsonSerializable(typeof(BulkDensity))]

// Containers
[JsonSerializable(typeof(Container))]
[JsonSerializable(typeof(PotSize))]
[JsonSerializable(typeof(PotYield))]
[JsonSerializable(typeof(MediumRecipe))]
[JsonSerializable(typeof(MediumBatch))]

// Mixes
[JsonSerializable(typeof(MixRatio))]
[JsonSerializable(typeof(Strength))]
[JsonSerializable(typeof(MixBatch))]
[JsonSerializable(typeof(Estimate<MixBatch>))]
[JsonSerializable(typeof(Estimate<MassConcentration>))]
[JsonSerializable(typeof(HypochloriteLabel))]
[JsonSerializable(typeof(MixIngredient))]
[JsonSerializable(typeof(DangerousPair))]
[JsonSerializable(typeof(IReadOnlyList<Danger>), TypeInfoPropertyName = "Dangers")]
[JsonSerializable(typeof(MixRecipe))]
[JsonSerializable(typeof(RecipeBatch))]

// Climate
[JsonSerializable(typeof(DailyTemperature))]
[JsonSerializable(typeof(DailyTemperatures))]
[JsonSerializable(typeof(Estimate<MonthDay>))]
[JsonSerializable(typeof(Estimate<Ratio>))]
[JsonSerializable(typeof(Estimate<Duration>))]
[JsonSerializable(typeof(FreezeClimate))]
[JsonSerializable(typeof(FreezeClimateOptions))]
[JsonSerializable(typeof(FreezeDates))]
[JsonSerializable(typeof(TabulatedFreezeDate))]
[JsonSerializable(typeof(DegreeDayThresholds))]
[JsonSerializable(typeof(DegreeDayMethod))]
[JsonSerializable(typeof(DegreeDay))]
[JsonSerializable(typeof(DegreeDaySeries))]

// Season
public sealed partial class HortiCalcJsonContext : JsonSerializerContext;
