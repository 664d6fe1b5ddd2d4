using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published rules of thumb for the coming night, from readings of the afternoon. Each was made for one country.</summary>
/// <remarks>A regression fitted to your own nights, <see cref="NightMinimumModel"/>, goes before any of them.</remarks>
public static class FrostRules
{
    private static readonly Method CanterburyGrass = new(
        "frost-rule.canterbury",
        "grass minimum of Canterbury",
        FrostNightSources.Smith,
        new Domain(
            "Canterbury, New Zealand; readings at 15 h; May, June, August, September, October; low and middle cloud below a quarter and high cloud "
            + "below three quarters; wind below 5 knots from the sea (E, NE) or 7 knots from elsewhere"));

    private static readonly Method CanadianMean = new(
        "frost-rule.canada",
        "mean of maximum and dew point",
        FrostNightSources.Linacre,
        new Domain("Canada; before the correction for wind and cloud"));

    private static readonly Method VictorianDewPoint = new(
        "frost-rule.victoria", "dew point rule of Victoria", FrostNightSources.Linacre, new Domain("Victoria, Australia; dew point of the afternoon"));

    /// <summary>The minimum on short grass after a clear, calm afternoon in Canterbury, New Zealand: (T + Td/2)/3 − c.</summary>
    /// <param name="afternoonTemperature">The air temperature at 15 h.</param>
    /// <param name="afternoonDewPoint">The dew point at 15 h, at most the air temperature.</param>
    /// <param name="month">The month: May, September or October (c = 8 °C), June or August (c = 9 °C). The source prints none for July.</param>
    /// <returns>The minimum at the tips of the grass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dew point is above the temperature, or the rule was not published for the month.</exception>
    /// <example><code>
    /// Estimate&lt;Temperature&gt; grass = FrostRules.GrassMinimum(Temperature.FromDegreesCelsius(6), Temperature.FromDegreesCelsius(3), month: 9);
    /// Console.WriteLine(grass.Value.DegreesCelsius); // -5.5
    /// </code></example>
    public static Estimate<Temperature> GrassMinimum(Temperature afternoonTemperature, Temperature afternoonDewPoint, int month)
    {
        double afternoon = NightCelsius.Air(afternoonTemperature, nameof(afternoonTemperature));
        double dewPoint = NightCelsius.NotAbove(afternoonDewPoint, afternoon, nameof(afternoonDewPoint));
        double constant = month switch
        {
            5 or 9 or 10 => 8,
            6 or 8 => 9,
            _ => throw Guard.Refused(nameof(month), month, "", "5, 6, 8, 9 or 10, the months that 'grass minimum of Canterbury' was published for"),
        };
        return new Estimate<Temperature>(
            Temperature.FromDegreesCelsius((afternoon + dewPoint / 2) / 3 - constant),
            CanterburyGrass,
            cautions: [.. FrostNightCautions.Night, FrostNightCautions.RuleOfThumb, FrostNightCautions.GrassNotAir]);
    }

    /// <summary>The minimum by a rule of Canada: half way from the dew point to the day's maximum.</summary>
    /// <param name="maximum">The maximum of the day.</param>
    /// <param name="dewPoint">The dew point, at most the maximum.</param>
    /// <returns>The minimum, before the correction for wind and cloud, which the source does not print.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside -90 to 60 °C, or the dew point is above the maximum.</exception>
    public static Estimate<Temperature> MeanOfMaximumAndDewPoint(Temperature maximum, Temperature dewPoint)
    {
        double highest = NightCelsius.Air(maximum, nameof(maximum));
        double dew = NightCelsius.NotAbove(dewPoint, highest, nameof(dewPoint));
        return new Estimate<Temperature>(
            Temperature.FromDegreesCelsius((highest + dew) / 2),
            CanadianMean,
            cautions: [.. FrostNightCautions.Night, FrostNightCautions.RuleOfThumb, FrostNightCautions.UncorrectedForWind]);
    }

    /// <summary>Whether frost is possible or probable, by a rule of Victoria: below 6 °C and below 0 °C.</summary>
    /// <param name="afternoonDewPoint">The dew point of the afternoon.</param>
    /// <returns>The outlook.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The dew point is outside -90 to 60 °C.</exception>
    public static Estimate<FrostOutlook> Outlook(Temperature afternoonDewPoint)
    {
        double dewPoint = NightCelsius.Air(afternoonDewPoint, nameof(afternoonDewPoint));
        FrostOutlook outlook = dewPoint < 0 ? FrostOutlook.Probable : dewPoint < 6 ? FrostOutlook.Possible : FrostOutlook.NotIndicated;
        return new Estimate<FrostOutlook>(outlook, VictorianDewPoint, cautions: [.. FrostNightCautions.Night, FrostNightCautions.RuleOfThumb]);
    }
}
