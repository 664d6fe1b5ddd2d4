namespace HortiCalc.Display;

/// <summary>Writes a result in one format. The member names are those that notebook kernels look for.</summary>
internal sealed class DisplayFormatter(string mimeType, Func<DisplayBlock, string> render)
{
    public string MimeType { get; } = mimeType;

    public bool Format(object instance, TextWriter writer)
    {
        if (instance is not IDisplayable displayable)
            return false;
        writer.Write(render(displayable.ToDisplay(TextStyle.Default)));
        return true;
    }
}
