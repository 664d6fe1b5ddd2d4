using System.Text;

namespace HortiCalc.Pictures;

/// <summary>A field of a picture with two axes: where a value comes to lie.</summary>
/// <param name="Left">The left edge in the picture.</param>
/// <param name="Top">The upper edge in the picture.</param>
/// <param name="Width">The width in the picture.</param>
/// <param name="Height">The height in the picture.</param>
/// <param name="FromX">The value at the left edge.</param>
/// <param name="ToX">The value at the right edge.</param>
/// <param name="FromY">The value at the lower edge.</param>
/// <param name="ToY">The value at the upper edge.</param>
public sealed record Plot(double Left, double Top, double Width, double Height, double FromX, double ToX, double FromY, double ToY)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public double X(double value) => Left + (value - FromX) / (ToX - FromX) * Width;

    public double Y(double value) => Bottom - (value - FromY) / (ToY - FromY) * Height;

    /// <summary>The path of a line through points.</summary>
    public string Line(IEnumerable<Point> points)
    {
        StringBuilder data = new();
        foreach (Point point in points)
            data.Append(data.Length == 0 ? 'M' : 'L').Append(Svg.Number(X(point.X))).Append(' ').Append(Svg.Number(Y(point.Y)));
        return data.ToString();
    }

    /// <summary>The path of an area with points as corners.</summary>
    public string Area(IEnumerable<Point> corners) => Line(corners) + "Z";

    /// <summary>A line from the left edge to the right one.</summary>
    public void Level(Svg svg, double value, string look) => svg.Stroke(Left, Y(value), Right, Y(value), look);
}
