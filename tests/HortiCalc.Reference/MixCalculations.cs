namespace HortiCalc.Reference;

internal static class MixCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
    };
}
