using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A pot, tub, trough or cell by its inside dimensions: what it holds to the brim and to any height.</summary>
/// <remarks>
/// <para>All figures are exact geometry of the inside. The size a pot is sold by is another thing: nominal litres and trade
/// gallons are names, and the brimful volume is above or below them; see <see cref="PotSizes"/>.</para>
/// <para>Immutable; equal when kind and dimensions are equal, in whatever units they were given. The set of shapes is closed:
/// each is a record of its own, and JSON tells them apart by <c>kind</c>.</para>
/// </remarks>
/// <example><code>
/// Container pot = Container.RoundTapered(
///     topDiameter: Length.FromCentimeters(17), baseDiameter: Length.FromCentimeters(12), height: Length.FromCentimeters(13));
/// Volume brim = pot.BrimVolume; // 2.17 L
/// Volume medium = pot.FillVolume(headspace: Length.FromCentimeters(1.5));
/// </code></example>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(RoundContainer), "round")]
[JsonDerivedType(typeof(SquareContainer), "square")]
[JsonDerivedType(typeof(RectangularContainer), "rectangular")]
[JsonDerivedType(typeof(BowlContainer), "bowl")]
[JsonDerivedType(typeof(HalfRoundTrough), "half-round-trough")]
[JsonDerivedType(typeof(HalfBarrel), "half-barrel")]
public abstract record Container : IFormattable, IDisplayable
{
    private protected Container(Length height) => Height = Dimension.PositiveKept(height, nameof(height));

    /// <summary>The inside height, straight up from the base to the brim.</summary>
    public Length Height { get; }

    /// <summary>What the container holds to the brim.</summary>
    [JsonIgnore]
    public Volume BrimVolume => Volume.FromLiters(CubicMetresTo(Boundary.Metres(Height)) * 1000);

    /// <summary>A round container that tapers, by its inside diameters.</summary>
    /// <param name="topDiameter">Across the brim; greater than zero.</param>
    /// <param name="baseDiameter">Across the base; zero for a point, and may exceed the top.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static RoundContainer RoundTapered(Length topDiameter, Length baseDiameter, Length height) =>
        new(topDiameter, baseDiameter, height);

    /// <summary>A round container with upright sides.</summary>
    /// <param name="diameter">Across the inside; greater than zero.</param>
    /// <param name="height">From base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero.</exception>
    public static RoundContainer Round(Length diameter, Length height)
    {
        Dimension.Positive(diameter, nameof(diameter));
        return new(diameter, diameter, height);
    }

    /// <summary>A square container that tapers, by its inside widths.</summary>
    /// <param name="topSide">One side of the brim; greater than zero.</param>
    /// <param name="baseSide">One side of the base; zero for a point, and may exceed the top.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static SquareContainer SquareTapered(Length topSide, Length baseSide, Length height) => new(topSide, baseSide, height);

    /// <summary>A square container with upright sides.</summary>
    /// <param name="side">One side; greater than zero.</param>
    /// <param name="height">From base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero.</exception>
    public static SquareContainer Square(Length side, Length height)
    {
        Dimension.Positive(side, nameof(side));
        return new(side, side, height);
    }

    /// <summary>A box or trough with upright sides.</summary>
    /// <param name="length">One side; greater than zero.</param>
    /// <param name="width">The other side; greater than zero.</param>
    /// <param name="height">From base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not greater than zero.</exception>
    public static RectangularContainer Rectangular(Length length, Length width, Length height)
    {
        Dimension.Positive(length, nameof(length));
        Dimension.Positive(width, nameof(width));
        return new(length, width, length, width, height);
    }

