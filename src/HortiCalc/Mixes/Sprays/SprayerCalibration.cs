using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much a sprayer really puts on an area, by the published field methods, with plain water.</summary>
/// <remarks>
/// Strip: spray a measured area, measure what it took. 1/128 acre: fluid ounces caught in the time of the course are gallons an acre. Nozzle: flow,
/// speed and width. Boom: what one nozzle gives over a distance. All are exact arithmetic; tree rows by their size, and a nozzle at another
/// pressure, are rules.
/// </remarks>
/// <example><code>
/// Length course = SprayerCalibration.CourseFor128thAcre(Length.FromFeet(6));   // 56.7 ft
/// VolumeRate rate = SprayerCalibration.From128thAcre(Volume.FromUsOunces(7.5));   // 7.5 gal/acre
/// </code></example>
public static class SprayerCalibration
{
    private const double SquareMetresPer128thAcre = Boundary.SquareMetresPerAcre / 128;
    private const double GallonsPerAcreNursery = 10;
    private const double GallonsPerAcreOrchard = 40;
    private const double GallonsPerThousandCubicFeetWellPruned = 0.7;
    private const double GallonsPerThousandCubicFeetDense = 1;
    private const double ThousandSquareFeetPerAcre = 43.56;

    private static readonly Method TreeRows = new(
        "tree-row-volume", "spray volume by the size of the trees", SpraySources.TreeRowVolume, new Domain("rows in full leaf, the sprayer well adjusted"));

    private static readonly Method TreeRowFoliage = new(
        "tree-row-volume.by-foliage",
        "spray volume by the volume of the rows",
        SpraySources.CornellTreeRowVolume,
        new Domain("orchard rows in full leaf, sprayed dilute"));

    private static readonly Method SquareRoot = new(
        "nozzle-flow.by-pressure",
        "flow with the square root of pressure",
        SpraySources.NozzlesAndPumps,
        new Domain("one nozzle, sprayed with water, at pressures that its maker allows"));

    /// <summary>The rate from water sprayed on a measured strip.</summary>
    /// <param name="sprayed">The water that the strip took; 0 or more.</param>
    /// <param name="length">The length of the strip; more than 0.</param>
    /// <param name="width">The width that is sprayed; more than 0.</param>
    /// <returns>The rate. On 10 m of 1 m, each litre is 10 L on 100 m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static VolumeRate FromStrip(Volume sprayed, Length length, Length width)
    {
        double metres = Guard.Positive(Boundary.Metres(length), "m", nameof(length));
        return VolumeRate.Of(sprayed, Area.FromSquareMeters(metres * Guard.Positive(Boundary.Metres(width), "m", nameof(width))));
    }

    /// <summary>How long the course of 1/128 acre is for a width.</summary>
    /// <param name="width">The spacing of the nozzles, or the width of the band or swath; more than 0.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is not above 0.</exception>
    public static Length CourseFor128thAcre(Length width) =>
        Length.FromMeters(SquareMetresPer128thAcre / Guard.Positive(Boundary.Metres(width), "m", nameof(width)));

    /// <summary>The rate from what is caught in the time that the course of 1/128 acre takes.</summary>
    /// <param name="caught">What the nozzle, or all nozzles of the width, gave in that time; 0 or more.</param>
    /// <returns>The rate: as many US gallons an acre as US fluid ounces were caught.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or not finite.</exception>
    public static VolumeRate From128thAcre(Volume caught) => VolumeRate.Of(caught, Area.FromSquareMeters(SquareMetresPer128thAcre));

    /// <summary>The rate from the flow of a nozzle or sprayer.</summary>
    /// <param name="flow">The flow of all nozzles within the width; 0 or more.</param>
    /// <param name="speed">The speed over the ground; more than 0.</param>
    /// <param name="width">The spacing of the nozzles for one, the swath for all; more than 0.</param>
    /// <returns>The rate: in US units 5,940 × gal/min over mph × inches, in metric 600 × L/min over m × km/h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static VolumeRate FromFlow(VolumeFlow flow, Speed speed, Length width)
    {
        double litresPerMinute = Guard.NotNegative(Boundary.LitresPerMinute(flow), "L/min", nameof(flow));
        return VolumeRate.FromLitresPerHectare(litresPerMinute / (60 * SquareMetresPerSecond(speed, width)) * 10_000);
    }

