using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using HortiCalc.Json;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>Heaps, slices of circles, triangles by their height, and what published spans and materials say of themselves.</summary>
public class RoundShapeTests
{
    private static Length M(double metres) => Length.FromMeters(metres);

    // By slices across the height, which share no formula with the frustum.
    [Property]
    public bool Heap_Volume_IsTheSumOfItsSlices(PositiveInt foot, PositiveInt share, PositiveInt height)
    {
        Heap heap = Any(foot, share, height);
        const int slices = 2000;
        double sum = Enumerable.Range(0, slices)
            .Select(i => double.Lerp(heap.Diameter.Meters, heap.Top.Meters, (i + 0.5) / slices))
            .Sum(across => Math.PI / 4 * across * across) * heap.Height.Meters / slices;
        return Near(heap.Volume.CubicMeters, sum, 1e-6);
    }

    [Property]
    public bool Heap_ScaledByTwo_HoldsEightTimesAndCoversFourTimes(PositiveInt foot, PositiveInt share, PositiveInt height)
    {
        Heap heap = Any(foot, share, height);
        Heap twice = new(heap.Diameter * 2, heap.Top * 2, heap.Height * 2);
        return Near(twice.Volume.Liters, 8 * heap.Volume.Liters) && Near(twice.Surface.SquareMeters, 4 * heap.Surface.SquareMeters);
    }

    [Property]
    public bool Heap_LiesBetweenTheConeAndTheCylinder(PositiveInt foot, PositiveInt share, PositiveInt height)
    {
        Heap heap = Any(foot, share, height);
        double cylinder = heap.Ground.FillVolume(heap.Height).Liters;
        return heap.Volume.Liters >= cylinder / 3 * (1 - 1e-12) && heap.Volume.Liters <= cylinder * (1 + 1e-12)
            && heap.Surface > heap.Ground.Area;
    }

    [Property]
    public bool Sector_AndWhatItLeavesOfTheCircle_AddUp(PositiveInt radius, PositiveInt angle)
    {
        double degrees = 1 + angle.Get % 359;
        SectorBed slice = Bed.Sector(Side(radius), Angle.FromDegrees(degrees));
        SectorBed rest = Bed.Sector(Side(radius), Angle.FromDegrees(360 - degrees));
        CircleBed circle = Bed.Circle(Side(radius) * 2);
        return Near((slice.Area + rest.Area).SquareMeters, circle.Area.SquareMeters)
            && Near(slice.Perimeter.Meters + rest.Perimeter.Meters - 4 * Side(radius).Meters, circle.Perimeter.Meters);
    }

    // A many-sided polygon along the arc; its border by corners shares no formula with that of the slice.
    [Property]
    public bool Sector_AndItsBorders_AreThoseOfAManySidedPolygon(PositiveInt radius, PositiveInt angle)
    {
        double radians = (20 + angle.Get % 161) * Math.PI / 180;
        double r = Side(radius).Meters;
        const int pieces = 200;
        IEnumerable<(double X, double Y)> arc = Enumerable.Range(0, pieces + 1).Select(i => (r * Math.Cos(radians * i / pieces), r * Math.Sin(radians * i / pieces)));
        PolygonBed polygon = Polygon(arc.Prepend((0.0, 0.0)));
        SectorBed slice = Bed.Sector(M(r), Angle.FromRadians(radians));
        return Near(slice.Area.SquareMeters, polygon.Area.SquareMeters, 1e-3)
            && Near(slice.Perimeter.Meters, polygon.Perimeter.Meters, 1e-3)
            && Near(Bed.Border(slice, M(r / 5)).Area.SquareMeters, Bed.Border(polygon, M(r / 5)).Area.SquareMeters, 1e-3)
            && Near(Bed.Border(slice, M(r / 5), BorderCorners.Round).Area.SquareMeters, Bed.Border(polygon, M(r / 5), BorderCorners.Round).Area.SquareMeters, 1e-3);
    }

    [Property]
    public bool TriangleOverBase_HasHalfOfBaseTimesHeight_WhereverTheHeightStands(PositiveInt along, PositiveInt height, int foot)
    {
        // Side gives at least 5 cm of height to at most 14 m of base, so that the foot may stand up to two bases away.
        Length where = Side(along) * (foot % 200 / 100.0);
        double half = Side(along).Meters * Side(height).Meters / 2;
        return Near(Bed.TriangleOverBase(Side(along), Side(height), where).Area.SquareMeters, half, 1e-8)
            && Near(Bed.TriangleOverBase(Side(along), Side(height)).Area.SquareMeters, half, 1e-8);
    }

    [Property]
    public bool TriangleOverBase_HeightInTheMiddle_HasTheShortestOutline(PositiveInt along, PositiveInt height, int foot) =>
        Bed.TriangleOverBase(Side(along), Side(height)).Perimeter.Meters
        <= Bed.TriangleOverBase(Side(along), Side(height), Side(along) * (foot % 200 / 100.0)).Perimeter.Meters * (1 + 1e-12);

