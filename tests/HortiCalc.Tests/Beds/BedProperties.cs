using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for every bed, whatever its shape and size.</summary>
public class BedProperties
{
    [Property]
    public bool FillVolume_OfTwoDepths_IsTheSumOfBoth(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt upper, PositiveInt lower) =>
        OneOfEach(a, b, c).All(bed => Near(
            bed.FillVolume(Side(upper) + Side(lower)).Liters,
            bed.FillVolume(Side(upper)).Liters + bed.FillVolume(Side(lower)).Liters));

    [Property]
    public bool FillVolume_DividedByArea_IsTheDepth(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt depth) =>
        OneOfEach(a, b, c).All(bed => Near((bed.FillVolume(Side(depth)) / bed.Area).Meters, Side(depth).Meters));

    [Property]
    public bool Sizes_ScaledByAFactor_ScaleAreaByItsSquareAndPerimeterByItself(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt drawn)
    {
        double factor = 0.1 + drawn.Get % 90 / 10.0;
        (Length first, Length second, Length third) = Triangle(a, b, c);
        (Bed Small, Bed Large)[] pairs =
        [
            (Bed.Rectangle(Side(a), Side(b)), Bed.Rectangle(Side(a) * factor, Side(b) * factor)),
            (Bed.Circle(Side(a)), Bed.Circle(Side(a) * factor)),
            (Bed.Triangle(first, second, third), Bed.Triangle(first * factor, second * factor, third * factor)),
            (Bed.LShape(Side(a), Side(b), Side(a) / 3, Side(b) / 4), Bed.LShape(Side(a) * factor, Side(b) * factor, Side(a) / 3 * factor, Side(b) / 4 * factor)),
            (Polygon(Star(c)), Polygon(Star(c).Select(corner => (corner.X * factor, corner.Y * factor)))),
        ];
        return pairs.All(pair =>
            Near(pair.Large.Area.SquareMeters, factor * factor * pair.Small.Area.SquareMeters)
            && Near(pair.Large.Perimeter.Meters, factor * pair.Small.Perimeter.Meters));
    }

    [Property]
    public bool Perimeter_OfAnyShape_EnclosesNoMoreThanACircleWould(PositiveInt a, PositiveInt b, PositiveInt c) =>
        OneOfEach(a, b, c).All(bed =>
        {
            double perimeterMetres = bed.Perimeter.Meters;
            return 4 * Math.PI * bed.Area.SquareMeters <= perimeterMetres * perimeterMetres * (1 + 1e-12);
        });

    [Property]
    public bool Rectangle_AsAPolygon_HasTheSameAreaAndPerimeter(PositiveInt a, PositiveInt b)
    {
        double widthMetres = Side(a).Meters;
        double lengthMetres = Side(b).Meters;
        Bed rectangle = Bed.Rectangle(Side(a), Side(b));
        Bed polygon = Polygon([(0, 0), (widthMetres, 0), (widthMetres, lengthMetres), (0, lengthMetres)]);
        return Same(rectangle, polygon);
    }

    [Property]
    public bool LShape_AsAPolygon_HasTheSameAreaAndPerimeter(PositiveInt a, PositiveInt b, PositiveInt share)
    {
        double widthMetres = Side(a).Meters;
        double lengthMetres = Side(b).Meters;
        double cutWidthMetres = widthMetres * (1 + share.Get % 9) / 10;
        double cutLengthMetres = lengthMetres * (1 + share.Get % 7) / 10;
        Bed shape = Bed.LShape(Side(a), Side(b), Length.FromMeters(cutWidthMetres), Length.FromMeters(cutLengthMetres));
        Bed polygon = Polygon(
        [
            (0, 0), (widthMetres, 0), (widthMetres, lengthMetres - cutLengthMetres), (widthMetres - cutWidthMetres, lengthMetres - cutLengthMetres),
            (widthMetres - cutWidthMetres, lengthMetres), (0, lengthMetres),
        ]);
        return Same(shape, polygon);
    }

    [Property]
    public bool LShape_AndItsMissingCorner_FillTheWholeRectangle(PositiveInt a, PositiveInt b, PositiveInt share)
    {
        Length cutWidth = Side(a) * (1 + share.Get % 9) / 10;
        Length cutLength = Side(b) * (1 + share.Get % 7) / 10;
        return Near(
            Bed.LShape(Side(a), Side(b), cutWidth, cutLength).Area.SquareMeters + Bed.Rectangle(cutWidth, cutLength).Area.SquareMeters,
            Bed.Rectangle(Side(a), Side(b)).Area.SquareMeters);
    }

    [Property]
    public bool Triangle_BySidesInAnyOrder_HasTheSameArea(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        (Length first, Length second, Length third) = Triangle(a, b, c);
        double area = Bed.Triangle(first, second, third).Area.SquareMeters;
        return Near(area, Bed.Triangle(third, first, second).Area.SquareMeters) && Near(area, Bed.Triangle(second, first, third).Area.SquareMeters);
    }

