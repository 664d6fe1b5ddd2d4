using System.Globalization;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Display;

public class QuantityTextProperties
{
    [Property]
    public bool Number_AnyValue_IsWithinHalfItsThirdDigit(NormalFloat value)
    {
        double shown = double.Parse(QuantityText.Number(value.Get, TextStyle.Default), NumberStyles.Float | NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
        return Math.Abs(shown - value.Get) <= Math.Abs(value.Get) * 0.005 * (1 + 1e-9);
    }

    [Property]
    public bool Number_Opposite_IsTheSameWithAMinus(NormalFloat value)
    {
        double magnitude = Math.Abs(value.Get);
        string text = QuantityText.Number(magnitude, TextStyle.Default);
        return magnitude == 0 || QuantityText.Number(-magnitude, TextStyle.Default) == "-" + text;
    }

    [Property]
    public bool Format_MassInAnyUnit_ReadsTheSame(ushort grams, bool us)
    {
        MeasurementSystem units = us ? MeasurementSystem.UsCustomary : MeasurementSystem.Metric;
        double offTheTie = grams + 0.123;
        return QuantityText.Format(Mass.FromGrams(offTheTie), units, null) == QuantityText.Format(Mass.FromPounds(offTheTie / 453.59237), units, null);
    }

    [Property]
    public bool Format_Length_NeverShowsAThousandMillimetres(ushort a)
    {
        string text = QuantityText.Format(Length.FromMillimeters(a / 4.0), MeasurementSystem.Metric, null);
        double number = double.Parse(text.Split(' ')[0], NumberStyles.Float | NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
        return text.Split(' ')[1] switch
        {
            "mm" => number is > 0 and < 10,
            "cm" => number is >= 1 and < 100,
            "m" => number is 0 or >= 1 and < 10_000,
            _ => false,
        };
    }

    [Property]
    public bool Format_Volume_ReadsBackWithinItsRounding(ushort a, bool us)
    {
        double litres = (a + 1) / 64.0;
        string[] parts = QuantityText.Format(Volume.FromLiters(litres), us ? MeasurementSystem.UsCustomary : MeasurementSystem.Metric, null).Split(' ', 2);
        double number = double.Parse(parts[0], NumberStyles.Float | NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
        double back = parts[1] switch
        {
            "mL" => number / 1000,
            "L" => number,
            "m³" => number * 1000,
            "tsp" => number * 0.00492892159375,
            "fl oz" => number * 0.0295735295625,
            "gal (US)" => number * 3.785411784,
            "cu ft" => number * 28.316846592,
            "cu yd" => number * 764.554857984,
            _ => double.NaN,
        };
        return Math.Abs(back - litres) <= 0.005 * litres * (1 + 1e-9);
    }
}
