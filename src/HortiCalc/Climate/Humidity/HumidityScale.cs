namespace HortiCalc.Climate;

/// <summary>The units of a series, and the temperatures in °C at which its curve holds.</summary>
/// <param name="PerCelsius">How many of the degrees one °C is.</param>
/// <param name="AtZeroCelsius">The degrees at 0 °C.</param>
/// <param name="PerKilopascal">How many of the units of pressure one kPa is.</param>
internal readonly record struct HumidityScale(double PerCelsius, double AtZeroCelsius, double PerKilopascal)
{
    public double Lowest { get; init; }

    public double Highest { get; init; }
}
