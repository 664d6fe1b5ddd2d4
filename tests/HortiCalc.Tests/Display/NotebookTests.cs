using System.Reflection;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Tests.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Display;

/// <summary>
/// The shape that notebook kernels look for by name (.NET Interactive, docs/formatting.md): an attribute named
/// TypeFormatterSourceAttribute with the source's type, and preferred MIME types; a source with CreateTypeFormatters; formatters with
/// MimeType and Format. All of it can be internal, and none of it is checked by a compiler.
/// </summary>
public class NotebookTests
{
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Instance;

    [Fact]
    public void Attribute_OfAnEstimate_HasTheNameAndMembersLookedFor()
    {
        object attribute = typeof(Estimate<Mass>).GetCustomAttributes(inherit: true)
            .Single(one => one.GetType().Name == "TypeFormatterSourceAttribute");
        Assert.Equal(typeof(DisplayFormatters), Property(attribute, "FormatterSourceType", typeof(Type)));
        Assert.Equal(["text/html"], (string[])Property(attribute, "PreferredMimeTypes", typeof(string[]))!);
        Assert.NotNull(attribute.GetType().GetConstructor([typeof(Type)]));
    }

    [Fact]
    public void Source_MadeByName_GivesFormattersByName()
    {
        foreach ((string mimeType, string start) in ((string, string)[])[("text/html", "<table"), ("text/plain", "15.2 cm\n")])
        {
            object formatter = Formatters().Single(one => (string)Property(one, "MimeType", typeof(string))! == mimeType);
            MethodInfo format = formatter.GetType().GetMethod("Format", Public, [typeof(object), typeof(TextWriter)])!;
            Assert.Equal(typeof(bool), format.ReturnType);
            StringWriter writer = new();
            Assert.True((bool)format.Invoke(formatter, [Samples.Depth, writer])!);
            Assert.StartsWith(start, writer.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Formatter_OfAnotherType_LeavesItToTheNotebook()
    {
        foreach (object formatter in Formatters())
        {
            StringWriter writer = new();
            Assert.False(((DisplayFormatter)formatter).Format("a text", writer));
            Assert.Equal("", writer.ToString());
        }
    }

    [Fact]
    public void EveryDisplayable_CarriesTheAttribute_AndEveryCarrierIsDisplayable()
    {
        Type[] types = typeof(DisplayFormatters).Assembly.GetTypes();
        IEnumerable<Type> displayables = types.Where(type => !type.IsInterface && !type.IsAbstract && type.IsAssignableTo(typeof(IDisplayable)));
        IEnumerable<Type> carriers = types.Where(type => type.GetCustomAttribute<TypeFormatterSourceAttribute>() is not null);
        Assert.Equal(displayables.OrderBy(type => type.FullName), carriers.Where(type => !type.IsAbstract).OrderBy(type => type.FullName));
        Assert.Contains(typeof(Estimate<>), carriers);
    }

    private static List<object> Formatters()
    {
        object source = typeof(DisplayFormatters).GetConstructor([])!.Invoke(null);
        MethodInfo create = source.GetType().GetMethod("CreateTypeFormatters", Public, [])!;
        return [.. (IEnumerable<object>)create.Invoke(source, null)!];
    }

    private static object? Property(object instance, string name, Type type)
    {
        PropertyInfo property = instance.GetType().GetProperty(name, Public)!;
        Assert.Equal(type, property.PropertyType);
        return property.GetValue(instance);
    }
}
