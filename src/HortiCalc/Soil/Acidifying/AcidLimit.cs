using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published limit of how much sulfur one application and one year may hold.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. Limits are of elemental sulfur; other materials count by what they neutralise. They differ eightfold
/// between turf and a field, so the ground decides which to choose.
/// </remarks>
/// <example><code>
/// AcidLimit ours = new(
///     new Method("own-limit", "limit of our county", Source.CommonPractice("own-limit", "limit of our county"), new Domain("lawns")),
///     Mass.FromPounds(3) / Area.FromSquareFeet(1000),
///     fewestMonths: 6);
/// Console.WriteLine(ours);
/// </code></example>
public sealed record AcidLimit
{
    /// <summary>Describes a limit of one's own, for instance that of a local laboratory.</summary>
    /// <param name="method">The limit's name and source.</param>
    /// <param name="maximum">The most elemental sulfur that one application holds; above zero.</param>
    /// <param name="maximumPerYear">The most in one year, or <see langword="null"/> where none is printed; not below the maximum.</param>
    /// <param name="fewestMonths">The fewest months between two applications, or <see langword="null"/> where none are printed.</param>
    /// <exception cref="ArgumentNullException">The method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A maximum is not above zero, that of a year below that of an application, or the months below one.</exception>
    public AcidLimit(Method method, AreaDensity maximum, AreaDensity? maximumPerYear = null, int? fewestMonths = null)
    {
        Method = Guard.NotNull(method);
        double most = Guard.Positive(Boundary.GramsPerSquareMetre(maximum), "g/m²", nameof(maximum));
        Maximum = HouseUnits.Normalise(maximum);
        if (maximumPerYear is { } yearly)
        {
            Guard.AtLeast(Boundary.GramsPerSquareMetre(yearly), most, "g/m²", nameof(maximumPerYear));
            MaximumPerYear = HouseUnits.Normalise(yearly);
        }

        FewestMonths = fewestMonths is { } months ? Guard.AtLeast(months, 1, nameof(fewestMonths)) : null;
    }

    /// <summary>Turf mown at 2 inches or more, Purdue: 5 lb/1000 sq ft at a time and 10 lb a year. Less on turf mown lower.</summary>
    public static AcidLimit PurdueTurf { get; } = new(
        Rule("acid-limit-purdue-turf", "limit for turf, Purdue", AcidSources.Purdue, "turf mown at 2 inches or more; much less on turf mown lower"),
        PoundsPer1000SquareFeet(5),
        PoundsPer1000SquareFeet(10));

    /// <summary>Home lawn, Clemson: 5 lb/1000 sq ft at a time, three months apart, in cool weather.</summary>
    /// <remarks>Printed as 5 to 10 lb, and as every 2 to 3 months; the careful end of both is taken.</remarks>
    public static AcidLimit ClemsonLawn { get; } = new(
        Rule("acid-limit-clemson-lawn", "limit for a lawn, Clemson", AcidSources.Clemson, "below 75 °F, watered in at once"),
        PoundsPer1000SquareFeet(5),
        fewestMonths: 3);

    /// <summary>Garden bed: 2 lb/100 sq ft at a time, three months apart; common practice.</summary>
    public static AcidLimit GardenBed { get; } = new(
        Rule("acid-limit-garden-bed", "limit for a garden bed", AcidSources.GardenLimit, "beds and gardens"),
        PoundsPer1000SquareFeet(20),
        fewestMonths: 3);

    /// <summary>Blueberries after planting, on the surface: 0.7 lb/100 sq ft a year, eXtension.</summary>
    public static AcidLimit BlueberrySurface { get; } = new(
        Rule("acid-limit-blueberry-surface", "limit on the surface around blueberries", AcidSources.Blueberry, "after planting, not mixed in"),
        PoundsPer1000SquareFeet(7),
        PoundsPer1000SquareFeet(7),
        fewestMonths: 12);

    /// <summary>Fields, British Columbia: about 2 t/ha at a time.</summary>
    public static AcidLimit BritishColumbia { get; } = new(
        Rule("acid-limit-british-columbia", "limit for fields, British Columbia", AcidSources.BritishColumbia, "worked into a field"),
        AreaDensity.FromGramsPerSquareMeter(2 * LimeUnits.GramsPerSquareMetrePerTonnePerHectare));

    /// <summary>The limit's name and source.</summary>
    public Method Method { get; }

    /// <summary>The most elemental sulfur that one application holds.</summary>
    public AreaDensity Maximum { get; }

    /// <summary>The most in one year, or <see langword="null"/> where none is printed.</summary>
    public AreaDensity? MaximumPerYear { get; }

    /// <summary>The fewest months between two applications, or <see langword="null"/> where none are printed.</summary>
    public int? FewestMonths { get; }

    /// <summary>The limit's name and source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    /// <summary>How many equal applications a whole takes; none for nothing.</summary>
    internal int CountOf(double sulfurGramsPerSquareMetre)
    {
        // A hair is taken off, so that twice the maximum is two applications in every unit.
        double needed = Math.Ceiling(sulfurGramsPerSquareMetre / Boundary.GramsPerSquareMetre(Maximum) * (1 - 1e-9));
        return needed <= MostCount
            ? (int)needed
            : throw Guard.Refused(
                "requirement", sulfurGramsPerSquareMetre, "g/m² of sulfur", $"up to {Guard.Number(MostCount)} times what one application holds");
    }

    /// <summary>How many calendar years so many equal applications reach into at the soonest, or nothing where no pace is printed.</summary>
    internal int? YearsOf(int count, double eachGramsPerSquareMetre)
    {
        if (count == 0)
            return 0;
        int? byMonths = FewestMonths is { } months ? (count - 1) * months / 12 + 1 : null;
        if (MaximumPerYear is not { } yearly)
            return byMonths;
        int perYear = (int)Math.Max(1, Math.Floor(Boundary.GramsPerSquareMetre(yearly) / eachGramsPerSquareMetre * (1 + 1e-9)));
        return Math.Max(byMonths ?? 1, (count + perYear - 1) / perYear);
    }

    // More applications than anyone lives to see.
    private const int MostCount = 1000;

    private static Method Rule(string key, string name, Source source, string ground) => new(key, name, source, new Domain($"elemental sulfur; {ground}"));

    private static AreaDensity PoundsPer1000SquareFeet(double value) =>
        AreaDensity.FromGramsPerSquareMeter(value * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet);
}
