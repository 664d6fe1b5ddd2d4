using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>Finds a published method of salts or nutrients by its key.</summary>
internal static class SoilKeys
{
    public static T Find<T>(IReadOnlyList<T> all, Func<T, string> keyOf, string key)
        where T : class
    {
        Guard.NotBlank(key);
        return all.FirstOrDefault(one => keyOf(one) == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", all.Select(keyOf))}.", nameof(key));
    }
}
