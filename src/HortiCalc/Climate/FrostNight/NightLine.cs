namespace HortiCalc.Climate;

/// <summary>The line minimum = b · temperature + a · dew point + c, in °C.</summary>
internal sealed record NightLine(double PerEveningCelsius, double PerDewPointCelsius, double InterceptCelsius)
{
    public double Celsius(double eveningCelsius, double dewPointCelsius) =>
        PerEveningCelsius * eveningCelsius + PerDewPointCelsius * dewPointCelsius + InterceptCelsius;
}
