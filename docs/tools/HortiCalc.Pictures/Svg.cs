using System.Globalization;
using System.Security;
using System.Text;

namespace HortiCalc.Pictures;

/// <summary>
/// Writes a picture as SVG, element by element: text that can be searched and read aloud, numbers to a tenth of a unit, the same
/// characters in every culture. Looks are classes of one style sheet, which is given with the picture.
/// </summary>
public sealed class Svg
{
    private readonly StringBuilder text = new();
    private int depth;

    /// <param name="width">The width of the drawing, in its own units.</param>
    /// <param name="height">The height of the drawing.</param>
    /// <param name="title">What the picture is; read aloud first.</param>
    /// <param name="description">What it shows, for those who do not see it.</param>
    /// <param name="style">The style sheet.</param>
    public Svg(double width, double height, string title, string description, string style)
    {
        Line($"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {Number(width)} {Number(height)}" width="{Number(width)}" height="{Number(height)}" role="img" aria-labelledby="title description">""");
        depth++;
        Line($"""<title id="title">{Escaped(title)}</title>""");
        Line($"""<desc id="description">{Escaped(description)}</desc>""");
        Line("<style>");
        depth++;
        foreach (string rule in style.ReplaceLineEndings("\n").Trim().Split('\n'))
            Line(rule.Trim());
        depth--;
        Line("</style>");
    }

    /// <summary>A number to a tenth, without a needless zero.</summary>
    public static string Number(double value)
    {
        double rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.#", CultureInfo.InvariantCulture);
    }

    /// <summary>What is used again by name: patterns, and the like, as they are written in SVG.</summary>
    public void Define(string definitions) => Line($"<defs>{definitions}</defs>");

    /// <summary>Begins a part of the picture that has a name of its own.</summary>
    public void Begin(string title)
    {
        Line("<g>");
        depth++;
        Line($"<title>{Escaped(title)}</title>");
    }

    public void End()
    {
        depth--;
        Line("</g>");
    }

    /// <param name="left">Where it begins, ends, or has its middle, as <paramref name="anchor"/> says.</param>
    /// <param name="baseline">The height of the line that the letters stand on.</param>
    /// <param name="words">The text.</param>
    /// <param name="look">Its class.</param>
    /// <param name="anchor"><c>start</c>, <c>middle</c> or <c>end</c>.</param>
    public void Text(double left, double baseline, string words, string look, string anchor = "start") =>
        Line($"""<text x="{Number(left)}" y="{Number(baseline)}" class="{look}" text-anchor="{anchor}">{Escaped(words)}</text>""");

    public void Rectangle(double left, double top, double width, double height, string look, double round = 0) =>
        Line($"""<rect x="{Number(left)}" y="{Number(top)}" width="{Number(width)}" height="{Number(height)}" rx="{Number(round)}" class="{look}"/>""");

    public void Stroke(double fromX, double fromY, double toX, double toY, string look) =>
        Line($"""<path d="M{Number(fromX)} {Number(fromY)}L{Number(toX)} {Number(toY)}" class="{look}"/>""");

    public void Dot(double x, double y, double radius, string look) =>
        Line($"""<circle cx="{Number(x)}" cy="{Number(y)}" r="{Number(radius)}" class="{look}"/>""");

    public void Path(string data, string look) => Line($"""<path d="{data}" class="{look}"/>""");

    /// <summary>The whole picture.</summary>
    public string Finish() => text + "</svg>\n";

    private static string Escaped(string words) => SecurityElement.Escape(words);

    private void Line(string line) => text.Append(' ', 2 * depth).Append(line).Append('\n');
}
