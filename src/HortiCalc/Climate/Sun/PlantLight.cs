using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Light as plants use it: photons from 400 to 700 nm at a moment and over a day, from lux, watts, sunlight and lamps.</summary>
public static class PlantLight
{
    private const double MicromolesPerMole = 1_000_000;
    private const double SecondsPerDay = 86_400;
    private const double LongDayHours = 18;

    /// <summary>The photons in a reading of a light meter.</summary>
    /// <param name="reading">The reading, 0 or more.</param>
    /// <param name="light">What shines.</param>
    /// <returns>The photon flux density.</returns>
    /// <exception cref="ArgumentNullException">The light source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The factor of the light source for lux is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The reading is negative or not finite.</exception>
    /// <example><code>
    /// Estimate&lt;PhotonFluxDensity&gt; bench = PlantLight.PhotonFlux(Illuminance.FromLux(7400), LightSource.CoolWhiteFluorescent);
    /// Console.WriteLine(bench.Value); // 100 µmol/(m²·s)
    /// </code></example>
    public static Estimate<PhotonFluxDensity> PhotonFlux(Illuminance reading, LightSource light)
    {
        double luxPerMicromole = Guard.NotNull(light).RequireLux(nameof(light));
        double lux = Guard.NotNegative(Boundary.Lux(reading), "lx", nameof(reading));
        return OfSpectrum(PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(lux / luxPerMicromole), light.LuxMethod);
    }

    /// <summary>The photons in the power of radiation from 400 to 700 nm.</summary>
    /// <param name="power">The power, 0 or more: of 400 to 700 nm only, about half of what a pyranometer reads.</param>
    /// <param name="light">What shines.</param>
    /// <returns>The photon flux density.</returns>
    /// <exception cref="ArgumentNullException">The light source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The factor of the light source for watts is not known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The power is negative or not finite.</exception>
    public static Estimate<PhotonFluxDensity> PhotonFlux(Irradiance power, LightSource light)
    {
        double micromolesPerJoule = Guard.NotNull(light).RequireJoule(nameof(light));
        double watts = Guard.NotNegative(Boundary.WattsPerSquareMetre(power), "W/m²", nameof(power));
        return OfSpectrum(PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(watts * micromolesPerJoule), light.WattMethod);
    }

    /// <summary>What a light meter reads where plants get so many photons.</summary>
    /// <param name="flux">The photons.</param>
    /// <param name="light">What shines.</param>
    /// <returns>The illuminance.</returns>
    /// <exception cref="ArgumentNullException">The light source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The factor of the light source for lux is not known.</exception>
    public static Estimate<Illuminance> Reading(PhotonFluxDensity flux, LightSource light) => OfSpectrum(
        Illuminance.FromLux(flux.MicromolesPerSquareMetreSecond * Guard.NotNull(light).RequireLux(nameof(light))), light.LuxMethod);

    /// <summary>The power of radiation from 400 to 700 nm in so many photons.</summary>
    /// <param name="flux">The photons.</param>
    /// <param name="light">What shines.</param>
    /// <returns>The power.</returns>
    /// <exception cref="ArgumentNullException">The light source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The factor of the light source for watts is not known.</exception>
    public static Estimate<Irradiance> Power(PhotonFluxDensity flux, LightSource light) => OfSpectrum(
        Irradiance.FromWattsPerSquareMeter(flux.MicromolesPerSquareMetreSecond / Guard.NotNull(light).RequireJoule(nameof(light))), light.WattMethod);

    /// <summary>The light of a day under a lamp that shines steadily. Exact arithmetic; not for sunlight, which changes all day.</summary>
    /// <param name="flux">The light.</param>
    /// <param name="time">How long it shines each day, from 0 to 24 h.</param>
    /// <returns>The daily light integral.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is not from 0 to 24 h.</exception>
    /// <example><code>
    /// DailyLightIntegral day = PlantLight.DailyIntegral(PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150), Duration.FromHours(16));
    /// Console.WriteLine(day); // 8.64 mol/(m²·d)
    /// </code></example>
    public static DailyLightIntegral DailyIntegral(PhotonFluxDensity flux, Duration time)
    {
        double days = Guard.Within(Boundary.Days(time) * 24, 0, 24, "h", nameof(time)) / 24;
        return Moles(flux.MicromolesPerSquareMetreSecond * days * SecondsPerDay);
    }

