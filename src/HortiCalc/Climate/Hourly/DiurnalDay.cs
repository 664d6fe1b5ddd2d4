namespace HortiCalc.Climate;

/// <summary>What a curve needs of one day. NaN marks what is not known, and makes every hour that needs it NaN.</summary>
internal readonly record struct DiurnalDay(double MinimumCelsius, double MaximumCelsius, double LengthHours)
{
    /// <summary>By the clock of the sun, whose noon is 12.</summary>
    public double SunriseHour => 12 - LengthHours / 2;

    public double SunsetHour => 12 + LengthHours / 2;

    public double RangeCelsius => MaximumCelsius - MinimumCelsius;

    /// <summary>The hours from this day's sunset to the sunrise of the next.</summary>
    public double NightHoursTo(in DiurnalDay next) => 24 - SunsetHour + next.SunriseHour;
}
