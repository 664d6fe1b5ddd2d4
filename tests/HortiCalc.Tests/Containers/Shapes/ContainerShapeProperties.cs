using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Containers;
using HortiCalc.Json;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace HortiCalc.Tests.Containers;

/// <summary>Laws of all shapes of container, and what mixes, weights and rates of media come to.</summary>
public class ContainerShapeProperties
{
    [Property]
    public void Volume_AnyShapeToAnyHeight_IsTheIntegralOfItsSurfaces(PositiveInt shape, PositiveInt share)
    {
        Container container = Any(shape);
        double height = container.Height.Meters * Between(share, 0.01, 1);

        // The rule has a root-like beginning at the lowest line of round bottoms: heights as the square of an even step.
        double integral = GaussLegendreRule.Integrate(step => container.SquareMetresAt(height * step * step) * 2 * height * step, 0, 1, 64);
        Assert.Equal(integral, container.VolumeTo(Length.FromMeters(height)).CubicMeters, 1e-9 + 1e-8 * integral);
    }

    [Property]
    public void Volume_AllDimensionsTimesAFactor_IsTheFactorCubed(PositiveInt shape, PositiveInt factor)
    {
        double times = Between(factor, 0.2, 5);
        double one = Any(shape).BrimVolume.Liters;

        Assert.Equal(one * times * times * times, Any(shape, times).BrimVolume.Liters, 1e-9 * (1 + one * 125));
    }

    [Property]
    public void Height_FilledByTheVolumeToAHeight_IsTheHeight(PositiveInt shape, PositiveInt share)
    {
        Container container = Any(shape);
        Length height = Length.FromMeters(container.Height.Meters * Between(share, 0.05, 1));

        Assert.Equal(height.Meters, container.HeightFilledBy(container.VolumeTo(height)).Meters, 1e-9);
    }

    [Property]
    public void FillVolume_MoreHeadspace_IsNeverMore(PositiveInt shape, PositiveInt first, PositiveInt second)
    {
        Container container = Any(shape);
        double low = Math.Min(Between(first, 0, 1), Between(second, 0, 1));
        double high = Math.Max(Between(first, 0, 1), Between(second, 0, 1));
        double Filled(double share) => container.FillVolume(Length.FromMeters(container.Height.Meters * share)).Liters;

        Assert.True(Filled(high) <= Filled(low) + 1e-12);
    }

    [Property]
    public void Frustum_AnyTaper_LiesBetweenTheCylindersAndAtTheirLimit(PositiveInt top, PositiveInt bottom, PositiveInt height)
    {
        (Length wide, Length narrow) = (Length.FromCentimeters(Between(top, 5, 40)), Length.FromCentimeters(Between(bottom, 1, 40)));
        Length tall = Length.FromCentimeters(Between(height, 2, 40));
        double tapered = Container.RoundTapered(wide, narrow, tall).BrimVolume.Liters;
        double[] upright = [Container.Round(wide, tall).BrimVolume.Liters, Container.Round(narrow, tall).BrimVolume.Liters];

        Assert.InRange(tapered, upright.Min() - 1e-9, upright.Max() + 1e-9);
        Assert.Equal(upright[0], Container.RoundTapered(wide, wide, tall).BrimVolume.Liters, 1e-9);
        Assert.Equal(upright[0] / 3, Container.RoundTapered(wide, Length.Zero, tall).BrimVolume.Liters, 1e-9);
    }

    [Property]
    public void Bowl_HalfSphere_IsTwoThirdsOfItsCylinder(PositiveInt diameter)
    {
        Length across = Length.FromCentimeters(Between(diameter, 5, 80));
        BowlContainer half = Container.HalfSphere(across);

        Assert.Equal(2 * Container.Round(across, half.Height).BrimVolume.Liters / 3, half.BrimVolume.Liters, 1e-9 * half.BrimVolume.Liters);
    }

    [Property]
    public void Bowl_Flat_NearsTheParaboloidOfHalfItsCylinder(PositiveInt diameter)
    {
        Length across = Length.FromCentimeters(Between(diameter, 20, 80));
        Length flat = Length.FromCentimeters(0.01);

        Assert.Equal(0.5, Container.Bowl(across, flat).BrimVolume / Container.Round(across, flat).BrimVolume, 1e-5);
    }

    [Property]
    public void HalfRound_HalfPipe_IsHalfTheCylinder(PositiveInt width, PositiveInt length)
    {
        double metres = Between(width, 0.1, 0.8);
        double along = Between(length, 0.2, 2);
        HalfRoundTrough trough = Container.HalfRound(Length.FromMeters(metres), Length.FromMeters(along), Length.FromMeters(metres / 2));

        Assert.Equal(Math.PI * metres * metres / 8 * along, trough.BrimVolume.CubicMeters, 1e-12);
    }

