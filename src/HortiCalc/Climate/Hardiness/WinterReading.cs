namespace HortiCalc.Climate;

/// <summary>Which temperature a rule for the winter is read by.</summary>
public enum WinterReading
{
    /// <summary>The lowest of the night in the air.</summary>
    NightMinimum,

    /// <summary>The highest of the day in the soil, at 10 cm (4 in): the soil stays at or below the temperature all day.</summary>
    SoilAllDay,
}
