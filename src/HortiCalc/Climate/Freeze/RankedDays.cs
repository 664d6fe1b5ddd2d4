namespace HortiCalc.Climate;

/// <summary>Dates ranked from their rare side: from the latest in spring, from the earliest in autumn.</summary>
internal sealed class RankedDays
{
    private readonly MonthDay seasonStart;
    private readonly PlottingPosition position;
    private readonly int[] ascending;
    private readonly int[] descendingNegated;

    /// <param name="seasonStart">The first day of the cold season.</param>
    /// <param name="ascending">The days after it, from 0 to 364, in ascending order; at least one.</param>
    /// <param name="position">The plotting position.</param>
    public RankedDays(MonthDay seasonStart, int[] ascending, PlottingPosition position)
    {
        this.seasonStart = seasonStart;
        this.position = position;
        this.ascending = ascending;
        descendingNegated = [.. ascending.Reverse().Select(day => -day)];
    }

    public MonthDay Middle => MonthDay.Nearest(seasonStart.DayOfYear + (ascending[(ascending.Length - 1) / 2] + ascending[ascending.Length / 2]) / 2.0);

    /// <summary>How many dates lie on a day or to its rare side.</summary>
    public int CountBeyond(MonthDay date, FreezeSide side) => CountUpTo(Sorted(side), Signed(date, side));

    /// <inheritdoc cref="FreezeDates.ChanceBeyond"/>
    public double ChanceBeyond(MonthDay date, FreezeSide side, double share)
    {
        int[] sorted = Sorted(side);
        int day = Signed(date, side);
        int count = CountUpTo(sorted, day);

        // Seasons without a freeze rank behind all others. Beyond the first rank its chance is the bound; between two dates in proportion,
        // up to the lowest rank of the next.
        double rank = count == 0 ? 1 : count;
        if (count > 0 && count < sorted.Length && sorted[count - 1] < day)
            rank += (double)(day - sorted[count - 1]) / (sorted[count] - sorted[count - 1]);
        return position.ChanceOfRank(rank, sorted.Length / share);
    }

    /// <inheritdoc cref="FreezeDates.DayOfChance"/>
    public double DayOfChance(double chance, FreezeSide side, double share)
    {
        int[] sorted = Sorted(side);
        double rank = Math.Clamp(position.RankOfChance(chance, sorted.Length / share), 1, sorted.Length);
        int below = (int)rank;
        double next = sorted[Math.Min(below, sorted.Length - 1)];
        double day = sorted[below - 1] + (rank - below) * (next - sorted[below - 1]);
        return seasonStart.DayOfYear + (side == FreezeSide.Spring ? -day : day);
    }

    public bool IsBeyond(double chance, double share)
    {
        // The chance of a rank is seldom exact in binary fractions.
        const double hair = 1e-9;
        return position.RankOfChance(chance, ascending.Length / share) < 1 - hair;
    }

    private static int CountUpTo(int[] sorted, int day)
    {
        int low = 0;
        int high = sorted.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (sorted[middle] <= day)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }

    private int[] Sorted(FreezeSide side) => side == FreezeSide.Spring ? descendingNegated : ascending;

    private int Signed(MonthDay date, FreezeSide side)
    {
        int day = (int)MonthDay.Wrapped(date.DayOfYear - seasonStart.DayOfYear);
        return side == FreezeSide.Spring ? -day : day;
    }
}
