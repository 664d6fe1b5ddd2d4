namespace HortiCalc.Units;

/// <summary>The units a reader is used to. It changes how quantities are shown, never what they are.</summary>
public enum MeasurementSystem
{
    /// <summary>Metres, litres, kilograms, degrees Celsius.</summary>
    Metric,

    /// <summary>Feet, US gallons, pounds (avoirdupois), degrees Fahrenheit, as customary in the United States.</summary>
    UsCustomary,
}
