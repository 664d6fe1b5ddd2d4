using UnitsNet;

namespace HortiCalc.Units;

/// <summary>
/// Lengths at the door of the rooms that measure shapes. Bounded above, so that no area or volume made of them can
/// overflow; the bound lies far beyond any garden.
/// </summary>
internal static class Dimension
{
    public const double LargestMetres = 1_000_000;

    public static double Positive(Length value, string parameter)
    {
        double metres = Boundary.Metres(value);
        return metres is > 0 and <= LargestMetres
            ? metres
            : throw Guard.Refused(parameter, metres, "m", $"greater than 0 m, up to {Guard.Number(LargestMetres)} m");
    }

    public static double NotNegative(Length value, string parameter) =>
        Guard.Within(Boundary.Metres(value), 0, LargestMetres, "m", parameter);

    /// <summary>The length as a shape keeps it, so that 6 inches and 15.24 centimetres are one; see <see cref="HouseUnits"/>.</summary>
    public static Length PositiveKept(Length value, string parameter)
    {
        Positive(value, parameter);
        return HouseUnits.Normalise(value);
    }

    /// <inheritdoc cref="PositiveKept"/>
    public static Length NotNegativeKept(Length value, string parameter)
    {
        NotNegative(value, parameter);
        return HouseUnits.Normalise(value);
    }
}
