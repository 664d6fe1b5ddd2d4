using System.Text.Json;
using HortiCalc.Beds;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Beds;

/// <summary>What the further shapes, mounds and sloping beds refuse, and how they show and store themselves.</summary>
public class ShapeEdges
{
    private static Length M(double metres) => Length.FromMeters(metres);

    private static BedCorner At(double x, double y) => new(M(x), M(y));

    [Fact]
    public void Shapes_DimensionsOutOfRange_AreRefusedByName()
    {
        Refused("length", "length was 0 m; allowed: greater than 0 m", () => Bed.Ellipse(Length.Zero, M(1)));
        Refused("width", "width was -1 m", () => Bed.Ellipse(M(1), M(-1)));
        Refused("firstSide", "firstSide was 0 m", () => Bed.Trapezium(Length.Zero, M(1), M(1)));
        Refused("secondSide", "secondSide was -2 m", () => Bed.Trapezium(M(1), M(-2), M(1)));
        Refused("distance", "distance was 0 m", () => Bed.Trapezium(M(1), M(1), Length.Zero));
        Refused("shift", "shift was 2000000 m; allowed: from -1000000 to 1000000 m", () => Bed.Trapezium(M(1), M(1), M(1), M(2e6)));
        Refused("innerDiameter", "innerDiameter was 2 m; allowed: greater than 0 m, less than the outer diameter, 2 m", () => Bed.Ring(M(2), M(2), Length.Zero));
        Refused("entrance", "entrance was 0.6 m; allowed: from 0 to 0.5 m", () => Bed.Ring(M(2), M(0.5), M(0.6)));
        Refused("width", "width was 0 m", () => Bed.Border(Bed.Circle(M(1)), Length.Zero));
        Refused("height", "height was 0.7 m; allowed: greater than 0 m, up to half the width, 0.6 m", () => Mound.Rounded(M(1.2), M(0.7), M(3)));
        Refused("top", "top was 1.3 m; allowed: from 0 to 1.2 m", () => Mound.FlatTopped(M(1.2), M(1.3), M(0.3), M(3)));
        Refused("depthAtEnd", "depthAtEnd was -0.1 m", () => new SlopingBed(M(1), M(2), M(0.2), M(-0.1)));
    }

    [Fact]
    public void FromOffsets_TooFewNegativeOrAnEvenNumberForSimpson_AreRefused()
    {
        Refused("offsets", "offsets was 1; allowed: 2 or more", () => Bed.FromOffsets([M(1)], M(1)));
        Refused("offsets", "offsets was 4; allowed: an odd number of offsets", () => Bed.FromOffsets([M(1), M(1), M(1), M(1)], M(1), OffsetRule.Simpson));
        Refused("offsets", "offsets was -1 m", () => Bed.FromOffsets([M(1), M(-1)], M(1)));
        Refused("offsets", "allowed: offsets that are not all zero", () => Bed.FromOffsets([M(0), M(0)], M(1)));
        Refused("interval", "interval was 0 m", () => Bed.FromOffsets([M(1), M(1)], Length.Zero));
        Refused("rule", "allowed: Trapezoid, Simpson", () => Bed.FromOffsets([M(1), M(1)], M(1), (OffsetRule)7));
    }

    [Fact]
    public void Composite_JoinsLongerThanAnyOutlineAllows_AreRefused()
    {
        Bed square = Bed.Rectangle(M(1), M(1));
        Refused("joins", "allowed: up to 1.493", () => Bed.Composite([square, square], M(1.6)));
        Refused("joins", "joins was -1 m", () => Bed.Composite([square, square], M(-1)));
        Refused("parts", "parts was 1; allowed: 2 or more", () => Bed.Composite([square], M(0)));
        Assert.Equal(6, Bed.Composite([square, square], M(1)).Perimeter.Meters, 1e-12);
    }

