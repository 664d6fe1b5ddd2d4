using HortiCalc.Evidence;
using MathNet.Numerics;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Between which chances a count of years lies, by the exact interval of Clopper and Pearson.</summary>
internal static class BinomialBounds
{
    /// <summary>The confidence of a bound that no one asked for by its own.</summary>
    public const double UsualConfidence = 0.95;

    /// <summary>The interval of a chance seen so many times in so many years; from 0 where it was never seen.</summary>
    public static (double Low, double High) Of(int times, int years, double confidence)
    {
        double tail = (1 - confidence) / 2;
        double low = times == 0 ? 0 : BetaQuantile(times, years - times + 1, tail);
        double high = times == years ? 1 : BetaQuantile(times + 1, years - times, 1 - tail);
        return (low, high);
    }

    public static EstimateRange<Ratio> Range(int times, int years, double confidence = UsualConfidence)
    {
        (double low, double high) = Of(times, years, confidence);
        return new EstimateRange<Ratio>(
            Ratio.FromPercent(low * 100),
            Ratio.FromPercent(high * 100),
            $"{Units.Guard.Number(confidence * 100)} % interval of Clopper and Pearson, {Units.Guard.Number(times)} of {Units.Guard.Number(years)} years");
    }

    /// <summary>Bisection: the regularised incomplete beta function rises from 0 to 1.</summary>
    private static double BetaQuantile(double a, double b, double share)
    {
        double low = 0;
        double high = 1;
        for (int step = 0; step < 60; step++)
        {
            double middle = (low + high) / 2;
            if (SpecialFunctions.BetaRegularized(a, b, middle) < share)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }
}
