using System.Globalization;
using HortiCalc.Containers;
using HortiCalc.Json;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>What shapes, trays, mixes, weights and rates refuse, say and store.</summary>
public class ContainerShapeEdges
{
    private static readonly Length Ten = Length.FromCentimeters(10);

    [Fact]
    public void Shapes_ImpossibleDimensions_AreRefusedByName()
    {
        Assert.Contains("0 to 0.05", Assert.Throws<ArgumentOutOfRangeException>("height", () => Container.Bowl(Ten, Length.FromCentimeters(5.1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("height", () => Container.HalfRound(Ten, Ten, Length.FromCentimeters(6)));
        Assert.Throws<ArgumentOutOfRangeException>("headDiameter", () => Container.Barrel(Ten, Length.FromCentimeters(11), Ten));
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => Container.HalfSphere(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("rows", () => new CellTray(Container.Round(Ten, Ten), 0, 4));
        Assert.Throws<ArgumentOutOfRangeException>("columns", () => new CellTray(Container.Round(Ten, Ten), 2000, 2000));
    }

    [Fact]
    public void WithinWalls_ThickerThanThePot_IsRefusedByName()
    {
        Container pot = Container.RoundTapered(Ten, Length.FromCentimeters(6), Ten);
        Assert.Throws<ArgumentOutOfRangeException>("wall", () => pot.WithinWalls(Length.FromCentimeters(4), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("floor", () => pot.WithinWalls(Length.Zero, Ten));
        Assert.Throws<ArgumentOutOfRangeException>("wall", () => pot.WithinWalls(Length.FromCentimeters(-1), Length.Zero));
    }

    /// <summary>A terracotta pot of 30 cm: walls of 12 mm take more than a quarter of it.</summary>
    [Fact]
    public void WithinWalls_Terracotta_IsByHand()
    {
        Container inside = Container.Round(Length.FromCentimeters(30), Length.FromCentimeters(30))
            .WithinWalls(Length.FromMillimeters(12), Length.FromMillimeters(15));

        Assert.Equal(Math.PI / 4 * 27.6 * 27.6 * 28.5 / 1000, inside.BrimVolume.Liters, 1e-9);
    }

    /// <summary>On top of a floor of 3 cm a pot of 20 cm above 14 cm, 30 cm high, is 14.6 cm across; the wall takes 2 cm of it.</summary>
    [Fact]
    public void WithinWalls_OfATaperedPot_MeasuresTheBaseOnTopOfTheFloor()
    {
        RoundContainer inside = (RoundContainer)Container.RoundTapered(Length.FromCentimeters(20), Length.FromCentimeters(14), Length.FromCentimeters(30))
            .WithinWalls(Length.FromCentimeters(1), Length.FromCentimeters(3));

        Assert.Equal(18, inside.TopDiameter.Centimeters, 1e-9);
        Assert.Equal(12.6, inside.BaseDiameter.Centimeters, 1e-9);
        Assert.Equal(27, inside.Height.Centimeters, 1e-9);
    }

    [Fact]
    public void NurseryClass_Volumes_FallIntoOneClassOrNone()
    {
        string? Name(double cubicInches) => NurseryClass.Of(Volume.FromCubicInches(cubicInches))?.Name;

        Assert.Equal(["#1", "#1", null, "#2", null, "#3", "#5", null], new[] { 152.001, 250.999, 251.001, 400, 550, 700, 1241.999, 1243 }.Select(Name));
        Assert.Equal("#1: 2.49 L to 4.11 L", NurseryClass.All[0].ToString());
        Assert.Equal("#1: 0.658 gal (US) to 1.09 gal (US)", NurseryClass.All[0].ToString("U", null));
        Assert.Throws<ArgumentOutOfRangeException>("volume", () => NurseryClass.Of(Volume.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("high", () => new NurseryClass("x", Volume.FromLiters(2), Volume.FromLiters(1)));
        Assert.Throws<ArgumentOutOfRangeException>("low", () => new NurseryClass("x", Volume.Zero, Volume.FromLiters(1)));
    }

    [Fact]
    public void Ratios_OfCarbonToNitrogen_SayWhichWayNitrogenGoes()
    {
        Assert.Equal(
            [NitrogenTurn.Releases, NitrogenTurn.Releases, NitrogenTurn.Balanced, NitrogenTurn.Balanced, NitrogenTurn.TiesUp],
            new[] { 0, 19.999, 20, 30, 30.001 }.Select(CarbonRatios.TurnAt));
        Assert.Equal(["mature compost", "stable compost"], CarbonRatios.Naming("Compost").Select(row => row.Material));
        Assert.Empty(CarbonRatios.Naming("zebra"));
        Assert.Throws<ArgumentOutOfRangeException>("carbonToNitrogen", () => CarbonRatios.TurnAt(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("carbonToNitrogen", () => CarbonRatios.TurnAt(-1));
        Assert.Throws<ArgumentOutOfRangeException>("high", () => new CarbonRatio("x", 20, 19, CarbonRatios.TurnSource));

        BalancePart chips = new("wood chips", Volume.FromLiters(10), Density.FromKilogramsPerCubicMeter(200), MassFraction.FromPercent(48), MassFraction.FromPercent(0.12));
        BalancePart sand = new("sand", Volume.FromLiters(1), Density.FromKilogramsPerCubicMeter(1600), MassFraction.Zero, MassFraction.Zero);
        Assert.Equal(NitrogenTurn.TiesUp, new MixBalance([chips], Ratio.Zero).NitrogenTurn);
        Assert.Null(new MixBalance([sand], Ratio.Zero).NitrogenTurn);
    }

    [Fact]
    public void PotSize_WithARange_KeepsAndSaysIt()
    {
        PotSize three = PotSizes.Named("three-gallon-pot", "#3");

        Assert.Equal(2.5, three.ToEstimate().Range!.High.UsGallons, 1e-9);
        Assert.Contains("to", three.ToString(), StringComparison.Ordinal);
        Assert.Equal(2.8, PotSizes.Spread("#3")!.High.UsGallons, 1e-9);
        Assert.Null(PotSizes.Named("us-true-volumes", "#3").ToEstimate().Range);
        Assert.Throws<ArgumentOutOfRangeException>("volumeHigh", () => new PotSize("x", Volume.FromLiters(2), three.Source, volumeHigh: Volume.FromLiters(1)));
        Assert.Throws<ArgumentOutOfRangeException>(
            "volumeHigh", () => new CropRoom("x", three.Source, volume: Volume.FromLiters(2), volumeHigh: Volume.FromLiters(1)));
    }

    [Fact]
    public void Sizes_OfOneName_DifferAndTheSpreadSaysHowFar()
    {
        Assert.True(PotSizes.OfName("#1").Count >= 1);
        Assert.Equal(PotSizes.OfName("#1").Min(size => size.Volume.Liters), PotSizes.Spread("#1")!.Low.Liters, 1e-12);
        Assert.Equal(PotSizes.OfName("#1").Max(size => size.Volume.Liters), PotSizes.Spread("#1")!.High.Liters, 1e-12);
        Assert.Null(PotSizes.Spread("no such pot"));
    }

    [Fact]
    public void Range_OfALeastAlone_SaysSo()
    {
        MediumRange least = MediumRanges.Of(MediumProperty.AirSpace).First(range => range.High is null);

        Assert.StartsWith("air space, container media, after draining: 10 % or more of the volume [", least.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("air space, container media: 10 to 25 % of the volume [", MediumRanges.All[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_NumberedInJapan_DisagreeToo()
    {
        Assert.Equal(1, PotSizes.Spread("5 go")!.Low.Liters, 1e-12);
        Assert.Equal(1.3, PotSizes.Spread("5 go")!.High.Liters, 1e-12);
    }

    [Fact]
    public void Lines_OfSizesAndRooms_ComeInEitherUnits()
    {
        PotCast thirtyTwos = PotCast.All.Single(cast => cast.PotsPerCast == 32);
        Assert.Equal("thirty-twos: 15.2 cm across", thirtyTwos.ToString());
        Assert.Equal("thirty-twos: 6 in across", thirtyTwos.ToString("U", null));

        CropRoom lettuce = CropRooms.Naming("leaf lettuce").Single(row => row.Source.Key == "illinois-homeowners-column");
        Assert.StartsWith("leaf lettuce: 3.79 L, 4 to 6 plants [", lettuce.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("leaf lettuce: 1 gal (US), 4 to 6 plants [", lettuce.ToString("U", null), StringComparison.Ordinal);

        CropRoom alone = new("x", lettuce.Source, depth: Length.FromInches(9), depthHigh: Length.FromInches(18), plants: 1);
        Assert.StartsWith("x: 22,9 cm to 45,7 cm deep, 1 plant [", alone.ToString("M", CultureInfo.GetCultureInfo("de-DE")), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => alone.ToString("Q", null));
    }

    [Fact]
    public void Rooms_OneCrop_StandSideBySideAndDisagree()
    {
        CropRoom[] carrots = [.. CropRooms.Naming("carrot").Where(row => row.Depth is not null)];

        Assert.Equal([8, 9, 10], carrots.Select(row => Math.Round(row.Depth!.Value.Inches, 9, MidpointRounding.AwayFromZero)).Order());
        Assert.Equal([12, 12, 18], carrots.Select(row => Math.Round(row.DepthHigh!.Value.Inches, 9, MidpointRounding.AwayFromZero)).Order());
        Assert.Empty(CropRooms.Naming("zebra"));
        Assert.Throws<ArgumentException>("crop", () => new CropRoom("x", CropRooms.All[0].Source));
        Assert.Throws<ArgumentOutOfRangeException>("depthHigh", () => new CropRoom("x", CropRooms.All[0].Source, Ten, Length.FromCentimeters(5)));
        Assert.Throws<ArgumentOutOfRangeException>("plantsHigh", () => new CropRoom("x", CropRooms.All[0].Source, plants: 3, plantsHigh: 2));
    }

    /// <summary>Two John Innes recipes agree on the base and not on the lime, as their remarks say.</summary>
    [Fact]
    public void Additions_JohnInnes_AgreeOnTheBaseAndNotOnTheLime()
    {
        double Rate(string key, string mix, string material) => MediumAdditions.All
            .Single(addition => addition.Source.Key == key && addition.Mix == mix && addition.Material == material).Rate.KilogramsPerCubicMeter;

        Assert.Equal(Rate("john-innes-metric", "John Innes No 2", "base fertiliser"), Rate("john-innes-imperial", "John Innes No 2", "base fertiliser"), 0.1);
        Assert.Equal(3, Rate("john-innes-imperial", "John Innes No 3", "lime or chalk") / Rate("john-innes-metric", "John Innes No 1 to 3 and seed", "ground limestone or chalk"), 0.05);
        Assert.Contains(MediumAdditions.All[0].For(Volume.FromLiters(10)).Cautions, caution => caution.Code == "medium.additions");
    }

    /// <summary>10 L of 500 kg/m³ with 0.8 % P and 1.5 % K: 5 kg hold 40 g and 75 g.</summary>
    [Fact]
    public void Balance_NutrientsOfAPart_AreItsDryMassTimesTheirShares()
    {
        MixBalance mix = new(
            [new BalancePart("manure", Volume.FromLiters(10), Density.FromKilogramsPerCubicMeter(500), MassFraction.FromPercent(35), MassFraction.FromPercent(2), MassFraction.FromPercent(0.8), MassFraction.FromPercent(1.5))],
            Ratio.FromPercent(5));

        Assert.Equal(0.04, mix.Phosphorus.Kilograms, 1e-12);
        Assert.Equal(0.075, mix.Potassium.Kilograms, 1e-12);
        Assert.Equal(17.5, mix.CarbonToNitrogen!.Value, 1e-9);
        Assert.Equal(4.5, PotClasses.HeightOf(Length.FromInches(6), PotClass.Azalea).Value.Inches, 1e-9);
    }

    [Fact]
    public void Balance_Impossible_IsRefusedByName()
    {
        BalancePart none = new("sand", Volume.Zero, Density.FromKilogramsPerCubicMeter(1600), MassFraction.Zero, MassFraction.Zero);
        Assert.Throws<ArgumentException>("parts", () => new MixBalance([], Ratio.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("parts", () => new MixBalance([none], Ratio.Zero));
        BalancePart sand = new("sand", Volume.FromLiters(1), Density.FromKilogramsPerCubicMeter(1600), MassFraction.Zero, MassFraction.Zero);
        Assert.Null(new MixBalance([sand], Ratio.Zero).CarbonToNitrogen);
        Assert.Equal("1 L sand: no nitrogen", new MixBalance([sand], Ratio.Zero).ToString());
        Assert.Throws<ArgumentOutOfRangeException>("mixingLoss", () => new MixBalance([sand], Ratio.FromPercent(100)));
        Assert.Throws<ArgumentOutOfRangeException>("wanted", () => new MixBalance([sand], Ratio.Zero).NitrogenToReach(0));
        Assert.Throws<ArgumentOutOfRangeException>("carbon", () => new BalancePart("x", Volume.Zero, Density.FromKilogramsPerCubicMeter(1), MassFraction.FromPercent(101), MassFraction.Zero));
    }

    [Fact]
    public void Weight_OfARoofOfPots_WarnsOfTheLoad()
    {
        Assert.Equal(33, PotWeight.Wet(Volume.FromLiters(40), Density.FromKilogramsPerCubicMeter(200), Ratio.FromPercent(55), Mass.FromKilograms(3)).Kilograms, 1e-9);
        Assert.Equal(9.80665, PotWeight.Load(Mass.FromKilograms(1000), Area.FromSquareMeters(1)).Kilopascals, 1e-9);
        Assert.Contains(PotWeight.Cautions, caution => caution.Code == "container.structural-load");
        Assert.Throws<ArgumentOutOfRangeException>("area", () => PotWeight.Load(Mass.FromKilograms(1), Area.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("water", () => PotWeight.Wet(Volume.FromLiters(1), Density.Zero, Ratio.FromPercent(101), Mass.Zero));
        // Sand of 1600 kg/m³ is 60 % grains: there is no room for so much water.
        ArgumentOutOfRangeException tooMuch = Assert.Throws<ArgumentOutOfRangeException>(
            "water", () => PotWeight.Wet(Volume.FromLiters(10), Density.FromKilogramsPerCubicMeter(1600), Ratio.FromPercent(90), Mass.Zero));
        Assert.Contains("39.6", tooMuch.Message, StringComparison.Ordinal);
        Assert.Equal(19.9, PotWeight.Wet(Volume.FromLiters(10), Density.FromKilogramsPerCubicMeter(1600), Ratio.FromPercent(39), Mass.Zero).Kilograms, 1e-9);
    }

    [Fact]
    public void Json_EveryType_ReadsBackAsItWas()
    {
        static void Same<T>(T value) => Assert.Equal(value, HortiCalcJson.Deserialize<T>(HortiCalcJson.Serialize(value)));

        Same(new CellTray(Container.HalfSphere(Ten), 6, 12));
        Assert.All(CropRooms.All, Same);
        Assert.All(MediumAdditions.All, Same);
        BalancePart part = new("bark", Volume.FromLiters(60), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(50), MassFraction.FromPercent(0.3));
        Same(part);
        Same(new BalancePart("manure", Volume.FromLiters(5), Density.FromKilogramsPerCubicMeter(500), MassFraction.FromPercent(35), MassFraction.FromPercent(2), MassFraction.FromPercent(0.8), MassFraction.FromPercent(1.5)));
        Assert.All(PotCast.All, Same);
        Assert.All(NurseryClass.All, Same);
        Assert.All(CarbonRatios.All, Same);
        Assert.All(PotSizes.Published, Same);
        Assert.All(Enum.GetValues<NitrogenTurn>(), Same);
        Same(new MixBalance([part], Ratio.FromPercent(5)));
    }
}
