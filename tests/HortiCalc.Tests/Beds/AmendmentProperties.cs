using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for every layer of loose material.</summary>
public class AmendmentProperties
{
    [Property]
    public bool Coverage_OfTheVolumeForAnArea_IsThatArea(PositiveInt area, PositiveInt depth)
    {
        Area ground = Area.FromSquareMeters(Side(area).Meters);
        return Near(Amendment.Coverage(Amendment.VolumeFor(ground, Side(depth)), Side(depth)).SquareMeters, ground.SquareMeters);
    }

    [Property]
    public bool Depth_OfTheVolumeForADepth_IsThatDepth(PositiveInt area, PositiveInt depth)
    {
        Area ground = Area.FromSquareMeters(Side(area).Meters);
        return Near(Amendment.Depth(Amendment.VolumeFor(ground, Side(depth)), ground).Meters, Side(depth).Meters);
    }

    [Property]
    public bool Coverage_AtTwiceTheDepth_IsHalf(PositiveInt volume, PositiveInt depth) =>
        Near(Amendment.Coverage(Amount(volume), Side(depth)).SquareMeters, 2 * Amendment.Coverage(Amount(volume), Side(depth) * 2).SquareMeters);

    [Property]
    public bool Coverage_OfACubicYardInInches_Is324SquareFeetOverTheDepth(PositiveInt depth)
    {
        double inches = 1 + depth.Get % 24;
        return Near(Amendment.Coverage(Volume.FromCubicYards(1), Length.FromInches(inches)).SquareFeet, 324 / inches);
    }

    [Property]
    public bool VolumeFor_OneMillimetreOverOneSquareMetre_IsOneLitre(PositiveInt area, PositiveInt depth)
    {
        int squareMetres = 1 + area.Get % 1000;
        int millimetres = 1 + depth.Get % 1000;
        return Near(Amendment.VolumeFor(Area.FromSquareMeters(squareMetres), Length.FromMillimeters(millimetres)).Liters, (double)squareMetres * millimetres);
    }

    [Property]
    public bool AreaCoveredBy_TheVolumeOverAnArea_IsThatArea(PositiveInt area, PositiveInt depth, NonNegativeInt allowance)
    {
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(Side(depth), Allowance(allowance));
        Area ground = Area.FromSquareMeters(Side(area).Meters);
        return Near(layer.AreaCoveredBy(layer.VolumeOver(ground)).SquareMeters, ground.SquareMeters);
    }

    [Property]
    public bool FromVolume_OfTheVolumeOverAnArea_IsTheSameLayer(PositiveInt area, PositiveInt depth, NonNegativeInt allowance)
    {
        AmendmentLayer layer = AmendmentLayer.LooseOnTop(Side(depth), Allowance(allowance));
        Area ground = Area.FromSquareMeters(Side(area).Meters);
        return Near(AmendmentLayer.FromVolume(layer.VolumeOver(ground), ground, Allowance(allowance)).LooseDepth.Meters, Side(depth).Meters);
    }

    [Property]
    public bool VolumeOver_WithAnAllowance_IsTheNetVolumeAndThatShareMore(PositiveInt area, PositiveInt depth, NonNegativeInt allowance)
    {
        Area ground = Area.FromSquareMeters(Side(area).Meters);
        double net = Amendment.VolumeFor(ground, Side(depth)).Liters;
        double bought = AmendmentLayer.LooseOnTop(Side(depth), Allowance(allowance)).VolumeOver(ground).Liters;
        return Near(bought - net, net * Allowance(allowance).DecimalFractions, 1e-8);
    }

    [Property]
    public bool ShareOfMixedDepth_WorkedIn_HasThatShare(PositiveInt depth, NonNegativeInt share)
    {
        Ratio wanted = Ratio.FromPercent(share.Get % 101);
        return Near(AmendmentLayer.ShareOfMixedDepth(wanted, Side(depth), Ratio.Zero).ShareOfMix!.Value.Percent, wanted.Percent);
    }

    [Property]
    public bool WorkedIntoSoil_AndWorkedToTheSumOfBoth_AreOneLayer(PositiveInt layer, PositiveInt soil)
    {
        AmendmentLayer loose = AmendmentLayer.LooseOnTop(Side(layer), Ratio.Zero);
        double into = loose.WorkedIntoSoil(Side(soil)).ShareOfMix!.Value.Percent;
        double total = loose.WorkedToTotalDepth(Side(layer) + Side(soil)).ShareOfMix!.Value.Percent;
        return Near(into, total) && into is > 0 and < 100;
    }

    [Property]
    public bool WorkedIntoSoil_ComparedWithTheSameFigureAsTotal_HasTheSmallerShare(PositiveInt layer, PositiveInt more)
    {
        AmendmentLayer loose = AmendmentLayer.LooseOnTop(Side(layer), Ratio.Zero);
        Length figure = Side(layer) + Side(more);
        return loose.WorkedIntoSoil(figure).ShareOfMix!.Value.Percent < loose.WorkedToTotalDepth(figure).ShareOfMix!.Value.Percent;
    }

    [Property]
    public bool Layer_InInchesOrCentimetres_IsTheSame(PositiveInt depth, NonNegativeInt allowance)
    {
        int inches = 1 + depth.Get % 24;
        return AmendmentLayer.LooseOnTop(Length.FromInches(inches), Allowance(allowance))
            .VolumeOver(Area.FromSquareFeet(100)).CubicFeet is double cubicFeet
            && Near(cubicFeet, 100 * inches / 12.0 * (1 + Allowance(allowance).DecimalFractions));
    }
}
