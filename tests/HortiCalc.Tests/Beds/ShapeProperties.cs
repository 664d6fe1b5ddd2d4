using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for ellipses, trapeziums, rings, borders, composites and outlines by offsets.</summary>
public class ShapeProperties
{
    [Property]
    public bool Ellipse_WithEqualDiameters_IsTheCircle(PositiveInt a) => Same(Bed.Ellipse(Side(a), Side(a)), Bed.Circle(Side(a)));

    [Property]
    public bool Ellipse_TurnedByAQuarter_IsTheSame(PositiveInt a, PositiveInt b) => Same(Bed.Ellipse(Side(a), Side(b)), Bed.Ellipse(Side(b), Side(a)));

    // The midpoint rule on a smooth periodic arc converges faster than any power; it shares no step with the arithmetic-geometric mean.
    // Very flat ellipses turn too sharply for it.
    [Property]
    public bool Ellipse_Perimeter_IsTheLengthOfItsArc(PositiveInt a, PositiveInt flatness)
    {
        double longHalf = Side(a).Meters / 2;
        double shortHalf = longHalf * (10 + flatness.Get % 91) / 100;
        const int steps = 2000;
        double arc = Enumerable.Range(0, steps)
            .Select(i => (i + 0.5) * 2 * Math.PI / steps)
            .Sum(angle => double.Hypot(longHalf * Math.Sin(angle), shortHalf * Math.Cos(angle))) * 2 * Math.PI / steps;
        return Near(Bed.Ellipse(Length.FromMeters(2 * longHalf), Length.FromMeters(2 * shortHalf)).Perimeter.Meters, arc);
    }

    [Property]
    public bool Ellipse_Perimeter_LiesBetweenTheCirclesOfBothMeans(PositiveInt a, PositiveInt b)
    {
        double perimeter = Bed.Ellipse(Side(a), Side(b)).Perimeter.Meters;
        double first = Side(a).Meters / 2;
        double second = Side(b).Meters / 2;
        return perimeter >= Math.PI * (first + second) * (1 - 1e-12)
            && perimeter <= 2 * Math.PI * Math.Sqrt((first * first + second * second) / 2) * (1 + 1e-12);
    }

    [Property]
    public bool Ellipse_AsFlatAsAHair_IsTwiceItsLengthRound(PositiveInt a) =>
        Near(Bed.Ellipse(Side(a), Side(a) * 1e-7).Perimeter.Meters, 2 * Side(a).Meters, 1e-9);

    [Property]
    public bool Trapezium_WithEqualSides_IsTheRectangle(PositiveInt a, PositiveInt b) =>
        Same(Bed.Trapezium(Side(a), Side(a), Side(b)), Bed.Rectangle(Side(a), Side(b)))
        && Near(Bed.Trapezium(Side(a), Side(a), Side(b), shift: Side(b)).Area.SquareMeters, Bed.Rectangle(Side(a), Side(b)).Area.SquareMeters);

    [Property]
    public bool Trapezium_WhoseSecondSideVanishes_IsTheTriangle(PositiveInt a, PositiveInt b)
    {
        Length leg = Length.FromMeters(double.Hypot(Side(a).Meters / 2, Side(b).Meters));
        return Near(Bed.Trapezium(Side(a), Side(a) * 1e-9, Side(b)).Area.SquareMeters, Bed.Triangle(Side(a), leg, leg).Area.SquareMeters, 1e-7)
            && Near(Bed.Trapezium(Side(a), Side(a) * 1e-9, Side(b)).Perimeter.Meters, Bed.Triangle(Side(a), leg, leg).Perimeter.Meters, 1e-7);
    }

    [Property]
    public bool Trapezium_AsAPolygon_HasTheSameAreaAndPerimeter(PositiveInt a, PositiveInt b, PositiveInt c, int along)
    {
        double shift = along % 1000 / 100.0;
        (double first, double second, double apart) = (Side(a).Meters, Side(b).Meters, Side(c).Meters);
        return Same(
            Bed.Trapezium(Side(a), Side(b), Side(c), Length.FromMeters(shift)),
            Polygon([(0, 0), (first, 0), (shift + second, apart), (shift, apart)]));
    }

