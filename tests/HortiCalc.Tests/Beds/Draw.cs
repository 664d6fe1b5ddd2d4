using FsCheck;
using HortiCalc.Beds;
using UnitsNet;

namespace HortiCalc.Tests.Beds;

/// <summary>Garden-sized values from whole numbers that a property is run on.</summary>
internal static class Draw
{
    /// <summary>From 5 cm to about 14 m, rarely a round number.</summary>
    public static Length Side(PositiveInt drawn) => Length.FromCentimeters(5 + drawn.Get % 10_000 / 7.0);

    /// <summary>From 0.1 to about 143 L.</summary>
    public static Volume Amount(PositiveInt drawn) => Volume.FromLiters(0.1 + drawn.Get % 1_000 / 7.0);

    /// <summary>From 0 to 50 %.</summary>
    public static Ratio Allowance(NonNegativeInt drawn) => Ratio.FromPercent(drawn.Get % 51);

    /// <summary>Three sides that close: two drawn, the third between their difference and their sum.</summary>
    public static (Length A, Length B, Length C) Triangle(PositiveInt a, PositiveInt b, PositiveInt between)
    {
        double aMetres = Side(a).Meters;
        double bMetres = Side(b).Meters;
        double share = (1 + between.Get % 98) / 100.0;
        return (Length.FromMeters(aMetres), Length.FromMeters(bMetres), Length.FromMeters(double.Lerp(Math.Abs(aMetres - bMetres), aMetres + bMetres, share)));
    }

    /// <summary>The corners of an outline that is seen whole from its origin: three to fourteen corners, anticlockwise, in metres.</summary>
    public static (double X, double Y)[] Star(PositiveInt seed)
    {
        Random random = new(seed.Get);
        int count = random.Next(3, 15);
        return [.. Enumerable.Range(0, count).Select(i =>
        {
            double radius = 0.5 + 4.5 * random.NextDouble();
            double angle = (i + 0.4 * random.NextDouble()) * 2 * Math.PI / count;
            return (radius * Math.Cos(angle), radius * Math.Sin(angle));
        })];
    }

    public static PolygonBed Polygon(IEnumerable<(double X, double Y)> corners) =>
        Bed.Polygon([.. corners.Select(corner => new BedCorner(Length.FromMeters(corner.X), Length.FromMeters(corner.Y)))]);

    /// <summary>One bed of each kind, of drawn size.</summary>
    public static Bed[] OneOfEach(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        (Length first, Length second, Length third) = Triangle(a, b, c);
        return
        [
            Bed.Rectangle(Side(a), Side(b)),
            Bed.Circle(Side(a)),
            Bed.Triangle(first, second, third),
            Bed.LShape(Side(a), Side(b), Side(a) * (1 + c.Get % 9) / 10, Side(b) * (1 + c.Get % 7) / 10),
            Polygon(Star(c)),
        ];
    }

    public static bool Near(double left, double right, double relative = 1e-9) =>
        Math.Abs(left - right) <= relative * Math.Max(Math.Abs(left), Math.Abs(right)) + 1e-12;
}