    /// <summary>The flow that a rate takes at a speed and width.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="speed">The speed over the ground; more than 0.</param>
    /// <param name="width">The spacing of the nozzles for one, the swath for all; more than 0.</param>
    /// <returns>The flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static VolumeFlow FlowFor(VolumeRate rate, Speed speed, Length width) =>
        VolumeFlow.FromLitersPerMinute(rate.LitresPerHectare / 10_000 * 60 * SquareMetresPerSecond(speed, width));

    /// <summary>The rate from what one nozzle of a boom gives over a distance.</summary>
    /// <param name="caught">What one nozzle gave in the time of the distance; 0 or more.</param>
    /// <param name="distance">The distance; more than 0.</param>
    /// <param name="spacing">The spacing of the nozzles, or the width of the band; more than 0.</param>
    /// <returns>The rate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static VolumeRate FromBoom(Volume caught, Length distance, Length spacing)
    {
        double metres = Guard.Positive(Boundary.Metres(distance), "m", nameof(distance));
        return VolumeRate.Of(caught, Area.FromSquareMeters(metres * Guard.Positive(Boundary.Metres(spacing), "m", nameof(spacing))));
    }

    /// <summary>The speed over a measured distance.</summary>
    /// <param name="distance">The distance; more than 0.</param>
    /// <param name="time">The time it took; more than 0.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Speed SpeedOver(Length distance, Duration time)
    {
        double metres = Guard.Positive(Boundary.Metres(distance), "m", nameof(distance));
        return Speed.FromMetersPerSecond(metres / (Guard.Positive(Boundary.Days(time) * 86_400, "s", nameof(time))));
    }

    /// <summary>The time that a distance takes at a speed.</summary>
    /// <param name="distance">The distance; more than 0.</param>
    /// <param name="speed">The speed; more than 0.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Duration TimeOver(Length distance, Speed speed)
    {
        double metres = Guard.Positive(Boundary.Metres(distance), "m", nameof(distance));
        return Duration.FromSeconds(metres / Guard.Positive(Boundary.MetresPerSecond(speed), "m/s", nameof(speed)));
    }

    /// <summary>The flow of a nozzle at another pressure: four times the pressure for twice the flow.</summary>
    /// <param name="flow">The flow that was measured or stands in the chart; 0 or more.</param>
    /// <param name="pressure">The pressure of that flow; more than 0.</param>
    /// <param name="other">The other pressure; more than 0.</param>
    /// <returns>The flow times the root of the ratio of pressures. Measure it: a worn nozzle gives more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    /// <example><code>
    /// Estimate&lt;VolumeFlow&gt; flow = SprayerCalibration.FlowAtPressure(
    ///     VolumeFlow.FromLitersPerMinute(1.2), Pressure.FromBars(3), Pressure.FromBars(2));   // 0.98 L/min
    /// </code></example>
    public static Estimate<VolumeFlow> FlowAtPressure(VolumeFlow flow, Pressure pressure, Pressure other)
    {
        double litresPerMinute = Guard.NotNegative(Boundary.LitresPerMinute(flow), "L/min", nameof(flow));
        double from = Guard.Positive(Boundary.Kilopascals(pressure), "kPa", nameof(pressure));
        double to = Guard.Positive(Boundary.Kilopascals(other), "kPa", nameof(other));
        return new Estimate<VolumeFlow>(
            VolumeFlow.FromLitersPerMinute(litresPerMinute * Math.Sqrt(to / from)), SquareRoot, cautions: [MixCautions.LabelDecides]);
    }

    /// <summary>The pressure at which a nozzle gives another flow; the inverse of <see cref="FlowAtPressure"/>.</summary>
    /// <param name="flow">The flow that was measured or stands in the chart; more than 0.</param>
    /// <param name="pressure">The pressure of that flow; more than 0.</param>
    /// <param name="other">The other flow; more than 0.</param>
    /// <returns>The pressure times the square of the ratio of flows. Outside what the maker allows, change the nozzle or the speed instead.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Estimate<Pressure> PressureForFlow(VolumeFlow flow, Pressure pressure, VolumeFlow other)
    {
        double from = Guard.Positive(Boundary.LitresPerMinute(flow), "L/min", nameof(flow));
        double kilopascals = Guard.Positive(Boundary.Kilopascals(pressure), "kPa", nameof(pressure));
        double ratio = Guard.Positive(Boundary.LitresPerMinute(other), "L/min", nameof(other)) / from;
        return new Estimate<Pressure>(Pressure.FromKilopascals(kilopascals * ratio * ratio), SquareRoot, cautions: [MixCautions.LabelDecides]);
    }

