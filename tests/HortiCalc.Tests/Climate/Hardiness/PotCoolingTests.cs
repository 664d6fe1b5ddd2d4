using FsCheck.Xunit;
using HortiCalc.Climate;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Climate;

/// <summary>The series of the cylinder against a numerical solution of the heat equation, and the laws of cooling.</summary>
[Properties(MaxTest = 40)]
public class PotCoolingTests
{
    private static readonly DateTime Start = new(2026, 1, 10, 16, 0, 0);

    [Theory]
    [InlineData(30, 28, PotExposure.Normal, PotStanding.OnTheGround)]
    [InlineData(12, 11, PotExposure.Severe, PotStanding.InTheAir)]
    [InlineData(60, 40, PotExposure.Sheltered, PotStanding.InTheAir)]
    public void Follow_ColdNight_IsTheNumericalSolution(double diameterCm, double heightCm, PotExposure exposure, PotStanding standing)
    {
        double[] air = [.. Enumerable.Range(0, 48).Select(hour => 1 - 9 * Math.Sin(hour * Math.PI / 24))];
        PotTemperatures pot = Pot(diameterCm, heightCm, SoilMaterials.PeatSoilMoist, exposure, standing)
            .Follow(HourlyTemperatures.Create(Start, air, TemperatureUnit.DegreeCelsius), Temperature.FromDegreesCelsius(5));

        (double[] core, double[] wall) = FiniteVolumes(air, 5, diameterCm / 200, heightCm / 100, exposure, standing);

        for (int hour = 1; hour < air.Length; hour++)
        {
            Assert.Equal(core[hour], pot.Core.Value[Start.AddHours(hour)]!.Value.DegreesCelsius, 0.06);
            Assert.Equal(wall[hour], pot.Wall.Value[Start.AddHours(hour)]!.Value.DegreesCelsius, 0.12);
        }
    }

    [Fact]
    public void TimeConstant_ThinPlateLikePot_ApproachesThatOfTheWholeBody()
    {
        // With much conduction and little film the body cools as one: τ = capacity x volume / (film x surface).
        SoilMaterial conductor = SoilMaterials.LooseSandySoilWet;
        double radius = 0.03;
        double height = 0.06;
        double lumpedHours = conductor.HeatCapacity.JoulesPerCubicMeterKelvin * Math.PI * radius * radius * height
            / (1 / 0.08 * (2 * Math.PI * radius * height + 2 * Math.PI * radius * radius)) / 3600;

        double hours = Pot(6, 6, conductor, PotExposure.Sheltered, PotStanding.InTheAir).TimeConstant.Value.Hours;

        Assert.InRange(hours, lumpedHours, 1.15 * lumpedHours);
    }

    [Property]
    public void Follow_ConstantAirAtTheStart_Stays(byte size, sbyte degrees)
    {
        double celsius = degrees / 4.0;
        PotTemperatures pot = Pot(size).Follow(Constant(celsius, 30), Temperature.FromDegreesCelsius(celsius));

        Assert.Equal(celsius, pot.LowestAtWall.DegreesCelsius, 1e-9);
        Assert.Equal(celsius, pot.LowestInCore.DegreesCelsius, 1e-9);
    }

    [Property]
    public void Follow_ColderAir_CoreStaysWarmerThanTheWallAndBothWarmerThanTheAir(byte size, byte drop)
    {
        double air = 5 - 0.1 - drop / 10.0;
        PotTemperatures pot = Pot(size).Follow(Constant(air, 12), Temperature.FromDegreesCelsius(5));

        Assert.True(pot.LowestInCore.DegreesCelsius >= pot.LowestAtWall.DegreesCelsius - 1e-6);
        Assert.True(pot.LowestAtWall.DegreesCelsius >= air - 1e-6);
    }

    [Property]
    public void Follow_ShiftedTemperatures_AreShifted(byte size, sbyte shift)
    {
        double by = shift / 10.0;
        PotTemperatures one = Pot(size).Follow(Night(0), Temperature.FromDegreesCelsius(4));
        PotTemperatures other = Pot(size).Follow(Night(by), Temperature.FromDegreesCelsius(4 + by));

        Assert.Equal(one.LowestAtWall.DegreesCelsius + by, other.LowestAtWall.DegreesCelsius, 1e-9);
    }

    [Property]
    public void TimeConstant_LargerPot_IsLonger(byte size, byte more)
    {
        double grown = Math.Min(200, 5 + size / 2.0 + 1 + more / 4.0);

        Assert.True(
            Pot(grown, grown, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround).TimeConstant.Value.Hours
            > Pot(size).TimeConstant.Value.Hours);
    }

    [Property]
    public void TimeConstant_MoreWind_IsShorter(byte size)
    {
        double side = 5 + size / 2.0;
        double[] hours = [.. Enum.GetValues<PotExposure>().Select(exposure =>
            Pot(side, side, SoilMaterials.PeatSoilMoist, exposure, PotStanding.InTheAir).TimeConstant.Value.Hours)];

        Assert.True(hours[0] > hours[1] && hours[1] > hours[2]);
    }

    [Property]
    public void TimeConstant_BottomInTheAir_IsShorter(byte size)
    {
        double side = 5 + size / 2.0;

        Assert.True(
            Pot(side, side, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.InTheAir).TimeConstant.Value.Hours
            < Pot(side, side, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround).TimeConstant.Value.Hours);
    }

