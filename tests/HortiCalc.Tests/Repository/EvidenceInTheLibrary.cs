using System.Collections;
using System.Reflection;
using HortiCalc.Evidence;

namespace HortiCalc.Tests.Repository;

/// <summary>All sources, methods and cautions that the library holds in static members, found by reflection.</summary>
internal static class EvidenceInTheLibrary
{
    private static readonly Lazy<HashSet<object>> Found = new(Find);

    public static IReadOnlyList<Source> Sources => [.. Found.Value.OfType<Source>().OrderBy(source => source.Key, StringComparer.Ordinal)];

    public static IReadOnlyList<Method> Methods => [.. Found.Value.OfType<Method>().OrderBy(method => method.Key, StringComparer.Ordinal)];

    public static IReadOnlyList<Caution> Cautions => [.. Found.Value.OfType<Caution>().OrderBy(caution => caution.Code, StringComparer.Ordinal)];

    private static HashSet<object> Find()
    {
        HashSet<object> evidence = [];
        HashSet<object> seen = new(ReferenceEqualityComparer.Instance);
        IEnumerable<FieldInfo> fields = typeof(Source).Assembly.GetTypes()
            .Where(type => !type.ContainsGenericParameters && type.Namespace?.StartsWith("HortiCalc", StringComparison.Ordinal) == true)
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(field => !field.IsLiteral);
        foreach (FieldInfo field in fields)
            Visit(field.GetValue(null), evidence, seen);
        return evidence;
    }

    private static void Visit(object? value, HashSet<object> evidence, HashSet<object> seen)
    {
        if (value is null || value is string || value.GetType().IsPrimitive || !seen.Add(value))
            return;
        if (value is Source or Method or Caution)
            evidence.Add(value);
        if (value is IEnumerable items and not Delegate)
        {
            foreach (object? item in items)
                Visit(item, evidence, seen);
        }

        if (value.GetType().Namespace?.StartsWith("HortiCalc", StringComparison.Ordinal) != true)
            return;
        for (Type? type = value.GetType(); type is not null && type != typeof(object); type = type.BaseType)
        {
            foreach (FieldInfo field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
                Visit(field.GetValue(value), evidence, seen);
        }
    }
}
