using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using HortiCalc.Season;
using HortiCalc.Units;

namespace HortiCalc.Samples;

/// <summary>What was given to a sample, by the options that its help lists: <c>--name WORD</c> takes a value, <c>--name</c> none.</summary>
public sealed partial class CommandLine
{
    private readonly Dictionary<string, string> _given = [];

    private CommandLine(string[] args, string help)
    {
        Dictionary<string, bool> takesValue = Listed().Matches(help).ToDictionary(line => line.Groups[1].Value, line => line.Groups[2].Success);
        for (int i = 0; i < args.Length; i++)
        {
            if (!takesValue.TryGetValue(args[i], out bool value))
                throw new ArgumentException($"{args[i]}: expected one of the options that --help lists");
            _given[args[i]] = !value ? "" : i + 1 < args.Length ? args[++i] : throw new ArgumentException($"{args[i]}: expected a value, found nothing");
        }

        Units = Text("--units", "metric") switch
        {
            "metric" => MeasurementSystem.Metric,
            "us" => MeasurementSystem.UsCustomary,
            string other => throw new ArgumentException($"--units: expected metric or us, found {other}"),
        };
    }

    /// <summary>The units for what is read and printed.</summary>
    public MeasurementSystem Units { get; }

    /// <summary>Whether these are US customary units.</summary>
    public bool Us => Units == MeasurementSystem.UsCustomary;

    /// <summary>The format of these units for any answer of the library.</summary>
    public string Format => Us ? "U" : "M";

    /// <summary>Prints the help where it is asked for, else answers. What is refused becomes one line on the error stream and exit code 1.</summary>
    public static int Answer(string[] args, string help, Action<CommandLine> answer)
    {
        Console.OutputEncoding = Encoding.UTF8;
        if (args.Contains("--help") || args.Contains("-h"))
        {
            Console.WriteLine(help);
            return 0;
        }

        try
        {
            answer(new CommandLine(args, help));
            return 0;
        }
        catch (Exception refused) when (refused is ArgumentException or FormatException)
        {
            // The first line says what was wrong; the rest only names the parameter again.
            string parameter = $" (Parameter '{(refused as ArgumentException)?.ParamName}')";
            Console.Error.WriteLine(refused.Message.ReplaceLineEndings("\n").Split('\n')[0].Replace(parameter, "", StringComparison.Ordinal));
            return 1;
        }
    }

    /// <summary>Whether the option was given.</summary>
    public bool Has(string option) => _given.ContainsKey(option);

    /// <summary>The value of an option, or the usual one.</summary>
    public string Text(string option, string usual) => _given.GetValueOrDefault(option, usual);

    /// <summary>The number given with an option, or <see langword="null"/>; the example is for whoever gives none.</summary>
    public double? Number(string option, string example) => !_given.TryGetValue(option, out string? text) ? null
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number
        : throw new ArgumentException($"{option}: expected a number such as {example}, found {text}");

    /// <summary>Reads the file given with an option, or one of shared/demo, wherever the command is given.</summary>
    public T Read<T>(string option, string demo, Func<TextReader, T> parse)
    {
        string file = Text(option, Path.GetRelativePath(Environment.CurrentDirectory, Path.Combine(DemoFolder(), demo)));
        try
        {
            using StreamReader reader = File.OpenText(file);
            return parse(reader);
        }
        catch (MalformedInputException malformed)
        {
            throw new ArgumentException($"{file}, {malformed.Message}");
        }
        catch (JsonException malformed)
        {
            throw new ArgumentException($"{file}: {malformed.Message}");
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new ArgumentException($"{file}: expected a file, found none");
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            throw new ArgumentException($"{file}: expected a file that can be read: {unreadable.Message}");
        }
    }

    private static string DemoFolder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "shared", "demo");

    [GeneratedRegex("^ +(--[a-z-]+)( [A-Z]+)?  ", RegexOptions.Multiline)]
    private static partial Regex Listed();
}