    [Property]
    public bool Triangle_WithARightAngle_IsHalfTheRectangle(PositiveInt a, PositiveInt b)
    {
        Length longest = Length.FromMeters(double.Hypot(Side(a).Meters, Side(b).Meters));
        return Near(Bed.Triangle(Side(a), Side(b), longest).Area.SquareMeters, Bed.Rectangle(Side(a), Side(b)).Area.SquareMeters / 2);
    }

    // Heron's formula on each slice against the shoelace formula on the whole: they share no step.
    [Property]
    public bool Polygon_CutIntoTrianglesFromWithin_HasTheirSummedArea(PositiveInt seed)
    {
        (double X, double Y)[] corners = Star(seed);
        double sum = corners.Select((corner, i) =>
        {
            (double X, double Y) next = corners[(i + 1) % corners.Length];
            return Bed.Triangle(
                Length.FromMeters(double.Hypot(corner.X, corner.Y)),
                Length.FromMeters(double.Hypot(next.X, next.Y)),
                Length.FromMeters(double.Hypot(next.X - corner.X, next.Y - corner.Y))).Area.SquareMeters;
        }).Sum();
        return Near(Polygon(corners).Area.SquareMeters, sum, 1e-7);
    }

    [Property]
    public bool Polygon_BegunElsewhereOrWalkedTheOtherWay_IsTheSame(PositiveInt seed, NonNegativeInt start)
    {
        (double X, double Y)[] corners = Star(seed);
        int shift = start.Get % corners.Length;
        Bed bed = Polygon(corners);
        return Same(bed, Polygon(corners.Skip(shift).Concat(corners.Take(shift)))) && Same(bed, Polygon(corners.Reverse()));
    }

    [Property]
    public bool Polygon_TurnedAndMoved_KeepsAreaAndPerimeter(PositiveInt seed, PositiveInt angle, int eastMetres, int northMetres)
    {
        double radians = angle.Get % 360 * Math.PI / 180;
        (double sin, double cos) = Math.SinCos(radians);
        IEnumerable<(double X, double Y)> moved = Star(seed).Select(corner => (
            corner.X * cos - corner.Y * sin + eastMetres % 1000, corner.X * sin + corner.Y * cos + northMetres % 1000));
        return Same(Polygon(Star(seed)), Polygon(moved));
    }

    [Property]
    public bool Polygon_WithACornerAddedOnASide_IsTheSame(PositiveInt seed, PositiveInt along)
    {
        List<(double X, double Y)> corners = [.. Star(seed)];
        double share = (1 + along.Get % 9) / 10.0;
        (double X, double Y) first = corners[0];
        (double X, double Y) second = corners[1];
        Bed before = Polygon(corners);
        corners.Insert(1, (double.Lerp(first.X, second.X, share), double.Lerp(first.Y, second.Y, share)));
        return Same(before, Polygon(corners));
    }

    [Property]
    public bool Polygon_WithTwoNeighboursExchanged_IsRefused(PositiveInt sides, NonNegativeInt exchanged)
    {
        int count = 4 + sides.Get % 9;
        List<(double X, double Y)> corners = Regular(count, 2);
        int first = exchanged.Get % (count - 1);
        (corners[first], corners[first + 1]) = (corners[first + 1], corners[first]);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Polygon(corners));
        return refused.ParamName == "corners" && refused.Message.Contains("crosses or touches", StringComparison.Ordinal);
    }

    [Property]
    public bool Circle_BetweenManySidedPolygons_LiesBetweenTheirAreas(PositiveInt diameter, PositiveInt sides)
    {
        int count = 6 + sides.Get % 60;
        double radius = Side(diameter).Meters / 2;
        double circle = Bed.Circle(Side(diameter)).Area.SquareMeters;
        return Polygon(Regular(count, radius)).Area.SquareMeters < circle
            && circle < Polygon(Regular(count, radius / Math.Cos(Math.PI / count))).Area.SquareMeters;
    }

    [Property]
    public bool Bed_InFeetOrMetres_IsTheSameBed(PositiveInt a, PositiveInt b)
    {
        int aFeet = 1 + a.Get % 100;
        int bFeet = 1 + b.Get % 100;
        // As a person would write the metres: in decimal, without the noise of binary fractions.
        return Bed.Rectangle(Length.FromFeet(aFeet), Length.FromFeet(bFeet))
                == Bed.Rectangle(Length.FromMeters((double)(aFeet * 0.3048m)), Length.FromCentimeters((double)(bFeet * 30.48m)))
            && Near(Bed.Circle(Length.FromFeet(aFeet)).Area.SquareFeet, Math.PI * aFeet * aFeet / 4);
    }

    private static List<(double X, double Y)> Regular(int count, double radius) =>
        [.. Enumerable.Range(0, count).Select(i => (radius * Math.Cos(i * 2 * Math.PI / count), radius * Math.Sin(i * 2 * Math.PI / count)))];

    private static bool Same(Bed left, Bed right) =>
        Near(left.Area.SquareMeters, right.Area.SquareMeters) && Near(left.Perimeter.Meters, right.Perimeter.Meters);
}
