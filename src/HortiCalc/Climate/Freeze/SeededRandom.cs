namespace HortiCalc.Climate;

/// <summary>A small random number generator whose numbers depend on its seed alone: SplitMix64.</summary>
/// <remarks>
/// By Steele, Lea and Flood, Fast splittable pseudorandom number generators, OOPSLA 2014, in the public domain form of Vigna. Its own
/// and not the platform's, so that a seed gives the same dates on every version of .NET.
/// </remarks>
internal struct SeededRandom(long seed)
{
    private ulong state = unchecked((ulong)seed);

    /// <summary>The next 64 random bits.</summary>
    public ulong Next()
    {
        ulong bits = unchecked(state += 0x9E3779B97F4A7C15);
        bits = unchecked((bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9);
        bits = unchecked((bits ^ (bits >> 27)) * 0x94D049BB133111EB);
        return bits ^ (bits >> 31);
    }

    /// <summary>A whole number from 0 up to, not including, a count. Uneven by less than the count in 2^64.</summary>
    public int Below(int count) => (int)Math.BigMul(Next(), (ulong)count, out _);
}
