using System.Diagnostics.CodeAnalysis;

namespace HortiCalc.Display;

/// <summary>The formatters of every <see cref="IDisplayable"/>, in the shape that notebook kernels look for by convention.</summary>
internal sealed class DisplayFormatters
{
    private readonly DisplayFormatter[] formatters =
    [
        new DisplayFormatter("text/html", DisplayText.Html),
        new DisplayFormatter("text/plain", DisplayText.Plain),
    ];

    /// <summary>The formatters; their members are found by name, so that trimming must leave them.</summary>
    [DynamicDependency(DynamicallyAccessedMemberTypes.PublicMethods | DynamicallyAccessedMemberTypes.PublicProperties, typeof(DisplayFormatter))]
    public IEnumerable<object> CreateTypeFormatters() => formatters;
}
