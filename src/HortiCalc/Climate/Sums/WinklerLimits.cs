namespace HortiCalc.Climate;

/// <summary>Which of the two printed sets of limits decides the Winkler region: they are not conversions of one another at the ends.</summary>
public enum WinklerLimits
{
    /// <summary>The limits printed in Celsius-days: 850, 1111, 1389, 1667, 1944, 2222 and 2700.</summary>
    Celsius,

    /// <summary>The limits printed in Fahrenheit-days: 1500 (833 °C·d), 2000, 2500, 3000, 3500, 4000 and 4900 (2722 °C·d).</summary>
    Fahrenheit,
}
