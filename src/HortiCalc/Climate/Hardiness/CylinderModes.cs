using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace HortiCalc.Climate;

/// <summary>
/// The cooling of a short cylinder by its surface, as a sum of first-order lags: the product of the series of an endless cylinder and of a plate
/// (Carslaw and Jaeger, Conduction of Heat in Solids, Oxford 1959, chapters 3 and 7; from memory, checked against a numerical solution in the tests).
/// </summary>
internal sealed class CylinderModes
{
    private const int Terms = 24;

    // Each lag: its rate, and its weight in the core (on the axis, half-way or at the bottom) and at the wall of the same height.
    private readonly double[] perHour;
    private readonly double[] coreWeights;
    private readonly double[] wallWeights;

    private CylinderModes(double[] perHour, double[] coreWeights, double[] wallWeights)
    {
        this.perHour = perHour;
        this.coreWeights = coreWeights;
        this.wallWeights = wallWeights;
    }

    public double SlowestPerHour => perHour[0];

    /// <summary>The lags of a cylinder.</summary>
    /// <param name="radiusMetres">Its radius.</param>
    /// <param name="halfThicknessMetres">From the plane without heat flow to the end that loses heat.</param>
    /// <param name="filmPerMetre">The coefficient of the film over the conductivity.</param>
    /// <param name="squareMetresPerHour">The diffusivity.</param>
    public static CylinderModes Of(double radiusMetres, double halfThicknessMetres, double filmPerMetre, double squareMetresPerHour)
    {
        double[] perHour = new double[Terms * Terms];
        double[] core = new double[Terms * Terms];
        double[] wall = new double[Terms * Terms];
        double[] radial = RadialRoots(filmPerMetre * radiusMetres);
        double[] axial = AxialRoots(filmPerMetre * halfThicknessMetres);
        for (int i = 0; i < Terms; i++)
        {
            double j0 = SpecialFunctions.BesselJ(0, radial[i]);
            double j1 = SpecialFunctions.BesselJ(1, radial[i]);
            double radialWeight = 2 * j1 / (radial[i] * (j0 * j0 + j1 * j1));
            for (int j = 0; j < Terms; j++)
            {
                double axialWeight = 4 * Math.Sin(axial[j]) / (2 * axial[j] + Math.Sin(2 * axial[j]));
                int mode = i * Terms + j;
                perHour[mode] = squareMetresPerHour
                    * (Square(radial[i] / radiusMetres) + Square(axial[j] / halfThicknessMetres));
                core[mode] = radialWeight * axialWeight;
                wall[mode] = core[mode] * j0;
            }
        }

        return new CylinderModes(perHour, core, wall);
    }

    /// <summary>The temperatures at the hours of the air, which runs straight from one to the next.</summary>
    public void Follow(ReadOnlySpan<double> airCelsius, double startCelsius, Span<double> coreCelsius, Span<double> wallCelsius)
    {
        coreCelsius[0] = startCelsius;
        wallCelsius[0] = startCelsius;
        coreCelsius[1..].Clear();
        wallCelsius[1..].Clear();
        double coreRest = 1;
        double wallRest = 1;
        for (int mode = 0; mode < perHour.Length; mode++)
        {
            double rate = perHour[mode];
            double kept = Math.Exp(-rate);
            double lagged = startCelsius;
            coreRest -= coreWeights[mode];
            wallRest -= wallWeights[mode];
            for (int hour = 1; hour < airCelsius.Length; hour++)
            {
                // The lag of a straight line runs behind it by slope over rate, and what was off that is forgotten by the exponential.
                double behind = (airCelsius[hour] - airCelsius[hour - 1]) / rate;
                lagged = airCelsius[hour] - behind + (lagged - airCelsius[hour - 1] + behind) * kept;
                coreCelsius[hour] += coreWeights[mode] * lagged;
                wallCelsius[hour] += wallWeights[mode] * lagged;
            }
        }

        // The terms beyond the last follow the air at once.
        for (int hour = 1; hour < airCelsius.Length; hour++)
        {
            coreCelsius[hour] += coreRest * airCelsius[hour];
            wallCelsius[hour] += wallRest * airCelsius[hour];
        }
    }

    /// <summary>The roots of z J1(z) = Bi J0(z): each lies between a zero of J1 and the next of J0.</summary>
    private static double[] RadialRoots(double biot)
    {
        double[] roots = new double[Terms];
        double zeroOfJ1 = 0;
        for (int i = 0; i < Terms; i++)
        {
            double zeroOfJ0 = Root(z => SpecialFunctions.BesselJ(0, z), (i + 0.7) * Math.PI, (i + 0.8) * Math.PI);
            roots[i] = Root(z => z * SpecialFunctions.BesselJ(1, z) - biot * SpecialFunctions.BesselJ(0, z), zeroOfJ1, zeroOfJ0);
            zeroOfJ1 = Root(z => SpecialFunctions.BesselJ(1, z), (i + 1.15) * Math.PI, (i + 1.3) * Math.PI);
        }

        return roots;
    }

    /// <summary>The roots of z tan z = Bi, one in each first half of a turn by π.</summary>
    private static double[] AxialRoots(double biot)
    {
        double[] roots = new double[Terms];
        for (int i = 0; i < Terms; i++)
            roots[i] = Root(z => z * Math.Sin(z) - biot * Math.Cos(z), i * Math.PI, (i + 0.5) * Math.PI);
        return roots;
    }

    private static double Root(Func<double, double> function, double low, double high) => Brent.FindRoot(function, low, high, 1e-13, 200);

    private static double Square(double value) => value * value;
}
