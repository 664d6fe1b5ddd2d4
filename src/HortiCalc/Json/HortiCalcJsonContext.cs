using System.Text.Json.Serialization;
using HortiCalc.Climate;
using HortiCalc.Beds;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Season;
using HortiCalc.Soil;
using UnitsNet;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes every public input and result of this library as JSON, without reflection, so that it works when
/// trimmed and compiled ahead of time.
/// </summary>
/// <remarks>
/// A quantity is an object with its value and the abbreviation of its unit, every digit kept. Unknown units and malformed
/// values give a <see cref="System.Text.Json.JsonException"/> that says which.
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
    RespectRequiredConstructorParameters = true,
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
        typeof(LimingMethodConverter),
        typeof(MixRatioConverter),
    ])]

// Evidence
[JsonSerializable(typeof(Source))]
[JsonSerializable(typeof(Method))]
[JsonSerializable(typeof(Caution))]

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
[JsonSerializable(typeof(Containers.MixRecipe), TypeInfoPropertyName = "MediumRecipe")]
[JsonSerializable(typeof(Containers.MixBatch), TypeInfoPropertyName = "MediumBatch")]

// Mixes
[JsonSerializable(typeof(MixRatio))]
[JsonSerializable(typeof(Strength))]
[JsonSerializable(typeof(Mixes.MixBatch))]
[JsonSerializable(typeof(Estimate<Mixes.MixBatch>))]
[JsonSerializable(typeof(Estimate<MassConcentration>))]
[JsonSerializable(typeof(HypochloriteLabel))]
[JsonSerializable(typeof(MixIngredient))]
[JsonSerializable(typeof(DangerousPair))]
[JsonSerializable(typeof(IReadOnlyList<Danger>), TypeInfoPropertyName = "Dangers")]
[JsonSerializable(typeof(Mixes.MixRecipe))]
[JsonSerializable(typeof(RecipeBatch))]

// Climate
[JsonSerializable(typeof(DailyTemperature))]
[JsonSerializable(typeof(DailyTemperatures))]
[JsonSerializable(typeof(DegreeDayThresholds))]
[JsonSerializable(typeof(DegreeDayMethod))]
[JsonSerializable(typeof(DegreeDay))]
[JsonSerializable(typeof(DegreeDaySeries))]
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
[JsonSerializable(typeof(Garden))]
[JsonSerializable(typeof(SeasonPlan))]
[JsonSerializable(typeof(SupplyLine))]
[JsonSerializable(typeof(DateLine))]
[JsonSerializable(typeof(RiskLine))]
[JsonSerializable(typeof(CautionLine))]
public sealed partial class HortiCalcJsonContext : JsonSerializerContext;
