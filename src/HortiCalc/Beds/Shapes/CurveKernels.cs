namespace HortiCalc.Beds;

/// <summary>Plane geometry of curved outlines.</summary>
internal static class CurveKernels
{
    /// <summary>The perimeter of an ellipse by its half-axes.</summary>
    /// <remarks>
    /// 4 a E(e), with the complete elliptic integral by the arithmetic-geometric mean: 2π (a² - Σ 2ⁿ⁻¹ cₙ²) / AGM(a, b), where
    /// c₀² = a² - b² and then cₙ is half the difference of both means. Each step doubles the digits.
    /// </remarks>
    public static double EllipseMetres(double firstMetres, double secondMetres)
    {
        double longMetres = Math.Max(firstMetres, secondMetres);
        double ratio = Math.Min(firstMetres, secondMetres) / longMetres;
        double arithmetic = 1;
        double geometric = ratio;
        double weight = 0.5;
        double rest = 1 - weight * (1 - ratio) * (1 + ratio);
        while (arithmetic - geometric > 1e-15 * arithmetic)
        {
            double half = (arithmetic - geometric) / 2;
            (arithmetic, geometric) = ((arithmetic + geometric) / 2, Math.Sqrt(arithmetic * geometric));
            weight *= 2;
            rest -= weight * half * half;
        }

        return 2 * Math.PI * longMetres * rest / arithmetic;
    }

    /// <summary>The arc over a chord, by the height of the arc, which is at most half the chord.</summary>
    public static double ArcMetres(double chordMetres, double heightMetres) =>
        Radius(chordMetres, heightMetres) * Angle(chordMetres, heightMetres);

    /// <summary>The area between a chord and its arc.</summary>
    public static double SegmentSquareMetres(double chordMetres, double heightMetres)
    {
        double radiusMetres = Radius(chordMetres, heightMetres);
        return radiusMetres * radiusMetres / 2 * AngleLessSine(Angle(chordMetres, heightMetres));
    }

    /// <summary>The area on one side of a circle's middle that a straight strip through the middle covers.</summary>
    public static double HalfStripSquareMetres(double radiusMetres, double stripMetres)
    {
        double half = Math.Min(stripMetres / 2, radiusMetres);
        return half * Math.Sqrt((radiusMetres - half) * (radiusMetres + half)) + radiusMetres * radiusMetres * Math.Asin(half / radiusMetres);
    }

    private static double Radius(double chordMetres, double heightMetres) =>
        (chordMetres / heightMetres * chordMetres / 4 + heightMetres) / 2;

    private static double Angle(double chordMetres, double heightMetres) => 4 * Math.Atan(2 * heightMetres / chordMetres);

    // On a flat arc both are nearly the same; the series keeps the digits that the difference would lose.
    private static double AngleLessSine(double radians)
    {
        double square = radians * radians;
        return radians > 0.5
            ? radians - Math.Sin(radians)
            : radians * square / 6 * (1 - square / 20 * (1 - square / 42 * (1 - square / 72 * (1 - square / 110 * (1 - square / 156)))));
    }
}
