using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Display;

/// <summary>The units and the culture that a text is written in. The culture of the machine never decides.</summary>
internal readonly record struct TextStyle(MeasurementSystem Units, IFormatProvider Culture)
{
    public static TextStyle Default { get; } = new(MeasurementSystem.Metric, CultureInfo.InvariantCulture);

    /// <summary>The same culture with the other units.</summary>
    public TextStyle Other => this with
    {
        Units = Units == MeasurementSystem.UsCustomary ? MeasurementSystem.Metric : MeasurementSystem.UsCustomary,
    };

    public string Format => Units == MeasurementSystem.UsCustomary ? "U" : "M";

    /// <summary>Reads the format codes that every result understands: <c>M</c> metric, <c>U</c> US customary, nothing for metric.</summary>
    public static TextStyle Parse(string? format, IFormatProvider? culture) => new(
        format switch
        {
            null or "" or "G" or "g" or "M" or "m" => MeasurementSystem.Metric,
            "U" or "u" => MeasurementSystem.UsCustomary,
            _ => throw new FormatException($"'{format}' is not a format; allowed: M (metric), U (US customary)."),
        },
        culture ?? CultureInfo.InvariantCulture);
}
