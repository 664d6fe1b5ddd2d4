using System.Globalization;
using HortiCalc.Beds;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Pictures;

/// <summary>Writes docs/images/bed-plan.svg: three beds in plan with the path round one of them, and the layers of one in section.</summary>
public static class BedPlanPicture
{
    private const double PixelsPerMetre = 74;
    private const double SectionPixelsPerCentimetre = 7;

    private const string Style = """
        .soil { fill: #8a6a4f; stroke: #5f4733 }
        .old { fill: #7d7466; stroke: #5f4733 }
        .compost { fill: #4a3b30; stroke: #33271e }
        .path { fill: #e9dfc9; stroke: #cbbd9c }
        .ground { fill: #f1efe6; stroke: #dcd8cf }
        .rim { fill: #d8b98a; stroke: #8d7343 }
        .name { font-size: 15px; font-weight: 600 }
        .on-dark { fill: #fcfbf8; font-size: 13px; font-weight: 600 }
        .measure { fill: none; stroke: #5a6670; stroke-width: 1 }
        """;

    public static string FilePath { get; } = Looks.FileOf("bed-plan.svg");

    /// <summary>The bed that is shown in section too: invented, as the other two.</summary>
    public static LayeredBed Kitchen { get; } = new(
        Bed.Rectangle(Length.FromMeters(1.2), Length.FromMeters(3)),
        rim: Length.FromCentimeters(30),
        existing: Length.FromCentimeters(12),
        [
            new BedLayer("topsoil", BulkMaterial.Soil, AmendmentLayer.LooseOnTop(Length.FromCentimeters(12), Ratio.FromPercent(10))),
            new BedLayer("compost", BulkMaterial.Compost, AmendmentLayer.LooseOnTop(Length.FromCentimeters(5), Ratio.FromPercent(10))),
        ],
        BedEdging.Timber);

    public static BorderBed Path { get; } = Bed.Border(Kitchen.Ground, Length.FromCentimeters(60));

    public static RingBed Keyhole { get; } = Bed.Ring(Length.FromMeters(2), Length.FromMeters(0.5), Length.FromMeters(0.45));

    public static EllipseBed Oval { get; } = Bed.Ellipse(Length.FromMeters(2.4), Length.FromMeters(1.4));

    public static string Write()
    {
        Svg svg = Looks.Begin(
            "Three beds: what to buy",
            "Left in plan, to scale; right the kitchen bed in section, its depth ten times enlarged. INVENTED beds.",
            $"In plan: a rectangular bed of {Show(Kitchen.Ground.Area)} with a path of {Show(Path.Area)} round it, a keyhole bed of {Show(Keyhole.Area)}"
            + $" and an oval bed of {Show(Oval.Area)}. In section the rectangular bed: {Show(Kitchen.Existing)} of old fill,"
            + $" {string.Join(", ", Kitchen.Layers.Select(layer => $"{Show(layer.Layer.LooseDepth)} of {layer.Name}"))}, {Show(Kitchen.BelowRim)} left below the rim.",
            Style);
        Plan(svg);
        Section(svg);
        svg.Text(36, Looks.Height - 22, "Volumes with a tenth more for settling. The edging of the keyhole bed is both its circles and the two sides of the way in.", "lead");
        return svg.Finish();
    }

