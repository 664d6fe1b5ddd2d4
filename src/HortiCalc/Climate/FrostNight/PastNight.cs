using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>One clear, calm night of your own record: what the thermometers showed in the evening, and how cold it became.</summary>
/// <remarks>Immutable; equal when all members are equal. Both evening readings are taken two hours after sunset.</remarks>
public sealed record PastNight : IFormattable
{
    /// <summary>Describes a night that is over.</summary>
    /// <param name="eveningTemperature">The air temperature two hours after sunset.</param>
    /// <param name="eveningDewPoint">The dew point two hours after sunset, at most the air temperature.</param>
    /// <param name="minimum">The lowest air temperature of the night, at most that of the evening.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside -90 to 60 °C, or above the evening's.</exception>
    public PastNight(Temperature eveningTemperature, Temperature eveningDewPoint, Temperature minimum)
    {
        EveningCelsius = NightCelsius.Air(eveningTemperature, nameof(eveningTemperature));
        DewPointCelsius = NightCelsius.NotAbove(eveningDewPoint, EveningCelsius, nameof(eveningDewPoint));
        MinimumCelsius = NightCelsius.NotAbove(minimum, EveningCelsius, nameof(minimum));
        EveningTemperature = HouseUnits.Normalise(eveningTemperature);
        EveningDewPoint = HouseUnits.Normalise(eveningDewPoint);
        Minimum = HouseUnits.Normalise(minimum);
    }

    /// <summary>The air temperature two hours after sunset.</summary>
    public Temperature EveningTemperature { get; }

    /// <summary>The dew point two hours after sunset.</summary>
    public Temperature EveningDewPoint { get; }

    /// <summary>The lowest air temperature of the night.</summary>
    public Temperature Minimum { get; }

    internal double EveningCelsius { get; }

    internal double DewPointCelsius { get; }

    internal double MinimumCelsius { get; }

    /// <summary>The night in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The night as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(EveningTemperature, style)}, dew point {QuantityText.Of(EveningDewPoint, style)}, to {QuantityText.Of(Minimum, style)}";
}
