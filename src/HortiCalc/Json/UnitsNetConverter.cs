using HortiCalc.Units;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes a quantity of UnitsNet in the units listed; in any other it is written in the library's own unit for it, or else in
/// the first of those listed.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <typeparam name="TUnit">Its units.</typeparam>
/// <param name="name">The quantity's name, for messages.</param>
/// <param name="tradeUnits">Units that UnitsNet lacks: they are read only.</param>
/// <param name="unitOf">The unit of a quantity.</param>
/// <param name="valueIn">The value of a quantity in a unit.</param>
/// <param name="from">Makes a quantity.</param>
/// <param name="units">The units, the one to fall back on first.</param>
internal abstract class UnitsNetConverter<T, TUnit>(
    string name,
    IReadOnlyDictionary<string, Func<double, T>> tradeUnits,
    Func<T, TUnit> unitOf,
    Func<T, TUnit, double> valueIn,
    Func<double, TUnit, T> from,
    params (string Abbreviation, TUnit Unit)[] units)
    : QuantityConverter<T>(
        name,
        quantity =>
        {
            int listed = Listed(unitOf(quantity));
            if (listed < 0)
            {
                quantity = HouseUnits.Normalise(quantity);
                listed = Math.Max(0, Listed(unitOf(quantity)));
            }

            return (valueIn(quantity, units[listed].Unit), units[listed].Abbreviation);

            int Listed(TUnit unit) => Array.FindIndex(units, known => EqualityComparer<TUnit>.Default.Equals(known.Unit, unit));
        },
        units.Select(known => KeyValuePair.Create(known.Abbreviation, (Func<double, T>)(value => from(value, known.Unit))))
            .Concat(tradeUnits)
            .ToDictionary())
    where TUnit : struct, Enum
{
    protected UnitsNetConverter(
        string name,
        Func<T, TUnit> unitOf,
        Func<T, TUnit, double> valueIn,
        Func<double, TUnit, T> from,
        params (string Abbreviation, TUnit Unit)[] units)
        : this(name, new Dictionary<string, Func<double, T>>(), unitOf, valueIn, from, units)
    {
    }
}
