using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>Laws of retention curves, drained containers, porometer readings and watering.</summary>
public class MediumPhysicsProperties
{
    [Property]
    public void Water_MoreSuction_IsNeverMoreAndStaysBetweenResidualAndSaturated(PositiveInt form, PositiveInt first, PositiveInt second)
    {
        RetentionCurve curve = Curve(form);
        double low = Math.Min(Suction(first), Suction(second));
        double high = Math.Max(Suction(first), Suction(second));

        Assert.True(Water(curve, high) <= Water(curve, low) + 1e-12);
        Assert.InRange(Water(curve, low), curve.Residual.Percent - 1e-9, curve.Saturated.Percent + 1e-9);
    }

    [Property]
    public void Suction_OfTheWaterAtASuction_IsTheSuction(PositiveInt form, PositiveInt share)
    {
        RetentionCurve curve = Curve(form);
        Ratio water = Ratio.FromPercent(curve.Residual.Percent + (curve.Saturated.Percent - curve.Residual.Percent) * Between(share, 0.05, 0.98));

        Assert.Equal(water.Percent, curve.WaterAt(curve.SuctionAt(water)).Percent, 1e-8);
    }

    [Property]
    public void WaterBetween_TwoSpansInARow_AddUp(PositiveInt form, PositiveInt first, PositiveInt second, PositiveInt third)
    {
        double[] metres = [.. new[] { Suction(first), Suction(second), Suction(third) }.Order()];
        RetentionCurve curve = Curve(form);
        double Span(int from, int to) => curve.WaterBetween(Length.FromMeters(metres[from]), Length.FromMeters(metres[to])).Percent;

        Assert.Equal(Span(0, 2), Span(0, 1) + Span(1, 2), 1e-9);
    }

    [Property]
    public void Drained_WaterAirAndSolids_AreTheWhole(PositiveInt form, PositiveInt shape, PositiveInt headspace)
    {
        DrainedMedium drained = Drained(form, shape, headspace);

        Assert.Equal(100, drained.ContainerCapacity.Percent + drained.AirSpace.Percent + drained.Solids.Percent, 1e-9);
        Assert.Equal(drained.Medium.Liters * drained.Curve.Saturated.DecimalFractions, drained.Water.Liters + drained.Air.Liters, 1e-9);
        Assert.InRange(drained.AirSpace.Percent, -1e-9, 100);
    }