    /// <summary>A trough that tapers, by its inside dimensions at brim and base.</summary>
    /// <param name="topLength">One side of the brim; greater than zero.</param>
    /// <param name="topWidth">The other side of the brim; greater than zero.</param>
    /// <param name="baseLength">The side of the base below <paramref name="topLength"/>; zero or more.</param>
    /// <param name="baseWidth">The side of the base below <paramref name="topWidth"/>; zero or more.</param>
    /// <param name="height">Straight up from base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static RectangularContainer RectangularTapered(
        Length topLength, Length topWidth, Length baseLength, Length baseWidth, Length height) =>
        new(topLength, topWidth, baseLength, baseWidth, height);

    /// <summary>A bowl or hanging basket: a cap of a sphere.</summary>
    /// <param name="diameter">Across the brim; greater than zero.</param>
    /// <param name="height">From the lowest point to the brim; greater than zero, up to half the diameter.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static BowlContainer Bowl(Length diameter, Length height) => new(diameter, height);

    /// <summary>Half a sphere, as wire baskets are.</summary>
    /// <param name="diameter">Across the brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero.</exception>
    public static BowlContainer HalfSphere(Length diameter) =>
        new(diameter, Length.FromMeters(Guard.Positive(Boundary.Metres(diameter), "m", nameof(diameter)) / 2));

    /// <summary>A trough with a round bottom.</summary>
    /// <param name="width">Across the brim; greater than zero.</param>
    /// <param name="length">Along the pipe; greater than zero.</param>
    /// <param name="height">From the lowest line to the brim; greater than zero, up to half the width.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static HalfRoundTrough HalfRound(Length width, Length length, Length height) => new(width, length, height);

    /// <summary>Half a barrel, cut across its belly.</summary>
    /// <param name="bellyDiameter">Across the cut; greater than zero.</param>
    /// <param name="headDiameter">Across the base; zero or more, not more than the belly.</param>
    /// <param name="height">From base to brim; greater than zero.</param>
    /// <returns>The container.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is out of its range.</exception>
    public static HalfBarrel Barrel(Length bellyDiameter, Length headDiameter, Length height) => new(bellyDiameter, headDiameter, height);

    /// <summary>The inside of a container that was measured outside: at every height above the floor what is across less twice the wall.</summary>
    /// <param name="wall">The thickness of the wall, measured level; zero or more. Of a round bottom, at the brim.</param>
    /// <param name="floor">The thickness of the floor; zero or more. Of a round bottom it is that of the wall at least.</param>
    /// <returns>A container of the same kind by its inside.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A thickness is negative, or leaves no room inside.</exception>
    /// <example><code>
    /// Container outside = Container.RoundTapered(Length.FromCentimeters(30), Length.FromCentimeters(22), Length.FromCentimeters(28));
    /// Container terracotta = outside.WithinWalls(wall: Length.FromMillimeters(12), floor: Length.FromMillimeters(15));
    /// Console.WriteLine(terracotta.BrimVolume);
    /// </code></example>
    public Container WithinWalls(Length wall, Length floor)
    {
        double wallMetres = Guard.NotNegative(Boundary.Metres(wall), "m", nameof(wall));
        double floorMetres = Guard.NotNegative(Boundary.Metres(floor), "m", nameof(floor));
        try
        {
            return Inside(wallMetres, floorMetres);
        }
        catch (ArgumentException refused)
        {
            throw new ArgumentOutOfRangeException(
                floorMetres >= Boundary.Metres(Height) ? nameof(floor) : nameof(wall),
                $"A wall of {Guard.Number(wallMetres)} m and a floor of {Guard.Number(floorMetres)} m leave no such container inside: {Guard.Sentence(refused)}");
        }
    }

    /// <summary>What the container holds when filled to a height above its base.</summary>
    /// <param name="fillHeight">The height of the fill; from zero to <see cref="Height"/>.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is negative or above the brim.</exception>
    public Volume VolumeTo(Length fillHeight)
    {
        double fillMetres = Guard.Within(Boundary.Metres(fillHeight), 0, Boundary.Metres(Height), "m", nameof(fillHeight));
        return Volume.FromLiters(CubicMetresTo(fillMetres) * 1000);
    }

    /// <summary>What the container holds when filled to a distance below its brim.</summary>
    /// <param name="headspace">The room left below the brim, for water or for settling; from zero to <see cref="Height"/>.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The headspace is negative or more than the height.</exception>
    public Volume FillVolume(Length headspace)
    {
        double heightMetres = Boundary.Metres(Height);
        double headspaceMetres = Guard.Within(Boundary.Metres(headspace), 0, heightMetres, "m", nameof(headspace));
        return Volume.FromLiters(CubicMetresTo(heightMetres - headspaceMetres) * 1000);
    }

    /// <summary>How high a volume stands in the container: the inverse of <see cref="VolumeTo"/>.</summary>
    /// <param name="volume">The volume; from zero to <see cref="BrimVolume"/>.</param>
    /// <returns>The height above the base.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or more than the container holds.</exception>
    public Length HeightFilledBy(Volume volume)
    {
        double brimLitres = Boundary.Litres(BrimVolume);
        double litres = Boundary.Litres(volume);
        // A brimful that took a turn through another unit is still a brimful.
        Guard.Within(litres, 0, brimLitres * (1 + 1e-9), "L", nameof(volume));
        if (litres == 0)
            return Length.Zero;

        double lowMetres = 0;
        double highMetres = Boundary.Metres(Height);
        while (true)
        {
            double middleMetres = lowMetres + (highMetres - lowMetres) / 2;
            if (middleMetres <= lowMetres || middleMetres >= highMetres)
                return Length.FromMeters(highMetres);
            if (CubicMetresTo(middleMetres) * 1000 < litres)
                lowMetres = middleMetres;
            else
                highMetres = middleMetres;
        }
    }

    /// <summary>The container in metric units and invariant culture.</summary>
    /// <returns>For instance <c>round, 17 cm across the top, 12 cm at the base, 13 cm high, 2.17 L to the brim</c>.</returns>
    public sealed override string ToString() => ToString(TextStyle.Default);

    /// <summary>The container as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The shape, its dimensions and what it holds.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"{Shape(style)}, {QuantityText.Of(Height, style)} high")
    {
        Rows = [new DisplayRow("holds to the brim", QuantityText.Of(BrimVolume, style))],
    };

    /// <summary>The volume below a height, which lies from zero to the height of the container.</summary>
    internal abstract double CubicMetresTo(double heightMetres);

    /// <summary>The area of the surface at a height, which lies from zero to the height of the container.</summary>
    internal abstract double SquareMetresAt(double heightMetres);

    /// <summary>The same kind of container, by so much narrower and lower.</summary>
    private protected abstract Container Inside(double wallMetres, double floorMetres);

    /// <summary>A dimension across on top of the floor, within the walls; the outside is wider there than at its base, where it tapers.</summary>
    private protected Length Inside(Length top, Length bottom, double wallMetres, double floorMetres) =>
        Length.FromMeters(AcrossMetres(top, bottom, floorMetres) - 2 * wallMetres);

    private protected static Length Narrower(Length across, double metres) => Length.FromMeters(Boundary.Metres(across) - metres);

    /// <summary>The shape with its dimensions across, for a reader.</summary>
    private protected abstract string Shape(TextStyle style);

    /// <summary>A dimension across at a height, where sides run straight from base to brim.</summary>
    private protected double AcrossMetres(Length top, Length bottom, double heightMetres) =>
        double.Lerp(Boundary.Metres(bottom), Boundary.Metres(top), heightMetres / Boundary.Metres(Height));

    /// <summary>Whether two dimensions are one, so that the text need not give both.</summary>
    private protected static bool Same(Length left, Length right) => Boundary.Metres(left).Equals(Boundary.Metres(right));

    private string ToString(TextStyle style) =>
        $"{Shape(style)}, {QuantityText.Of(Height, style)} high, {QuantityText.Of(BrimVolume, style)} to the brim";
}
