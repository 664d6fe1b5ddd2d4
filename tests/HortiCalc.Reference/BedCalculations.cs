namespace HortiCalc.Reference;

internal static class BedCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
    };
}
