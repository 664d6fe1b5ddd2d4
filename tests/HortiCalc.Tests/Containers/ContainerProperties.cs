using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Containers;
using UnitsNet;
using static HortiCalc.Tests.Containers.Draw;

namespace HortiCalc.Tests.Containers;

/// <summary>What holds for every container, whatever its shape and size.</summary>
public class ContainerProperties
{
    [Property]
    public bool BrimVolume_WithoutTaper_IsTheCylinder(PositiveInt diameter, PositiveInt height)
    {
        double radiusMetres = Side(diameter).Meters / 2;
        double expectedLitres = Math.PI * radiusMetres * radiusMetres * Side(height).Meters * 1000;
        return Near(Container.RoundTapered(Side(diameter), Side(diameter), Side(height)).BrimVolume.Liters, expectedLitres)
            && Container.Round(Side(diameter), Side(height)) == Container.RoundTapered(Side(diameter), Side(diameter), Side(height));
    }

    [Property]
    public bool BrimVolume_OfAPoint_IsAThirdOfTheUprightContainer(PositiveInt side, PositiveInt height) =>
        Near(3 * Container.RoundTapered(Side(side), Length.Zero, Side(height)).BrimVolume.Liters, Container.Round(Side(side), Side(height)).BrimVolume.Liters)
        && Near(3 * Container.SquareTapered(Side(side), Length.Zero, Side(height)).BrimVolume.Liters, Container.Square(Side(side), Side(height)).BrimVolume.Liters);

    [Property]
    public bool BrimVolume_AsTheTaperVanishes_TendsToTheCylinder(PositiveInt diameter, PositiveInt height)
    {
        double cylinder = Container.Round(Side(diameter), Side(height)).BrimVolume.Liters;
        double wide = Container.RoundTapered(Side(diameter), Side(diameter) * 0.99, Side(height)).BrimVolume.Liters;
        double narrow = Container.RoundTapered(Side(diameter), Side(diameter) * 0.999_999, Side(height)).BrimVolume.Liters;
        return wide < narrow && narrow < cylinder && Near(narrow, cylinder, 2e-6);
    }

    [Property]
    public bool BrimVolume_OfATaper_LiesBetweenTheUprightContainersOfItsEnds(PositiveInt top, PositiveInt bottom, PositiveInt height)
    {
        double volume = Container.RoundTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters;
        double first = Container.Round(Side(top), Side(height)).BrimVolume.Liters;
        double second = Container.Round(Side(bottom), Side(height)).BrimVolume.Liters;
        return volume >= Math.Min(first, second) * (1 - 1e-12) && volume <= Math.Max(first, second) * (1 + 1e-12);
    }

    // The shortcut of the mean diameter falls short of the frustum by pi h (D - d)² / 48, by algebra.
    [Property]
    public bool BrimVolume_AgainstTheMeanDiameter_IsMoreByTheKnownTerm(PositiveInt top, PositiveInt bottom, PositiveInt height)
    {
        double difference = Side(top).Meters - Side(bottom).Meters;
        double frustum = Container.RoundTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters;
        double shortcut = Container.Round((Side(top) + Side(bottom)) / 2, Side(height)).BrimVolume.Liters;
        return Near(frustum - shortcut, Math.PI * Side(height).Meters * difference * difference / 48 * 1000, 1e-6);
    }

    [Property]
    public bool BrimVolume_TurnedUpsideDown_IsTheSame(PositiveInt top, PositiveInt bottom, PositiveInt height) =>
        Near(
            Container.RoundTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters,
            Container.RoundTapered(Side(bottom), Side(top), Side(height)).BrimVolume.Liters);

    [Property]
    public bool BrimVolume_OfARoundInASquare_IsAQuarterOfPiOfIt(PositiveInt top, PositiveInt bottom, PositiveInt height) =>
        Near(
            Container.RoundTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters,
            Math.PI / 4 * Container.SquareTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters);

    [Property]
    public bool BrimVolume_OfASquareAsARectangle_IsTheSame(PositiveInt top, PositiveInt bottom, PositiveInt height) =>
        Near(
            Container.SquareTapered(Side(top), Side(bottom), Side(height)).BrimVolume.Liters,
            Container.RectangularTapered(Side(top), Side(top), Side(bottom), Side(bottom), Side(height)).BrimVolume.Liters);