    [Fact]
    public void TimeConstant_PotInCentimetresOrInches_IsTheSame()
    {
        PotCooling metric = Pot(25.4, 25.4, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround);
        PotCooling inches = new(
            Length.FromInches(10), Length.FromInches(10), SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround);

        Assert.Equal(metric, inches);
        Assert.Equal(metric.TimeConstant.Value.Hours, inches.TimeConstant.Value.Hours, 1e-12);
    }

    [Fact]
    public void HoursAtWallAtOrBelow_ColdNight_CountsThem()
    {
        PotTemperatures pot = Pot(20).Follow(Night(-6), Temperature.FromDegreesCelsius(2));
        Temperature lowest = pot.LowestAtWall;

        Assert.Equal(1, pot.HoursAtWallAtOrBelow(lowest));
        Assert.Equal(pot.Wall.Value.Count, pot.HoursAtWallAtOrBelow(Temperature.FromDegreesCelsius(20)));
        Assert.Contains(pot.Wall.Cautions, caution => caution.Code == "pot.roots-at-the-wall");
        Assert.Contains(pot.Wall.Cautions, caution => caution.Code == "pot.clear-sky-left-out");
        Assert.Contains(pot.Core.Cautions, caution => caution.Code == "pot.clear-sky-left-out");
    }

    [Theory]
    [InlineData(4.9, 20, "diameter")]
    [InlineData(20, 201, "height")]
    [InlineData(0, 20, "diameter")]
    public void Create_SizeOutsideTheRange_IsRefused(double diameterCm, double heightCm, string parameter)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => Pot(diameterCm, heightCm, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround));

        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains("from 5 to 200 cm", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Follow_MissingHour_IsRefused()
    {
        HourlyTemperatures air = HourlyTemperatures.Create(Start, [1, double.NaN, 0], TemperatureUnit.DegreeCelsius);

        ArgumentException refused = Assert.Throws<ArgumentException>(() => Pot(20).Follow(air, Temperature.FromDegreesCelsius(1)));

        Assert.Equal("air", refused.ParamName);
    }

    private static PotCooling Pot(byte size) =>
        Pot(5 + size / 2.0, 5 + size / 2.0, SoilMaterials.PeatSoilMoist, PotExposure.Normal, PotStanding.OnTheGround);

    private static PotCooling Pot(double diameterCm, double heightCm, SoilMaterial medium, PotExposure exposure, PotStanding standing) =>
        new(Length.FromCentimeters(diameterCm), Length.FromCentimeters(heightCm), medium, exposure, standing);

    private static HourlyTemperatures Constant(double celsius, int hours) =>
        HourlyTemperatures.Create(Start, [.. Enumerable.Repeat(celsius, hours)], TemperatureUnit.DegreeCelsius);

    private static HourlyTemperatures Night(double shift) => HourlyTemperatures.Create(
        Start, [.. Enumerable.Range(0, 24).Select(hour => shift + 2 - 8 * Math.Sin(hour * Math.PI / 23))], TemperatureUnit.DegreeCelsius);

    /// <summary>The heat equation on rings and layers, in short explicit steps: no series, no roots, nothing of the library.</summary>
    private static (double[] Core, double[] Wall) FiniteVolumes(
        double[] air, double start, double radius, double height, PotExposure exposure, PotStanding standing)
    {
        const int n = 30;
        const int m = 30;
        double conductivity = 0.27;
        double capacity = 2.13e6;
        double film = 1 / (exposure == PotExposure.Sheltered ? 0.08 : exposure == PotExposure.Normal ? 0.06 : 0.03);
        double depth = standing == PotStanding.OnTheGround ? height : height / 2;
        double dr = radius / n;
        double dz = depth / m;
        double step = 0.2 * Math.Min(dr * dr, dz * dz) * capacity / conductivity;
        int steps = (int)Math.Ceiling(3600 / step);
        step = 3600.0 / steps;
        double[,] t = new double[n, m];
        double[,] next = new double[n, m];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < m; j++)
                t[i, j] = start;
        }

        double[] core = new double[air.Length];
        double[] wall = new double[air.Length];
        double sideFilm = 1 / (1 / film + dr / 2 / conductivity);
        double topFilm = 1 / (1 / film + dz / 2 / conductivity);
        for (int hour = 1; hour < air.Length; hour++)
        {
            double outside;
            for (int s = 0; s < steps; s++)
            {
                outside = air[hour - 1] + (air[hour] - air[hour - 1]) * (s + 0.5) / steps;
                for (int i = 0; i < n; i++)
                {
                    double inner = i * dr;
                    double outer = (i + 1) * dr;
                    double volume = (outer * outer - inner * inner) / 2 * dz;
                    for (int j = 0; j < m; j++)
                    {
                        double heat = i > 0 ? conductivity * inner * dz * (t[i - 1, j] - t[i, j]) / dr : 0;
                        heat += i < n - 1 ? conductivity * outer * dz * (t[i + 1, j] - t[i, j]) / dr : sideFilm * radius * dz * (outside - t[i, j]);
                        double face = (outer * outer - inner * inner) / 2;
                        heat += j > 0 ? conductivity * face * (t[i, j - 1] - t[i, j]) / dz : 0;
                        heat += j < m - 1 ? conductivity * face * (t[i, j + 1] - t[i, j]) / dz : topFilm * face * (outside - t[i, j]);
                        next[i, j] = t[i, j] + heat * step / (capacity * volume);
                    }
                }

                (t, next) = (next, t);
            }

            core[hour] = t[0, 0];
            double edge = t[n - 1, 0];
            wall[hour] = edge + (air[hour] - edge) * (dr / 2 / conductivity) / (dr / 2 / conductivity + 1 / film);
        }

        return (core, wall);
    }
}
