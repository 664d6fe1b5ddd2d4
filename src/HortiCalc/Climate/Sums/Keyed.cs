using System.Runtime.CompilerServices;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Finds one of a known set of methods by its key.</summary>
internal static class Keyed
{
    public static T Find<T>(IReadOnlyList<T> all, Func<T, Method> evidence, string key, [CallerArgumentExpression(nameof(key))] string parameter = "")
        where T : class
    {
        Guard.NotBlank(key, parameter);
        return all.FirstOrDefault(method => evidence(method).Key == key)
            ?? throw new ArgumentException(
                $"{parameter} was '{key}'; allowed: {string.Join(", ", all.Select(method => evidence(method).Key))}.", parameter);
    }
}
