namespace HortiCalc.Reference;

/// <summary>All published values of shared/reference.</summary>
public static class ReferenceLibrary
{
    private const string Columns = "id,calculation,inputs,expected,unit,step,gap,status,note";

    private static readonly Lazy<IReadOnlyList<ReferenceValue>> Loaded = new(() => [.. Files().SelectMany(Load)]);

    public static IReadOnlyList<ReferenceValue> Values => Loaded.Value;

    /// <summary>The folder of the repository, found upwards from the program.</summary>
    public static string RepositoryRoot { get; } = FindRoot();

    public static IEnumerable<string> Files() => Directory
        .EnumerateFiles(Path.Combine(RepositoryRoot, "shared", "reference"), "*.csv", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal);

    public static IEnumerable<ReferenceValue> Load(string file)
    {
        string[] lines = File.ReadAllLines(file);
        ReferenceSource source = ReadHead(file, lines);
        List<string> rows = [.. lines.Where(line => !line.StartsWith('#') && line.Length > 0)];
        if (rows.Count < 2 || rows[0] != Columns)
            throw new FormatException($"{file}: the first line after the head must be '{Columns}', and values must follow.");
        foreach (string row in rows.Skip(1))
        {
            List<string> fields = CsvReader.Fields(row);
            if (fields.Count != 9)
                throw new FormatException($"{file}: expected 9 columns, found {fields.Count}: {row}");
            yield return new ReferenceValue(
                source, fields[0], fields[1], new Inputs(fields[2]), fields[3], fields[4], fields[5], fields[6], Status(file, fields[7]), fields[8]);
        }
    }

    private static ReferenceSource ReadHead(string file, string[] lines)
    {
        Dictionary<string, string> head = lines
            .Where(line => line.StartsWith('#'))
            .Select(line => line[1..].Split(':', 2, StringSplitOptions.TrimEntries))
            .Where(pair => pair.Length == 2)
            .GroupBy(pair => pair[0])
            .ToDictionary(group => group.Key, group => group.First()[1]);
        string Entry(string name) => head.TryGetValue(name, out string? value) && value.Length > 0
            ? value
            : throw new FormatException($"{file}: the head has no '# {name}:'.");
        return new ReferenceSource(
            Path.GetFileName(Path.GetDirectoryName(file))!,
            Path.GetFileNameWithoutExtension(file),
            Entry("title"),
            Entry("publisher"),
            Entry("year"),
            Entry("url"),
            Entry("kind") switch
            {
                "published" => ReferenceKind.Published,
                "common-practice" => ReferenceKind.CommonPractice,
                "computed" => ReferenceKind.Computed,
                string other => throw new FormatException($"{file}: unknown kind '{other}'."),
            });
    }

    private static ReferenceStatus Status(string file, string text) => text switch
    {
        "agrees" => ReferenceStatus.Agrees,
        "source-inconsistent" => ReferenceStatus.SourceInconsistent,
        "known-disagreement" => ReferenceStatus.KnownDisagreement,
        _ => throw new FormatException($"{file}: unknown status '{text}'."),
    };

    private static string FindRoot()
    {
        // A file-based app runs from a cache; it names its own folder here.
        string start = AppContext.GetData("EntryPointFileDirectoryPath") as string ?? AppContext.BaseDirectory;
        for (DirectoryInfo? folder = new(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "HortiCalc.sln")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException($"No folder above {start} holds HortiCalc.sln.");
    }
}
