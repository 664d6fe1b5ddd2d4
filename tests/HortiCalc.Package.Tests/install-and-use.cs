#!/usr/bin/env dotnet
#:property PublishAot=false

// Uses the packed package as a stranger would: an empty console project, the package from a local folder, the first
// example of the README compiled and run, its output compared; then the same published trimmed and ahead of time.
//
//     dotnet pack src/HortiCalc -c Release
//     dotnet run tests/HortiCalc.Package.Tests/install-and-use.cs [-- --without-aot]
//
// Ahead-of-time compilation needs the platform's linker; --without-aot leaves that step out.

using System.Diagnostics;
using System.IO.Compression;
using System.Text.RegularExpressions;

string here = (string)AppContext.GetData("EntryPointFileDirectoryPath")!;
string root = Path.GetFullPath(Path.Combine(here, "..", ".."));
string packages = Path.Combine(root, "artifacts", "package", "release");
if (!Directory.Exists(packages))
    packages = Path.Combine(root, "artifacts", "package");
string package = Directory.EnumerateFiles(packages, "HortiCalc.*.nupkg").OrderByDescending(File.GetLastWriteTimeUtc).FirstOrDefault()
    ?? throw new FileNotFoundException("Pack first: dotnet pack src/HortiCalc -c Release");
string version = Path.GetFileNameWithoutExtension(package)["HortiCalc.".Length..];

string readme = File.ReadAllText(Path.Combine(root, "README.md")).ReplaceLineEndings("\n");
Match example = Regex.Match(readme, "^```csharp\n(.*?)^```\n\\s*^```text\n(.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline);
string code = example.Groups[1].Value;
string expected = example.Groups[2].Value.TrimEnd();

int passed = 0;
int failed = 0;
string folder = Directory.CreateTempSubdirectory("horticalc-package-").FullName;
try
{
    CheckContents();
    WriteProject();
    Step("a console project with the package prints what the README says", () => Same(Dotnet("run", "-c", "Release")));
    Step("published trimmed, it prints the same and our assembly gives no warning", () =>
    {
        string trimmed = Path.Combine(folder, "trimmed");
        NoWarningOfOurs(Dotnet("publish", "-c", "Release", "--use-current-runtime", "--self-contained", "-p:PublishTrimmed=true", "-o", trimmed));
        Same(Run(Path.Combine(trimmed, "Use"), []));
    });
    if (!args.Contains("--without-aot"))
    {
        Step("published ahead of time, it prints the same and our assembly gives no warning", () =>
        {
            string native = Path.Combine(folder, "native");
            NoWarningOfOurs(Dotnet("publish", "-c", "Release", "--use-current-runtime", "-p:PublishAot=true", "-o", native));
            Same(Run(Path.Combine(native, "Use"), []));
        });
    }
}
finally
{
    Directory.Delete(folder, recursive: true);
}

Console.WriteLine($"package: {passed} passed, {failed} failed");
return failed == 0 ? 0 : 1;

void CheckContents() => Step("the package holds what it should, and the symbols are beside it", () =>
{
    using ZipArchive zip = ZipFile.OpenRead(package);
    string[] entries = [.. zip.Entries.Select(entry => entry.FullName)];
    foreach (string wanted in (string[])["README.md", "CHANGELOG.md", "icon.png", "lib/net10.0/HortiCalc.dll", "lib/net10.0/HortiCalc.xml"])
        Require(entries.Contains(wanted), $"the package lacks {wanted}");
    Require(File.Exists(Path.ChangeExtension(package, ".snupkg")), "the symbol package is missing");
    using StreamReader reader = new(zip.Entries.Single(entry => entry.FullName.EndsWith(".nuspec", StringComparison.Ordinal)).Open());
    string nuspec = reader.ReadToEnd();
    string[] dependencies = [.. Regex.Matches(nuspec, "<dependency id=\"([^\"]+)\"").Select(match => match.Groups[1].Value).Order()];
    Require(dependencies is ["MathNet.Numerics", "UnitsNet"], $"the package depends on {string.Join(", ", dependencies)}");
    Require(nuspec.Contains("<license type=\"expression\">MIT</license>", StringComparison.Ordinal), "the licence expression is missing");
});

void WriteProject()
{
    File.WriteAllText(Path.Combine(folder, "Program.cs"), code);
    // A cache of its own, so that an earlier package of the same version is never used.
    File.WriteAllText(Path.Combine(folder, "nuget.config"), $"""
        <configuration>
          <config><add key="globalPackagesFolder" value="packages" /></config>
          <packageSources><add key="packed" value="{packages}" /></packageSources>
        </configuration>
        """);
    File.WriteAllText(Path.Combine(folder, "Use.csproj"), $"""
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup>
            <OutputType>Exe</OutputType>
            <TargetFramework>net10.0</TargetFramework>
            <ImplicitUsings>enable</ImplicitUsings>
            <Nullable>enable</Nullable>
            <TreatWarningsAsErrors>true</TreatWarningsAsErrors>
            <!-- UnitsNet 5 is not marked for trimming: its warnings are silenced here, in this project alone; ours are not. -->
            <WarningsNotAsErrors>IL2026;IL2070;IL2075;IL2104;IL3050;IL3053</WarningsNotAsErrors>
            <TrimmerSingleWarn>false</TrimmerSingleWarn>
          </PropertyGroup>
          <ItemGroup>
            <PackageReference Include="HortiCalc" Version="{version}" />
            <!-- The whole of our assembly is compiled, not only what the example calls. -->
            <TrimmerRootAssembly Include="HortiCalc" />
          </ItemGroup>
        </Project>
        """);
}

void Step(string name, Action check)
{
    Stopwatch watch = Stopwatch.StartNew();
    try
    {
        check();
        passed++;
        Console.WriteLine($"passed: {name} ({watch.Elapsed.TotalSeconds:0} s)");
    }
    catch (InvalidOperationException problem)
    {
        failed++;
        Console.WriteLine($"FAILED: {name}\n{problem.Message}");
    }
}

void Same(string printed) => Require(printed.Trim() == expected, $"printed:\n{printed}\nexpected:\n{expected}");

void NoWarningOfOurs(string log)
{
    string[] ours = [.. log.Split('\n').Where(line => Regex.IsMatch(line, @"warning (IL|AOT)\d+") && line.Contains("HortiCalc", StringComparison.Ordinal))];
    Require(ours.Length == 0, string.Join("\n", ours));
}

void Require(bool condition, string otherwise)
{
    if (!condition)
        throw new InvalidOperationException(otherwise);
}

string Dotnet(params string[] arguments) => Run("dotnet", arguments);

string Run(string program, string[] arguments)
{
    ProcessStartInfo start = new(program, arguments)
    {
        WorkingDirectory = folder,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    };
    // The outer build's settings are not a stranger's.
    foreach (string name in (string[])["MSBuildSDKsPath", "MSBUILD_EXE_PATH", "DOTNET_HOST_PATH", "MSBuildLoadMicrosoftTargetsReadOnly"])
        start.Environment.Remove(name);
    using Process process = Process.Start(start)!;
    Task<string> errors = process.StandardError.ReadToEndAsync();
    string output = process.StandardOutput.ReadToEnd();
    process.WaitForExit();
    Require(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}:\n{output}\n{errors.Result}");
    return output;
}