    [Property]
    public void Drained_TallerPotOfUprightSides_NeverHasLessAir(PositiveInt form, PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 2, 60), Between(second, 2, 60));
        double high = Math.Max(Between(first, 2, 60), Between(second, 2, 60));
        double Air(double centimetres) => new DrainedMedium(
            Curve(form), Container.Round(Length.FromCentimeters(12), Length.FromCentimeters(centimetres)), Length.Zero).AirSpace.Percent;

        Assert.True(Air(high) >= Air(low) - 1e-9);
    }

    [Property]
    public void Drained_WiderPotOfUprightSides_IsTheSame(PositiveInt form, PositiveInt width, PositiveInt height)
    {
        Length tall = Length.FromCentimeters(Between(height, 2, 60));
        double Capacity(Container container) => new DrainedMedium(Curve(form), container, Length.Zero).ContainerCapacity.Percent;

        Assert.Equal(
            Capacity(Container.Round(Length.FromCentimeters(10), tall)), Capacity(Container.Square(Length.FromCentimeters(Between(width, 1, 80)), tall)), 1e-9);
    }

    [Property]
    public void Drained_ShareOfTheWhole_LiesBetweenThoseAtTopAndBase(PositiveInt form, PositiveInt shape, PositiveInt headspace)
    {
        DrainedMedium drained = Drained(form, shape, headspace);
        Length top = Length.FromMeters((drained.Container.Height.Meters - drained.Headspace.Meters) * (1 - 1e-12));

        Assert.InRange(drained.ContainerCapacity.Percent, drained.WaterAt(top).Percent - 1e-7, drained.WaterAt(Length.Zero).Percent + 1e-7);
    }

    [Property]
    public void Drained_LowerWaterTable_NeverHoldsMoreWater(PositiveInt form, PositiveInt shape, PositiveInt first, PositiveInt second)
    {
        double near = Math.Min(Between(first, 0, 60), Between(second, 0, 60));
        double far = Math.Max(Between(first, 0, 60), Between(second, 0, 60));
        double Capacity(double centimetres) =>
            new DrainedMedium(Curve(form), Shape(shape), Length.Zero, Length.FromCentimeters(centimetres)).ContainerCapacity.Percent;

        Assert.True(Capacity(far) <= Capacity(near) + 1e-9);
    }

    [Property]
    public void Drained_SameShapeInInches_IsTheSame(PositiveInt form, PositiveInt height)
    {
        double inches = Between(height, 2, 20);
        DrainedMedium one = new(Curve(form), Container.Round(Length.FromInches(6), Length.FromInches(inches)), Length.FromInches(0.5));
        DrainedMedium other = new(Curve(form), Container.Round(Length.FromCentimeters(15.24), Length.FromCentimeters(inches * 2.54)), Length.FromCentimeters(1.27));

        Assert.Equal(one.ContainerCapacity.Percent, other.ContainerCapacity.Percent, 1e-8);
        Assert.Equal(one.Water.Liters, other.Water.Liters, 1e-9);
    }

    [Property]
    public void AvailableWater_HigherSuction_IsMoreAndNeverMoreThanTheWater(PositiveInt form, PositiveInt shape, PositiveInt first, PositiveInt second)
    {
        DrainedMedium drained = new(Curve(form), Shape(shape), Length.Zero);
        double low = Math.Min(Suction(first), Suction(second));
        double high = Math.Max(Suction(first), Suction(second));
        double Available(double metres) => drained.AvailableWater(Length.FromMeters(metres)).Liters;

        Assert.InRange(Available(low), 0, Available(high) + 1e-12);
        Assert.True(Available(high) <= drained.Water.Liters - drained.Medium.Liters * drained.Curve.Residual.DecimalFractions + 1e-9);
    }

    [Property]
    public void PerchedHeight_AtTheHeight_HasThatAir(PositiveInt form, PositiveInt air)
    {
        RetentionCurve curve = Curve(form);
        Ratio least = Ratio.FromPercent((curve.Saturated.Percent - curve.Residual.Percent) * Between(air, 0.05, 0.8));
        DrainedMedium drained = new(curve, Container.Round(Length.FromCentimeters(20), Length.FromMeters(3)), Length.Zero);
        Length height = drained.PerchedHeight(least);

        if (height.Meters < 3)
            Assert.Equal(least.Percent, drained.AirAt(height).Percent, 1e-7);
        else
            Assert.True(drained.AirAt(Length.FromMeters(2.999)).Percent <= least.Percent + 0.1);
    }

    [Property]
    public void Porometer_AnyCore_HasSharesThatAddUp(PositiveInt air, PositiveInt water, PositiveInt density, PositiveInt core)
    {
        double litres = Between(core, 0.1, 2);
        double airShare = Between(air, 0, 0.5);
        double waterShare = Between(water, 0, 0.45);
        double dry = litres * Between(density, 0.05, 1);
        PorometerReading reading = new(
            Volume.FromLiters(litres), Volume.FromLiters(litres * airShare), Mass.FromKilograms(dry + litres * waterShare), Mass.FromKilograms(dry));

        Assert.Equal(100 * (airShare + waterShare), reading.TotalPorosity.Percent, 1e-9);
        Assert.Equal(reading.DrainedBulkDensity.KilogramsPerCubicMeter, reading.DryBulkDensity.KilogramsPerCubicMeter + 10 * reading.ContainerCapacity.Percent, 1e-6);
        Assert.Equal(
            reading.TotalPorosity.Percent, MediumPorosity.FromDensities(reading.DryBulkDensity, reading.ImpliedParticleDensity!.Value).Percent, 1e-8);
    }

    /// <summary>Readings in whole grams of a core without a hair's room to spare: none may be refused by what is asked of it next.</summary>
    [Property]
    public void Porometer_FullCore_IsAllPores(PositiveInt core, PositiveInt air, PositiveInt dry)
    {
        int millilitres = 50 + core.Get % 1_000;
        int drained = air.Get % millilitres;
        int grams = 1 + dry.Get % 300;
        PorometerReading full = new(
            Volume.FromMilliliters(millilitres), Volume.FromMilliliters(drained), Mass.FromGrams(grams + millilitres - drained), Mass.FromGrams(grams));

        Assert.Equal(100, full.TotalPorosity.Percent);
        Assert.Null(full.ImpliedParticleDensity);
        Assert.All(MediumRanges.Findings(full), finding => Assert.InRange(finding.Value.Percent, 0, 100));
    }

    [Property]
    public void Soak_WithTheSharesOfACore_SaysWhatTheCoreSays(PositiveInt medium, PositiveInt filled, PositiveInt drained)
    {
        double litres = Between(medium, 0.1, 20);
        double pores = litres * Between(filled, 0.1, 0.98);
        double air = pores * Between(drained, 0, 1);
        SoakReading soak = new(Volume.FromLiters(litres), Volume.FromLiters(pores), Volume.FromLiters(air));
        PorometerReading core = new(Volume.FromLiters(litres), Volume.FromLiters(air), Mass.FromKilograms(1 + pores - air), Mass.FromKilograms(1));

        Assert.Equal(core.TotalPorosity.Percent, soak.TotalPorosity.Percent, 1e-9);
        Assert.Equal(core.AirSpace.Percent, soak.AirSpace.Percent, 1e-9);
        Assert.Equal(core.ContainerCapacity.Percent, soak.ContainerCapacity.Percent, 1e-9);
        Assert.All(
            MediumRanges.Findings(soak).Zip(MediumRanges.Findings(core)),
            pair => Assert.Equal(pair.First.Value.Percent, pair.Second.Value.Percent, 1e-8));
    }

    [Property]
    public void Retained_OfAWateringToCapacityWithLeaching_IsTheCapacityThatLacked(PositiveInt medium, PositiveInt present, PositiveInt capacity, PositiveInt leaching)
    {
        Volume pot = Volume.FromLiters(Between(medium, 0.1, 50));
        Ratio before = Ratio.FromPercent(Between(present, 5, 50));
        Ratio after = Ratio.FromPercent(Between(capacity, 50, 90));
        Ratio share = Ratio.FromPercent(Between(leaching, 0, 60));
        Volume given = PotWatering.WithLeaching(PotWatering.ToCapacity(pot, before, after), share);

        Assert.Equal(after.Percent - before.Percent, PotWatering.Retained(pot, given, given * share.DecimalFractions).Percent, 1e-9);
    }

    [Property]
    public void Densities_AirOfTheDrained_IsThePoresLessTheWater(PositiveInt dry, PositiveInt filled)
    {
        Density bulk = Density.FromGramsPerLiter(Between(dry, 20, 900));
        double pores = MediumPorosity.FromBulkDensity(bulk).Value.Percent;
        double water = pores * Between(filled, 0, 0.99);

        Assert.Equal(
            pores - water,
            MediumPorosity.AirFromDensities(bulk, Density.FromGramsPerLiter(bulk.GramsPerLiter + 10 * water)).Value.Percent,
            1e-8);
    }

    [Property]
    public void Range_OfPores_IsTheSameAsOfVolumeTimesThePores(PositiveInt low, PositiveInt span, PositiveInt share, PositiveInt pores)
    {
        double porosity = Between(pores, 40, 95);
        double from = Between(low, 5, 40);
        double to = from + Between(span, 1, 30);
        double air = porosity * Between(share, 0, 1);
        Source source = Source.CommonPractice("a-range", "a range");
        MediumRange ofPores = new(MediumProperty.AirSpace, "any", Ratio.FromPercent(from), Ratio.FromPercent(to), ShareBasis.OfPores, RangeMeaning.Recommended, source);
        MediumRange ofVolume = new(
            MediumProperty.AirSpace, "any", Ratio.FromPercent(from * porosity / 100), Ratio.FromPercent(to * porosity / 100), ShareBasis.OfVolume, RangeMeaning.Recommended, source);

        // A figure on the edge itself may fall either way by rounding.
        bool edge = Math.Abs(100 * air / porosity - from) < 1e-9 || Math.Abs(100 * air / porosity - to) < 1e-9;
        Assert.True(edge || ofPores.Judge(Ratio.FromPercent(air), Ratio.FromPercent(porosity)) == ofVolume.Judge(Ratio.FromPercent(air), Ratio.FromPercent(porosity)));
    }

    [Property]
    public void Findings_OfADrainedMedium_AreThoseOfAReadingWithTheSameShares(PositiveInt form, PositiveInt shape, PositiveInt headspace)
    {
        DrainedMedium drained = Drained(form, shape, headspace);
        PorometerReading reading = new(
            Volume.FromLiters(1),
            Volume.FromLiters(drained.AirSpace.DecimalFractions),
            Mass.FromKilograms(0.1 + drained.ContainerCapacity.DecimalFractions),
            Mass.FromKilograms(0.1));
        IReadOnlyList<MediumFinding> byCurve = MediumRanges.Findings(drained);
        IReadOnlyList<MediumFinding> byCore = MediumRanges.Findings(reading);

        Assert.Equal(byCurve.Select(finding => finding.Range), byCore.Select(finding => finding.Range));
        Assert.All(byCurve.Zip(byCore), pair => Assert.Equal(pair.First.Value.Percent, pair.Second.Value.Percent, 1e-8));
        Assert.All(byCurve, finding => Assert.Equal(
            finding.Finding,
            finding.Value < finding.Range.Low ? RangeFinding.Below : finding.Value > (finding.Range.High ?? Ratio.FromPercent(100)) ? RangeFinding.Above : RangeFinding.Within));
    }

    [Property]
    public void Curve_AirAndWaterAtTheThreeSuctions_AddUpToThePores(PositiveInt form)
    {
        RetentionCurve curve = Curve(form);

        Assert.Equal(
            curve.Saturated.Percent,
            curve.AirCapacity.Percent + curve.EasilyAvailableWater.Percent + curve.WaterBufferingCapacity.Percent + Water(curve, 1),
            1e-9);
    }

    [Property]
    public void Drained_PotOfAnySize_HasTheShareOfAPotScaledWithItsCurve(PositiveInt form, PositiveInt factor)
    {
        // Heights and suctions are both lengths: twice the pot with half the alpha is the same pot in other units.
        double scale = Between(factor, 0.2, 5);
        Random random = new(form.Get);
        double alpha = 1 + random.NextDouble() * 30;
        double n = 1.2 + random.NextDouble() * 2;
        double Capacity(double size) => new DrainedMedium(
            new VanGenuchtenRetention(Ratio.FromPercent(10), Ratio.FromPercent(85), ReciprocalLength.FromInverseMeters(alpha / size), n),
            Container.RoundTapered(Length.FromCentimeters(17 * size), Length.FromCentimeters(12 * size), Length.FromCentimeters(15 * size)),
            Length.FromCentimeters(2 * size)).ContainerCapacity.Percent;

        Assert.Equal(Capacity(1), Capacity(scale), 1e-9);
    }

    [Property]
    public void Drained_ThinSlicesOfTheSameShape_AreTheWhole(PositiveInt form, PositiveInt cut)
    {
        // The upper slice stands on free water that lies below it by the height of the lower.
        double total = 0.25;
        double lower = Between(cut, 0.02, 0.23);
        double Water(double metres, double table) => new DrainedMedium(
            Curve(form), Container.Square(Length.FromCentimeters(10), Length.FromMeters(metres)), Length.Zero, Length.FromMeters(table)).Water.Liters;

        Assert.Equal(Water(total, 0), Water(lower, 0) + Water(total - lower, lower), 1e-5);
    }

    [Property]
    public void Watering_ToCapacityWithLeaching_LeavesWhatWasMissing(PositiveInt pot, PositiveInt present, PositiveInt capacity, PositiveInt leaching)
    {
        double litres = Between(pot, 0.1, 50);
        double now = Between(present, 0, 90);
        double wanted = Between(capacity, 0, 90);
        Volume stays = PotWatering.ToCapacity(Volume.FromLiters(litres), Ratio.FromPercent(now), Ratio.FromPercent(wanted));
        Volume given = PotWatering.WithLeaching(stays, Ratio.FromPercent(Between(leaching, 0, 60)));

        Assert.Equal(litres * Math.Max(0, wanted - now) / 100, stays.Liters, 1e-9);
        Assert.True(given.Liters >= stays.Liters);
        if (given.Liters > 0)
            Assert.Equal(Between(leaching, 0, 60), PotWatering.LeachingFraction(given, given - stays).Percent, 1e-6);
    }

    [Property(MaxTest = 30)]
    public void Fit_OfPointsOnACurve_FindsTheCurve(PositiveInt alpha, PositiveInt n)
    {
        VanGenuchtenRetention curve = new(
            Ratio.FromPercent(15), Ratio.FromPercent(85), ReciprocalLength.FromInverseMeters(Between(alpha, 2, 20)), Between(n, 1.4, 3));
        RetentionPoint[] points = [.. new[] { 0.01, 0.03, 0.1, 0.2, 0.4, 0.8, 2, 8 }.Select(metres =>
            new RetentionPoint(Length.FromMeters(metres), curve.WaterAt(Length.FromMeters(metres))))];
        VanGenuchtenRetention found = (VanGenuchtenRetention)RetentionFit.VanGenuchten(points).Curve;

        Assert.Equal(curve.Alpha.InverseMeters, found.Alpha.InverseMeters, 1e-3 * curve.Alpha.InverseMeters);
        Assert.Equal(curve.N, found.N, 1e-3);
        Assert.Equal(curve.Residual.Percent, found.Residual.Percent, 0.02);
    }

    private static RetentionCurve Curve(PositiveInt form)
    {
        Random random = new(form.Get);
        Ratio residual = Ratio.FromPercent(random.NextDouble() * 25);
        Ratio saturated = Ratio.FromPercent(50 + random.NextDouble() * 45);
        return form.Get % 2 == 0
            ? new VanGenuchtenRetention(residual, saturated, ReciprocalLength.FromInverseMeters(0.5 + random.NextDouble() * 60), 1.1 + random.NextDouble() * 2)
            : new LogLogisticRetention(residual, saturated, Length.FromMeters(0.02 + random.NextDouble()), 0.4 + random.NextDouble() * 3);
    }

    private static Container Shape(PositiveInt shape)
    {
        Random random = new(shape.Get);
        Length Across(double least) => Length.FromCentimeters(least + random.NextDouble() * 30);
        return (shape.Get % 3) switch
        {
            0 => Container.RoundTapered(Across(3), Across(0), Across(2)),
            1 => Container.SquareTapered(Across(3), Across(0), Across(2)),
            _ => Container.RectangularTapered(Across(3), Across(3), Across(1), Across(1), Across(2)),
        };
    }

    private static DrainedMedium Drained(PositiveInt form, PositiveInt shape, PositiveInt headspace)
    {
        Container container = Shape(shape);
        return new DrainedMedium(Curve(form), container, Length.FromMeters(container.Height.Meters * Between(headspace, 0, 0.6)));
    }

    private static double Water(RetentionCurve curve, double metres) => curve.WaterAt(Length.FromMeters(metres)).Percent;

    // From a millimetre to a hundred metres.
    private static double Suction(PositiveInt seed) => Math.Pow(10, Between(seed, -3, 2));

    private static double Between(PositiveInt seed, double low, double high) => low + (high - low) * new Random(seed.Get).NextDouble();
}
