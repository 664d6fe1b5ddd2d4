using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>The height of a grower's pot from its diameter and class.</summary>
/// <example><code>
/// Estimate&lt;Length&gt; height = PotClasses.HeightOf(Length.FromInches(6), PotClass.Azalea);   // 4.5 in
/// Console.WriteLine(height);
/// </code></example>
public static class PotClasses
{
    private static readonly Method ByClass = new(
        "pot-height-by-class",
        "height of a pot by its class",
        new Source(
            "pot-shape-classes", "Greenhouse containers: classes of pots", "floriculture teaching text (US)", null, "http://jfjm100.com/horticulture/greenhouse-containers.html"),
        new Domain("growers' pots of the United States"));

    /// <summary>The height of a pot.</summary>
    /// <param name="diameter">Across the brim; greater than zero.</param>
    /// <param name="of">The class.</param>
    /// <returns>The height.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not greater than zero, or there is no such class.</exception>
    public static Estimate<Length> HeightOf(Length diameter, PotClass of)
    {
        double metres = Guard.Positive(Boundary.Metres(diameter), "m", nameof(diameter));
        double share = Guard.Defined(of) switch
        {
            PotClass.Azalea => 0.75,
            PotClass.Pan => 0.5,
            _ => 1,
        };
        return new Estimate<Length>(Length.FromMeters(metres * share), ByClass);
    }
}
