using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Display;

/// <summary>Writes quantities for a reader: in the units the trade uses at that size, with three significant digits.</summary>
/// <remarks>
/// Meant for display. The digits of the whole part are never rounded away, and at least three significant digits are kept:
/// 1234.6 g shows as 1.23 kg, 0.01234 m as 1.23 cm, 1234.6 m² as 1,235 m². Halves round away from zero. To store a quantity, use
/// JSON, which keeps every digit.
/// </remarks>
/// <example><code>
/// string metric = QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.Metric);        // 1.23 kg
/// string us = QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.UsCustomary);       // 2.72 lb
/// </code></example>
public static class QuantityText
{
    private const double LitresPerFluidOunce = Boundary.LitresPerUsGallon / 128;

    private const double KilogramsPerCubicMetrePerPoundPerCubicFoot =
        Boundary.KilogramsPerPound / Boundary.LitresPerCubicFoot * Boundary.LitresPerCubicMetre;

    // Each ladder: the unit, its size in the number given, and the number in that unit from which the next one takes over.
    private static readonly Rung[] MetricLengths = [new("mm", 0.001, 10), new("cm", 0.01, 100), new("m", 1, 10_000), new("km", 1000)];
    private static readonly Rung[] UsLengths = [new("in", Boundary.MetresPerInch, 36), new("ft", Boundary.MetresPerFoot)];
    private static readonly Rung[] MetricAreas = [new("m²", 1, 10_000), new("ha", 10_000)];
    private static readonly Rung[] UsAreas =
        [new("sq ft", Boundary.SquareMetresPerSquareFoot, 43_560), new("acres", Boundary.SquareMetresPerAcre) { One = "acre" }];

    private static readonly Rung[] MetricVolumes = [new("mL", 0.001, 1000), new("L", 1, 1000), new("m³", 1000)];
    private static readonly Rung[] UsVolumes =
    [
        new("tsp", LitresPerFluidOunce / 6, 6),
        new("fl oz", LitresPerFluidOunce, 32),
        new("gal (US)", Boundary.LitresPerUsGallon, 50),
        new("cu ft", Boundary.LitresPerCubicFoot, 27),
        new("cu yd", Boundary.LitresPerCubicYard),
    ];

    private static readonly Rung[] MetricMasses = [new("mg", 0.000_001, 1000), new("g", 0.001, 1000), new("kg", 1, 1000), new("t", 1000)];
    private static readonly Rung[] UsMasses =
    [
        new("oz", Boundary.KilogramsPerOunce, 16),
        new("lb", Boundary.KilogramsPerPound, 2000),
        new("tons (US)", Boundary.KilogramsPerShortTon) { One = "ton (US)" },
    ];

    private static readonly Rung[] MetricStrengths = [new("mg/L", 1, 1000), new("g/L", 1000)];
    private static readonly Rung[] UsStrengths =
        [new("mg/L", 1, 1000), new("oz/gal (US)", Boundary.KilogramsPerOunce * 1_000_000 / Boundary.LitresPerUsGallon)];

    private static readonly Rung[] MetricFlows = [new("mL/min", 0.001, 1000), new("L/min", 1)];
    private static readonly Rung[] UsFlows = [new("gal/h (US)", 1, 60), new("gal/min (US)", 60)];

    private static readonly Rung[] Times =
        [new("s", 1 / 86_400.0, 60), new("min", 1 / 1440.0, 60), new("h", 1 / 24.0, 24), new("days", 1) { One = "day" }];

    /// <summary>Writes a quantity for a reader.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="units">The units the reader is used to.</param>
    /// <param name="culture">The culture that decides the decimal separator, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The number, a space and the unit, for instance <c>1.23 kg</c>.</returns>
    /// <exception cref="ArgumentNullException">The quantity is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined systems.</exception>
    public static string Format(IQuantity quantity, MeasurementSystem units, IFormatProvider? culture = null) =>
        Of(Guard.NotNull(quantity), new TextStyle(Guard.Defined(units), culture ?? CultureInfo.InvariantCulture));