    [Property]
    public void Barrel_Half_IsWhatGaugersReckon(PositiveInt belly, PositiveInt head, PositiveInt height)
    {
        double wide = Between(belly, 0.3, 1);
        double narrow = wide * Between(head, 0, 1);
        double tall = Between(height, 0.2, 1);
        HalfBarrel barrel = Container.Barrel(Length.FromMeters(wide), Length.FromMeters(narrow), Length.FromMeters(tall));

        Assert.Equal(Math.PI * tall * (8 * wide * wide + 4 * wide * narrow + 3 * narrow * narrow) / 60, barrel.BrimVolume.CubicMeters, 1e-12);
    }

    [Property]
    public void WithinWalls_AnyShape_IsSmallerAndOfNoWallsIsTheSame(PositiveInt shape, PositiveInt wall)
    {
        Container outside = Any(shape);
        Length thin = Length.FromMillimeters(Between(wall, 0.1, 3));

        Assert.Equal(outside, outside.WithinWalls(Length.Zero, Length.Zero));
        Assert.True(outside.WithinWalls(thin, thin).BrimVolume < outside.BrimVolume);
    }

    // Level, the wall is as thick at every height: what is across inside is what is across outside at that height less twice the wall.
    [Property]
    public void WithinWalls_AnyHeight_LeavesAWallOfOneThickness(PositiveInt shape, PositiveInt thickness, PositiveInt ground, PositiveInt share)
    {
        Container outside = Drawn((shape.Get % 3) switch { 0 => 0, 1 => 1, _ => 5 }, new Random(shape.Get), 1);
        double wall = Between(thickness, 0.0005, 0.006);
        double floor = Between(ground, 0, 0.02);
        Container inside = outside.WithinWalls(Length.FromMeters(wall), Length.FromMeters(floor));
        double height = inside.Height.Meters * Between(share, 0, 1);
        double form = outside is SquareContainer ? 1 : Math.PI / 4;

        Assert.Equal(
            Math.Sqrt(outside.SquareMetresAt(height + floor) / form) - 2 * wall,
            Math.Sqrt(inside.SquareMetresAt(height) / form),
            1e-9);
    }

    [Property]
    public void Class_AnyVolume_HoldsItWithinItsLimits(PositiveInt drawn)
    {
        Volume volume = Volume.FromCubicInches(Between(drawn, 1, 1400));
        NurseryClass? found = NurseryClass.Of(volume);

        Assert.Equal(NurseryClass.All.SingleOrDefault(one => volume.Liters >= one.Low.Liters && volume.Liters <= one.High.Liters), found);
    }

    [Property]
    public void Balance_MoreOfTheRicherPart_NeverTiesUpMore(PositiveInt first, PositiveInt more)
    {
        BalancePart bark = new("bark", Volume.FromLiters(50), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(50), MassFraction.FromPercent(0.3));
        NitrogenTurn Turn(double litres) => new MixBalance(
            [bark, new BalancePart("manure", Volume.FromLiters(litres), Density.FromKilogramsPerCubicMeter(500), MassFraction.FromPercent(35), MassFraction.FromPercent(3))],
            Ratio.Zero).NitrogenTurn!.Value;
        double little = Between(first, 0, 50);

        Assert.True(Turn(little + Between(more, 0, 100)) <= Turn(little));
    }

    [Property]
    public void Tray_AnyCount_HoldsThePlantsAndOneTrayLessDoesNot(PositiveInt rows, PositiveInt columns, PositiveInt plants)
    {
        CellTray tray = new(Container.Round(Length.FromCentimeters(3), Length.FromCentimeters(4)), 1 + rows.Get % 30, 1 + columns.Get % 30);
        int trays = tray.TraysFor(plants.Get);

        Assert.True(trays * tray.Cells >= plants.Get && (trays - 1) * tray.Cells < plants.Get);
        Assert.Equal(tray.Cells * tray.Cell.BrimVolume.Liters, tray.BrimVolume.Liters, 1e-9);
    }

