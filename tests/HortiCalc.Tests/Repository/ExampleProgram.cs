using System.Reflection;
using System.Runtime.Loader;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace HortiCalc.Tests.Repository;

/// <summary>Compiles an example as a console program that uses only the public library, and runs it.</summary>
internal static class ExampleProgram
{
    // What a console project gets from implicit usings.
    private const string ImplicitUsings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    private static readonly Lazy<MetadataReference[]> References = new(() =>
        [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(path => MetadataReference.CreateFromFile(path))]);

    /// <summary>The errors and warnings of an example; none when it compiles.</summary>
    public static IReadOnlyList<string> Problems(string code) =>
        [.. Compile(code).GetDiagnostics().Where(problem => problem.Severity >= DiagnosticSeverity.Warning && problem.Id != "CS1701").Select(problem => problem.ToString())];

    /// <summary>What an example writes to the console.</summary>
    public static string Run(string code)
    {
        using MemoryStream image = new();
        Assert.True(Compile(code).Emit(image).Success, string.Join("\n", Problems(code)));
        AssemblyLoadContext context = new(null, isCollectible: true);
        image.Position = 0;
        MethodInfo main = context.LoadFromStream(image).EntryPoint!;
        StringBuilder output = new();
        TextWriter console = Console.Out;
        try
        {
            Console.SetOut(new StringWriter(output));
            main.Invoke(null, main.GetParameters().Length == 0 ? null : [Array.Empty<string>()]);
        }
        finally
        {
            Console.SetOut(console);
            context.Unload();
        }

        return output.ToString().ReplaceLineEndings("\n").TrimEnd();
    }

    private static CSharpCompilation Compile(string code) => CSharpCompilation.Create(
        "Example",
        [CSharpSyntaxTree.ParseText(ImplicitUsings), CSharpSyntaxTree.ParseText(code)],
        References.Value,
        new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
}
