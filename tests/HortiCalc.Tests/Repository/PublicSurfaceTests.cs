using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;
using HortiCalc.Evidence;
using HortiCalc.Json;

namespace HortiCalc.Tests.Repository;

/// <summary>Rules that hold for the whole public surface.</summary>
public partial class PublicSurfaceTests
{
    // The compiler makes a nested type of each block of extension members.
    private static readonly Type[] Public =
        [.. typeof(Source).Assembly.GetExportedTypes().Where(type => !type.Name.Contains('<', StringComparison.Ordinal))];

    [Fact]
    public void Types_Public_AreImmutable()
    {
        IEnumerable<string> setters = Public.SelectMany(type => type.GetProperties())
            .Where(property => property.DeclaringType!.Assembly == typeof(Source).Assembly && property.SetMethod is { IsPublic: true } setter
                && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(property => $"{property.DeclaringType}.{property.Name}");
        IEnumerable<string> fields = Public.Where(type => !type.IsEnum).SelectMany(type => type.GetFields())
            .Where(field => !field.IsInitOnly && !field.IsLiteral)
            .Select(field => $"{field.DeclaringType}.{field.Name}");

        Assert.Empty(setters.Concat(fields));
    }

    [Fact]
    public void Classes_Public_AreSealedStaticOrAbstract() =>
        Assert.Empty(Public.Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract && !type.IsSubclassOf(typeof(Exception))));

    [Fact]
    public void Numbers_Public_HaveNoUnitInTheirName()
    {
        IEnumerable<string> parameters = Methods().SelectMany(method => method.GetParameters()
            .Where(parameter => parameter.ParameterType == typeof(double) && Unit().IsMatch(parameter.Name!))
            .Select(parameter => $"{method.DeclaringType}.{method.Name}({parameter.Name})"));
        IEnumerable<string> properties = Public.Where(type => type.Namespace != "HortiCalc.Units").SelectMany(type => type.GetProperties())
            .Where(property => property.PropertyType == typeof(double) && Unit().IsMatch(property.Name))
            .Select(property => $"{property.DeclaringType}.{property.Name}");

        Assert.Empty(parameters.Concat(properties));
    }

    [Fact]
    public void Types_Public_CompareByValueOrAreStatic() =>
        Assert.Empty(Public.Where(type =>
            !type.IsEnum && !type.IsInterface && !(type.IsAbstract && type.IsSealed) && !type.IsSubclassOf(typeof(Exception)) && type.Namespace != "HortiCalc.Json"
            && type.GetMethod(nameof(Equals), [typeof(object)])!.DeclaringType == (type.IsValueType ? typeof(ValueType) : typeof(object))));

    [Fact]
    public void Types_PublicInputsAndResults_HaveJson() =>
        Assert.Empty(Public.Where(type =>
            !type.IsEnum && !type.IsInterface && !(type.IsAbstract && type.IsSealed) && !type.IsSubclassOf(typeof(Exception)) && !type.IsGenericTypeDefinition
            && !(type.IsAbstract && !type.IsDefined(typeof(JsonPolymorphicAttribute)))
            && !HortiCalcJson.Options.TryGetTypeInfo(type, out _)));

    // The text that the compiler makes of a record is in the culture of the machine.
    [Fact]
    public void Types_Public_SayThemselvesWhatTheyAre() =>
        Assert.Empty(Public.Where(type =>
            !type.IsEnum && !type.IsInterface && !type.IsAbstract && !type.IsSubclassOf(typeof(Exception))
            && type.GetMethod(nameof(ToString), Type.EmptyTypes) is { } text
            && (text.DeclaringType!.Assembly != type.Assembly || text.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false))));

    private static IEnumerable<MethodBase> Methods() => Public
        .Where(type => !type.IsSubclassOf(typeof(Delegate)))
        .SelectMany(type => type.GetMethods().Cast<MethodBase>().Concat(type.GetConstructors()));

    [GeneratedRegex("(?i)(metres?|centimetres|millimetres|litres?|kilograms?|grams|celsius|fahrenheit|kelvin|percent|hours|inches|pounds|feet)$")]
    private static partial Regex Unit();
}
