using HortiCalc.Containers;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>What the physics of media refuses, where it ends, and what it says.</summary>
public class MediumPhysicsEdges
{
    private static readonly Container Pot = Container.RoundTapered(Length.FromCentimeters(17), Length.FromCentimeters(12), Length.FromCentimeters(13));

    private static VanGenuchtenRetention Sand => (VanGenuchtenRetention)PublishedRetentions.Named("sand").Curve;

    /// <summary>With n = 2 the curve is (1 + (αh)²)^−½, whose integral is the inverse hyperbolic sine.</summary>
    [Theory]
    [InlineData(2, 0.1)]
    [InlineData(20, 0.4)]
    [InlineData(0.1, 2)]
    public void Drained_CurveOfTwo_IsTheAnalyticMean(double alpha, double height)
    {
        VanGenuchtenRetention curve = new(Ratio.FromPercent(10), Ratio.FromPercent(80), ReciprocalLength.FromInverseMeters(alpha), 2);
        DrainedMedium drained = new(curve, Container.Round(Length.FromCentimeters(15), Length.FromMeters(height)), Length.Zero);

        Assert.Equal(10 + 70 * Math.Asinh(alpha * height) / (alpha * height), drained.ContainerCapacity.Percent, 1e-10);
    }

    /// <summary>With a slope of 1 the log-logistic curve is 1 / (1 + h / h₀), whose integral is a logarithm.</summary>
    [Fact]
    public void Drained_LogLogisticOfOne_IsTheAnalyticMean()
    {
        LogLogisticRetention curve = new(Ratio.FromPercent(20), Ratio.FromPercent(90), Length.FromCentimeters(30), 1);
        DrainedMedium drained = new(curve, Container.Square(Length.FromCentimeters(10), Length.FromCentimeters(18)), Length.FromCentimeters(3));

        Assert.Equal(20 + 70 * Math.Log(1.5) / 0.5, drained.ContainerCapacity.Percent, 1e-10);
    }

    /// <summary>Pores of one width drain all at once: the medium is full below that height and empty above.</summary>
    [Fact]
    public void Drained_PoresOfOneWidth_AreAStep()
    {
        VanGenuchtenRetention step = new(Ratio.FromPercent(10), Ratio.FromPercent(80), ReciprocalLength.FromInverseMeters(20), 400);
        DrainedMedium drained = new(step, Container.Round(Length.FromCentimeters(15), Length.FromCentimeters(20)), Length.Zero);

        Assert.Equal(10 + 70 * 5 / 20.0, drained.ContainerCapacity.Percent, 0.1);
        Assert.Equal(5, drained.PerchedHeight(Ratio.FromPercent(35)).Centimeters, 0.02);
    }

    [Fact]
    public void Drained_NarrowBase_IsAirierThanTheSamePotUpsideDown()
    {
        DrainedMedium narrow = new(Sand, Container.RoundTapered(Length.FromCentimeters(20), Length.FromCentimeters(8), Length.FromCentimeters(15)), Length.Zero);
        DrainedMedium wide = new(Sand, Container.RoundTapered(Length.FromCentimeters(8), Length.FromCentimeters(20), Length.FromCentimeters(15)), Length.Zero);

        Assert.Equal(narrow.Medium.Liters, wide.Medium.Liters, 1e-9);
        Assert.True(narrow.AirSpace.Percent > wide.AirSpace.Percent);
    }