    [Fact]
    public void RoundShapes_OutOfRange_AreRefusedByName()
    {
        Refused("diameter", "diameter was 0 m", () => new Heap(M(0), M(0), M(1)));
        Refused("top", "top was 1.1 m; allowed: from 0 to 1 m", () => new Heap(M(1), M(1.1), M(1)));
        Refused("top", "top was -1 m", () => new Heap(M(1), M(-1), M(1)));
        Refused("height", "height was 0 m", () => new Heap(M(1), M(0), M(0)));
        Refused("radius", "radius was -1 m", () => Bed.Sector(M(-1), Angle.FromDegrees(90)));
        Refused("angle", "angle was 360 °; allowed: greater than 0°, less than 360°", () => Bed.Sector(M(1), Angle.FromDegrees(360)));
        Refused("angle", "angle was 0 °", () => Bed.Sector(M(1), Angle.FromDegrees(0)));
        Refused("baseSide", "baseSide was 0 m", () => Bed.TriangleOverBase(M(0), M(1)));
        Refused("height", "height was -1 m", () => Bed.TriangleOverBase(M(1), M(-1)));
        Refused("height", "height was 1E-06 m; allowed: 1E-05 m or more", () => Bed.TriangleOverBase(M(1), M(1e-6)));
        Refused("foot", "foot was 2000000 m", () => Bed.TriangleOverBase(M(1), M(1), M(2e6)));
    }

    [Fact]
    public void Border_RoundMoreThanHalfACircle_IsRefused()
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Bed.Border(Bed.Sector(M(1), Angle.FromDegrees(181)), M(0.2)));
        Assert.Equal("inside", refused.ParamName);
    }

    [Fact]
    public void ToString_RoundShapes_AreOneHonestLine()
    {
        Assert.Equal("heap 1 m across, 30 cm high, flat top of 40 cm, 123 L", new Heap(M(1), M(0.4), M(0.3)).ToString());
        Assert.Equal("heap 12 ft across, 4 ft high, pointed, 5.59 cu yd", new Heap(Length.FromFeet(12), M(0), Length.FromFeet(4)).ToString("U", null));
        Assert.Equal("slice of a circle, 180° at a radius of 1.5 m, 3.53 m²", Bed.Sector(M(1.5), Angle.FromDegrees(180)).ToString());
        Assert.Equal("triangle with sides 6 m, 5 m and 5 m, 12 m²", Bed.TriangleOverBase(M(6), M(4)).ToString());
    }

    [Fact]
    public void Json_RoundShapes_RoundTrip()
    {
        Heap heap = new(M(1), M(0.4), M(0.3));
        Assert.Equal(heap, JsonSerializer.Deserialize(JsonSerializer.Serialize(heap, HortiCalcJsonContext.Default.Heap), HortiCalcJsonContext.Default.Heap));
        Bed slice = Bed.Sector(M(1.5), Angle.FromDegrees(60));
        string json = JsonSerializer.Serialize(slice, HortiCalcJsonContext.Default.Bed);
        Assert.StartsWith("{\"kind\":\"sector\",", json, StringComparison.Ordinal);
        Assert.Equal(slice, JsonSerializer.Deserialize(json, HortiCalcJsonContext.Default.Bed));
    }

    [Fact]
    public void ToString_OfPublishedFigures_SaysOneFigureOnceAndWhatItIsOf()
    {
        NitrogenShare manure = NitrogenShares.Published[0];
        Assert.StartsWith("manure: 16 % of the organic nitrogen in 84 days [", manure.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("municipal compost: 13 % to 23 % of the total nitrogen in 1,092 days to 1,456 days [", NitrogenShares.Published[^1].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("new lawns: 2.54 cm to 5.08 cm, worked in to 12.7 cm to 17.8 cm [", LayerAdvices.Published.Single(advice => advice.Use == "new lawns").ToString(), StringComparison.Ordinal);
        Assert.StartsWith("existing vegetable or flower beds: 5.08 cm to 10.2 cm [", LayerAdvices.Published.Single(advice => advice.Use == "existing vegetable or flower beds").ToString(), StringComparison.Ordinal);
        Assert.StartsWith("saline soil: 4 dS/m [", SaltLimits.Published[2].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("soil, compost and bark: 10 % bought on top [", SettlingRanges.Published[0].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("organic container mix: 0 % to 40 % of the volume lost in 731 days [", SettlingRanges.Published[4].ToString(), StringComparison.Ordinal);
        Assert.Contains("phosphorus 0.5 % by mass to 1.5 % by mass", CompostNutrients.Published[2].ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(BulkMaterial.Peat)]
    [InlineData(BulkMaterial.Coir)]
    [InlineData(BulkMaterial.GreenWaste)]
    [InlineData(BulkMaterial.Mulch)]
    public void DustyMaterials_BoughtOrLaid_WarnOfDustAlike(BulkMaterial material)
    {
        Assert.Contains(BedCautions.Dust, BulkDensities.For(material)[0].ToEstimate().Cautions);
        LayeredBed bed = new(
            Bed.Circle(M(2)), M(0.3), M(0), [new BedLayer("layer", material, AmendmentLayer.LooseOnTop(M(0.1), Ratio.Zero))], BedEdging.None);
        Assert.Equal([BedCautions.Dust], bed.Cautions);
    }

    [Fact]
    public void ToString_BedFilledToItsRim_SaysSo()
    {
        BedLayer layer = new("soil", BulkMaterial.Soil, AmendmentLayer.LooseOnTop(M(0.3), Ratio.Zero));
        Assert.Equal("circle 2 m across with 1 layer, 30 cm high, level with the rim", new LayeredBed(Bed.Circle(M(2)), M(0.3), M(0), [layer], BedEdging.None).ToString());
    }

    private static Heap Any(PositiveInt foot, PositiveInt share, PositiveInt height) =>
        new(Side(foot), Side(foot) * (share.Get % 101 / 100.0), Side(height));

    private static void Refused(string parameter, string message, Func<object> act)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Equal(parameter, refused.ParamName);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
