namespace HortiCalc.Tests.Repository;

/// <summary>Tests that redirect the console run alone.</summary>
[CollectionDefinition(nameof(RedirectsConsole), DisableParallelization = true)]
public class RedirectsConsole;
