using System.Diagnostics.CodeAnalysis;

namespace HortiCalc.Display;

/// <summary>
/// Tells notebooks how to show a type. Notebook kernels find this attribute by its name and shape, so that the package
/// needs no reference to any of them. The convention: .NET Interactive, docs/formatting.md,
/// https://github.com/dotnet/interactive/blob/main/docs/formatting.md.
/// </summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
internal sealed class TypeFormatterSourceAttribute(
    [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors | DynamicallyAccessedMemberTypes.PublicMethods)] Type formatterSourceType)
    : Attribute
{
    [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicConstructors | DynamicallyAccessedMemberTypes.PublicMethods)]
    public Type FormatterSourceType { get; } = formatterSourceType;

    public string[] PreferredMimeTypes { get; set; } = ["text/html"];
}