    [Property]
    public bool BrimVolume_OfAnUprightBox_IsTheProductOfItsSides(PositiveInt length, PositiveInt width, PositiveInt height) =>
        Near(
            Container.Rectangular(Side(length), Side(width), Side(height)).BrimVolume.Liters,
            Side(length).Decimeters * Side(width).Decimeters * Side(height).Decimeters);

    // Slices summed one by one; knows nothing of the closed formulas but the area of the surface at a height.
    [Property(MaxTest = 30)]
    public bool VolumeTo_AnyHeight_IsTheSumOfThinSlices(PositiveInt top, PositiveInt bottom, PositiveInt height, NonNegativeInt filled) =>
        OneOfEach(top, bottom, height).All(container =>
        {
            const int slices = 2_000;
            double fillMetres = container.Height.Meters * Share(filled);
            double sliceMetres = fillMetres / slices;
            double cubicMetres = Enumerable.Range(0, slices).Sum(i => container.SquareMetresAt((i + 0.5) * sliceMetres) * sliceMetres);
            return Near(container.VolumeTo(Length.FromMeters(fillMetres)).CubicMeters, cubicMetres, 1e-5);
        });

    [Property]
    public bool VolumeTo_BothPartsOfACut_AddUpToTheWhole(PositiveInt top, PositiveInt bottom, PositiveInt height, PositiveInt at)
    {
        double share = (1 + at.Get % 99) / 100.0;
        Length cut = Side(height) * share;
        Length across = Side(bottom) + (Side(top) - Side(bottom)) * share;
        RoundContainer whole = Container.RoundTapered(Side(top), Side(bottom), Side(height));
        RoundContainer upper = Container.RoundTapered(Side(top), across, Side(height) - cut);
        return Near(whole.VolumeTo(cut).Liters + upper.BrimVolume.Liters, whole.BrimVolume.Liters);
    }

    [Property]
    public bool VolumeTo_AHigherFill_IsNeverLess(PositiveInt top, PositiveInt bottom, PositiveInt height, NonNegativeInt first, NonNegativeInt second) =>
        OneOfEach(top, bottom, height).All(container =>
        {
            Length low = container.Height * Math.Min(Share(first), Share(second));
            Length high = container.Height * Math.Max(Share(first), Share(second));
            return container.VolumeTo(low).Liters <= container.VolumeTo(high).Liters;
        });

    [Property]
    public bool FillVolume_ToAHeadspace_IsTheVolumeToTheRestOfTheHeight(PositiveInt top, PositiveInt bottom, PositiveInt height, NonNegativeInt left) =>
        OneOfEach(top, bottom, height).All(container =>
        {
            Length headspace = container.Height * Share(left);
            return Near(container.FillVolume(headspace).Liters, container.VolumeTo(container.Height - headspace).Liters);
        });

    [Property]
    public bool HeightFilledBy_TheVolumeToAHeight_IsThatHeight(PositiveInt top, PositiveInt bottom, PositiveInt height, NonNegativeInt filled) =>
        OneOfEach(top, bottom, height).All(container =>
        {
            Length fill = container.Height * Share(filled);
            return Near(container.HeightFilledBy(container.VolumeTo(fill)).Meters, fill.Meters, 1e-7);
        });

    [Property]
    public bool Sizes_ScaledByAFactor_ScaleTheVolumeByItsCube(PositiveInt top, PositiveInt bottom, PositiveInt height, PositiveInt drawn)
    {
        double factor = 0.1 + drawn.Get % 90 / 10.0;
        return Near(
            Container.RectangularTapered(Side(top) * factor, Side(bottom) * factor, Side(bottom) * factor, Side(top) * factor, Side(height) * factor).BrimVolume.Liters,
            factor * factor * factor * Container.RectangularTapered(Side(top), Side(bottom), Side(bottom), Side(top), Side(height)).BrimVolume.Liters);
    }

    [Property]
    public bool Container_InInchesOrCentimetres_IsTheSame(PositiveInt top, PositiveInt height)
    {
        int topInches = 1 + top.Get % 30;
        int heightInches = 1 + height.Get % 30;
        return Near(
            Container.Round(Length.FromInches(topInches), Length.FromInches(heightInches)).BrimVolume.Liters,
            Container.Round(Length.FromCentimeters(topInches * 2.54), Length.FromCentimeters(heightInches * 2.54)).BrimVolume.Liters);
    }
}
