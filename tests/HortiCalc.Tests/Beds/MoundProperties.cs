using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for mounds and sloping beds.</summary>
public class MoundProperties
{
    [Property]
    public bool Rounded_AsHighAsHalfItsWidth_IsHalfACylinder(PositiveInt width, PositiveInt length)
    {
        Mound mound = Mound.Rounded(Side(width), Side(width) / 2, Side(length));
        return Near(mound.Section.SquareMeters, Bed.Circle(Side(width)).Area.SquareMeters / 2)
            && Near(mound.Surface.SquareMeters, Bed.Circle(Side(width)).Perimeter.Meters / 2 * Side(length).Meters);
    }

    [Property]
    public bool Rounded_VeryFlat_IsTheParabola(PositiveInt width, PositiveInt length)
    {
        Mound mound = Mound.Rounded(Side(width), Side(width) * 1e-6, Side(length));
        double box = Side(width).Meters * Side(width).Meters * 1e-6;
        return Near(mound.Section.SquareMeters, box * 2 / 3) && Near(mound.Surface.SquareMeters, mound.Ground.Area.SquareMeters, 1e-9);
    }

    // By slices of the circle, which shares no formula with the sector less the triangle.
    [Property]
    public bool Rounded_Section_IsTheSumOfItsSlices(PositiveInt width, PositiveInt share)
    {
        double w = Side(width).Meters;
        double h = w / 2 * (5 + share.Get % 96) / 100;
        double radius = (w * w / 4 + h * h) / (2 * h);
        const int slices = 4000;
        double sum = Enumerable.Range(0, slices).Select(i => w * ((i + 0.5) / slices - 0.5))
            .Sum(x => Math.Sqrt(radius * radius - x * x) - (radius - h)) * w / slices;
        return Near(Mound.Rounded(Length.FromMeters(w), Length.FromMeters(h), Length.FromMeters(1)).Section.SquareMeters, sum, 1e-4);
    }

    [Property]
    public bool Rounded_LiesBetweenTheRidgeAndTheBox(PositiveInt width, PositiveInt share, PositiveInt length)
    {
        Length height = Side(width) / 2 * (1 + share.Get % 100) / 100;
        Mound mound = Mound.Rounded(Side(width), height, Side(length));
        Mound ridge = Mound.FlatTopped(Side(width), Length.Zero, height, Side(length));
        return mound.Volume > ridge.Volume && mound.Surface > ridge.Surface && mound.Volume < mound.Ground.FillVolume(height);
    }

    [Property]
    public bool FlatTopped_WithATopAsWideAsItsFoot_IsTheFilledRectangle(PositiveInt width, PositiveInt height, PositiveInt length)
    {
        Mound box = Mound.FlatTopped(Side(width), Side(width), Side(height), Side(length));
        return Near(box.Volume.Liters, box.Ground.FillVolume(Side(height)).Liters)
            && Near(box.Surface.SquareMeters, (Side(width).Meters + 2 * Side(height).Meters) * Side(length).Meters);
    }

    [Property]
    public bool FlatTopped_WithoutATop_IsHalfTheBox(PositiveInt width, PositiveInt height, PositiveInt length)
    {
        Mound ridge = Mound.FlatTopped(Side(width), Length.Zero, Side(height), Side(length));
        return Near(2 * ridge.Volume.Liters, ridge.Ground.FillVolume(Side(height)).Liters);
    }

    [Property]
    public bool Mounds_TwoEndToEnd_AddUp(PositiveInt width, PositiveInt share, PositiveInt first, PositiveInt second)
    {
        Length height = Side(width) / 2 * (1 + share.Get % 100) / 100;
        return Near(
            Mound.Rounded(Side(width), height, Side(first) + Side(second)).Volume.Liters,
            Mound.Rounded(Side(width), height, Side(first)).Volume.Liters + Mound.Rounded(Side(width), height, Side(second)).Volume.Liters);
    }

    [Property]
    public bool Mounds_ScaledByAFactor_ScaleVolumeByItsCubeAndSurfaceByItsSquare(PositiveInt width, PositiveInt share, PositiveInt length, PositiveInt drawn)
    {
        double factor = 0.1 + drawn.Get % 90 / 10.0;
        Length height = Side(width) / 2 * (1 + share.Get % 100) / 100;
        (Mound Small, Mound Large)[] pairs =
        [
            (Mound.Rounded(Side(width), height, Side(length)), Mound.Rounded(Side(width) * factor, height * factor, Side(length) * factor)),
            (Mound.FlatTopped(Side(width), height, height, Side(length)), Mound.FlatTopped(Side(width) * factor, height * factor, height * factor, Side(length) * factor)),
        ];
        return pairs.All(pair =>
            Near(pair.Large.Volume.Liters, factor * factor * factor * pair.Small.Volume.Liters)
            && Near(pair.Large.Surface.SquareMeters, factor * factor * pair.Small.Surface.SquareMeters));
    }

    [Property]
    public bool SlopingBed_WithEqualDepths_IsTheFilledRectangle(PositiveInt width, PositiveInt length, PositiveInt depth)
    {
        SlopingBed bed = new(Side(width), Side(length), Side(depth), Side(depth));
        return Near(bed.Volume.Liters, bed.Ground.FillVolume(Side(depth)).Liters) && Near(bed.SlopingFace.SquareMeters, bed.Ground.Area.SquareMeters);
    }

    [Property]
    public bool SlopingBed_CutInTheMiddle_IsTheSumOfBothHalves(PositiveInt width, PositiveInt length, PositiveInt shallow, PositiveInt deep)
    {
        SlopingBed whole = new(Side(width), Side(length), Side(shallow), Side(deep));
        SlopingBed upper = new(Side(width), Side(length) / 2, Side(shallow), whole.MeanDepth);
        SlopingBed lower = new(Side(width), Side(length) / 2, whole.MeanDepth, Side(deep));
        return Near(whole.Volume.Liters, upper.Volume.Liters + lower.Volume.Liters)
            && Near(whole.SlopingFace.SquareMeters, upper.SlopingFace.SquareMeters + lower.SlopingFace.SquareMeters)
            && Near(whole.Volume.Liters, new SlopingBed(Side(width), Side(length), Side(deep), Side(shallow)).Volume.Liters);
    }
}
