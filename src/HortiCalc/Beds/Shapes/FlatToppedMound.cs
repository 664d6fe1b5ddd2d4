using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Beds;

/// <summary>A mound with a flat top and straight sides: a trapezium in section, a ridge where the top has no width.</summary>
/// <remarks>A bank that is given by its slope, 3 to 1 for instance, is as wide as its top and twice three times its height.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FlatToppedMound : Mound
{
    /// <summary>Makes a mound with a flat top.</summary>
    /// <param name="width">Across the foot; greater than zero.</param>
    /// <param name="top">Across the top; zero or more, at most the width.</param>
    /// <param name="height">From the ground to the top; greater than zero.</param>
    /// <param name="length">From end to end; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero, or the top is wider than the foot.</exception>
    public FlatToppedMound(Length width, Length top, Length height, Length length)
        : base(width, height, length)
    {
        Top = Dimension.NotNegativeKept(top, nameof(top));
        Guard.Within(Boundary.Metres(Top), 0, Boundary.Metres(Width), "m", nameof(top));
    }

    /// <summary>Across the top.</summary>
    public Length Top { get; }

    internal override double SectionSquareMetres => (Boundary.Metres(Width) + Boundary.Metres(Top)) / 2 * Boundary.Metres(Height);

    internal override double GirthMetres =>
        Boundary.Metres(Top) + 2 * double.Hypot((Boundary.Metres(Width) - Boundary.Metres(Top)) / 2, Boundary.Metres(Height));

    private protected override string Shape(TextStyle style) => $"mound with a top of {QuantityText.Of(Top, style)},";
}
