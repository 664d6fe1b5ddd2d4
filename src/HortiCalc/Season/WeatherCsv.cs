using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Units;
using UnitsNet.Units;

namespace HortiCalc.Season;

/// <summary>Reads daily temperatures from comma-separated text.</summary>
/// <remarks>
/// The first line names the columns: <c>date</c>, and <c>min_c</c> and <c>max_c</c> (degrees Celsius) or <c>min_f</c> and
/// <c>max_f</c> (degrees Fahrenheit), in any order; other columns are passed over. The column of maxima may be left out: minima are
/// enough for freezes (<see cref="FreezeClimate"/>), though not for warmth or degree-days. Then one line a day, in the order of time:
/// the date as <c>yyyy-MM-dd</c>, temperatures with a decimal point. An empty field is a missing reading, and a day without a
/// line is a missing day. Lines that are empty or begin with <c>#</c> are passed over. Fields are not quoted.
/// </remarks>
public static class WeatherCsv
{
    /// <summary>Reads daily temperatures.</summary>
    /// <param name="reader">The text.</param>
    /// <returns>The days from the first line to the last, the missing ones known as such.</returns>
    /// <exception cref="ArgumentNullException">The reader is <see langword="null"/>.</exception>
    /// <exception cref="MalformedInputException">The text is not as described; the line and the column are given.</exception>
    /// <example><code>
    /// DailyTemperatures days = WeatherCsv.Read(new StringReader("date,min_c,max_c\n2025-05-01,4.1,17.3\n2025-05-02,,\n"));
    /// </code></example>
    public static DailyTemperatures Read(TextReader reader)
    {
        Guard.NotNull(reader);
        Header? header = null;
        DateOnly start = default;
        List<double> minima = [];
        List<double> maxima = [];
        int lineNumber = 0;
        while (reader.ReadLine() is string line)
        {
            lineNumber++;
            if (string.IsNullOrWhiteSpace(line) || line.StartsWith('#'))
                continue;
            List<Field> fields = Split(line, lineNumber);
            if (header is null)
            {
                header = ReadHeader(fields);
                continue;
            }

            if (fields.Count != header.Count)
                throw fields[^1].Refused(string.Create(CultureInfo.InvariantCulture, $"{header.Count} fields as in the header, found {fields.Count}"));
            DateOnly date = ReadDate(fields[header.Date]);
            if (minima.Count == 0)
                start = date;
            int day = date.DayNumber - start.DayNumber;
            if (day < minima.Count)
                throw fields[header.Date].Refused($"a day after {start.AddDays(minima.Count - 1):yyyy-MM-dd}, found {date:yyyy-MM-dd}");
            while (minima.Count < day)
            {
                minima.Add(double.NaN);
                maxima.Add(double.NaN);
            }

            minima.Add(ReadTemperature(fields[header.Minimum], header.Unit));
            maxima.Add(header.Maximum < 0 ? double.NaN : ReadTemperature(fields[header.Maximum], header.Unit));
            if (maxima[^1] < minima[^1])
                throw fields[header.Maximum].Refused($"no less than the day's lowest, {fields[header.Minimum].Text}, found {fields[header.Maximum].Text}");
        }

        if (header is null)
            throw new MalformedInputException(lineNumber + 1, 1, $"expected {Header.Expected}, found the end");
        if (minima.Count == 0)
            throw new MalformedInputException(lineNumber + 1, 1, "expected at least one day, found the end");
        return DailyTemperatures.Create(start, [.. minima], [.. maxima], header.Unit);
    }

    private static List<Field> Split(string line, int lineNumber)
    {
        List<Field> fields = [];
        int column = 1;
        foreach (string text in line.Split(','))
        {
            fields.Add(new Field(text.Trim(), lineNumber, column + text.Length - text.TrimStart().Length));
            column += text.Length + 1;
        }

        return fields;
    }

    private static Header ReadHeader(List<Field> fields)
    {
        int Find(string name) => fields.FindIndex(field => string.Equals(field.Text, name, StringComparison.OrdinalIgnoreCase));
        foreach ((string minimum, string maximum, TemperatureUnit unit) in Header.Columns)
        {
            Header header = new(Find("date"), Find(minimum), Find(maximum), fields.Count, unit);

            // A maximum in the other unit is a slip, not a record of minima.
            if (header is { Date: >= 0, Minimum: >= 0 } && (header.Maximum >= 0 || Header.Columns.All(columns => Find(columns.Maximum) < 0)))
                return header;
        }

        throw fields[0].Refused($"{Header.Expected}, found {string.Join(",", fields.Select(field => field.Text))}");
    }

    private static DateOnly ReadDate(Field field) =>
        DateOnly.TryParseExact(field.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? date
            : throw field.Refused($"a date such as 2025-05-01, found {field.Found}");

    private static double ReadTemperature(Field field, TemperatureUnit unit)
    {
        if (field.Text.Length == 0)
            return double.NaN;
        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(field.Text, Plain, CultureInfo.InvariantCulture, out double value) || double.IsNaN(value))
            throw field.Refused($"a temperature such as -3.5, or nothing where it is missing, found {field.Found}");
        bool fahrenheit = unit == TemperatureUnit.DegreeFahrenheit;
        double celsius = fahrenheit ? Boundary.CelsiusFromFahrenheit(value) : value;
        return celsius is >= AirTemperature.LowestCelsius and <= AirTemperature.HighestCelsius
            ? value
            : throw field.Refused(fahrenheit ? $"from -130 to 140 °F, found {field.Text}" : $"from -90 to 60 °C, found {field.Text}");
    }

    private sealed record Header(int Date, int Minimum, int Maximum, int Count, TemperatureUnit Unit)
    {
        public const string Expected = "a header with the columns date, min_c and max_c (or min_f and max_f), the minima alone where there are no more";

        public static readonly (string Minimum, string Maximum, TemperatureUnit Unit)[] Columns =
        [
            ("min_c", "max_c", TemperatureUnit.DegreeCelsius),
            ("min_f", "max_f", TemperatureUnit.DegreeFahrenheit),
        ];
    }

    private readonly record struct Field(string Text, int Line, int Column)
    {
        public string Found => Text.Length == 0 ? "nothing" : $"\"{Text}\"";

        public MalformedInputException Refused(string expected) => new(Line, Column, "expected " + expected);
    }
}