    [Fact]
    public void Border_RoundAShapeWithoutOneOutline_IsRefused()
    {
        Bed composite = Bed.Composite([Bed.Circle(M(1)), Bed.Circle(M(1))], M(0));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bed.Border(composite, M(0.5)));
        Assert.Equal("inside", refused.ParamName);
        Assert.Contains("allowed: a shape with a single outline", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Bed.Border(Bed.Ring(M(2), M(1), M(0.5)), M(0.5)));
        Assert.Throws<ArgumentException>(() => Bed.Border(Bed.FromOffsets([M(1), M(1)], M(1)), M(0.5)));
    }

    // A U three metres wide with a bay of one metre: borders from both sides meet in the bay when each is half a metre wide.
    [Fact]
    public void Border_InTheBayOfAU_IsRefusedWhereItMeetsItself()
    {
        Bed u = Bed.Polygon(At(0, 0), At(3, 0), At(3, 3), At(2, 3), At(2, 1), At(1, 1), At(1, 3), At(0, 3));
        Assert.Equal(
            u.Perimeter.Meters * 0.4 + 4 * 0.16, Bed.Border(u, M(0.4)).Area.SquareMeters, 1e-9);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bed.Border(u, M(0.6)));
        Assert.Equal("width", refused.ParamName);
        Assert.Contains("width was 0.6 m", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Bed.Border(Bed.Border(u, M(0.4)), M(0.2)));
    }

    [Fact]
    public void Keyhole_OfTheExample_IsTheRingLessTheWayIn()
    {
        Bed keyhole = Bed.Ring(M(2), M(0.5), M(0.45));
        // 2.94524 for the ring, less 0.446174 for the strip in the outer half circle, of which 0.094505 lie in the hole.
        Assert.Equal(2.94524 - (0.446174 - 0.094505), keyhole.Area.SquareMeters, 5e-6);
        Assert.True(keyhole.Perimeter > Bed.Ring(M(2), M(0.5), M(0)).Perimeter, "Both sides of the way in are longer than the arcs it takes away.");
    }

    [Fact]
    public void Ellipse_ThreeByTwo_HasThePerimeterOfTheExample() => Assert.Equal(7.932719795, Bed.Ellipse(M(3), M(2)).Perimeter.Meters, 1e-9);

    [Fact]
    public void FromOffsets_OfTheExample_IsWorkedByHand() => Assert.Equal(
        (0 + 4 * 1.1 + 2 * 1.6 + 4 * 1.2 + 0.4) / 3,
        Bed.FromOffsets([M(0), M(1.1), M(1.6), M(1.2), M(0.4)], M(1), OffsetRule.Simpson).Area.SquareMeters,
        1e-12);

    [Fact]
    public void Mound_OfTheExample_IsAsTheExampleSays()
    {
        Mound ridge = Mound.Rounded(M(1.2), M(0.4), M(5));
        Assert.Equal("rounded mound 1.2 m wide, 40 cm high, 5 m long, 1.73 m³", ridge.ToString());
        Assert.Equal(7.64, ridge.Surface.SquareMeters, 0.01);
    }

    [Fact]
    public void Equals_OneShapeInOtherUnits_IsOneShape()
    {
        (Length inches, Length centimetres) = (Length.FromInches(12), Length.FromCentimeters(30.48));
        Assert.Equal(Bed.Ellipse(inches, M(2)), Bed.Ellipse(centimetres, M(2)));
        Assert.Equal(Bed.Border(Bed.Circle(inches), inches), Bed.Border(Bed.Circle(centimetres), centimetres));
        Assert.NotEqual(Bed.Border(Bed.Circle(inches), inches), Bed.Border(Bed.Circle(centimetres), centimetres, BorderCorners.Round));
        Assert.Equal(Mound.FlatTopped(inches, inches, M(1), M(2)), Mound.FlatTopped(centimetres, centimetres, M(1), M(2)));
        Assert.Equal(Bed.FromOffsets([inches, M(1)], M(1)), Bed.FromOffsets([centimetres, M(1)], M(1)));
    }

    [Fact]
    public void ToString_EveryShape_IsOneHonestLine()
    {
        Assert.Equal("ellipse 3 m by 2 m, 4.71 m²", Bed.Ellipse(M(3), M(2)).ToString());
        Assert.Equal("trapezium with sides 3 m and 2 m, 1.2 m apart, 3 m²", Bed.Trapezium(M(3), M(2), M(1.2)).ToString());
        Assert.Equal("ring 2 m across with a hole of 50 cm, 2.95 m²", Bed.Ring(M(2), M(0.5), M(0)).ToString());
        Assert.Equal("ring 2 m across with a hole of 50 cm and an entrance 45 cm wide, 2.59 m²", Bed.Ring(M(2), M(0.5), M(0.45)).ToString());
        Assert.Equal("border 60 cm wide, sharp corners, round a rectangle 1.2 m by 4 m, 7.68 m²", Bed.Border(Bed.Rectangle(M(1.2), M(4)), M(0.6)).ToString());
        Assert.Equal("2 shapes side by side: circle 1 m across + rectangle 1 m by 1 m, 1.79 m²", Bed.Composite([Bed.Circle(M(1)), Bed.Rectangle(M(1), M(1))], M(0)).ToString());
        Assert.Equal("outline by 3 offsets, 1 m apart, trapezoid rule, 2 m²", Bed.FromOffsets([M(1), M(1), M(1)], M(1)).ToString());
        Assert.Equal("mound with a top of 60 cm, 1.2 m wide, 30 cm high, 4 m long, 1.08 m³", Mound.FlatTopped(M(1.2), M(0.6), M(0.3), M(4)).ToString());
        Assert.Equal("sloping bed 1.2 m by 4 m, 20 cm to 50 cm deep, 1.68 m³", new SlopingBed(M(1.2), M(4), M(0.2), M(0.5)).ToString());
        Assert.Equal("sloping bed 3.94 ft by 13.1 ft, 7.87 in to 19.7 in deep, 2.2 cu yd", new SlopingBed(M(1.2), M(4), M(0.2), M(0.5)).ToString("U", null));
    }

    [Fact]
    public void Json_EveryShape_RoundTripsWithItsKind()
    {
        (string Kind, Bed Bed)[] beds =
        [
            ("ellipse", Bed.Ellipse(Length.FromFeet(10), M(2.2))),
            ("trapezium", Bed.Trapezium(M(3), M(2), M(1.5))),
            ("trapezium", Bed.Trapezium(M(3), M(2), M(1.5), M(-0.3))),
            ("ring", Bed.Ring(M(2), M(0.5), M(0.4))),
            ("border", Bed.Border(Bed.Polygon(At(0, 0), At(2, 0), At(1, 2)), M(0.4), BorderCorners.Round)),
            ("composite", Bed.Composite([Bed.Circle(M(1)), Bed.Rectangle(M(1), M(2))], M(0.1))),
            ("offsets", Bed.FromOffsets([M(1), M(1.2), M(0.7)], M(0.5), OffsetRule.Simpson)),
        ];
        foreach ((string kind, Bed bed) in beds)
        {
            string json = JsonSerializer.Serialize(bed, HortiCalcJsonContext.Default.Bed);
            Assert.StartsWith($"{{\"kind\":\"{kind}\",", json, StringComparison.Ordinal);
            Assert.Equal(bed, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.Bed));
        }

        foreach (Mound mound in (Mound[])[Mound.Rounded(M(1.2), M(0.4), M(3)), Mound.FlatTopped(M(1.2), M(0.6), M(0.4), M(3))])
            Assert.Equal(mound, JsonSerializer.Deserialize(JsonSerializer.Serialize(mound, HortiCalcJsonContext.Default.Mound), HortiCalcJsonContext.Default.Mound));
        SlopingBed sloping = new(M(1.2), M(4), M(0.2), M(0.5));
        Assert.Equal(sloping, JsonSerializer.Deserialize(JsonSerializer.Serialize(sloping, HortiCalcJsonContext.Default.SlopingBed), HortiCalcJsonContext.Default.SlopingBed));
    }

    private static void Refused(string parameter, string message, Func<object> act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
