using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A mound whose section is a part of a circle: the segment over a chord.</summary>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RoundedMound : Mound
{
    /// <summary>Makes a rounded mound.</summary>
    /// <param name="width">Across the foot; greater than zero.</param>
    /// <param name="height">From the ground to the top; greater than zero, at most half the width.</param>
    /// <param name="length">From end to end; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero, or the mound is higher than half a circle.</exception>
    public RoundedMound(Length width, Length height, Length length)
        : base(width, height, length)
    {
        double mostMetres = Boundary.Metres(Width) / 2;
        if (Boundary.Metres(Height) > mostMetres * (1 + 1e-12))
            throw Guard.Refused(nameof(height), Boundary.Metres(Height), "m", $"greater than 0 m, up to half the width, {Guard.Number(mostMetres)} m");
    }

    internal override double SectionSquareMetres => CurveKernels.SegmentSquareMetres(Boundary.Metres(Width), Boundary.Metres(Height));

    internal override double GirthMetres => CurveKernels.ArcMetres(Boundary.Metres(Width), Boundary.Metres(Height));

    private protected override string Shape(TextStyle style) => "rounded mound";
}