    [Property]
    public bool Ring_WithoutEntrance_IsTheOuterCircleLessTheInner(PositiveInt a, PositiveInt share)
    {
        Length inner = Side(a) * (1 + share.Get % 98) / 100;
        Bed ring = Bed.Ring(Side(a), inner, Length.Zero);
        return Near(ring.Area.SquareMeters, Bed.Circle(Side(a)).Area.SquareMeters - Bed.Circle(inner).Area.SquareMeters)
            && Near(ring.Perimeter.Meters, Bed.Circle(Side(a)).Perimeter.Meters + Bed.Circle(inner).Perimeter.Meters);
    }

    // 240 corners on each arc: their chords fall short of it by a part in ten thousand.
    [Property(MaxTest = 30)]
    public bool Ring_WithAnEntrance_IsTheManyCorneredOutline(PositiveInt a, PositiveInt share, PositiveInt width)
    {
        double outer = Side(a).Meters / 2;
        double inner = outer * (20 + share.Get % 61) / 100;
        double entrance = 2 * inner * (10 + width.Get % 81) / 100;
        IEnumerable<(double X, double Y)> Arc(double radius) => Enumerable.Range(0, 240)
            .Select(i => double.Lerp(Math.Asin(entrance / 2 / radius), 2 * Math.PI - Math.Asin(entrance / 2 / radius), i / 239.0))
            .Select(angle => (radius * Math.Sin(angle), radius * Math.Cos(angle)));
        Bed ring = Bed.Ring(Length.FromMeters(2 * outer), Length.FromMeters(2 * inner), Length.FromMeters(entrance));
        Bed outline = Polygon(Arc(outer).Concat(Arc(inner).Reverse()));
        return Near(ring.Area.SquareMeters, outline.Area.SquareMeters, 1e-3) && Near(ring.Perimeter.Meters, outline.Perimeter.Meters, 1e-3);
    }

    [Property]
    public bool Border_RoundACircle_IsTheRing(PositiveInt a, PositiveInt w) =>
        Same(Bed.Border(Bed.Circle(Side(a)), Side(w)), Bed.Ring(Side(a) + Side(w) * 2, Side(a), Length.Zero));

    [Property]
    public bool Border_RoundARectangle_IsTheOuterRectangleLessTheInner(PositiveInt a, PositiveInt b, PositiveInt w)
    {
        Bed inside = Bed.Rectangle(Side(a), Side(b));
        Bed outside = Bed.Rectangle(Side(a) + Side(w) * 2, Side(b) + Side(w) * 2);
        BorderBed sharp = Bed.Border(inside, Side(w));
        double corners = (4 - Math.PI) * Side(w).Meters * Side(w).Meters;
        return Near(sharp.Area.SquareMeters, outside.Area.SquareMeters - inside.Area.SquareMeters, 1e-8)
            && Near(sharp.OuterEdge.Meters, outside.Perimeter.Meters)
            && Near(sharp.Area.SquareMeters - Bed.Border(inside, Side(w), BorderCorners.Round).Area.SquareMeters, corners, 1e-7);
    }

    [Property]
    public bool Border_RoundAnL_IsTheLargerLLessTheInner(PositiveInt a, PositiveInt b, PositiveInt w)
    {
        (Length width, Length length) = (Side(a), Side(b));
        Bed inside = Bed.LShape(width, length, width / 2, length / 3);
        Bed outside = Bed.LShape(width + Side(w) * 2, length + Side(w) * 2, width / 2, length / 3);
        return Near(Bed.Border(inside, Side(w)).Area.SquareMeters, outside.Area.SquareMeters - inside.Area.SquareMeters, 1e-8)
            && Near(Bed.Border(inside, Side(w)).OuterEdge.Meters, outside.Perimeter.Meters);
    }

