using System.Net;
using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Tests.Evidence;

namespace HortiCalc.Tests.Display;

public class DisplayTextTests
{
    private static readonly DisplayBlock Estimate = ((IDisplayable)Samples.Depth
        .AdjustedBy(Samples.Rule, depth => depth)
        .WithCautions(Samples.Danger)).ToDisplay(TextStyle.Default);

    [Fact]
    public void Plain_AnEstimate_IsASmallAlignedTable() => Assert.Equal(
        """
        15.2 cm
          range   10.2 cm to 20.3 cm (range printed by the source)
          method  sample table
          then    scaled to depth
          note    Read the table with care.
          danger  Wear goggles.
          source  Sample Extension, Sample Bulletin 7 (1999)
        """.ReplaceLineEndings("\n"),
        DisplayText.Plain(Estimate));

    [Fact]
    public void Plain_WithoutRows_IsTheTitle() => Assert.Equal("3 pots", DisplayText.Plain(new DisplayBlock("3 pots")));

    [Fact]
    public void Html_AnEstimate_IsATableOfItsRows()
    {
        string html = DisplayText.Html(Estimate);
        Assert.StartsWith("<table><thead><tr><th colspan=\"2\"", html, StringComparison.Ordinal);
        Assert.EndsWith("</tbody></table>", html, StringComparison.Ordinal);
        Assert.Equal(Estimate.Rows.Count, html.Split("<tr><td").Length - 1);
        Assert.Contains(">15.2 cm</th>", html, StringComparison.Ordinal);
        Assert.Contains(">Wear goggles.</td>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Html_TextWithMarkup_IsEscaped()
    {
        Caution caution = new("x.y", CautionLevel.Care, "Keep <b>pH</b> > 5 & \"dry\".", Samples.Source);
        string html = DisplayText.Html(((IDisplayable)new Estimate<string>("<script>alert('x')</script>", Samples.Method, cautions: [caution])).ToDisplay(TextStyle.Default));
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.Contains("Keep &lt;b&gt;pH&lt;/b&gt; &gt; 5 &amp; &quot;dry&quot;.", html, StringComparison.Ordinal);
    }

    [Property]
    public bool Html_AnyText_ReadsBackAndKeepsTheTagsBalanced(NonNull<string> title, NonNull<string> label, NonNull<string> text)
    {
        string html = DisplayText.Html(new DisplayBlock(title.Get) { Rows = [new DisplayRow(label.Get, text.Get)] });
        string inside = html.Split("<td style=\"text-align:left\">")[1].Split("</td>")[0];
        return html.Count(c => c == '<') == 16 && html.Count(c => c == '>') == 16 && WebUtility.HtmlDecode(inside) == WebUtility.HtmlDecode(WebUtility.HtmlEncode(text.Get));
    }

    [Property]
    public bool Plain_AnyLabels_StartsEveryTextInOneColumn(NonEmptyArray<byte> lengths)
    {
        DisplayBlock block = new("title") { Rows = [.. lengths.Get.Select(length => new DisplayRow(new string('x', length % 20 + 1), "#"))] };
        string[] lines = DisplayText.Plain(block).Split('\n');
        return lines.Length == block.Rows.Count + 1 && lines.Skip(1).Select(line => line.IndexOf('#', StringComparison.Ordinal)).Distinct().Count() == 1;
    }
}