    /// <summary>The light of a day from readings at equal steps, each the mean of its step. Exact arithmetic.</summary>
    /// <param name="micromolesPerSquareMetreSecond">The readings in µmol/(m²·s), each 0 or more; none may be missing.</param>
    /// <param name="step">The time from one to the next; all of them together up to 24 h.</param>
    /// <returns>The daily light integral; hours without a reading count as dark.</returns>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is negative or not a number, or the readings are longer than a day.</exception>
    public static DailyLightIntegral DailyIntegral(ReadOnlySpan<double> micromolesPerSquareMetreSecond, Duration step)
    {
        if (micromolesPerSquareMetreSecond.IsEmpty)
            throw new ArgumentException("micromolesPerSquareMetreSecond was empty; allowed: one reading or more.", nameof(micromolesPerSquareMetreSecond));
        double stepHours = Guard.Positive(Boundary.Days(step) * 24, "h", nameof(step));

        // Twenty-four hours in steps whose length is rounded may pass a day by a hair.
        if (stepHours * micromolesPerSquareMetreSecond.Length > 24 * (1 + 1e-9))
        {
            throw Guard.Refused(
                nameof(step), stepHours, "h", $"up to {Guard.Number(24.0 / micromolesPerSquareMetreSecond.Length)} h, a day by the number of readings");
        }

        double sum = 0;
        foreach (double reading in micromolesPerSquareMetreSecond)
            sum += Guard.NotNegative(reading, "µmol/(m²·s)", nameof(micromolesPerSquareMetreSecond));
        return Moles(sum * stepHours * 3600);
    }

    /// <summary>The light of a day from the energy of its sunlight, as a weather station measures it or <see cref="SolarRadiation"/> reckons it.</summary>
    /// <param name="radiation">The radiation of the day, all wavelengths, 0 or more.</param>
    /// <param name="method">The way; <see cref="SolarPhotonMethod.LightMaps"/> for tables and maps made for growers.</param>
    /// <returns>The daily light integral out of doors, with the span where the source prints one.</returns>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radiation is negative or not finite.</exception>
    /// <example><code>
    /// Estimate&lt;DailyLightIntegral&gt; summer = PlantLight.DailyIntegral(Irradiation.FromMegajoulesPerSquareMeter(25), SolarPhotonMethod.LightMaps);
    /// Console.WriteLine(summer.Value); // 49.01 mol/(m²·d)
    /// </code></example>
    public static Estimate<DailyLightIntegral> DailyIntegral(Irradiation radiation, SolarPhotonMethod method)
    {
        Guard.NotNull(method);
        double megajoules = Guard.NotNegative(Boundary.MegajoulesPerSquareMetre(radiation), "MJ/m²", nameof(radiation));
        EstimateRange<DailyLightIntegral>? range = method.LowMolesPerMegajoule < method.HighMolesPerMegajoule
            ? new EstimateRange<DailyLightIntegral>(
                Of(method.LowMolesPerMegajoule), Of(method.HighMolesPerMegajoule), "spread of the share from 400 to 700 nm")
            : null;
        return new Estimate<DailyLightIntegral>(Of(method.MolesPerMegajoule), method.Evidence, range);

        DailyLightIntegral Of(double molesPerMegajoule) => DailyLightIntegral.FromMolesPerSquareMetreDay(megajoules * molesPerMegajoule);
    }