    [Property]
    public bool Border_InTwoWidths_IsTheBorderOfBothTogether(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt w, PositiveInt more) =>
        WithOutline(a, b, c).All(bed => Enum.GetValues<BorderCorners>().All(corners =>
        {
            BorderBed first = Bed.Border(bed, Side(w), corners);
            BorderBed second = Bed.Border(first, Side(more), corners);
            BorderBed both = Bed.Border(bed, Side(w) + Side(more), corners);
            return Near(first.Area.SquareMeters + second.Area.SquareMeters, both.Area.SquareMeters) && Near(second.OuterEdge.Meters, both.OuterEdge.Meters);
        }));

    [Property]
    public bool Border_RoundAPolygonOfTheSameShape_IsTheSame(PositiveInt a, PositiveInt b, PositiveInt w)
    {
        (double first, double second) = (Side(a).Meters, Side(b).Meters);
        (Bed Shape, Bed Polygon)[] pairs =
        [
            (Bed.Rectangle(Side(a), Side(b)), Polygon([(0, 0), (first, 0), (first, second), (0, second)])),
            (Bed.Triangle(Side(a), Side(b), Length.FromMeters(double.Hypot(first, second))), Polygon([(0, 0), (0, second), (first, 0)])),
            (Bed.LShape(Side(a), Side(b), Side(a) / 2, Side(b) / 2),
                Polygon([(0, 0), (first, 0), (first, second / 2), (first / 2, second / 2), (first / 2, second), (0, second)])),
        ];
        return pairs.All(pair => Enum.GetValues<BorderCorners>().All(corners =>
            Near(Bed.Border(pair.Shape, Side(w), corners).Area.SquareMeters, Bed.Border(pair.Polygon, Side(w), corners).Area.SquareMeters, 1e-7)));
    }

    [Property]
    public bool Border_Round_IsNeverLargerThanSharp(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt w) =>
        WithOutline(a, b, c).All(bed => Bed.Border(bed, Side(w), BorderCorners.Round).Area.SquareMeters
            <= Bed.Border(bed, Side(w)).Area.SquareMeters * (1 + 1e-12));

    [Property]
    public bool Composite_OfARectangleCutInTwo_IsTheWhole(PositiveInt a, PositiveInt b, PositiveInt share)
    {
        Length left = Side(a) * (1 + share.Get % 98) / 100;
        return Same(
            Bed.Composite([Bed.Rectangle(left, Side(b)), Bed.Rectangle(Side(a) - left, Side(b))], joins: Side(b)), Bed.Rectangle(Side(a), Side(b)));
    }

    [Property]
    public bool Composite_OfAnyShapesApart_AddsAreasAndPerimeters(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        Bed[] parts = OneOfEach(a, b, c);
        Bed together = Bed.Composite(parts, Length.Zero);
        return Near(together.Area.SquareMeters, parts.Sum(part => part.Area.SquareMeters))
            && Near(together.Perimeter.Meters, parts.Sum(part => part.Perimeter.Meters));
    }

    [Property]
    public bool FromOffsets_StraightFromOneToTheNext_IsThePolygon(PositiveInt seed, PositiveInt interval)
    {
        double[] offsets = Offsets(seed, even: true);
        double step = Side(interval).Meters;
        Bed polygon = Polygon([(step * (offsets.Length - 1), 0), (0, 0), .. offsets.Select((offset, i) => (i * step, offset))]);
        return Same(ByOffsets(offsets, step, OffsetRule.Trapezoid), polygon);
    }

    [Property]
    public bool FromOffsets_OfAParabola_IsExactBySimpsonsRule(PositiveInt half, PositiveInt length, PositiveInt bulge)
    {
        int strips = 2 * (1 + half.Get % 10);
        double across = Side(length).Meters;
        double factor = (1 + bulge.Get % 50) / 100.0;
        double step = across / strips;
        double[] offsets = [.. Enumerable.Range(0, strips + 1).Select(i => Math.Max(0, factor * i * step * (across - i * step)))];
        return Near(ByOffsets(offsets, step, OffsetRule.Simpson).Area.SquareMeters, factor * across * across * across / 6);
    }

