namespace HortiCalc.Reference;

internal static class ContainerCalculations
{
    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
    };
}