    [Property]
    public void Balance_AnyTwoParts_HasARatioBetweenTheirs(PositiveInt first, PositiveInt second, PositiveInt bark, PositiveInt compost)
    {
        BalancePart one = new("bark", Volume.FromLiters(Between(first, 1, 100)), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(50), MassFraction.FromPercent(Between(bark, 0.1, 2)));
        BalancePart other = new("compost", Volume.FromLiters(Between(second, 1, 100)), Density.FromKilogramsPerCubicMeter(400), MassFraction.FromPercent(25), MassFraction.FromPercent(Between(compost, 0.5, 3)));
        MixBalance mix = new([one, other], Ratio.FromPercent(10));
        double[] ratios = [one.Carbon / one.Nitrogen, other.Carbon / other.Nitrogen];

        Assert.InRange(mix.CarbonToNitrogen!.Value, ratios.Min() - 1e-9, ratios.Max() + 1e-9);
        Assert.Equal((one.Volume + other.Volume).Liters * 0.9, mix.Volume.Liters, 1e-9);
        Assert.Equal(mix.DryMass.Kilograms, (mix.DryBulkDensity * mix.Volume).Kilograms, 1e-9);
    }

    [Property]
    public void Balance_WithTheNitrogenItLacks_IsAtTheRatio(PositiveInt volume, PositiveInt wanted)
    {
        double ratio = Between(wanted, 10, 60);
        MixBalance mix = new(
            [new BalancePart("bark", Volume.FromLiters(Between(volume, 1, 100)), Density.FromKilogramsPerCubicMeter(180), MassFraction.FromPercent(50), MassFraction.FromPercent(0.3))],
            Ratio.Zero);
        Mass lacking = mix.NitrogenToReach(ratio);

        Assert.Equal(ratio, mix.Carbon / (mix.Nitrogen + lacking), 1e-9);
        Assert.Equal(0, mix.NitrogenToReach(mix.CarbonToNitrogen!.Value + 1).Kilograms);
    }

    [Property]
    public void Weight_MoreWater_IsMoreByTheWater(PositiveInt volume, PositiveInt first, PositiveInt second)
    {
        Volume medium = Volume.FromLiters(Between(volume, 0.1, 200));
        // A medium of 200 kg/m³ has pores of 92 % at the least.
        double low = Math.Min(Between(first, 0, 92), Between(second, 0, 92));
        double high = Math.Max(Between(first, 0, 92), Between(second, 0, 92));
        double Kilograms(double percent) => PotWeight.Wet(medium, Density.FromKilogramsPerCubicMeter(200), Ratio.FromPercent(percent), Mass.FromKilograms(1)).Kilograms;

        Assert.Equal(medium.Liters * (high - low) / 100, Kilograms(high) - Kilograms(low), 1e-9);
        Assert.Equal(Kilograms(0), PotWeight.Dry(medium, Density.FromKilogramsPerCubicMeter(200), Mass.FromKilograms(1)).Kilograms);
    }

    [Property]
    public void Addition_AnyVolume_IsInProportion(PositiveInt which, PositiveInt litres)
    {
        MediumAddition addition = MediumAdditions.All[which.Get % MediumAdditions.All.Count];
        double volume = Between(litres, 1, 1000);

        Assert.Equal(addition.Rate.KilogramsPerCubicMeter * volume / 1000, addition.For(Volume.FromLiters(volume)).Value.Kilograms, 1e-9);
    }

    [Property]
    public void Json_AnyShape_ReadsBackAsItWas(PositiveInt shape)
    {
        Container container = Any(shape);

        Assert.Equal(container, HortiCalcJson.Deserialize<Container>(HortiCalcJson.Serialize(container)));
    }

    internal static Container Any(PositiveInt shape, double times = 1) => Drawn(shape.Get % 6, new Random(shape.Get), times);

    private static Container Drawn(int kind, Random random, double times)
    {
        double wide = 0.05 + random.NextDouble() * 0.5;
        double narrow = wide * (0.3 + 0.7 * random.NextDouble());
        double tall = 0.05 + random.NextDouble() * 0.4;
        double other = 0.05 + random.NextDouble() * 0.5;
        Length M(double metres) => Length.FromMeters(metres * times);
        return kind switch
        {
            0 => Container.RoundTapered(M(wide), M(narrow), M(tall)),
            1 => Container.SquareTapered(M(wide), M(narrow), M(tall)),
            2 => Container.RectangularTapered(M(wide), M(other), M(narrow), M(other * 0.8), M(tall)),
            3 => Container.Bowl(M(wide), M(wide / 2 * (0.2 + 0.8 * random.NextDouble()))),
            4 => Container.HalfRound(M(wide), M(other), M(wide / 2 * (0.2 + 0.8 * random.NextDouble()))),
            _ => Container.Barrel(M(wide), M(narrow), M(tall)),
        };
    }

    private static double Between(PositiveInt seed, double low, double high) => low + (high - low) * new Random(seed.Get).NextDouble();
}
