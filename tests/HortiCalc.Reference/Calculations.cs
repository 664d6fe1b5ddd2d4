namespace HortiCalc.Reference;

/// <summary>The calculations that published values are checked against, by the name used in the files; one class a subject.</summary>
public static class Calculations
{
    public static IReadOnlyDictionary<string, Func<Inputs, Computed>> All { get; } = new[]
    {
        UnitCalculations.All,
        SoilCalculations.All,
        BedCalculations.All,
        ContainerCalculations.All,
        MixCalculations.All,
        HeatCalculations.All,
        FreezeCalculations.All,
        ChillCalculations.All,
    }.SelectMany(subject => subject).ToDictionary(StringComparer.Ordinal);
}
