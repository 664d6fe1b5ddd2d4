namespace HortiCalc.Json;

/// <summary>Reads and writes a quantity of UnitsNet in the units listed; in any other it is written in the first of them.</summary>
internal abstract class UnitsNetConverter<T, TUnit>(
    string name,
    Func<T, TUnit> unitOf,
    Func<T, TUnit, double> valueIn,
    Func<double, TUnit, T> from,
    params (string Abbreviation, TUnit Unit)[] units)
    : QuantityConverter<T>(
        name,
        quantity =>
        {
            (string abbreviation, TUnit unit) = units[Math.Max(0, Array.FindIndex(units, known => known.Unit.Equals(unitOf(quantity))))];
            return (valueIn(quantity, unit), abbreviation);
        },
        units.ToDictionary(known => known.Abbreviation, known => (Func<double, T>)(value => from(value, known.Unit))))
    where TUnit : struct, Enum;
