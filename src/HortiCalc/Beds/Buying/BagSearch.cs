namespace HortiCalc.Beds;

/// <summary>Exact search for whole numbers of bags that cover a need.</summary>
/// <remarks>
/// Sums are kept as whole nanolitres, so that one reached in two ways is one. The least cost is a shortest path: states are taken in the
/// order of cost and then of bags, and one that holds no more than a cheaper one before it can never end better. The other two aims walk
/// through every sum below the need in rising order, each with the fewest bags that reach it.
/// </remarks>
internal static class BagSearch
{
    public const double LargestLitres = 1e9;

    private const double NanolitresPerLitre = 1e9;
    private const double RelativeNoise = 1e-9;
    private const int MostStates = 3_000_000;

    /// <summary>How many of each, or <see langword="null"/> where there is more to search than can be held.</summary>
    public static int[]? Best(double neededLitres, ReadOnlySpan<double> bagLitres, ReadOnlySpan<decimal> prices, BagAim aim)
    {
        // A need that exceeds a sum only by noise is covered by it.
        long need = (long)(neededLitres * NanolitresPerLitre * (1 - RelativeNoise));
        long[] bags = new long[bagLitres.Length];
        for (int i = 0; i < bags.Length; i++)
            bags[i] = (long)Math.Min(Math.Round(bagLitres[i] * NanolitresPerLitre, MidpointRounding.AwayFromZero), 2 * LargestLitres * NanolitresPerLitre);
        if (need <= 0)
            return new int[bags.Length];
        return aim == BagAim.LeastCost ? Cheapest(need, bags, prices) : BySum(need, bags, aim);
    }

    private static int[]? Cheapest(long need, long[] bags, ReadOnlySpan<decimal> prices)
    {
        List<(long Sum, int Parent, int Bag)> states = [(0, -1, -1)];
        PriorityQueue<int, (decimal Cost, int Count, long LessSum)> open = new();
        open.Enqueue(0, (0, 0, 0));
        long most = -1;
        while (open.TryDequeue(out int state, out (decimal Cost, int Count, long LessSum) rank))
        {
            long sum = states[state].Sum;
            if (sum <= most)
                continue;
            if (sum >= need)
                return Counts(states, state, bags.Length);
            most = sum;
            for (int bag = 0; bag < bags.Length; bag++)
            {
                if (states.Count == MostStates)
                    return null;
                states.Add((sum + bags[bag], state, bag));
                open.Enqueue(states.Count - 1, (rank.Cost + prices[bag], rank.Count + 1, -(sum + bags[bag])));
            }
        }

        return null;
    }

    private static int[]? BySum(long need, long[] bags, BagAim aim)
    {
        List<(long Sum, int Parent, int Bag)> states = [(0, -1, -1)];
        List<int> counts = [0];
        Dictionary<long, int> bySum = new() { [0] = 0 };
        PriorityQueue<int, long> open = new();
        open.Enqueue(0, 0);
        int best = -1;
        while (open.TryDequeue(out int state, out long sum))
        {
            if (sum >= need)
            {
                bool better = best < 0
                    || (aim == BagAim.FewestBags
                        ? (counts[state], sum).CompareTo((counts[best], states[best].Sum)) < 0
                        : (sum, counts[state]).CompareTo((states[best].Sum, counts[best])) < 0);
                best = better ? state : best;
                continue;
            }

            for (int bag = 0; bag < bags.Length; bag++)
            {
                long next = sum + bags[bag];
                if (bySum.TryGetValue(next, out int known))
                {
                    if (counts[state] + 1 < counts[known])
                    {
                        counts[known] = counts[state] + 1;
                        states[known] = (next, state, bag);
                    }

                    continue;
                }

                if (states.Count == MostStates)
                    return null;
                states.Add((next, state, bag));
                counts.Add(counts[state] + 1);
                bySum[next] = states.Count - 1;
                open.Enqueue(states.Count - 1, next);
            }
        }

        return Counts(states, best, bags.Length);
    }

    private static int[] Counts(List<(long Sum, int Parent, int Bag)> states, int state, int kinds)
    {
        int[] counts = new int[kinds];
        for (; states[state].Parent >= 0; state = states[state].Parent)
            counts[states[state].Bag]++;
        return counts;
    }
}
