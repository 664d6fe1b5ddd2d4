using System.Text.Json.Serialization;
using HortiCalc.Beds;
using HortiCalc.Climate;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Plants;
using HortiCalc.Season;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Json;

/// <summary>
/// The generated reading and writing of every public input and result. Internal, because the generator makes a public
/// member of each type that these hold; <see cref="HortiCalcJson"/> is its door.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    AllowOutOfOrderMetadataProperties = true,
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
        typeof(HourlyTemperaturesConverter),
        typeof(HourlyAccumulationConverter),
        typeof(ChillModelConverter),
        typeof(DiurnalCurveConverter),
        typeof(DaylightMethodConverter),
        typeof(PhotothermalTimeConverter),
        typeof(ThermalDiffusivityConverter),
        typeof(ThermalConductivityConverter),
        typeof(VolumetricHeatCapacityConverter),
        typeof(CornHeatUnitMethodConverter),
        typeof(PhysiologicalDayMethodConverter),
        typeof(HuglinMethodConverter),
        typeof(HardinessSchemeConverter),
        typeof(GrowingSeasonMethodConverter),
        typeof(PlottingPositionConverter),
        typeof(IrradiationConverter),
        typeof(IrradianceConverter),
        typeof(IlluminanceConverter),
        typeof(PhotonFluxDensityConverter),
        typeof(DailyLightIntegralConverter),
        typeof(SolarPhotonMethodConverter),
        typeof(GerminationResponseConverter),
        typeof(PressureConverter),
        typeof(RelativeHumidityConverter),
        typeof(ElectricConductivityConverter),
        typeof(ReciprocalLengthConverter),
        typeof(WaterRateConverter),
        typeof(SaturationVapourPressureConverter),
        typeof(PsychrometerConverter),
        typeof(AirPressureMethodConverter),
        typeof(SpeedConverter),
        typeof(VolumeFlowConverter),
        typeof(NightMinimumFittingConverter),
        typeof(SprinklerStartMethodConverter),
        typeof(RowCoverConverter),
        typeof(MixRatioConverter),
        typeof(LimingMethodConverter),
        typeof(FinenessSchemeConverter),
        typeof(AcidifyingMethodConverter),
        typeof(PhConversionConverter),
        typeof(PhMeanMethodConverter),

        // An application's own options hold these too, so that an enumeration is a word there as it is here.
        typeof(JsonStringEnumConverter<AccumulationUnit>),
        typeof(JsonStringEnumConverter<AcidForm>),
        typeof(JsonStringEnumConverter<AcidityBasis>),
        typeof(JsonStringEnumConverter<BulkMaterial>),
        typeof(JsonStringEnumConverter<CautionLevel>),
        typeof(JsonStringEnumConverter<DoseBasis>),
        typeof(JsonStringEnumConverter<EmergenceFinding>),
        typeof(JsonStringEnumConverter<FreezeSide>),
        typeof(JsonStringEnumConverter<FrostAdvice>),
        typeof(JsonStringEnumConverter<FrostDamageLevel>),
        typeof(JsonStringEnumConverter<FrostOutlook>),
        typeof(JsonStringEnumConverter<FrostSensor>),
        typeof(JsonStringEnumConverter<FrostType>),
        typeof(JsonStringEnumConverter<GerminationStage>),
        typeof(JsonStringEnumConverter<FrostToleranceClass>),
        typeof(JsonStringEnumConverter<GrowingSeasonEnding>),
        typeof(JsonStringEnumConverter<Hemisphere>),
        typeof(JsonStringEnumConverter<StageSubject>),
        typeof(JsonStringEnumConverter<HuglinClass>),
        typeof(JsonStringEnumConverter<HypochloriteBasis>),
        typeof(JsonStringEnumConverter<HypochlorousConstant>),
        typeof(JsonStringEnumConverter<IngredientClass>),
        typeof(JsonStringEnumConverter<GermanLandUse>),
        typeof(JsonStringEnumConverter<GermanSoilGroup>),
        typeof(JsonStringEnumConverter<LandSetting>),
        typeof(JsonStringEnumConverter<LimeForm>),
        typeof(JsonStringEnumConverter<LimeIndex>),
        typeof(JsonStringEnumConverter<LimeShares>),
        typeof(JsonStringEnumConverter<MeasurementSystem>),
        typeof(JsonStringEnumConverter<MediumRatePurpose>),
        typeof(JsonStringEnumConverter<MissingDays>),
        typeof(JsonStringEnumConverter<MixUse>),
        typeof(JsonStringEnumConverter<MoistureState>),
        typeof(JsonStringEnumConverter<NoLimeReason>),
        typeof(JsonStringEnumConverter<NorthCarolinaSoilClass>),
        typeof(JsonStringEnumConverter<PhSolution>),
        typeof(JsonStringEnumConverter<PlanRisk>),
        typeof(JsonStringEnumConverter<PlanStep>),
        typeof(JsonStringEnumConverter<PotExposure>),
        typeof(JsonStringEnumConverter<PotStanding>),
        typeof(JsonStringEnumConverter<Propagule>),
        typeof(JsonStringEnumConverter<RinseAdvice>),
        typeof(JsonStringEnumConverter<RootAge>),
        typeof(JsonStringEnumConverter<SoilGrain>),
        typeof(JsonStringEnumConverter<SoilTexture>),
        typeof(JsonStringEnumConverter<SourceKind>),
        typeof(JsonStringEnumConverter<ToxicityCategory>),
        typeof(JsonStringEnumConverter<TreeRowRule>),
        typeof(JsonStringEnumConverter<UpperCutoff>),
        typeof(JsonStringEnumConverter<WinklerLimits>),
        typeof(JsonStringEnumConverter<WinklerRegion>),
        typeof(JsonStringEnumConverter<WinterReading>),
    ])]

