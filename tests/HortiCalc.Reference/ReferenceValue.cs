using System.Globalization;

namespace HortiCalc.Reference;

/// <summary>One published value: what goes in, what was printed, and how closely it must be met.</summary>
public sealed record ReferenceValue(
    ReferenceSource Source,
    string Id,
    string Calculation,
    Inputs Inputs,
    string Expected,
    string Unit,
    string Step,
    string Gap,
    ReferenceStatus Status,
    string Note)
{
    /// <summary>Room, source and row: unique over all files.</summary>
    public string Key => $"{Source.Room}/{Source.Key}/{Id}";

    public bool IsText => Unit == "text";

    public bool IsDate => Unit == "date";

    /// <summary>The printed number; for a date the day of a 365-day year.</summary>
    public double Number => IsDate
        ? DayOfYear(DateOnly.ParseExact("2001-" + Expected, "yyyy-MM-dd", CultureInfo.InvariantCulture))
        : double.Parse(Expected, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Half the rounding step of the print, plus the named gap.</summary>
    public double Tolerance => RoundingTolerance + (Gap.Length == 0 ? 0 : Parse(Gap));

    /// <summary>The day of a year of 365 days, 1 to 365; 29 February counts as 28 February.</summary>
    public static double DayOfYear(DateOnly date) =>
        new DateOnly(2001, date.Month, date is { Month: 2, Day: 29 } ? 28 : date.Day).DayOfYear;

    /// <summary>How far a computed value is from the printed one: a day count the short way round the year for dates.</summary>
    public double DifferenceTo(double computed)
    {
        double difference = Math.Abs(computed - Number);
        return IsDate ? Math.Min(difference, 365 - difference) : difference;
    }

    private double RoundingTolerance => (Step, IsDate) switch
    {
        ({ Length: > 0 }, _) => Parse(Step) / 2,
        _ when IsText => 0,
        (_, true) => 1,
        _ => LastDigit(Expected) / 2,
    };

    private static double Parse(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static double LastDigit(string printed)
    {
        int exponentAt = printed.IndexOfAny(['e', 'E']);
        string mantissa = exponentAt < 0 ? printed : printed[..exponentAt];
        int exponent = exponentAt < 0 ? 0 : int.Parse(printed[(exponentAt + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        int point = mantissa.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        return Math.Pow(10, exponent - decimals);
    }
}