    [Property]
    public bool FromOffsets_WalkedTheOtherWay_IsTheSame(PositiveInt seed, PositiveInt interval) =>
        Enum.GetValues<OffsetRule>().All(rule => Same(
            ByOffsets(Offsets(seed, even: false), Side(interval).Meters, rule),
            ByOffsets([.. Offsets(seed, even: false).Reverse()], Side(interval).Meters, rule)));

    [Property]
    public bool Shapes_ScaledByAFactor_ScaleAreaByItsSquareAndVolumeByItsCube(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt drawn)
    {
        double factor = 0.1 + drawn.Get % 90 / 10.0;
        return NewShapes(a, b, c, 1).Zip(NewShapes(a, b, c, factor)).All(pair =>
            Near(pair.Second.Area.SquareMeters, factor * factor * pair.First.Area.SquareMeters)
            && Near(pair.Second.Perimeter.Meters, factor * pair.First.Perimeter.Meters)
            && Near(
                pair.Second.FillVolume(Side(b) * factor).Liters, factor * factor * factor * pair.First.FillVolume(Side(b)).Liters));
    }

    [Property]
    public bool Shapes_Perimeter_EnclosesNoMoreThanACircleWould(PositiveInt a, PositiveInt b, PositiveInt c) =>
        NewShapes(a, b, c, 1).All(bed =>
            4 * Math.PI * bed.Area.SquareMeters <= bed.Perimeter.Meters * bed.Perimeter.Meters * (1 + 1e-12));

    private static Bed[] NewShapes(PositiveInt a, PositiveInt b, PositiveInt c, double factor)
    {
        Length Scaled(PositiveInt drawn) => Side(drawn) * factor;
        return
        [
            Bed.Ellipse(Scaled(a), Scaled(b)),
            Bed.Trapezium(Scaled(a), Scaled(b), Scaled(c)),
            Bed.Ring(Scaled(a) * 1.5, Scaled(a), Scaled(a) / 3),
            Bed.Border(Bed.Rectangle(Scaled(a), Scaled(b)), Scaled(c), BorderCorners.Round),
            Bed.Composite([Bed.Circle(Scaled(a)), Bed.Rectangle(Scaled(b), Scaled(c))], Length.Zero),
            Bed.FromOffsets([Scaled(a), Scaled(b), Scaled(c)], Scaled(b), OffsetRule.Simpson),
        ];
    }

    private static Bed[] WithOutline(PositiveInt a, PositiveInt b, PositiveInt c)
    {
        (Length first, Length second, Length third) = Triangle(a, b, c);
        return
        [
            Bed.Rectangle(Side(a), Side(b)), Bed.Circle(Side(a)), Bed.Ellipse(Side(a), Side(b)), Bed.Triangle(first, second, third),
            Bed.LShape(Side(a), Side(b), Side(a) / 3, Side(b) / 4), Bed.Trapezium(Side(a), Side(b), Side(c)),
        ];
    }

    private static double[] Offsets(PositiveInt seed, bool even)
    {
        Random random = new(seed.Get);
        int count = 3 + 2 * random.Next(0, 6) + (even ? random.Next(0, 2) : 0);
        return [.. Enumerable.Range(0, count).Select(_ => 0.2 + 3 * random.NextDouble())];
    }

    private static OffsetBed ByOffsets(double[] metres, double intervalMetres, OffsetRule rule) =>
        Bed.FromOffsets([.. metres.Select(offset => Length.FromMeters(offset))], Length.FromMeters(intervalMetres), rule);

    private static bool Same(Bed left, Bed right) =>
        Near(left.Area.SquareMeters, right.Area.SquareMeters, 1e-8) && Near(left.Perimeter.Meters, right.Perimeter.Meters, 1e-8);
}
