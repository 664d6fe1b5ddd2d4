using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>How much more gypsum is taken than the exchange of sodium for calcium needs by weight.</summary>
/// <remarks>
/// Immutable; a closed set: the values are the static members. <see cref="Ali"/> is the default, because its allowance was seen in print.
/// </remarks>
public sealed record GypsumMethod
{
    private GypsumMethod(string key, string name, Source source, string conditions, double factor, double low, double high)
    {
        Method = new Method(key, name, source, new Domain(conditions));
        Factor = factor;
        LowestFactor = low;
        HighestFactor = high;
    }

    /// <summary>No more than the exchange needs: every calcium replaces two of sodium.</summary>
    public static GypsumMethod Exact { get; } = new(
        "gypsum-exact",
        "gypsum for the sodium to be replaced",
        Source.CommonPractice("gypsum-equivalent", "one equivalent of gypsum for one of exchangeable sodium"),
        "every calcium replaces sodium",
        1,
        1,
        1);

    /// <summary>A quarter more than the exchange needs: the safety factor of Ali, Example 8.7.</summary>
    public static GypsumMethod Ali { get; } = new(
        "gypsum-ali", "gypsum for the sodium to be replaced, and a quarter more", SaltSources.Gypsum, "field practice", 1.25, 1.25, 1.25);

    /// <summary>From 1.1 to 1.3 times, more for a lower target, after Oster and others; the middle is taken, and the ends are the range. From memory.</summary>
    public static GypsumMethod Oster { get; } = new(
        "gypsum-oster", "gypsum for the sodium to be replaced, times 1.1 to 1.3", SaltSources.Oster, "field practice", 1.2, 1.1, 1.3);

    /// <summary>Every allowance there is.</summary>
    public static IReadOnlyList<GypsumMethod> All { get; } = ValueList<GypsumMethod>.Of([Exact, Ali, Oster]);

    /// <summary>The allowance's key, name and source.</summary>
    public Method Method { get; }

    internal double Factor { get; }

    internal double LowestFactor { get; }

    internal double HighestFactor { get; }

    /// <summary>Finds an allowance by its key.</summary>
    /// <param name="key">The key of its method, for instance <c>gypsum-ali</c>.</param>
    /// <returns>The allowance.</returns>
    /// <exception cref="ArgumentException">There is no such allowance, or the key is empty.</exception>
    public static GypsumMethod FromKey(string key) => SoilKeys.Find(All, method => method.Method.Key, key);

    /// <summary>The name and source of the allowance.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();
}
