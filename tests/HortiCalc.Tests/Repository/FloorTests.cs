using HortiCalc.Reference;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace HortiCalc.Tests.Repository;

/// <summary>The floors of the house: which room may use which. A room stands only on rooms listed for it.</summary>
public class FloorTests
{
    private static readonly string[] Ground = ["Numerics", "Units", "Display", "Evidence"];

    private static readonly string[] Subjects = ["Soil", "Beds", "Containers", "Mixes", "Climate", "Plants"];

    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Numerics"] = [],
        ["Units"] = [],
        ["Display"] = ["Units"],
        ["Evidence"] = ["Units", "Display"],
        ["Soil"] = Ground,
        ["Beds"] = Ground,
        ["Containers"] = Ground,
        ["Mixes"] = Ground,
        ["Climate"] = Ground,
        ["Plants"] = Ground,
        ["Water"] = [.. Ground, "Soil", "Climate"],
        ["Season"] = [.. Ground, .. Subjects, "Water"],
        ["Json"] = [.. Ground, .. Subjects, "Water", "Season"],
    };

    private static readonly string Source = Path.Combine(ReferenceLibrary.RepositoryRoot, "src", "HortiCalc");

    private static readonly Lazy<IReadOnlySet<(string User, string Used, string File)>> Uses = new(FindUses);

    [Fact]
    public void Rooms_AllFolders_HaveAFloor() =>
        Assert.Empty(Directory.EnumerateDirectories(Source).Select(folder => Path.GetFileName(folder)!).Except([.. MayUse.Keys, "bin", "obj"]));

    [Fact]
    public void Rooms_UsesOfOthers_StandOnAllowedFloors() =>
        Assert.Empty(Uses.Value.Where(use => !MayUse[use.User].Contains(use.Used)).Select(use => $"{use.File}: {use.User} uses {use.Used}"));

    [Fact]
    public void Rooms_TheCheck_SeesRealUses() => Assert.Contains(Uses.Value, use => use is { User: "Evidence", Used: "Units" });

    [Fact]
    public void Rooms_AllowedUses_FormNoCircle()
    {
        List<string> standing = [];
        while (standing.Count < MayUse.Count)
        {
            string[] next = [.. MayUse.Keys.Except(standing).Where(room => MayUse[room].All(standing.Contains))];
            Assert.NotEmpty(next);
            standing.AddRange(next);
        }
    }

    private static HashSet<(string User, string Used, string File)> FindUses()
    {
        IEnumerable<string> files = MayUse.Keys.Select(room => Path.Combine(Source, room)).Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories));
        List<SyntaxTree> trees = [.. files.Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), path: file))];
        string assemblies = (string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!;
        CSharpCompilation compilation = CSharpCompilation.Create(
            "Floors",
            trees,
            assemblies.Split(Path.PathSeparator).Where(path => Path.GetFileName(path) != "HortiCalc.dll").Select(path => MetadataReference.CreateFromFile(path)));

        HashSet<(string, string, string)> uses = [];
        foreach (SyntaxTree tree in trees)
        {
            string file = Path.GetRelativePath(Source, tree.FilePath);
            string user = file.Split(Path.DirectorySeparatorChar)[0];
            SemanticModel model = compilation.GetSemanticModel(tree);
            foreach (SimpleNameSyntax name in tree.GetRoot().DescendantNodes(descendIntoTrivia: true).OfType<SimpleNameSyntax>())
            {
                ISymbol? symbol = model.GetSymbolInfo(name).Symbol;
                string? used = symbol is null or INamespaceSymbol ? null : Room(symbol.ContainingNamespace);
                if (used is not null && used != user)
                    uses.Add((user, used, file));
            }
        }

        return uses;
    }

    private static string? Room(INamespaceSymbol? space) =>
        space?.ToDisplayString().Split('.') is ["HortiCalc", string room, ..] ? room : null;
}