    private static void Plan(Svg svg)
    {
        double left = 40;
        double top = 104;
        double border = Path.Width.Meters * PixelsPerMetre;
        double width = 1.2 * PixelsPerMetre;
        double length = 3 * PixelsPerMetre;

        svg.Begin($"path round the kitchen bed: {Show(Path.Area)}");
        svg.Rectangle(left, top, width + 2 * border, length + 2 * border, "path");
        svg.Text(left + border + width / 2, top + 28, $"path {Show(Path.Area)}", "tick", "middle");
        svg.End();
        svg.Begin($"kitchen bed: {Show(Kitchen.Ground.Area)}, edging {Show(Kitchen.Ground.Perimeter)}");
        svg.Rectangle(left + border, top + border, width, length, "compost");
        svg.Text(left + border + width / 2, top + border + length / 2 - 10, "kitchen bed", "on-dark", "middle");
        svg.Text(left + border + width / 2, top + border + length / 2 + 10, Show(Kitchen.Ground.Area), "on-dark", "middle");
        svg.End();

        double middleX = 352;
        svg.Begin($"keyhole bed: {Show(Keyhole.Area)}, edging {Show(Keyhole.Perimeter)}");
        svg.Path(KeyholePath(middleX, 196), "soil");
        svg.Text(middleX, 162, Show(Keyhole.Area), "on-dark", "middle");
        svg.Text(middleX, 290, "keyhole bed", "name", "middle");
        svg.Text(middleX, 309, $"edging {Show(Keyhole.Perimeter)}", "tick", "middle");
        svg.End();

        svg.Begin($"oval bed: {Show(Oval.Area)}, edging {Show(Oval.Perimeter)}");
        svg.Path(Outline(Enumerable.Range(0, 96).Select(i => i * 2 * Math.PI / 96).Select(angle => (
            middleX + Oval.Length.Meters / 2 * PixelsPerMetre * Math.Cos(angle), 392 + Oval.Width.Meters / 2 * PixelsPerMetre * Math.Sin(angle)))), "soil");
        svg.Text(middleX, 397, Show(Oval.Area), "on-dark", "middle");
        svg.Text(middleX, 466, "oval bed", "name", "middle");
        svg.Text(middleX, 485, $"edging {Show(Oval.Perimeter)}", "tick", "middle");
        svg.End();

        svg.Begin("scale: one metre");
        svg.Stroke(left, 498, left + PixelsPerMetre, 498, "measure");
        svg.Text(left + PixelsPerMetre + 8, 503, "1 m", "tick");
        svg.End();
    }

    private static void Section(Svg svg)
    {
        const double left = 500;
        const double width = 210; // 3 m: the depth is ten times enlarged
        const double ground = 440;
        double rim = Kitchen.Rim.Centimeters * SectionPixelsPerCentimetre;
        svg.Begin($"rim {Show(Kitchen.Rim)} above the ground");
        svg.Rectangle(left - 12, ground - rim, 12, rim, "rim");
        svg.Rectangle(left + width, ground - rim, 12, rim, "rim");
        svg.Rectangle(left - 30, ground, width + 60, 22, "ground");
        svg.Text(left + width / 2, ground - rim - 14, $"kitchen bed, {Show(Kitchen.BelowRim)} below the rim", "name", "middle");
        svg.End();

        double bottom = ground;
        bottom = Layer(svg, "old fill", Kitchen.Existing, "there already", "old", bottom);
        foreach ((BedLayer layer, Volume toBuy) in Kitchen.Layers.Zip(Kitchen.ToBuy))
            bottom = Layer(svg, layer.Name, layer.Layer.LooseDepth, $"buy {Show(toBuy)}", layer.Material == BulkMaterial.Compost ? "compost" : "soil", bottom);

        double Layer(Svg picture, string name, Length depth, string what, string look, double from)
        {
            double height = depth.Centimeters * SectionPixelsPerCentimetre;
            picture.Begin($"{name}: {Show(depth)}, {what}");
            picture.Rectangle(left, from - height, width, height, look);
            picture.Text(left + width / 2, from - height / 2 + 5, $"{name}, {Show(depth)}", "on-dark", "middle");
            picture.Text(left + width + 24, from - height / 2 + 5, what, "name");
            picture.End();
            return from - height;
        }
    }

    private static string KeyholePath(double middleX, double middleY)
    {
        double half = Keyhole.Entrance.Meters / 2;
        IEnumerable<(double X, double Y)> Arc(double radius)
        {
            double from = Math.Asin(half / radius);
            return Enumerable.Range(0, 97)
                .Select(i => double.Lerp(from, 2 * Math.PI - from, i / 96.0))
                .Select(angle => (middleX + radius * PixelsPerMetre * Math.Sin(angle), middleY + radius * PixelsPerMetre * Math.Cos(angle)));
        }

        return Outline(Arc(Keyhole.OuterDiameter.Meters / 2).Concat(Arc(Keyhole.InnerDiameter.Meters / 2).Reverse()));
    }

    private static string Outline(IEnumerable<(double X, double Y)> points) =>
        "M" + string.Join("L", points.Select(point => $"{Svg.Number(point.X)} {Svg.Number(point.Y)}")) + "Z";

    private static string Show(IQuantity quantity) => QuantityText.Format(quantity, MeasurementSystem.Metric, CultureInfo.InvariantCulture);
}
