namespace HortiCalc.Reference;

internal static class FreezeCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
    };
}
