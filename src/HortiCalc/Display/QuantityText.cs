using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Display;

/// <summary>Writes quantities for a reader: in the units the trade uses at that size, with three significant digits.</summary>
/// <remarks>
/// Meant for display. The digits of the whole part are never rounded away, and at least three significant digits are kept:
/// 1234.6 g shows as 1.23 kg, 0.01234 m as 1.23 cm. To store a quantity, use JSON, which keeps every digit.
/// </remarks>
public static class QuantityText
{
    /// <summary>Writes a quantity for a reader.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="units">The units the reader is used to.</param>
    /// <param name="culture">The culture that decides the decimal separator, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number, a space and the unit, for instance <c>1.23 kg</c>.</returns>
    /// <exception cref="ArgumentNullException">The quantity is <see langword="null"/>.</exception>
    public static string Format(IQuantity quantity, MeasurementSystem units, IFormatProvider? culture = null) =>
        Of(Guard.NotNull(quantity), new TextStyle(Guard.Defined(units), culture ?? CultureInfo.InvariantCulture));

    /// <summary>The text of any value that a result can hold.</summary>
    internal static string Of(object value, TextStyle style)
    {
        bool us = style.Units == MeasurementSystem.UsCustomary;
        return value switch
        {
            Length length => us ? UsLength(Boundary.Metres(length), style) : MetricLength(Boundary.Metres(length), style),
            Area area => us ? UsArea(Boundary.SquareMetres(area), style) : MetricArea(Boundary.SquareMetres(area), style),
            Volume volume => us ? UsVolume(Boundary.Litres(volume), style) : MetricVolume(Boundary.Litres(volume), style),
            Mass mass => us ? UsMass(Boundary.Kilograms(mass), style) : MetricMass(Boundary.Kilograms(mass), style),
            AreaDensity rate => us
                ? Text(Boundary.GramsPerSquareMetre(rate) / GramsPerSquareMetrePerPoundPer100SquareFeet, "lb/100 sq ft", style)
                : Text(Boundary.GramsPerSquareMetre(rate), "g/m²", style),
            Density density => us
                ? Text(Boundary.KilogramsPerCubicMetre(density) * Boundary.LitresPerCubicFoot / 1000 / Boundary.KilogramsPerPound, "lb/cu ft", style)
                : Text(Boundary.KilogramsPerCubicMetre(density), "kg/m³", style),
            MassConcentration strength => Concentration(Boundary.MilligramsPerLitre(strength), us, style),
            VolumeConcentration share => Text(Boundary.VolumeFraction(share) * 100, "% by volume", style),
            MassFraction share => Text(Boundary.MassFraction(share) * 100, "% by mass", style),
            Ratio ratio => Text(Boundary.Fraction(ratio) * 100, "%", style),
            Temperature temperature => us
                ? Text(Boundary.Celsius(temperature) * Boundary.FahrenheitPerCelsius + Boundary.FahrenheitAtZeroCelsius, "°F", style)
                : Text(Boundary.Celsius(temperature), "°C", style),
            TemperatureDelta delta => us
                ? Text(Boundary.CelsiusDegrees(delta) * Boundary.FahrenheitPerCelsius, "°F", style)
                : Text(Boundary.CelsiusDegrees(delta), "°C", style),
            Duration duration => Time(Boundary.Days(duration), style),
            Angle angle => Text(Boundary.Degrees(angle), "°", style),
            ReciprocalArea density => us
                ? Text(Boundary.PerSquareMetre(density) * Boundary.SquareMetresPerSquareFoot, "per sq ft", style)
                : Text(Boundary.PerSquareMetre(density), "per m²", style),
            IQuantity other => Text((double)other.Value, UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(other.Unit, CultureInfo.InvariantCulture), style),
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            int or long => ((IFormattable)value).ToString("N0", style.Culture),
            double number => Number(number, style),
            IFormattable formattable => formattable.ToString(style.Format, style.Culture),
            _ => value.ToString() ?? "",
        };
    }

