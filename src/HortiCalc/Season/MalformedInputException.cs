using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>A text that was to be read is not what was expected; says where and what.</summary>
public sealed class MalformedInputException : FormatException
{
    /// <summary>Describes what is wrong, and where.</summary>
    /// <param name="line">The line, from 1.</param>
    /// <param name="column">The character in the line, from 1.</param>
    /// <param name="problem">What was expected and what was found, without a full stop.</param>
    /// <param name="innerException">What gave rise to it, if anything.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line or the column is less than 1.</exception>
    public MalformedInputException(int line, int column, string problem, Exception? innerException = null)
        : base(
            string.Create(CultureInfo.InvariantCulture, $"line {Guard.AtLeast(line, 1)}, column {Guard.AtLeast(column, 1)}: {Guard.NotBlank(problem)}"),
            innerException)
    {
        Line = line;
        Column = column;
        Problem = problem;
    }

    /// <summary>The line, from 1.</summary>
    public int Line { get; }

    /// <summary>The character in the line, from 1.</summary>
    public int Column { get; }

    /// <summary>What was expected and what was found.</summary>
    public string Problem { get; }
}
