using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a nozzle gives at another pressure, and how its chart for water is read for a heavier liquid.</summary>
/// <remarks>
/// The flow goes with the square root of the pressure, so that four times the pressure doubles it, and with one over the square root of the
/// density. A pressure outside what the nozzle is made for spoils its drops and drifts; small changes of the rate are better made by speed.
/// </remarks>
/// <example><code>
/// Estimate&lt;VolumeFlow&gt; flow = SprayNozzle.FlowAt(
///     Pressure.FromPoundsForcePerSquareInch(30), VolumeFlow.FromUsGallonsPerMinute(0.40), Pressure.FromPoundsForcePerSquareInch(40));   // 0.35
/// </code></example>
public static class SprayNozzle
{
    // 8.34 lb/gal, as the source has it.
    private const double WaterKilogramsPerCubicMetre = 8.34 * 0.45359237 / Boundary.LitresPerUsGallon * 1000;

    private static readonly Method ByPressure = new(
        "nozzle.pressure", "flow by the square root of the pressure", SpraySources.NozzlePressure, new Domain("one nozzle, unworn, at pressures it is made for"));

    private static readonly Method ByDensity = new(
        "nozzle.density",
        "flow of water by the square root of the density",
        SpraySources.OtherThanWater,
        new Domain("liquids about as thin as water", new DomainLimit("liquid", 790, 1920, "kg/m³")));

    private static readonly IReadOnlyList<Caution> Cautions = [MixCautions.Drift, MixCautions.LabelDecides];

    /// <summary>The flow at a pressure, from the flow at another.</summary>
    /// <param name="pressure">The pressure asked for; more than 0.</param>
    /// <param name="knownFlow">The flow that was measured or is printed; 0 or more.</param>
    /// <param name="knownPressure">The pressure of that flow; more than 0.</param>
    /// <returns>The known flow times the square root of the pressures' ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<VolumeFlow> FlowAt(Pressure pressure, VolumeFlow knownFlow, Pressure knownPressure)
    {
        double kilopascals = Guard.Positive(Boundary.Kilopascals(pressure), "kPa", nameof(pressure));
        double litresPerMinute = Guard.NotNegative(Boundary.LitresPerMinute(knownFlow), "L/min", nameof(knownFlow));
        double knownKilopascals = Guard.Positive(Boundary.Kilopascals(knownPressure), "kPa", nameof(knownPressure));
        return new Estimate<VolumeFlow>(
            VolumeFlow.FromLitersPerMinute(litresPerMinute * Math.Sqrt(kilopascals / knownKilopascals)), ByPressure, cautions: Cautions);
    }

    /// <summary>The pressure for a flow, from the flow at another pressure; the inverse of <see cref="FlowAt"/>.</summary>
    /// <param name="flow">The flow asked for; more than 0.</param>
    /// <param name="knownFlow">The flow that was measured or is printed; more than 0.</param>
    /// <param name="knownPressure">The pressure of that flow; more than 0.</param>
    /// <returns>The known pressure times the square of the flows' ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above 0.</exception>
    public static Estimate<Pressure> PressureFor(VolumeFlow flow, VolumeFlow knownFlow, Pressure knownPressure)
    {
        double litresPerMinute = Guard.Positive(Boundary.LitresPerMinute(flow), "L/min", nameof(flow));
        double knownLitresPerMinute = Guard.Positive(Boundary.LitresPerMinute(knownFlow), "L/min", nameof(knownFlow));
        double knownKilopascals = Guard.Positive(Boundary.Kilopascals(knownPressure), "kPa", nameof(knownPressure));
        double ratio = litresPerMinute / knownLitresPerMinute;
        return new Estimate<Pressure>(Pressure.FromKilopascals(knownKilopascals * ratio * ratio), ByPressure, cautions: Cautions);
    }

    /// <summary>The flow of water to look up in a nozzle's chart for a wanted flow of another liquid, such as liquid feed.</summary>
    /// <param name="flow">The flow of the liquid that is wanted; 0 or more.</param>
    /// <param name="liquid">Its density, from 0.79 to 1.92 kg/L.</param>
    /// <returns>The flow times the square root of the density over that of water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public static Estimate<VolumeFlow> WaterFlowFor(VolumeFlow flow, Density liquid)
    {
        double litresPerMinute = Guard.NotNegative(Boundary.LitresPerMinute(flow), "L/min", nameof(flow));
        double kilogramsPerCubicMetre = ByDensity.Require(Boundary.KilogramsPerCubicMetre(liquid), "kg/m³", nameof(liquid));
        return new Estimate<VolumeFlow>(
            VolumeFlow.FromLitersPerMinute(litresPerMinute * Math.Sqrt(kilogramsPerCubicMetre / WaterKilogramsPerCubicMetre)),
            ByDensity,
            cautions: Cautions);
    }
}