    /// <summary>A number for a reader: the whole part in full, and decimals up to three significant digits.</summary>
    internal static string Number(double value, TextStyle style)
    {
        double magnitude = Math.Abs(value);
        int decimals = magnitude switch
        {
            0 => 0,
            >= 100 => 0,
            _ => Math.Min(2 - (int)Math.Floor(Math.Log10(magnitude)), 15),
        };
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        string pattern = decimals == 0 ? "#,##0" : "0." + new string('#', decimals);
        return rounded.ToString(rounded == 0 ? "0" : pattern, style.Culture);
    }

    private const double GramsPerSquareMetrePerPoundPer100SquareFeet =
        1000 * Boundary.KilogramsPerPound / (100 * Boundary.SquareMetresPerSquareFoot);

    private static string Text(double value, string unit, TextStyle style) =>
        unit is "°" ? Number(value, style) + unit : $"{Number(value, style)} {unit}";

    private static string MetricLength(double metres, TextStyle style) => Math.Abs(metres) switch
    {
        < 0.01 => Text(metres * 1000, "mm", style),
        < 1 => Text(metres * 100, "cm", style),
        < 10_000 => Text(metres, "m", style),
        _ => Text(metres / 1000, "km", style),
    };

    private static string UsLength(double metres, TextStyle style) => Math.Abs(metres) < 3 * Boundary.MetresPerFoot
        ? Text(metres / Boundary.MetresPerInch, "in", style)
        : Text(metres / Boundary.MetresPerFoot, "ft", style);

    private static string MetricArea(double squareMetres, TextStyle style) => squareMetres < 10_000
        ? Text(squareMetres, "m²", style)
        : Text(squareMetres / 10_000, "ha", style);

    private static string UsArea(double squareMetres, TextStyle style) => squareMetres < Boundary.SquareMetresPerAcre
        ? Text(squareMetres / Boundary.SquareMetresPerSquareFoot, "sq ft", style)
        : Text(squareMetres / Boundary.SquareMetresPerAcre, "acres", style);

    private static string MetricVolume(double litres, TextStyle style) => Math.Abs(litres) switch
    {
        < 1 => Text(litres * 1000, "mL", style),
        < 1000 => Text(litres, "L", style),
        _ => Text(litres / 1000, "m³", style),
    };

    private static string UsVolume(double litres, TextStyle style)
    {
        double gallons = litres / Boundary.LitresPerUsGallon;
        return Math.Abs(gallons) switch
        {
            < 1 / 128.0 => Text(gallons * 768, "tsp", style),
            < 0.25 => Text(gallons * 128, "fl oz", style),
            < 50 => Text(gallons, "gal (US)", style),
            _ when litres < Boundary.LitresPerCubicYard => Text(litres / Boundary.LitresPerCubicFoot, "cu ft", style),
            _ => Text(litres / Boundary.LitresPerCubicYard, "cu yd", style),
        };
    }

    private static string MetricMass(double kilograms, TextStyle style) => Math.Abs(kilograms) switch
    {
        < 0.001 => Text(kilograms * 1_000_000, "mg", style),
        < 1 => Text(kilograms * 1000, "g", style),
        < 1000 => Text(kilograms, "kg", style),
        _ => Text(kilograms / 1000, "t", style),
    };

    private static string UsMass(double kilograms, TextStyle style) => Math.Abs(kilograms) switch
    {
        < Boundary.KilogramsPerPound => Text(kilograms / Boundary.KilogramsPerOunce, "oz", style),
        < Boundary.KilogramsPerShortTon => Text(kilograms / Boundary.KilogramsPerPound, "lb", style),
        _ => Text(kilograms / Boundary.KilogramsPerShortTon, "tons (US)", style),
    };

    private static string Concentration(double milligramsPerLitre, bool us, TextStyle style) => (us, Math.Abs(milligramsPerLitre)) switch
    {
        (_, < 1000) => Text(milligramsPerLitre, "mg/L", style),
        (false, _) => Text(milligramsPerLitre / 1000, "g/L", style),
        _ => Text(milligramsPerLitre / 1_000_000 / Boundary.KilogramsPerOunce * Boundary.LitresPerUsGallon, "oz/gal (US)", style),
    };

    private static string Time(double days, TextStyle style) => Math.Abs(days) switch
    {
        0 or >= 1 => Text(days, days == 1 ? "day" : "days", style),
        >= 1 / 24.0 => Text(days * 24, "h", style),
        _ => Text(days * 1440, "min", style),
    };
}
