using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>How the medium in a pot follows the temperature of the air: a cylinder that gains and loses heat by its surface.</summary>
/// <remarks>
/// <para>Immutable; equal when size, medium, exposure and standing are equal.</para>
/// <para>
/// The heat equation of a cylinder with a film of air around it is solved by its series (the product of that of an endless cylinder and that of
/// a plate), each term of which follows the air as a first-order lag; air temperatures are joined by straight lines from hour to hour. The wall
/// of the pot is taken for thin. Left out: the heat that water gives off as it freezes, which holds a moist medium near 0 °C for hours, sunshine
/// on the wall, and the sky's cold, which can bring a surface below the temperature of the air. While its water freezes the real pot is warmer than
/// this; under a clear sky, and while it thaws, it can be colder.
/// </para>
/// </remarks>
/// <example><code>
/// PotCooling pot = new(
///     diameter: Length.FromCentimeters(30), height: Length.FromCentimeters(28), SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround);
/// double[] night = [.. Enumerable.Range(0, 24).Select(hour => 2 - 8 * Math.Sin(hour * Math.PI / 23))];
/// PotTemperatures roots = pot.Follow(
///     HourlyTemperatures.Create(new DateTime(2026, 1, 10, 16, 0, 0), night, TemperatureUnit.DegreeCelsius), start: Temperature.FromDegreesCelsius(3));
/// Temperature coldestRoots = roots.LowestAtWall;
/// </code></example>
public sealed record PotCooling : IFormattable
{
    private static readonly Source Films = new(
        "cibse-surface-resistance",
        "Outside surface resistance (Table A3.6 of CIBSE Guide A)",
        "Chartered Institution of Building Services Engineers, as shown in the help of a building simulation",
        null,
        "https://help.iesve.com/ve2021/table_22_outside_surface_resistance__table_a3_6_cibse_guide_.htm");

    private static readonly Method Cylinder = new(
        "pot.cylinder",
        "cylinder with a surface film, by its series",
        Films,
        new Domain(
            "a thin-walled round pot full of one medium, no sunshine, freezing of its water left out",
            new DomainLimit("diameter", 5, 200, "cm"),
            new DomainLimit("height", 5, 200, "cm")));

    private static readonly Caution FreezingLeftOut = new(
        "pot.freezing-left-out",
        CautionLevel.Note,
        "The heat of freezing water is left out: a moist medium stays near 0 °C for hours longer than this, as it freezes and as it thaws.",
        Source.CommonPractice("pot-freezing", "wet medium freezes later than dry"));

    private static readonly Caution ClearSky = new(
        "pot.clear-sky-left-out",
        CautionLevel.Care,
        "The cold of a clear sky is left out: on a clear calm night a pot in the open becomes colder than this.",
        Source.CommonPractice("pot-clear-sky", "surfaces under a clear sky cool below the air"));

    private static readonly Caution WallRoots = new(
        "pot.roots-at-the-wall",
        CautionLevel.Care,
        "Young roots grow at the wall, the coldest place, and are the least hardy: judge by the wall, not by the core.",
        RootHardiness.Mathers);

    private readonly CylinderModes modes;

    /// <summary>Describes a pot.</summary>
    /// <param name="diameter">Its mean inner diameter, from 5 to 200 cm; of a square pot that of the same area, which cools a little more slowly.</param>
    /// <param name="height">How high the medium stands, from 5 to 200 cm.</param>
    /// <param name="medium">What it is filled with; <see cref="SoilMaterials"/> has some.</param>
    /// <param name="exposure">How much wind reaches it.</param>
    /// <param name="standing">Whether its bottom loses heat too.</param>
    /// <exception cref="ArgumentNullException">The medium is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or a choice is none of the defined ones.</exception>
    public PotCooling(Length diameter, Length height, SoilMaterial medium, PotExposure exposure, PotStanding standing)
    {
        double radiusMetres = Cylinder.Require(Boundary.Metres(diameter) * 100, "cm", nameof(diameter)) / 200;
        double heightMetres = Cylinder.Require(Boundary.Metres(height) * 100, "cm", nameof(height)) / 100;
        Diameter = HouseUnits.Normalise(diameter);
        Height = HouseUnits.Normalise(height);
        Medium = Guard.NotNull(medium);
        Exposure = Guard.Defined(exposure);
        Standing = Guard.Defined(standing);
        double wattsPerSquareMetreKelvin = 1 / ResistanceSquareMetreKelvinPerWatt(exposure);
        double wattsPerMetreKelvin = Boundary.WattsPerMetreKelvin(medium.Conductivity);
        double squareMetresPerHour = wattsPerMetreKelvin / Boundary.JoulesPerCubicMetreKelvin(medium.HeatCapacity) * 3600;

        // A bottom without loss is the middle plane of a plate twice as thick.
        double halfThicknessMetres = standing == PotStanding.OnTheGround ? heightMetres : heightMetres / 2;
        modes = CylinderModes.Of(
            radiusMetres, halfThicknessMetres, wattsPerSquareMetreKelvin / wattsPerMetreKelvin, squareMetresPerHour);
    }

