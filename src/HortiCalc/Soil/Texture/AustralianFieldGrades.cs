using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The field texture grades of Australia by their clay, whole table.</summary>
/// <remarks>They are grades of feel: clay alone does not tell a sandy clay loam from a loam, so that a clay content has several.</remarks>
public static class AustralianFieldGrades
{
    /// <summary>Every grade, from sand to heavy clay.</summary>
    public static IReadOnlyList<AustralianFieldGrade> All { get; } = ValueList<AustralianFieldGrade>.Of(
    [
        Grade("sand", 0, 5, "<5"),
        Grade("loamy sand", 5, 5, "about 5"),
        Grade("clayey sand", 5, 10, "5-10"),
        Grade("sandy loam", 10, 20, "10-20"),
        Grade("loam", 25, 25, "about 25"),
        Grade("silty loam", 25, 100, "25 or more"),
        Grade("sandy clay loam", 20, 30, "20-30"),
        Grade("clay loam", 30, 35, "30-35"),
        Grade("light clay", 35, 40, "35-40"),
        Grade("light medium clay", 40, 45, "40-45"),
        Grade("medium clay", 45, 55, "45-55"),
        Grade("medium heavy clay", 50, 100, "50 or more"),
        Grade("heavy clay", 50, 100, "50 or more"),
    ]);

    /// <summary>The grades whose printed clay has this one; the ends of a range belong to both neighbours.</summary>
    /// <param name="clay">The share of clay, from 0 to 100 %.</param>
    /// <returns>The grades, the sandiest first; a grade of <c>about</c> only at its figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %.</exception>
    /// <example><code>
    /// Console.WriteLine(AustralianFieldGrades.WithClay(MassFraction.FromPercent(37))[1]); // light clay: clay 35-40 % [...]
    /// </code></example>
    public static IReadOnlyList<AustralianFieldGrade> WithClay(MassFraction clay)
    {
        double percent = Guard.Within(Boundary.MassFraction(clay) * 100, 0, 100, "%", nameof(clay));
        return ValueList<AustralianFieldGrade>.Of(All.Where(grade =>
            Boundary.MassFraction(grade.ClayLow) * 100 <= percent && percent <= Boundary.MassFraction(grade.ClayHigh) * 100));
    }

    private static AustralianFieldGrade Grade(string name, double low, double high, string printed) =>
        new(name, MassFraction.FromPercent(low), MassFraction.FromPercent(high), printed, TextureEvidence.AustralianGrades);
}
