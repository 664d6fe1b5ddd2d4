using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Short forms in which the printed tables are written down, in the units of print: °F and °F·d save where the name says Celsius.</summary>
internal static class StageRows
{
    public static HeatStage At(string name, double sum) => During(name, sum, sum);

    public static HeatStage During(string name, double low, double high) =>
        new(name, ThermalTime.FromFahrenheitDays(low), ThermalTime.FromFahrenheitDays(high));

    public static HeatStage OpenFrom(string name, double low) => new(name, ThermalTime.FromFahrenheitDays(low), null);

    public static DegreeDayThresholds Between(double lower, double? upper) => new(
        Temperature.FromDegreesFahrenheit(lower), upper is double end ? Temperature.FromDegreesFahrenheit(end) : null);

    public static DegreeDayThresholds BetweenCelsius(double lower, double? upper) => new(
        Temperature.FromDegreesCelsius(lower), upper is double end ? Temperature.FromDegreesCelsius(end) : null);

    /// <summary>An insect whose source states neither the method nor the start.</summary>
    public static StageTable Insect(Source source, double lower, string subject, params HeatStage[] stages) =>
        Insect(source, lower, Biofix.NotStated, subject, stages);

    /// <summary>An insect whose source states no method.</summary>
    public static StageTable Insect(Source source, double lower, Biofix biofix, string subject, params HeatStage[] stages) =>
        Table(source, StageSubject.Insect, subject, biofix, Between(lower, null), null, UpperCutoff.None, stages);

    public static StageTable Insect(
        Source source,
        DegreeDayThresholds thresholds,
        DegreeDayMethod method,
        UpperCutoff cutoff,
        Biofix biofix,
        string subject,
        params HeatStage[] stages) => Table(source, StageSubject.Insect, subject, biofix, thresholds, method, cutoff, stages);

    /// <summary>A crop counted by the mean of the day.</summary>
    public static StageTable Crop(Source source, double lower, Biofix biofix, string subject, params HeatStage[] stages) =>
        Table(source, StageSubject.Crop, subject, biofix, Between(lower, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, stages);

    /// <summary>Corn by the 86/50 method.</summary>
    public static StageTable Corn(Source source, Biofix biofix, string subject, params HeatStage[] stages) =>
        Table(source, StageSubject.Crop, subject, biofix, Between(50, 86), DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal, stages);

    /// <summary>Events of the garden counted by the mean of the day.</summary>
    public static StageTable Events(Source source, double lower, Biofix biofix, string subject, params HeatStage[] stages) =>
        Table(source, StageSubject.Indicator, subject, biofix, Between(lower, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, stages);

    public static DevelopmentTime Lasts(
        Source source, string subject, string stage, double sum, DegreeDayThresholds thresholds, DegreeDayMethod? method, UpperCutoff cutoff) =>
        new(subject, stage, new HeatRequirement(ThermalTime.FromFahrenheitDays(sum), thresholds, method, cutoff, source));

    public static DevelopmentTime LastsCelsius(Source source, string subject, string stage, double sum, double lower) => new(
        subject, stage, new HeatRequirement(ThermalTime.FromCelsiusDays(sum), BetweenCelsius(lower, null), null, UpperCutoff.None, source));

    public static BaseTemperature Base(
        StageSubject kind, string subject, DegreeDayThresholds thresholds, DegreeDayMethod? method, UpperCutoff cutoff, Source source) =>
        new(subject, kind, thresholds, method, cutoff, source);

    private static StageTable Table(
        Source source,
        StageSubject kind,
        string subject,
        Biofix biofix,
        DegreeDayThresholds thresholds,
        DegreeDayMethod? method,
        UpperCutoff cutoff,
        HeatStage[] stages) =>
        new($"{source.Key}/{KeyOf(subject)}", kind, subject, null, biofix, thresholds, method, cutoff, source, stages);

    /// <summary>Letters and digits of the subject in lower case, a hyphen for whatever stands between.</summary>
    private static string KeyOf(string subject) => string.Join('-', string
        .Concat(subject.Select(sign => char.IsAsciiLetterOrDigit(sign) ? char.ToLowerInvariant(sign) : ' '))
        .Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
