using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class SoilTemperatureCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["damping-depth"] = inputs => Damping(inputs, "period_d").Centimeters,
        ["damping-depth-ratio"] = inputs => DampingOf(0.5e-6, inputs.Number("period_d")) / DampingOf(0.5e-6, inputs.Number("other_d")),
        ["share-at-depth"] = inputs => Share(inputs).Percent,
        ["amplitude-at-depth"] = inputs => inputs.Number("amplitude_C") * Share(inputs).DecimalFractions,
        ["amplitude-from-two-depths"] = AmplitudeFromTwoDepths,
        ["soil-wave-maximum"] = inputs => AtDepth(inputs).Maximum.DegreesCelsius,
        ["soil-wave-minimum"] = inputs => AtDepth(inputs).Minimum.DegreesCelsius,
        ["soil-wave-warmest-day"] = inputs => AtDepth(inputs).WarmestDay.InYear(2001).DayOfYear,
        ["soil-wave-coldest-day"] = inputs => AtDepth(inputs).ColdestDay.InYear(2001).DayOfYear,
        ["annual-wave-through-months"] = ThroughMonths,
        ["diffusivity-from-conductivity"] = inputs => ThermalDiffusivity.From(
            ThermalConductivity.FromWattsPerMeterKelvin(inputs.Number("conductivity_W_mK")),
            VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(inputs.Number("heat_capacity_J_m3K"))).SquareMetresPerSecond,
        ["packed-soil-diffusivity"] = inputs => End(inputs, PackedSoil.Diffusivity(Grain(inputs), DryDensity(inputs), Moisture(inputs))).SquareMetresPerDay,
        ["packed-soil-conductivity"] = inputs =>
            End(inputs, PackedSoil.Conductivity(Grain(inputs), DryDensity(inputs), Moisture(inputs))).WattsPerMeterKelvin,
    };

    private static Length Damping(Inputs inputs, string period) => DampingOf(inputs.Number("diffusivity_m2_s"), inputs.Number(period));

    private static Length DampingOf(double squareMetresPerSecond, double days) =>
        SoilTemperature.DampingDepth(ThermalDiffusivity.FromSquareMetresPerSecond(squareMetresPerSecond), Duration.FromDays(days));

    private static Ratio Share(Inputs inputs) => SoilTemperature.ShareLeft(
        Length.FromCentimeters(inputs.Number("depth_cm")), Length.FromCentimeters(inputs.Number("damping_cm")));

    private static AnnualWave AtDepth(Inputs inputs) => new AnnualWave(
            Temperature.FromDegreesCelsius(inputs.Number("mean_C")),
            TemperatureDelta.FromDegreesCelsius(inputs.Number("amplitude_C")),
            Duration.FromDays(inputs.Number("coldest_d")))
        .AtDepth(Length.FromMeters(inputs.Number("depth_m")), ThermalDiffusivity.FromSquareMetresPerDay(inputs.Number("diffusivity_m2_d")));

    /// <summary>The amplitude at a third depth, by the diffusivity that the first two give.</summary>
    private static Computed AmplitudeFromTwoDepths(Inputs inputs)
    {
        Length upper = Length.FromCentimeters(inputs.Number("upper_cm"));
        Duration period = Duration.FromDays(inputs.Number("period_d"));
        ThermalDiffusivity diffusivity = SoilTemperature.DiffusivityFromAmplitudes(
            upper,
            TemperatureDelta.FromDegreesCelsius(inputs.Number("upper_amplitude_C")),
            Length.FromCentimeters(inputs.Number("lower_cm")),
            TemperatureDelta.FromDegreesCelsius(inputs.Number("lower_amplitude_C")),
            period).Value;
        Length below = Length.FromCentimeters(inputs.Number("depth_cm")) - upper;
        return inputs.Number("upper_amplitude_C")
            * SoilTemperature.ShareLeft(below, SoilTemperature.DampingDepth(diffusivity, period)).DecimalFractions;
    }

    private static Computed ThroughMonths(Inputs inputs)
    {
        AnnualWave wave = AnnualWaveFit.FromMonthlyMeans(
        [
            .. inputs.Numbers("lows_F").Zip(inputs.Numbers("highs_F"), (low, high) => Temperature.FromDegreesFahrenheit((low + high) / 2)),
        ]).Wave;
        return wave.On(new MonthDay((int)inputs.Number("month"), 16)).DegreesFahrenheit;
    }

    private static T End<T>(Inputs inputs, Estimate<T> estimate)
        where T : notnull => inputs["end"] == "low" ? estimate.Range!.Low : estimate.Range!.High;

    private static SoilGrain Grain(Inputs inputs) => Enum.Parse<SoilGrain>(inputs["grain"]);

    private static Density DryDensity(Inputs inputs) => Density.FromKilogramsPerCubicMeter(inputs.Number("dry_density_kg_m3"));

    private static Ratio Moisture(Inputs inputs) => Ratio.FromPercent(inputs.Number("moisture_pct"));
}