    /// <summary>How long a lamp must burn each day. Exact arithmetic.</summary>
    /// <param name="needed">The light the crop needs.</param>
    /// <param name="natural">The light there is without the lamp, at the leaves: glass and frames take a third or more of what falls outside.</param>
    /// <param name="lamp">The light of the lamp at the leaves; more than none.</param>
    /// <returns>
    /// The time, none where there is light enough, and more than 24 h where the lamp is too weak (<see cref="LampTime.FitsInADay"/>); with the
    /// cautions of lamps.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The lamp gives no light.</exception>
    /// <example><code>
    /// LampTime winter = PlantLight.LampHours(
    ///     DailyLightIntegral.FromMolesPerSquareMetreDay(12),
    ///     DailyLightIntegral.FromMolesPerSquareMetreDay(4),
    ///     PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(150));
    /// Console.WriteLine(winter.Time.Hours); // 14.8
    /// </code></example>
    public static LampTime LampHours(DailyLightIntegral needed, DailyLightIntegral natural, PhotonFluxDensity lamp)
    {
        double perSecond = Guard.Positive(lamp.MicromolesPerSquareMetreSecond, "µmol/(m²·s)", nameof(lamp)) / MicromolesPerMole;
        double missing = Math.Max(0, needed.MolesPerSquareMetreDay - natural.MolesPerSquareMetreDay);
        double days = missing / perSecond / SecondsPerDay;
        if (!double.IsFinite(days))
            throw new OverflowException("The time of a lamp is too large for a number.");
        Caution[] cautions = missing == 0 ? []
            : days * 24 > LongDayHours ? [LightEvidence.Electricity, LightEvidence.Eyes, LightEvidence.LongDay]
            : [LightEvidence.Electricity, LightEvidence.Eyes];
        return new LampTime(needed, natural, lamp, Duration.FromDays(days), cautions);
    }

    /// <summary>The light of a day behind shade cloth. Exact arithmetic; one layer behind another is this twice.</summary>
    /// <param name="outside">The light in front of it.</param>
    /// <param name="shade">What it takes away, from 0 to 100 %, as it is sold.</param>
    /// <returns>What is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The shade is not from 0 to 100 %.</exception>
    public static DailyLightIntegral UnderShade(DailyLightIntegral outside, Ratio shade) =>
        DailyLightIntegral.FromMolesPerSquareMetreDay(outside.MolesPerSquareMetreDay * ShareLeft(shade));

    /// <summary>The light of a moment behind shade cloth. Exact arithmetic; one layer behind another is this twice.</summary>
    /// <param name="outside">The light in front of it.</param>
    /// <param name="shade">What it takes away, from 0 to 100 %, as it is sold.</param>
    /// <returns>What is left.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The shade is not from 0 to 100 %.</exception>
    public static PhotonFluxDensity UnderShade(PhotonFluxDensity outside, Ratio shade) =>
        PhotonFluxDensity.FromMicromolesPerSquareMetreSecond(outside.MicromolesPerSquareMetreSecond * ShareLeft(shade));

    /// <summary>How much shade brings the light of a day down to what a crop wants. Exact arithmetic.</summary>
    /// <param name="outside">The light without shade.</param>
    /// <param name="wanted">The light wanted.</param>
    /// <returns>What the cloth must take away; none where there is not too much light.</returns>
    /// <example><code>
    /// Ratio cloth = PlantLight.ShadeNeeded(
    ///     DailyLightIntegral.FromMolesPerSquareMetreDay(40), DailyLightIntegral.FromMolesPerSquareMetreDay(12));
    /// Console.WriteLine(cloth.Percent); // 70
    /// </code></example>
    public static Ratio ShadeNeeded(DailyLightIntegral outside, DailyLightIntegral wanted) => Ratio.FromPercent(
        wanted >= outside ? 0 : 100 * (1 - wanted.MolesPerSquareMetreDay / outside.MolesPerSquareMetreDay));

    private static double ShareLeft(Ratio shade) => 1 - Guard.Within(Boundary.Fraction(shade) * 100, 0, 100, "%", nameof(shade)) / 100;

    private static DailyLightIntegral Moles(double micromoles) => DailyLightIntegral.FromMolesPerSquareMetreDay(micromoles / MicromolesPerMole);

    private static Estimate<T> OfSpectrum<T>(T value, Method method)
        where T : notnull => new(value, method, cautions: [LightEvidence.Spectrum]);
}
