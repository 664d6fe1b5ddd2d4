using HortiCalc.Climate;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

/// <summary>Bounded numbers of moist air, from what FsCheck gives.</summary>
internal static class Moist
{
    public static readonly Pressure SeaLevel = Pressure.FromKilopascals(101.325);

    /// <summary>From 0.5 to 50 °C, where every formula over water holds.</summary>
    public static Temperature Warm(ushort number) => Temperature.FromDegreesCelsius(0.5 + 49.5 * number / ushort.MaxValue);

    /// <summary>From −25 to 50 °C, where that of the WMO holds over water, with every dew point that <see cref="Share"/> makes.</summary>
    public static Temperature Any(ushort number) => Temperature.FromDegreesCelsius(-20 + 70.0 * number / ushort.MaxValue);

    /// <summary>From −30 to −0.1 °C.</summary>
    public static Temperature Cold(ushort number) => Temperature.FromDegreesCelsius(-30 + 29.9 * number / ushort.MaxValue);

    /// <summary>From 12 to 100 %.</summary>
    public static RelativeHumidity Share(ushort number) => RelativeHumidity.FromPercent(12 + 88.0 * number / ushort.MaxValue);

    /// <summary>From 55 to 105 kPa: from 4800 m down to the shore of the Dead Sea.</summary>
    public static Pressure Barometer(ushort number) => Pressure.FromKilopascals(55 + 50.0 * number / ushort.MaxValue);

    public static MoistAir Air(ushort temperature, ushort share, ushort pressure) =>
        MoistAir.FromRelativeHumidity(Any(temperature), Share(share), Barometer(pressure));

    public static MoistAir Icy(ushort temperature, ushort share, ushort pressure) =>
        MoistAir.FromRelativeHumidityOverIce(Cold(temperature), Share(share), Barometer(pressure));
}