// Evidence
[JsonSerializable(typeof(Source))]
[JsonSerializable(typeof(Method))]
[JsonSerializable(typeof(Caution))]
[JsonSerializable(typeof(Domain))]
[JsonSerializable(typeof(Estimate<Length>))]
[JsonSerializable(typeof(Estimate<Temperature>))]
[JsonSerializable(typeof(Estimate<ThermalTime>))]
[JsonSerializable(typeof(Estimate<Ph>))]
[JsonSerializable(typeof(Estimate<DateOnly>))]
[JsonSerializable(typeof(Estimate<int>))]
[JsonSerializable(typeof(Estimate<Area>))]
[JsonSerializable(typeof(Estimate<VolumeConcentration>))]
[JsonSerializable(typeof(Estimate<MassFraction>))]
[JsonSerializable(typeof(Estimate<TemperatureDelta>))]
[JsonSerializable(typeof(Estimate<Angle>))]
[JsonSerializable(typeof(Estimate<ReciprocalArea>))]
[JsonSerializable(typeof(Estimate<ExchangeableCharge>))]
[JsonSerializable(typeof(Estimate<VolumetricCharge>))]

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
[JsonSerializable(typeof(LimeComparison))]
[JsonSerializable(typeof(LimeRefusal))]
[JsonSerializable(typeof(SoilCations))]
[JsonSerializable(typeof(LimeComposition))]
[JsonSerializable(typeof(SieveAnalysis))]
[JsonSerializable(typeof(SievePassing))]
[JsonSerializable(typeof(FinenessClass))]
[JsonSerializable(typeof(FinenessScheme))]
[JsonSerializable(typeof(LimingProduct))]
[JsonSerializable(typeof(LimeMaterialRange))]
[JsonSerializable(typeof(LimeTimeFact))]
[JsonSerializable(typeof(GermanLimeAdvice))]
[JsonSerializable(typeof(GermanSoilGroup))]
[JsonSerializable(typeof(GermanLandUse))]
[JsonSerializable(typeof(LimeIndex))]
[JsonSerializable(typeof(AcidifyingMethod))]
[JsonSerializable(typeof(AcidifyingMaterial))]
[JsonSerializable(typeof(AcidEquivalent))]
[JsonSerializable(typeof(AcidRequirement))]
[JsonSerializable(typeof(AcidLimit))]
[JsonSerializable(typeof(AcidSchedule))]
[JsonSerializable(typeof(AcidRefusal))]
[JsonSerializable(typeof(AcidComparison))]
[JsonSerializable(typeof(AcidReactionTime))]
[JsonSerializable(typeof(FertilizerAcidity))]
[JsonSerializable(typeof(MediumRate))]
[JsonSerializable(typeof(PhConversion))]
[JsonSerializable(typeof(PhMeanMethod))]
[JsonSerializable(typeof(PhLayer))]
[JsonSerializable(typeof(SolutionPart))]
[JsonSerializable(typeof(MediumPart))]
[JsonSerializable(typeof(CropPh))]
[JsonSerializable(typeof(CropPhComparison))]
[JsonSerializable(typeof(ParticleSizes))]
[JsonSerializable(typeof(AustralianFieldGrade))]
[JsonSerializable(typeof(Estimate<SoilTexture>))]
[JsonSerializable(typeof(Estimate<WaterRate>))]
[JsonSerializable(typeof(WaterRate))]
[JsonSerializable(typeof(ElectricConductivity))]
[JsonSerializable(typeof(ReciprocalLength))]
[JsonSerializable(typeof(Estimate<ElectricConductivity>))]

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
[JsonSerializable(typeof(MixBlend))]
[JsonSerializable(typeof(IReadOnlyList<MixBatch>), TypeInfoPropertyName = "MixBatches")]
[JsonSerializable(typeof(KitchenMeasure))]
[JsonSerializable(typeof(PracticalAmount))]
[JsonSerializable(typeof(PowderMeasure))]
[JsonSerializable(typeof(PlannedTank))]
[JsonSerializable(typeof(ContactRecord))]
[JsonSerializable(typeof(HotWaterTreatment))]
[JsonSerializable(typeof(ChlorineLossRecord))]
[JsonSerializable(typeof(Estimate<VolumeFlow>))]
[JsonSerializable(typeof(Estimate<Ratio>))]
[JsonSerializable(typeof(VolumeRate))]
[JsonSerializable(typeof(Estimate<VolumeRate>))]
[JsonSerializable(typeof(SprayJob))]
[JsonSerializable(typeof(SprayLimit))]
[JsonSerializable(typeof(SprayInterval))]
[JsonSerializable(typeof(SprayedProduct))]
[JsonSerializable(typeof(SprayWait))]