    /// <summary>The volume that the foliage of rows of trees takes up on an area: width by height by the length of the rows.</summary>
    /// <param name="area">The area; 0 or more.</param>
    /// <param name="width">The width of the trees across the row; more than 0.</param>
    /// <param name="height">The height of their foliage, a bare stem left out; more than 0.</param>
    /// <param name="rowSpacing">The distance between rows; more than 0.</param>
    /// <returns>The tree row volume: each row is taken as one hedge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    /// <example><code>
    /// Volume foliage = SprayerCalibration.TreeRowVolume(
    ///     Area.FromHectares(1), Length.FromMeters(1.5), Length.FromMeters(3), rowSpacing: Length.FromMeters(4));   // 11,250 m³
    /// </code></example>
    public static Volume TreeRowVolume(Area area, Length width, Length height, Length rowSpacing)
    {
        double squareMetres = Guard.NotNegative(Boundary.SquareMetres(area), "m²", nameof(area));
        double widthMetres = Guard.Positive(Boundary.Metres(width), "m", nameof(width));
        double heightMetres = Guard.Positive(Boundary.Metres(height), "m", nameof(height));
        return Volume.FromCubicMeters(
            widthMetres * heightMetres * squareMetres / Guard.Positive(Boundary.Metres(rowSpacing), "m", nameof(rowSpacing)));
    }

    /// <summary>The spray volume for rows of trees by their size.</summary>
    /// <param name="width">The width of the trees across the row; more than 0.</param>
    /// <param name="height">The height of their foliage, a bare stem left out; more than 0.</param>
    /// <param name="rowSpacing">The distance between rows; more than 0.</param>
    /// <param name="rule">The rule. They differ by four times: nursery rows take 10, orchards 30 to 44 gal/acre for the same size.</param>
    /// <returns>
    /// For nursery and orchard, 10 or 40 times width by height over spacing in feet, as US gallons an acre; by foliage, 0.7 or 1 US gallon on
    /// 1,000 cubic feet of <see cref="TreeRowVolume"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is not above 0, or the rule is not one of the defined ones.</exception>
    public static Estimate<VolumeRate> ForTreeRows(Length width, Length height, Length rowSpacing, TreeRowRule rule)
    {
        double widthFeet = Guard.Positive(Boundary.Metres(width), "m", nameof(width)) / Boundary.MetresPerFoot;
        double heightFeet = Guard.Positive(Boundary.Metres(height), "m", nameof(height)) / Boundary.MetresPerFoot;
        double spacingFeet = Guard.Positive(Boundary.Metres(rowSpacing), "m", nameof(rowSpacing)) / Boundary.MetresPerFoot;
        (Method method, double gallonsPerAcre) = Guard.Defined(rule) switch
        {
            TreeRowRule.Nursery => (TreeRows, GallonsPerAcreNursery),
            TreeRowRule.Orchard => (TreeRows, GallonsPerAcreOrchard),
            TreeRowRule.WellPrunedOrchard => (TreeRowFoliage, GallonsPerThousandCubicFeetWellPruned * ThousandSquareFeetPerAcre),
            _ => (TreeRowFoliage, GallonsPerThousandCubicFeetDense * ThousandSquareFeetPerAcre),
        };
        return new Estimate<VolumeRate>(
            VolumeRate.FromUsGallonsPerAcre(gallonsPerAcre * widthFeet * heightFeet / spacingFeet), method, cautions: [MixCautions.LabelDecides]);
    }

    private static double SquareMetresPerSecond(Speed speed, Length width) =>
        Guard.Positive(Boundary.MetresPerSecond(speed), "m/s", nameof(speed)) * Guard.Positive(Boundary.Metres(width), "m", nameof(width));
}