    [Fact]
    public void Retention_ImpossibleParameters_AreRefusedByName()
    {
        Ratio low = Ratio.FromPercent(10);
        Ratio high = Ratio.FromPercent(80);
        ReciprocalLength alpha = ReciprocalLength.FromInverseMeters(5);
        Assert.Throws<ArgumentOutOfRangeException>("residual", () => new VanGenuchtenRetention(Ratio.FromPercent(-1), high, alpha, 2));
        Assert.Contains("above 10 %", Assert.Throws<ArgumentOutOfRangeException>("saturated", () => new VanGenuchtenRetention(low, low, alpha, 2)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("saturated", () => new VanGenuchtenRetention(low, Ratio.FromPercent(101), alpha, 2));
        Assert.Throws<ArgumentOutOfRangeException>("alpha", () => new VanGenuchtenRetention(low, high, ReciprocalLength.Zero, 2));
        Assert.Throws<ArgumentOutOfRangeException>("n", () => new VanGenuchtenRetention(low, high, alpha, 1));
        Assert.Throws<ArgumentOutOfRangeException>("n", () => new VanGenuchtenRetention(low, high, alpha, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("halfSuction", () => new LogLogisticRetention(low, high, Length.Zero, 1));
        Assert.Throws<ArgumentOutOfRangeException>("slope", () => new LogLogisticRetention(low, high, Length.FromMeters(1), 0));
        Assert.Throws<ArgumentOutOfRangeException>("suction", () => Sand.WaterAt(Length.FromMeters(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>("water", () => Sand.SuctionAt(Sand.Residual));
        Assert.Throws<ArgumentOutOfRangeException>("water", () => Sand.SuctionAt(Ratio.FromPercent(34)));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => Sand.WaterBetween(Length.FromMeters(1), Length.FromMeters(0.5)));
        Assert.Equal(0, Sand.SuctionAt(Sand.Saturated).Meters);
        Assert.Equal(Sand.Residual.Percent, Sand.WaterAt(Length.FromMeters(1e200)).Percent, 1e-9);
    }

    [Fact]
    public void Drained_ImpossibleFill_IsRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("headspace", () => new DrainedMedium(Sand, Pot, Length.FromCentimeters(13)));
        Assert.Throws<ArgumentOutOfRangeException>("headspace", () => new DrainedMedium(Sand, Pot, Length.FromCentimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("waterTable", () => new DrainedMedium(Sand, Pot, Length.Zero, Length.FromCentimeters(-1)));
        DrainedMedium drained = new(Sand, Pot, Length.FromCentimeters(1));
        Assert.Throws<ArgumentOutOfRangeException>("height", () => drained.WaterAt(Length.FromCentimeters(12.5)));
        Assert.Throws<ArgumentOutOfRangeException>("suction", () => drained.AvailableWater(Length.FromCentimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("leastAir", () => drained.PerchedHeight(Ratio.FromPercent(33)));
        Assert.Equal(12, drained.PerchedHeight(Ratio.FromPercent(32.3)).Centimeters, 1e-9);
    }

    /// <summary>The volume balances that three papers print, none of which can be.</summary>
    [Theory]
    [InlineData(12.6, 109.4)]
    [InlineData(18.6, 113.5)]
    [InlineData(25, 80)]
    public void Porometer_MoreWaterAndAirThanTheCore_IsRefused(double air, double water) => Assert.Contains(
        "beyond which water and air are more than the core holds",
        Assert.Throws<ArgumentOutOfRangeException>("drainedMass", () => new PorometerReading(
            Volume.FromLiters(1), Volume.FromLiters(air / 100), Mass.FromKilograms(0.7 + water / 100), Mass.FromKilograms(0.7))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Porometer_ImpossibleReadings_AreRefusedByName()
    {
        Volume core = Volume.FromLiters(1);
        Mass dry = Mass.FromGrams(200);
        Assert.Throws<ArgumentOutOfRangeException>("core", () => new PorometerReading(Volume.Zero, Volume.Zero, dry, dry));
        Assert.Throws<ArgumentOutOfRangeException>("drained", () => new PorometerReading(core, Volume.FromLiters(1.1), dry, dry));
        Assert.Throws<ArgumentOutOfRangeException>("dryMass", () => new PorometerReading(core, Volume.Zero, dry, Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("drainedMass", () => new PorometerReading(core, Volume.Zero, Mass.FromGrams(100), dry));
        PorometerReading none = new(core, Volume.Zero, dry, dry);
        Assert.Equal(0, none.AirOfPores.Percent);
        Assert.Null(new PorometerReading(core, core, dry, dry).ImpliedParticleDensity);
    }

    /// <summary>Elements of a dry mass cannot be more than it.</summary>
    [Fact]
    public void BalancePart_MoreElementsThanMass_IsRefused()
    {
        static BalancePart Bark(double carbon, double nitrogen) => new(
            "bark", Volume.FromLiters(60.123456), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(carbon), MassFraction.FromPercent(nitrogen));

        Assert.Contains("were 140 % together", Assert.Throws<ArgumentOutOfRangeException>("carbon", () => Bark(80, 60)).Message, StringComparison.Ordinal);
        Assert.Equal("60.1 L bark", Bark(50, 0.3).ToString());
        Assert.Equal("alpha, 1/m: 6.64 ± 0.303", new FittedParameter("alpha, 1/m", 6.63603812, 0.3025528629).ToString());
        Assert.Equal("thirty-twos: 15.2 cm across", PotCast.All[3].ToString());
    }

    /// <summary>Shares that fill the core to the last drop: 10.8391… and 89.1608… % add up to a hair more than 100.</summary>
    [Fact]
    public void Findings_OfACoreThatIsFull_AreFound()
    {
        PorometerReading full = new(Volume.FromMilliliters(286), Volume.FromMilliliters(31), Mass.FromGrams(395), Mass.FromGrams(140));

        Assert.Equal(100, full.TotalPorosity.Percent);
        Assert.Null(full.ImpliedParticleDensity);
        Assert.NotEmpty(MediumRanges.Findings(full));
    }

    /// <summary>Bark and peat as a paper of 2012 prints them: the peat's 98 % pores at 0.11 g/cm³ would need particles of 5.5 g/cm³.</summary>
    [Theory]
    [InlineData(31, 48, 18, 0)]
    [InlineData(28, 57, 22, 0)]
    [InlineData(11, 87, 11, 1)]
    [InlineData(50, 50, 11, 1)]
    public void Porometer_ParticlesDenserThanQuartz_AreDoubted(double air, double water, double dry, int cautions)
    {
        PorometerReading reading = new(
            Volume.FromMilliliters(100), Volume.FromMilliliters(air), Mass.FromGrams(dry + water), Mass.FromGrams(dry));

        Assert.Equal(cautions, reading.Cautions.Count(caution => caution.Code == "medium.particle-density"));
        Assert.Equal(cautions, reading.Cautions.Count);
    }

    [Fact]
    public void Soak_Impossible_IsRefusedByName()
    {
        Volume pot = Volume.FromLiters(2);
        Volume more = Volume.FromLiters(2.1);
        Assert.Throws<ArgumentOutOfRangeException>("medium", () => new SoakReading(Volume.Zero, Volume.Zero, Volume.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("filled", () => new SoakReading(pot, more, Volume.Zero));
        Assert.Contains(
            "allowed: from 0 to 1 L",
            Assert.Throws<ArgumentOutOfRangeException>("drained", () => new SoakReading(pot, Volume.FromLiters(1), more)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("reading", () => MediumRanges.Findings(new SoakReading(pot, Volume.Zero, Volume.Zero)));
        Assert.Throws<ArgumentNullException>("reading", () => MediumRanges.Findings((SoakReading)null!));
    }

    /// <summary>The bucket test of the docs, without scales.</summary>
    [Fact]
    public void Soak_Bucket_TellsPoresAirAndWaterAndDoubtsTheSoaking()
    {
        SoakReading mix = new(Volume.FromLiters(2), Volume.FromLiters(1.4), Volume.FromLiters(0.36));

        Assert.Equal("18 % air, 52 % water, 70 % pores", mix.ToString());
        Assert.Contains(mix.Cautions, caution => caution.Code == "medium.soaking");
        Assert.StartsWith("18 % is within air space, container media: 10 to 25 % of the volume [", MediumRanges.Findings(mix)[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Retained_Impossible_IsRefusedByName()
    {
        Volume pot = Volume.FromLiters(2);
        Volume given = Volume.FromLiters(3);
        Assert.Equal(50, PotWatering.Retained(pot, given, Volume.FromLiters(2)).Percent);
        Assert.Throws<ArgumentOutOfRangeException>("medium", () => PotWatering.Retained(Volume.Zero, given, given));
        Assert.Throws<ArgumentOutOfRangeException>("given", () => PotWatering.Retained(pot, Volume.FromLiters(-1), Volume.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("drained", () => PotWatering.Retained(pot, given, Volume.FromLiters(3.1)));
        Assert.Contains(
            "allowed: from 1 to 3 L",
            Assert.Throws<ArgumentOutOfRangeException>("drained", () => PotWatering.Retained(pot, given, Volume.FromLiters(0.5))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Densities_Impossible_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("particleDensity", () => MediumPorosity.FromDensities(Density.FromGramsPerLiter(300), Density.FromGramsPerLiter(200)));
        Assert.Throws<ArgumentOutOfRangeException>("dryBulkDensity", () => MediumPorosity.FromBulkDensity(Density.FromGramsPerLiter(1001)));
        Assert.Throws<ArgumentOutOfRangeException>(
            "drainedBulkDensity", () => MediumPorosity.AirFromDensities(Density.FromGramsPerLiter(100), Density.FromGramsPerLiter(1030)));
    }

    [Fact]
    public void Fit_TooFewPointsOrTooLittleSpan_IsRefused()
    {
        RetentionPoint[] four = [.. PublishedRetentions.SphagnumPeat];
        Assert.Contains("more than 4 points", Assert.Throws<ArgumentException>("points", () => RetentionFit.VanGenuchten(four)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("points", () => RetentionFit.VanGenuchten([.. Enumerable.Repeat(four[0], 9)]));
        Assert.Throws<ArgumentOutOfRangeException>("residual", () => RetentionFit.VanGenuchten(four, Ratio.FromPercent(22)));
        RetentionPoint[] flat = [.. Enumerable.Range(1, 5).Select(centimetres => new RetentionPoint(Length.FromCentimeters(centimetres), Ratio.FromPercent(80)))];
        Assert.Throws<InvalidOperationException>(() => RetentionFit.VanGenuchten(flat));
    }

    [Fact]
    public void Ranges_SharesOfPores_AreNotTakenForSharesOfVolume()
    {
        MediumRange purdue = MediumRanges.All.Single(range => range.Property == MediumProperty.AirSpace && range.Basis == ShareBasis.OfPores);

        // 18 % of a volume with 80 % pores is 22.5 % of the pores.
        Assert.Equal(RangeFinding.Within, purdue.Judge(Ratio.FromPercent(18), Ratio.FromPercent(80)));
        Assert.Equal(RangeFinding.Above, purdue.Judge(Ratio.FromPercent(22), Ratio.FromPercent(80)));
        Assert.Equal(RangeFinding.Below, purdue.Judge(Ratio.FromPercent(15), Ratio.FromPercent(80)));
        Assert.Throws<ArgumentOutOfRangeException>("totalPorosity", () => purdue.Judge(Ratio.FromPercent(30), Ratio.FromPercent(20)));
    }

    /// <summary>The sphagnum peat of 1990 by its curve: wet for a laboratory's taste at 10 cm, with much water that plants take with ease.</summary>
    [Fact]
    public void Findings_OfThePeatCurve_NameTheRangesThatItMisses()
    {
        RetentionCurve peat = RetentionFit.VanGenuchten([.. PublishedRetentions.SphagnumPeat], Ratio.FromPercent(20)).Curve;
        IReadOnlyList<MediumFinding> findings = MediumRanges.Findings(peat);

        Assert.Equal(RangeFinding.Above, Of(MediumProperty.ContainerCapacity, ShareBasis.OfVolume));
        Assert.Equal(RangeFinding.Above, Of(MediumProperty.EasilyAvailableWater, ShareBasis.OfVolume));
        Assert.Equal(RangeFinding.Above, Of(MediumProperty.ContainerCapacity, ShareBasis.OfPores));
        Assert.DoesNotContain(findings, finding => finding.Range.Meaning == RangeMeaning.Found);
        Assert.Equal(MediumRanges.All.Count(range => range.Meaning == RangeMeaning.Recommended), findings.Count);

        RangeFinding Of(MediumProperty property, ShareBasis basis) =>
            findings.Single(finding => finding.Range.Property == property && finding.Range.Basis == basis).Finding;
    }

    [Fact]
    public void Findings_OfAReading_LeaveOutWhatACoreDoesNotTell()
    {
        PorometerReading bark = new(Volume.FromMilliliters(100), Volume.FromMilliliters(31), Mass.FromGrams(66), Mass.FromGrams(18));
        IReadOnlyList<MediumFinding> findings = MediumRanges.Findings(bark);

        Assert.DoesNotContain(findings, finding => finding.Range.Property is MediumProperty.EasilyAvailableWater or MediumProperty.AvailableWater);
        Assert.StartsWith("31 % is above air space, container media: 10 to 25 % of the volume [", findings[0].ToString(), StringComparison.Ordinal);
        Assert.StartsWith(
            "39.2 % is above air space, container media: 20 to 25 % of the pores [",
            findings.First(finding => finding.Range.Basis == ShareBasis.OfPores).ToString(),
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(
            "reading", () => MediumRanges.Findings(new PorometerReading(Volume.FromLiters(1), Volume.Zero, Mass.FromGrams(10), Mass.FromGrams(10))));
        Assert.Throws<ArgumentNullException>("reading", () => MediumRanges.Findings((PorometerReading)null!));
        Assert.Throws<ArgumentNullException>("drained", () => MediumRanges.Findings((DrainedMedium)null!));
        Assert.Throws<ArgumentNullException>("curve", () => MediumRanges.Findings((RetentionCurve)null!));
        Assert.Throws<ArgumentOutOfRangeException>("value", () => new MediumFinding(MediumRanges.All[0], Ratio.FromPercent(101), RangeFinding.Above));
        Assert.Throws<ArgumentOutOfRangeException>("finding", () => new MediumFinding(MediumRanges.All[0], Ratio.FromPercent(10), (RangeFinding)9));
    }

    /// <summary>The same peat is too wet in a tray and airy in a tall pot.</summary>
    [Fact]
    public void Findings_OfOneMediumInTwoPots_Differ()
    {
        RetentionCurve peat = RetentionFit.VanGenuchten([.. PublishedRetentions.SphagnumPeat], Ratio.FromPercent(20)).Curve;
        MediumFinding Air(double centimetres) => MediumRanges.Findings(
            new DrainedMedium(peat, Container.Round(Length.FromCentimeters(15), Length.FromCentimeters(centimetres)), Length.Zero))[0];

        Assert.Equal(RangeFinding.Below, Air(5).Finding);
        Assert.Equal(RangeFinding.Within, Air(30).Finding);
    }

    /// <summary>Hardly any medium: rounding must not give less than no air.</summary>
    [Fact]
    public void Drained_FilmOnAMat_HasNoLessThanNoAir()
    {
        LogLogisticRetention steep = new(Ratio.FromPercent(20), Ratio.FromPercent(90), Length.FromMeters(5), 8);
        DrainedMedium drained = new(steep, Container.Round(Length.FromCentimeters(10), Length.FromMillimeters(1)), Length.Zero);

        Assert.InRange(drained.AirSpace.Percent, 0, 1e-12);
        Assert.InRange(drained.Air.Liters, 0, 1e-12);
        Assert.All(MediumRanges.Findings(drained), finding => Assert.InRange(finding.Value.Percent, 0, 100));
    }

    [Fact]
    public void Text_DrainedMediumInBothSystems_IsOneHonestLine()
    {
        DrainedMedium drained = new(Sand, Pot, Length.FromCentimeters(1));

        Assert.Matches("^[0-9.]+ L of medium: [0-9.]+ % water, [0-9.]+ % air, 66.3 % solids$", drained.ToString());
        Assert.Contains(" gal (US) of medium", drained.ToString("U", null), StringComparison.Ordinal);
        Assert.Equal(2, drained.Cautions.Count);
    }

    [Fact]
    public void Json_EveryType_ReadsBackAsItWas()
    {
        static void Same<T>(T value) => Assert.Equal(value, HortiCalcJson.Deserialize<T>(HortiCalcJson.Serialize(value)));

        Same<RetentionCurve>(Sand);
        Same<RetentionCurve>(new LogLogisticRetention(Ratio.FromPercent(10), Ratio.FromPercent(80), Length.FromCentimeters(30), 1.2));
        Same(new DrainedMedium(Sand, Pot, Length.FromCentimeters(1), Length.FromCentimeters(5)));
        Same(new PorometerReading(Volume.FromMilliliters(347.5), Volume.FromMilliliters(100), Mass.FromGrams(229), Mass.FromGrams(62)));
        Same(new SoakReading(Volume.FromLiters(2), Volume.FromLiters(1.4), Volume.FromLiters(0.36)));
        Same(RetentionFit.VanGenuchten([.. PublishedRetentions.SphagnumPeat], Ratio.FromPercent(20)));
        Assert.All(PublishedRetentions.All, Same);
        Assert.All(PublishedRetentions.SphagnumPeat, Same);
        Assert.All(MediumRanges.All, Same);
        Assert.All(MediumRanges.Findings(Sand), Same);
    }
}
