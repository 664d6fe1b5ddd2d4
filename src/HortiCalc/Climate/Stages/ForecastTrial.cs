using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Takes each past season in turn as the present one.</summary>
internal static class ForecastTrial
{
    public static ForecastSkill? Of(IReadOnlyList<PastSeason> seasons, double needCelsiusDays, DateOnly next)
    {
        int others = seasons.Count - 1;
        if (others < HeatForecastEvidence.FewestYears)
            return null;
        double early = RankedDates.Supported(others, 0.1);
        double late = RankedDates.Supported(others, 0.9);
        int[] forecast = new int[others];
        int[] usual = new int[others];
        int years = 0;
        int within = 0;
        int compared = 0;
        double error = 0;
        double absolute = 0;
        double usualError = 0;
        double usualAbsolute = 0;
        foreach (PastSeason present in seasons)
        {
            int truth = present.OwnDay(needCelsiusDays);
            if (truth < next.DayNumber)
                continue;
            years++;
            double remaining = needCelsiusDays - present.CelsiusDaysSoFar();
            int filled = 0;
            foreach (PastSeason other in seasons)
            {
                if (ReferenceEquals(other, present))
                    continue;
                forecast[filled] = other.DayToCome(remaining);
                usual[filled++] = other.OwnDay(needCelsiusDays);
            }

            Array.Sort(forecast);
            Array.Sort(usual);
            within += truth >= RankedDates.At(forecast, early) && truth <= RankedDates.At(forecast, late) ? 1 : 0;
            int middle = RankedDates.At(forecast, 0.5);
            int usualMiddle = RankedDates.At(usual, 0.5);
            if (truth == RankedDates.Never || middle == RankedDates.Never || usualMiddle == RankedDates.Never)
                continue;
            compared++;
            error += middle - truth;
            absolute += Math.Abs(middle - truth);
            usualError += usualMiddle - truth;
            usualAbsolute += Math.Abs(usualMiddle - truth);
        }

        return compared < HeatForecastEvidence.FewestYears ? null : new ForecastSkill(
            years,
            compared,
            Duration.FromDays(error / compared),
            Duration.FromDays(absolute / compared),
            Duration.FromDays(usualError / compared),
            Duration.FromDays(usualAbsolute / compared),
            Ratio.FromPercent(100.0 * within / years),
            Ratio.FromPercent(100 * (late - early)));
    }
}