    /// <summary>The text of any value that a result can hold.</summary>
    internal static string Of(object value, TextStyle style)
    {
        bool us = style.Units == MeasurementSystem.UsCustomary;
        return value switch
        {
            Length length => Climb(Boundary.Metres(length), us ? UsLengths : MetricLengths, us ? "ft" : "m", style),
            Area area => Climb(Boundary.SquareMetres(area), us ? UsAreas : MetricAreas, us ? "sq ft" : "m²", style),
            Volume volume => Climb(Boundary.Litres(volume), us ? UsVolumes : MetricVolumes, us ? "gal (US)" : "L", style),
            Mass mass => Climb(Boundary.Kilograms(mass), us ? UsMasses : MetricMasses, us ? "lb" : "kg", style),
            AreaDensity rate => us
                ? Text(rate.PoundsPerHundredSquareFeet, "lb/100 sq ft", style)
                : Text(Boundary.GramsPerSquareMetre(rate), "g/m²", style),
            Density density => us
                ? Text(Boundary.KilogramsPerCubicMetre(density) / KilogramsPerCubicMetrePerPoundPerCubicFoot, "lb/cu ft", style)
                : Text(Boundary.KilogramsPerCubicMetre(density), "kg/m³", style),
            MassConcentration strength =>
                Climb(Boundary.MilligramsPerLitre(strength), us ? UsStrengths : MetricStrengths, "mg/L", style),
            VolumeConcentration share => Text(Boundary.VolumeFraction(share) * 100, "% by volume", style),
            MassFraction share => Text(Boundary.MassFraction(share) * 100, "% by mass", style),
            Ratio ratio => Text(Boundary.Fraction(ratio) * 100, "%", style),
            Temperature temperature => us
                ? Text(Boundary.FahrenheitFromCelsius(Boundary.Celsius(temperature)), "°F", style)
                : Text(Boundary.Celsius(temperature), "°C", style),
            TemperatureDelta delta => us
                ? Text(Boundary.CelsiusDegrees(delta) * Boundary.FahrenheitPerCelsius, "°F", style)
                : Text(Boundary.CelsiusDegrees(delta), "°C", style),
            Speed speed => us
                ? Text(Boundary.MetresPerSecond(speed) * 3600 / Boundary.MetresPerMile, "mph", style)
                : Text(Boundary.MetresPerSecond(speed), "m/s", style),
            Duration duration => Climb(Boundary.Days(duration), Times, "days", style),
            TimeSpan span => Climb(span.TotalDays, Times, "days", style),
            Angle angle => Number(Boundary.Degrees(angle), style) + "°",
            ReciprocalArea density => us
                ? Text(Boundary.PerSquareMetre(density) * Boundary.SquareMetresPerSquareFoot, "per sq ft", style)
                : Text(Boundary.PerSquareMetre(density), "per m²", style),
            // US growers too speak of vapour pressure in kPa.
            Pressure pressure => Text(Boundary.Kilopascals(pressure), "kPa", style),
            RelativeHumidity humidity => Text(Boundary.Percent(humidity), "%", style),
            Irradiation radiation => Text(Boundary.MegajoulesPerSquareMetre(radiation), "MJ/m²", style),
            Irradiance power => Text(Boundary.WattsPerSquareMetre(power), "W/m²", style),
            Illuminance light => us
                ? Text(Boundary.Lux(light) * Boundary.SquareMetresPerSquareFoot, "fc", style)
                : Text(Boundary.Lux(light), "lx", style),
            ElectricConductivity conductivity => Text(Boundary.DecisiemensPerMetre(conductivity), "dS/m", style),
            VolumeFlow flow => us
                ? Climb(Boundary.LitresPerMinute(flow) * 60 / Boundary.LitresPerUsGallon, UsFlows, "gal/min (US)", style)
                : Climb(Boundary.LitresPerMinute(flow), MetricFlows, "L/min", style),
            IQuantity other => Text((double)other.Value, Abbreviation(other), style),
            DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            int or long => ((IFormattable)value).ToString("N0", style.Culture),
            double number => Number(number, style),
            Enum word => word.ToString(),
            IFormattable formattable => formattable.ToString(style.Format, style.Culture),
            _ => value.ToString() ?? "",
        };
    }

    /// <summary>A number for a reader: the whole part in full, and decimals up to three significant digits.</summary>
    internal static string Number(double value, TextStyle style)
    {
        double magnitude = Math.Abs(value);
        if (!double.IsFinite(value) || (magnitude > 0 && magnitude < 1e-4))
            return value.ToString("0.##E0", style.Culture);
        int decimals = Decimals(magnitude);
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return rounded.ToString(decimals == 0 ? "#,##0" : "0." + new string('#', decimals), style.Culture);
    }

    /// <summary>The unit as UnitsNet abbreviates it, for quantities that this library does not use.</summary>
    private static string Abbreviation(IQuantity quantity) =>
        UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(quantity.Unit, CultureInfo.InvariantCulture);

    private static int Decimals(double magnitude) => magnitude is 0 or >= 100 ? 0 : 2 - (int)Math.Floor(Math.Log10(magnitude));

    private static string Text(double value, string unit, TextStyle style) => $"{Number(value, style)} {unit}";

    /// <summary>The value in the first unit of the ladder in which it is not too large, as it will show; zero in the unit given.</summary>
    private static string Climb(double value, Rung[] ladder, string unitOfZero, TextStyle style)
    {
        if (value == 0)
            return Text(0, unitOfZero, style);
        int i = 0;
        while (AsShown(value / ladder[i].Size) >= ladder[i].Next)
            i++;
        string unit = AsShown(value / ladder[i].Size) == 1 ? ladder[i].One : ladder[i].Unit;
        return Text(value / ladder[i].Size, unit, style);
    }

    private static double AsShown(double value)
    {
        double magnitude = Math.Abs(value);
        return magnitude < 1e-4 ? magnitude : Math.Round(magnitude, Decimals(magnitude), MidpointRounding.AwayFromZero);
    }

    private sealed record Rung(string Unit, double Size, double Next = double.PositiveInfinity)
    {
        /// <summary>The unit's name when there is one of it.</summary>
        public string One { get; init; } = Unit;
    }
}
