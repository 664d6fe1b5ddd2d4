using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>A garden and what it is to carry in one season: all that a <see cref="SeasonPlan"/> needs, but for the weather.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record Garden
{
    /// <summary>Describes a garden and what it is to carry.</summary>
    /// <param name="site">Where it is.</param>
    /// <param name="springYear">The calendar year in which the spring of the season falls, from 1900 to 9990. In the south its autumn falls in the next.</param>
    /// <param name="crops">What the crops need; each name once.</param>
    /// <param name="beds">The beds; may be empty.</param>
    /// <param name="pots">The pots; may be empty.</param>
    /// <param name="mixes">The mixes wanted; may be empty.</param>
    /// <param name="lime">The lime to buy, or <see langword="null"/> for ground limestone by mass.</param>
    /// <param name="chances">How much risk the grower accepts, or <see langword="null"/> for <see cref="AcceptedChances.Usual"/>.</param>
    /// <param name="note">A remark for the reader.</param>
    /// <exception cref="ArgumentException">A name is there twice, or a bed or pot names a crop that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The year is not from 1900 to 9990.</exception>
    public Garden(
        Site site,
        int springYear,
        IReadOnlyList<Crop> crops,
        IReadOnlyList<BedPlan>? beds = null,
        IReadOnlyList<PotPlan>? pots = null,
        IReadOnlyList<MixPlan>? mixes = null,
        LimeProduct? lime = null,
        AcceptedChances? chances = null,
        string? note = null)
    {
        Site = Guard.NotNull(site);
        SpringYear = (int)Guard.Within(springYear, 1900, 9990, "");
        Crops = ValueList<Crop>.Of(Guard.NotNull(crops));
        Beds = ValueList<BedPlan>.Of(beds);
        Pots = ValueList<PotPlan>.Of(pots);
        Mixes = ValueList<MixPlan>.Of(mixes);
        Lime = lime;
        Chances = chances;
        Note = note;
        RequireOnce(Crops.Select(crop => crop.Name), nameof(crops));
        RequireOnce(Beds.Select(bed => bed.Name).Concat(Pots.Select(pot => pot.Name)), Pots.Count > 0 ? nameof(pots) : nameof(beds));
        RequireOnce(Mixes.Select(mix => mix.Name), nameof(mixes));
        RequireCrops(Beds.Select(bed => bed.Crop), nameof(beds));
        RequireCrops(Pots.Select(pot => pot.Crop), nameof(pots));
    }

    /// <summary>Where it is.</summary>
    public Site Site { get; }

    /// <summary>The calendar year in which the spring of the season falls.</summary>
    public int SpringYear { get; }

    /// <summary>What the crops need.</summary>
    public IReadOnlyList<Crop> Crops { get; }

    /// <summary>The beds.</summary>
    public IReadOnlyList<BedPlan> Beds { get; }

    /// <summary>The pots.</summary>
    public IReadOnlyList<PotPlan> Pots { get; }

    /// <summary>The mixes wanted.</summary>
    public IReadOnlyList<MixPlan> Mixes { get; }

    /// <summary>The lime to buy, or <see langword="null"/> for ground limestone by mass.</summary>
    public LimeProduct? Lime { get; }

    /// <summary>How much risk the grower accepts, or <see langword="null"/> for the usual.</summary>
    public AcceptedChances? Chances { get; }

    /// <summary>A remark for the reader.</summary>
    public string? Note { get; }

    internal Crop CropNamed(string name) => Crops.First(crop => crop.Name == name);

    private void RequireCrops(IEnumerable<string> names, string parameter)
    {
        if (names.FirstOrDefault(name => Crops.All(crop => crop.Name != name)) is string unknown)
            throw new ArgumentException($"{parameter} named the crop '{unknown}'; allowed: {string.Join(", ", Crops.Select(crop => crop.Name))}.", parameter);
    }

    private static void RequireOnce(IEnumerable<string> names, string parameter)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        if (names.FirstOrDefault(name => !seen.Add(name)) is string twice)
            throw new ArgumentException($"{parameter} held the name '{twice}' twice; allowed: each name once.", parameter);
    }

    /// <summary>The place, the year and how much is planned.</summary>
    /// <returns>For instance <c>Larkmere Halt, season of 2027: 6 crops, 4 beds, 2 lots of pots, 2 mixes</c>.</returns>
    public override string ToString() =>
        $"{Site.Name}, season of {Guard.Number(SpringYear)}: {Counted(Crops.Count, "crop", "crops")}, {Counted(Beds.Count, "bed", "beds")}, "
        + $"{Counted(Pots.Count, "lot of pots", "lots of pots")}, {Counted(Mixes.Count, "mix", "mixes")}";

    private static string Counted(int count, string one, string many) => $"{Guard.Number(count)} {(count == 1 ? one : many)}";
}