// Climate
[JsonSerializable(typeof(DailyTemperature))]
[JsonSerializable(typeof(DailyTemperatures))]
[JsonSerializable(typeof(DegreeDayThresholds))]
[JsonSerializable(typeof(DegreeDayMethod))]
[JsonSerializable(typeof(DegreeDay))]
[JsonSerializable(typeof(DegreeDaySeries))]
[JsonSerializable(typeof(HeatRequirement))]
[JsonSerializable(typeof(HeatForecast))]
[JsonSerializable(typeof(ForecastYear))]
[JsonSerializable(typeof(ForecastDate))]
[JsonSerializable(typeof(ForecastSkill))]
[JsonSerializable(typeof(HeatStage))]
[JsonSerializable(typeof(Biofix))]
[JsonSerializable(typeof(StageTable))]
[JsonSerializable(typeof(StageTime))]
[JsonSerializable(typeof(StageProgress))]
[JsonSerializable(typeof(DevelopmentTime))]
[JsonSerializable(typeof(BaseTemperature))]
[JsonSerializable(typeof(TimeReached))]
[JsonSerializable(typeof(DegreeDayTotal))]
[JsonSerializable(typeof(DegreeDayComparison))]
[JsonSerializable(typeof(HourlyTemperatures))]
[JsonSerializable(typeof(Estimate<HourlyTemperatures>))]
[JsonSerializable(typeof(HourlyAccumulation))]
[JsonSerializable(typeof(ChillModel))]
[JsonSerializable(typeof(ChillRequirement))]
[JsonSerializable(typeof(ChillFulfilment))]
[JsonSerializable(typeof(DiurnalCurve))]
[JsonSerializable(typeof(DaylightMethod))]
[JsonSerializable(typeof(Estimate<MonthDay>))]
[JsonSerializable(typeof(Estimate<Duration>))]
[JsonSerializable(typeof(FreezeClimate))]
[JsonSerializable(typeof(FreezeClimateOptions))]
[JsonSerializable(typeof(FreezeBootstrap))]
[JsonSerializable(typeof(FreezeCurvePoint))]
[JsonSerializable(typeof(FreezeDateInterval))]
[JsonSerializable(typeof(FreezeDateMethod))]
[JsonSerializable(typeof(FreezeDates))]
[JsonSerializable(typeof(FreezeTrend))]
[JsonSerializable(typeof(FreezesBetween))]
[JsonSerializable(typeof(TabulatedFreezeDate))]
[JsonSerializable(typeof(DateSpan))]
[JsonSerializable(typeof(CountingSeason))]
[JsonSerializable(typeof(ClimateSum<double>))]
[JsonSerializable(typeof(ClimateSum<int>))]
[JsonSerializable(typeof(ClimateSum<ThermalTime>))]
[JsonSerializable(typeof(ClimateSum<PhotothermalTime>))]
[JsonSerializable(typeof(CornHeatUnitMethod))]
[JsonSerializable(typeof(PhysiologicalDayMethod))]
[JsonSerializable(typeof(HuglinMethod))]
[JsonSerializable(typeof(GrowingSeasonMethod))]
[JsonSerializable(typeof(GrowingSeason))]
[JsonSerializable(typeof(Estimate<WinklerRegion>))]
[JsonSerializable(typeof(Estimate<HuglinClass>))]
[JsonSerializable(typeof(HardinessScheme))]
[JsonSerializable(typeof(Estimate<HardinessClass>))]
[JsonSerializable(typeof(Estimate<string>))]
[JsonSerializable(typeof(WinterMinima))]
[JsonSerializable(typeof(FrostTolerance))]
[JsonSerializable(typeof(RootKilling))]
[JsonSerializable(typeof(WinterRule))]
[JsonSerializable(typeof(PotCooling))]
[JsonSerializable(typeof(PotTemperatures))]
[JsonSerializable(typeof(Estimate<double>))]
[JsonSerializable(typeof(Phyllochron))]
[JsonSerializable(typeof(TemperatureWave))]
[JsonSerializable(typeof(AnnualWave))]
[JsonSerializable(typeof(DailyWave))]
[JsonSerializable(typeof(AnnualWaveFit))]
[JsonSerializable(typeof(SoilMaterial))]
[JsonSerializable(typeof(Estimate<ThermalDiffusivity>))]
[JsonSerializable(typeof(Estimate<ThermalConductivity>))]
[JsonSerializable(typeof(MoistAir))]
[JsonSerializable(typeof(SaturationVapourPressure))]
[JsonSerializable(typeof(Psychrometer))]
[JsonSerializable(typeof(AirPressureMethod))]
[JsonSerializable(typeof(Pressure))]
[JsonSerializable(typeof(RelativeHumidity))]
[JsonSerializable(typeof(Estimate<Pressure>))]
[JsonSerializable(typeof(Speed))]
[JsonSerializable(typeof(PastNight))]
[JsonSerializable(typeof(NightMinimumFitting))]
[JsonSerializable(typeof(NightMinimumModel))]
[JsonSerializable(typeof(NightCooling))]
[JsonSerializable(typeof(Estimate<FrostOutlook>))]
[JsonSerializable(typeof(Estimate<FrostType>))]
[JsonSerializable(typeof(FrostDefinition))]
[JsonSerializable(typeof(CriticalTemperature))]
[JsonSerializable(typeof(FrostDamage))]
[JsonSerializable(typeof(FrostDamageLevel))]
[JsonSerializable(typeof(CropBudNeed))]
[JsonSerializable(typeof(SprinklerStartMethod))]
[JsonSerializable(typeof(RowCover))]
[JsonSerializable(typeof(FrostEvening))]
[JsonSerializable(typeof(FrostAdvice))]
[JsonSerializable(typeof(FrostNight))]
[JsonSerializable(typeof(Place))]
[JsonSerializable(typeof(Estimate<SunTimes>))]
[JsonSerializable(typeof(Estimate<SunPosition>))]
[JsonSerializable(typeof(Estimate<PhotoperiodCrossings>))]
[JsonSerializable(typeof(Estimate<Irradiation>))]
[JsonSerializable(typeof(Estimate<Irradiance>))]
[JsonSerializable(typeof(Estimate<Illuminance>))]
[JsonSerializable(typeof(Estimate<PhotonFluxDensity>))]
[JsonSerializable(typeof(Estimate<DailyLightIntegral>))]
[JsonSerializable(typeof(AngstromCoefficients))]
[JsonSerializable(typeof(LandSetting))]
[JsonSerializable(typeof(LightSource))]
[JsonSerializable(typeof(SolarPhotonMethod))]
[JsonSerializable(typeof(LampTime))]
[JsonSerializable(typeof(LightRequirement))]
[JsonSerializable(typeof(MeterRequirement))]

// Plants
[JsonSerializable(typeof(CardinalTemperatures))]
[JsonSerializable(typeof(CardinalTemperatureRecord))]
[JsonSerializable(typeof(GerminationResponse))]
[JsonSerializable(typeof(GerminationNeed))]
[JsonSerializable(typeof(GerminationProgress))]
[JsonSerializable(typeof(GerminationRange))]
[JsonSerializable(typeof(GerminationRangeComparison))]
[JsonSerializable(typeof(EmergenceTable))]
[JsonSerializable(typeof(EmergenceReading))]
[JsonSerializable(typeof(NormalSeedlingTable))]

// Season
[JsonSerializable(typeof(Garden))]
[JsonSerializable(typeof(SeasonPlan))]
[JsonSerializable(typeof(SupplyLine))]
[JsonSerializable(typeof(DateLine))]
[JsonSerializable(typeof(RiskLine))]
[JsonSerializable(typeof(CautionLine))]
internal sealed partial class HortiCalcJsonContext : JsonSerializerContext;
