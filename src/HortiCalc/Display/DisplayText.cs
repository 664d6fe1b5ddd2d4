using System.Net;
using System.Text;

namespace HortiCalc.Display;

/// <summary>Renders a <see cref="DisplayBlock"/> as aligned text or as HTML.</summary>
internal static class DisplayText
{
    public static string Plain(DisplayBlock block)
    {
        int width = block.Rows.Select(row => row.Label.Length).DefaultIfEmpty(0).Max();
        StringBuilder text = new(block.Title);
        foreach (DisplayRow row in block.Rows)
            text.Append('\n').Append("  ").Append(row.Label.PadRight(width)).Append("  ").Append(row.Text);
        return text.ToString();
    }

    public static string Html(DisplayBlock block)
    {
        StringBuilder html = new();
        html.Append("<table><thead><tr><th colspan=\"2\" style=\"text-align:left\">")
            .Append(WebUtility.HtmlEncode(block.Title)).Append("</th></tr></thead><tbody>");
        foreach (DisplayRow row in block.Rows)
        {
            html.Append("<tr><td style=\"text-align:left;vertical-align:top\">").Append(WebUtility.HtmlEncode(row.Label))
                .Append("</td><td style=\"text-align:left\">").Append(WebUtility.HtmlEncode(row.Text)).Append("</td></tr>");
        }

        return html.Append("</tbody></table>").ToString();
    }
}
