using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>
/// The damped wave against the equation that it solves, ∂T/∂t = α ∂²T/∂z², integrated step by step in a deep column under a surface that follows
/// the wave, for so long that the start is forgotten. The integration knows nothing of damping depths or lags.
/// </summary>
public class HeatEquationTests
{
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(1.2)]
    public void AnnualWave_AtDepth_SolvesTheHeatEquation(double squareMillimetresPerSecond)
    {
        AnnualWave surface = new(Temperature.FromDegreesCelsius(11), TemperatureDelta.FromDegreesCelsius(10), Duration.FromDays(22));
        ThermalDiffusivity diffusivity = ThermalDiffusivity.FromSquareMillimetresPerSecond(squareMillimetresPerSecond);
        const int cells = 600;
        const double cellMetres = 0.05;
        const double stepDays = 0.25;
        double[] column = Integrate(
            cells, cellMetres, stepDays, periods: 12, periodDays: 365, diffusivity.SquareMetresPerDay, time => surface.Mean.DegreesCelsius - 10 * Math.Cos(2 * Math.PI * (time - 22) / 365));

        // After whole years it is the start of the year: 31 December counts 0 on the scale on which 1 January is 1.
        for (int cell = 0; cell <= 80; cell += 4)
        {
            AnnualWave below = surface.AtDepth(Length.FromMeters(cell * cellMetres), diffusivity);
            double expected = below.On(new MonthDay(12, 31)).DegreesCelsius;
            Assert.True(Math.Abs(expected - column[cell]) < 0.02, $"at {cell * cellMetres} m the wave has {expected} °C, the column {column[cell]} °C");
        }
    }

    [Fact]
    public void DailyWave_AtDepth_SolvesTheHeatEquation()
    {
        DailyWave surface = new(Temperature.FromDegreesCelsius(20), TemperatureDelta.FromDegreesCelsius(12), Duration.FromHours(5));
        ThermalDiffusivity diffusivity = SoilMaterials.LooseSandySoilMoist.Diffusivity;
        const double cellMetres = 0.005;
        double[] column = Integrate(
            400, cellMetres, stepDays: 1.0 / 1440, periods: 40, periodDays: 1, diffusivity.SquareMetresPerDay, time => 20 - 12 * Math.Cos(2 * Math.PI * (time - 5.0 / 24)));

        for (int cell = 0; cell <= 80; cell += 4)
        {
            double expected = surface.AtDepth(Length.FromMeters(cell * cellMetres), diffusivity).At(TimeOnly.MinValue).DegreesCelsius;
            Assert.True(Math.Abs(expected - column[cell]) < 0.02, $"at {cell * cellMetres} m the wave has {expected} °C, the column {column[cell]} °C");
        }
    }

    /// <summary>Crank and Nicolson's scheme, second order in time and depth; the bottom is insulated and far below the wave's reach.</summary>
    private static double[] Integrate(
        int cells, double cellMetres, double stepDays, int periods, double periodDays, double squareMetresPerDay, Func<double, double> surfaceCelsius)
    {
        double ratio = squareMetresPerDay * stepDays / (cellMetres * cellMetres) / 2;
        double[] column = new double[cells];
        double[] right = new double[cells];
        double[] factor = new double[cells];
        double mean = (surfaceCelsius(0) + surfaceCelsius(periodDays / 2)) / 2;
        Array.Fill(column, mean);
        int steps = (int)Math.Round(periods * periodDays / stepDays, MidpointRounding.AwayFromZero);
        for (int step = 1; step <= steps; step++)
        {
            double next = surfaceCelsius(step * stepDays);
            for (int cell = 1; cell < cells - 1; cell++)
                right[cell] = column[cell] + ratio * (column[cell - 1] - 2 * column[cell] + column[cell + 1]);
            right[cells - 1] = column[cells - 1] + ratio * 2 * (column[cells - 2] - column[cells - 1]);
            right[0] = next;

            // Thomas' algorithm; the first equation is the surface itself, the last mirrors the column.
            factor[0] = 0;
            for (int cell = 1; cell < cells; cell++)
            {
                double above = cell == cells - 1 ? -2 * ratio : -ratio;
                double pivot = 1 + 2 * ratio - above * factor[cell - 1];
                factor[cell] = -ratio / pivot;
                right[cell] = (right[cell] - above * right[cell - 1]) / pivot;
            }

            column[cells - 1] = right[cells - 1];
            for (int cell = cells - 2; cell >= 0; cell--)
                column[cell] = right[cell] - factor[cell] * column[cell + 1];
        }

        return column;
    }
}