    /// <summary>Its mean inner diameter.</summary>
    public Length Diameter { get; }

    /// <summary>How high the medium stands.</summary>
    public Length Height { get; }

    /// <summary>What it is filled with.</summary>
    public SoilMaterial Medium { get; }

    /// <summary>How much wind reaches it.</summary>
    public PotExposure Exposure { get; }

    /// <summary>Whether its bottom loses heat too.</summary>
    public PotStanding Standing { get; }

    /// <summary>How long the slowest part of the difference to the air takes to shrink to 1/e, 37 %.</summary>
    public Estimate<Duration> TimeConstant => new(Duration.FromHours(1 / modes.SlowestPerHour), Cylinder, cautions: [FreezingLeftOut]);

    /// <summary>Follows the air.</summary>
    /// <param name="air">The temperature of the air from hour to hour, without gaps.</param>
    /// <param name="start">The temperature of the whole medium at the first hour.</param>
    /// <returns>The temperature of the medium at its wall and in its core at the same hours.</returns>
    /// <exception cref="ArgumentNullException">The air is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">Hours are missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The start is no temperature of the air.</exception>
    public PotTemperatures Follow(HourlyTemperatures air, Temperature start)
    {
        Guard.NotNull(air);
        double startCelsius = Guard.Within(
            Boundary.Celsius(start), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(start));
        if (air.MissingCount > 0)
            throw new ArgumentException($"air, {air}, had missing hours; allowed: none, because the medium carries each hour on.", nameof(air));
        double[] coreCelsius = new double[air.Count];
        double[] wallCelsius = new double[air.Count];
        modes.Follow(air.Celsius, startCelsius, coreCelsius, wallCelsius);
        Estimate<HourlyTemperatures> At(double[] celsius, params Caution[] cautions) =>
            new(HourlyTemperatures.OfCelsius(air.Start, celsius), Cylinder, cautions: [FreezingLeftOut, ClearSky, .. cautions]);
        return new PotTemperatures(At(wallCelsius, WallRoots), At(coreCelsius));
    }

    /// <summary>Whether another pot is the same.</summary>
    /// <param name="other">Another pot.</param>
    /// <returns><see langword="true"/> where size, medium, exposure and standing are equal.</returns>
    public bool Equals(PotCooling? other) => other is not null && Boundary.Metres(Diameter) == Boundary.Metres(other.Diameter) && Boundary.Metres(Height) == Boundary.Metres(other.Height)
        && Medium == other.Medium && Exposure == other.Exposure && Standing == other.Standing;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Diameter, Height, Medium, Exposure, Standing);

    /// <summary>The pot in metric units and invariant culture.</summary>
    /// <returns>Size, medium, exposure and time constant.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The pot as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Size, medium, exposure and time constant.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private static double ResistanceSquareMetreKelvinPerWatt(PotExposure exposure) => exposure switch
    {
        PotExposure.Sheltered => 0.08,
        PotExposure.Normal => 0.06,
        _ => 0.03,
    };

    private string ToString(TextStyle style) =>
        $"pot of {QuantityText.Of(Diameter, style)} by {QuantityText.Of(Height, style)}, {Medium.Name}, "
        + $"{Exposure.ToString().ToLowerInvariant()} exposure, {(Standing == PotStanding.OnTheGround ? "on the ground" : "in the air")}: "
        + $"time constant {QuantityText.Of(1 / modes.SlowestPerHour, style)} h";
}
