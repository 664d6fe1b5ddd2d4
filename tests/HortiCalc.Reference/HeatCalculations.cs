namespace HortiCalc.Reference;

internal static class HeatCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
    };
}
