namespace HortiCalc.Tests.Repository;

/// <summary>Tests that redirect the console run alone.</summary>
[CollectionDefinition(nameof(ConsoleCollection), DisableParallelization = true)]
public class ConsoleCollection;
