using MathNet.Numerics.Distributions;

namespace HortiCalc.Season;

/// <summary>How many seeds or cuttings to start, where each succeeds by itself with the same chance.</summary>
internal static class StartsNeeded
{
    /// <summary>The fewest starts with which the chance of too few plants is no more than accepted.</summary>
    public static int For(int plants, double successShare, double acceptedShortfall)
    {
        if (successShare >= 1)
            return plants;
        int enough = plants;
        while (Shortfall(enough, plants, successShare) > acceptedShortfall)
            enough *= 2;
        int tooFew = plants - 1;
        while (enough - tooFew > 1)
        {
            int middle = tooFew + (enough - tooFew) / 2;
            if (Shortfall(middle, plants, successShare) > acceptedShortfall)
                tooFew = middle;
            else
                enough = middle;
        }

        return enough;
    }

    /// <summary>The chance that fewer than <paramref name="plants"/> of <paramref name="starts"/> succeed.</summary>
    public static double Shortfall(int starts, int plants, double successShare) => Binomial.CDF(successShare, starts, plants - 1);
}
