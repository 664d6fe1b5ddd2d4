using System.Globalization;
using System.Text.Json;
using HortiCalc.Beds;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Beds;

/// <summary>What beds refuse, and how they show and store themselves.</summary>
public class BedEdges
{
    private static Length M(double metres) => Length.FromMeters(metres);

    private static BedCorner At(double x, double y) => new(M(x), M(y));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(2_000_000)]
    public void Rectangle_SideOutOfRange_IsRefusedWithNameValueAndRange(double metres)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Rectangle(M(metres), M(2)));
        Assert.Equal("width", refused.ParamName);
        Assert.Contains($"width was {metres} m", refused.Message, StringComparison.Ordinal);
        Assert.Contains("greater than 0 m, up to 1000000 m", refused.Message, StringComparison.Ordinal);
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Rectangle(M(2), M(metres))).ParamName);
        Assert.Equal("diameter", Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Circle(M(metres))).ParamName);
    }

    // UnitsNet refuses these itself when the quantity is made.
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Circle_NotANumber_CannotBeMade(double metres) =>
        Assert.ThrowsAny<ArgumentException>(() => Bed.Circle(M(metres)));

    [Fact]
    public void Circle_BeyondAnyGarden_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Circle(Length.FromFeet(1e308)));
        Assert.Equal("diameter", refused.ParamName);
    }

    [Theory]
    [InlineData(5, 2, 2, "a")]
    [InlineData(2, 5, 2, "b")]
    [InlineData(2, 2, 5, "c")]
    [InlineData(1, 1, 2, "c")]
    [InlineData(0.1, 0.2, 0.3, "c")]
    public void Triangle_SidesThatDoNotClose_AreRefused(double a, double b, double c, string parameter)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Triangle(M(a), M(b), M(c)));
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains("shorter than the other two sides together", refused.Message, StringComparison.Ordinal);
    }

    // A needle on which the usual form of Heron's formula loses every digit; exact by W. Kahan's rearrangement in rational arithmetic.
    [Fact]
    public void Triangle_ANeedle_KeepsItsDigits()
    {
        double area = Bed.Triangle(M(100_000), M(99_999.99979), M(0.00029)).Area.SquareMeters;
        Assert.Equal(9.999999990, area, 1e-7);
    }

    [Fact]
    public void Triangle_ThreeFourFive_IsSix() => Assert.Equal(6, Bed.Triangle(M(3), M(4), M(5)).Area.SquareMeters, 1e-12);

    [Theory]
    [InlineData(2, 1, "cutoutWidth", "the side it is cut from, 2 m")]
    [InlineData(1, 3, "cutoutLength", "the side it is cut from, 3 m")]
    [InlineData(0, 1, "cutoutWidth", "greater than 0 m")]
    public void LShape_CutoutThatReachesAcross_IsRefused(double cutoutWidth, double cutoutLength, string parameter, string range)
    {
        ArgumentOutOfRangeException refused =
            Assert.Throws<ArgumentOutOfRangeException>(() => Bed.LShape(M(2), M(3), M(cutoutWidth), M(cutoutLength)));
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(range, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Polygon_FewerThanThreeCorners_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Polygon(At(0, 0), At(1, 0)));
        Assert.Equal("corners", refused.ParamName);
        Assert.Contains("corners was 2; allowed: 3 or more", refused.Message, StringComparison.Ordinal);
        Assert.Equal("corners", Assert.Throws<ArgumentNullException>(() => Bed.Polygon(null!)).ParamName);
    }

    [Fact]
    public void Polygon_WithTheFirstCornerRepeated_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bed.Polygon(At(0, 0), At(2, 0), At(2, 2), At(0, 0)));
        Assert.Equal("corners", refused.ParamName);
        Assert.Contains("corners 1 and 4 are the same point, (0 m, 0 m)", refused.Message, StringComparison.Ordinal);
    }

    public static TheoryData<double[]> Crossed() => new()
    {
        new double[] { 0, 0, 2, 2, 2, 0, 0, 2 }, // a bow tie
        new double[] { 0, 0, 4, 0, 4, 2, 2, 0, 0, 2 }, // a corner that touches the first side
        new double[] { 0, 0, 4, 0, 2, 0 }, // all on one line
        new double[] { 0, 0, 4, 0, 4, 2, 4, -1 }, // a spike that runs back along its own side
        new double[] { 0, 0, 3, 0, 3, 3, 1, 1, 3, 1, 0, 3 }, // crosses twice
    };

    [Theory]
    [MemberData(nameof(Crossed))]
    public void Polygon_ThatMeetsItself_IsRefusedWithTheSides(double[] metres)
    {
        BedCorner[] corners = [.. metres.Chunk(2).Select(pair => At(pair[0], pair[1]))];
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bed.Polygon(corners));
        Assert.Equal("corners", refused.ParamName);
        Assert.Contains("crosses or touches the side from (", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Polygon_OfTheExample_IsSevenAndAHalf() =>
        Assert.Equal(7.5, Bed.Polygon(At(0, 0), At(4, 0), At(4, 1), At(1, 3)).Area.SquareMeters, 1e-12);

    [Fact]
    public void Polygon_Concave_IsTakenAsDrawn() =>
        Assert.Equal(3, Bed.Polygon(At(0, 0), At(2, 0), At(2, 2), At(1, 1), At(0, 2)).Area.SquareMeters, 1e-12);

    [Fact]
    public void Polygon_LaterChangeOfTheArray_DoesNotShow()
    {
        BedCorner[] corners = [At(0, 0), At(2, 0), At(2, 2)];
        PolygonBed bed = Bed.Polygon(corners);
        corners[2] = At(9, 9);
        Assert.Equal(At(2, 2), bed.Corners[2]);
        Assert.Equal(bed, Bed.Polygon(At(0, 0), At(2, 0), At(2, 2)));
    }

    [Fact]
    public void FillVolume_NoDepth_IsNothing() => Assert.Equal(0, Bed.Rectangle(M(1), M(2)).FillVolume(Length.Zero).Liters);

    [Fact]
    public void FillVolume_NegativeDepth_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Circle(M(1)).FillVolume(M(-0.1)));
        Assert.Equal("depth", refused.ParamName);
        Assert.Contains("depth was -0.1 m; allowed: from 0 to 1000000 m", refused.Message, StringComparison.Ordinal);
    }

    // In binary fractions 6 inches are 0.15239999999999998 m; 7 % is 7.000000000000001 % by way of 0.07.
    [Fact]
    public void Equals_OneSizeInOtherUnits_IsOneBed()
    {
        Length inches = Length.FromInches(6);
        Length centimetres = Length.FromCentimeters(15.24);
        Assert.Equal(Bed.Circle(centimetres), Bed.Circle(inches));
        Assert.Equal(Bed.Rectangle(centimetres, M(2)), Bed.Rectangle(inches, Length.FromCentimeters(200)));
        Assert.Equal(Bed.Triangle(centimetres, centimetres, centimetres), Bed.Triangle(inches, inches, inches));
        Assert.Equal(Bed.LShape(M(1), M(1), centimetres, centimetres), Bed.LShape(M(1), M(1), inches, inches));
        Assert.Equal(new BedCorner(centimetres, centimetres), new BedCorner(inches, inches));
        Assert.Equal(
            AmendmentLayer.LooseOnTop(centimetres, Ratio.FromPercent(7)), AmendmentLayer.LooseOnTop(inches, Ratio.FromDecimalFractions(0.07)));
    }

    [Fact]
    public void BedCorner_ToString_IsThePlace() => Assert.Equal("(4 m, -1.5 m)", At(4, -1.5).ToString());

    [Fact]
    public void ToString_EveryShape_IsOneHonestLine()
    {
        Assert.Equal("rectangle 1.2 m by 4 m, 4.8 m²", Bed.Rectangle(M(1.2), M(4)).ToString());
        Assert.Equal("circle 2 m across, 3.14 m²", Bed.Circle(M(2)).ToString());
        Assert.Equal("triangle with sides 3 m, 4 m and 5 m, 6 m²", Bed.Triangle(M(3), M(4), M(5)).ToString());
        Assert.Equal("L 2 m by 3 m without 1 m by 1 m, 5 m²", Bed.LShape(M(2), M(3), M(1), M(1)).ToString());
        Assert.Equal("polygon with 3 corners, 2 m²", Bed.Polygon(At(0, 0), At(2, 0), At(2, 2)).ToString());
        Assert.Equal("rectangle 4 ft by 8 ft, 32 sq ft", Bed.Rectangle(Length.FromFeet(4), Length.FromFeet(8)).ToString("U", null));
        Assert.Throws<FormatException>(() => Bed.Circle(M(1)).ToString("X", null));
    }

    [Fact]
    public void ToString_WhereTheCommaIsTheDecimalSeparator_StaysInvariantUnlessAsked()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("rectangle 1.2 m by 4 m, 4.8 m²", Bed.Rectangle(M(1.2), M(4)).ToString());
            Assert.Equal("rectangle 1,2 m by 4 m, 4,8 m²", Bed.Rectangle(M(1.2), M(4)).ToString("M", CultureInfo.CurrentCulture));
            ArgumentException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Bed.Rectangle(M(-1.5), M(4)));
            Assert.Contains("-1.5 m", refused.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Json_EveryShape_RoundTripsWithItsKind()
    {
        (string Kind, Bed Bed)[] beds =
        [
            ("rectangle", Bed.Rectangle(Length.FromFeet(4), M(4.1))),
            ("circle", Bed.Circle(M(1.7))),
            ("triangle", Bed.Triangle(M(3), M(4), M(5.5))),
            ("l-shape", Bed.LShape(M(2), M(3), M(1), M(0.3))),
            ("polygon", Bed.Polygon(At(0, 0), At(2.2, 0), At(2, -1.5))),
        ];
        foreach ((string kind, Bed bed) in beds)
        {
            string json = JsonSerializer.Serialize(bed, HortiCalcJsonContext.Default.Bed);
            Assert.StartsWith($"{{\"kind\":\"{kind}\",", json, StringComparison.Ordinal);
            Assert.DoesNotContain("area", json, StringComparison.Ordinal);
            Bed? read = JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.Bed);
            Assert.Equal(bed, read);
            Assert.Equal(bed.Area, read!.Area);
        }
    }

    [Fact]
    public void Json_UnknownKind_IsRefused() => Assert.Throws<JsonException>(() =>
        JsonSerializer.Deserialize("{\"kind\":\"heart\",\"diameter\":{\"value\":1,\"unit\":\"m\"}}", HortiCalcJsonContext.Default.Bed));
}
