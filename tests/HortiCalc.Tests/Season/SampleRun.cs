using System.Diagnostics;
using HortiCalc.Reference;

namespace HortiCalc.Tests.Season;

/// <summary>Runs a sample as a reader would, from the top of the repository.</summary>
internal static class SampleRun
{
    public static async Task<(int Exit, string Output, string Errors)> Run(string sample, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = ReferenceLibrary.RepositoryRoot,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            StandardErrorEncoding = System.Text.Encoding.UTF8,
        };
        foreach (string argument in (string[])["run", $"docs/samples/{sample}", "--", .. arguments])
            start.ArgumentList.Add(argument);

        // What the test runner's build left behind must not reach into the sample's.
        foreach (string name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToArray())
            start.Environment.Remove(name);

        CancellationToken cancellation = TestContext.Current.CancellationToken;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(cancellation);
        Task<string> errors = process.StandardError.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        return (process.ExitCode, await output, await errors);
    }
}
