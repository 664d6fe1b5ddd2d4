using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>The arithmetic of moist air as a mixture of perfect gases.</summary>
internal static class MoistAirKernels
{
    /// <summary>The molar mass of water per that of dry air: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20.</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>
    /// Water by volume, in g·K/J: one over the gas constant of water vapour. Vaisala, Humidity conversion formulas, M211280EN-D,
    /// https://docs.vaisala.com/r/M211280EN-D.
    /// </summary>
    public const double GramKelvinsPerJoule = 2.16679;

    private const double PascalsPerKilopascal = 1000;
    private const double ToleranceCelsius = 1e-12;
    private const int MostSteps = 100;

    /// <summary>kg of water per kg of dry air.</summary>
    public static double MixingRatio(double vapourKilopascals, double airKilopascals) =>
        MolarMassRatio * vapourKilopascals / (airKilopascals - vapourKilopascals);

    public static double VapourKilopascals(double mixingRatio, double airKilopascals) =>
        airKilopascals * mixingRatio / (MolarMassRatio + mixingRatio);

    /// <summary>g of water per m³ of moist air.</summary>
    public static double GramsPerCubicMetre(double vapourKilopascals, double celsius) =>
        GramKelvinsPerJoule * PascalsPerKilopascal * vapourKilopascals / (celsius + Boundary.KelvinAtZeroCelsius);

    public static double VapourKilopascalsOf(double gramsPerCubicMetre, double celsius) =>
        gramsPerCubicMetre * (celsius + Boundary.KelvinAtZeroCelsius) / (GramKelvinsPerJoule * PascalsPerKilopascal);

    /// <summary>
    /// The wet bulb at which the psychrometer gives a vapour pressure, between two temperatures at which it gives no more and no less. Ridders'
    /// method: never leaves the two, and needs a handful of steps.
    /// </summary>
    public static double WetCelsius(
        SaturationCurve curve, Psychrometer psychrometer, bool overIce, double dryCelsius, double vapourKilopascals, double airKilopascals, double low, double high)
    {
        double atLow = Excess(low);
        double atHigh = Excess(high);
        if (atLow >= 0)
            return low;
        if (atHigh <= 0)
            return high;
        for (int step = 0; step < MostSteps && high - low > ToleranceCelsius; step++)
        {
            double middle = low + (high - low) / 2;
            double atMiddle = Excess(middle);
            double found = middle - (middle - low) * atMiddle / Math.Sqrt(atMiddle * atMiddle - atLow * atHigh);
            double atFound = Excess(found);
            if (atFound == 0)
                return found;
            (double left, double atLeft, double right, double atRight) =
                found < middle ? (found, atFound, middle, atMiddle) : (middle, atMiddle, found, atFound);
            if (atLeft >= 0)
                (high, atHigh) = (left, atLeft);
            else if (atRight >= 0)
                (low, atLow, high, atHigh) = (left, atLeft, right, atRight);
            else
                (low, atLow) = (right, atRight);
            if (atHigh == 0)
                return high;
        }

        return low + (high - low) / 2;

        double Excess(double wet)
        {
            double saturation = curve.Kilopascals(wet);
            double given = overIce
                ? psychrometer.KilopascalsOverIce(saturation, dryCelsius, wet, airKilopascals)
                : psychrometer.Kilopascals(saturation, dryCelsius, wet, airKilopascals);
            return given - vapourKilopascals;
        }
    }
}
