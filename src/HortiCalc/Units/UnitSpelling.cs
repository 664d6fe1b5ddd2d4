namespace HortiCalc.Units;

/// <summary>The spelling of units on keyboards without °, µ, ², ³ and ·, accepted wherever a unit is read.</summary>
internal static class UnitSpelling
{
    /// <summary>The unit in ASCII: <c>m2</c> for m², <c>degC</c> for °C, <c>degC.d</c> for °C·d, <c>umol</c> for µmol.</summary>
    public static string Ascii(string abbreviation) => abbreviation
        .Replace("°", "deg", StringComparison.Ordinal)
        .Replace('µ', 'u')
        .Replace('²', '2')
        .Replace('³', '3')
        .Replace('·', '.');
}
