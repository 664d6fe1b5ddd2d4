using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Containers;

/// <summary>Published mixes, in parts of loose volume as their sources print them.</summary>
/// <remarks>Lime and fertiliser that a source adds per volume are not part of the parts; see <see cref="MediumAdditions"/>. Where a source prints
/// a range of parts, its two ends are two recipes.</remarks>
/// <example><code>
/// MediumBatch batch = MediumRecipes.JohnInnesPotting.ForBatch(Volume.FromLiters(120), mixingLoss: Ratio.Zero);
/// </code></example>
public static class MediumRecipes
{
    private static readonly Source JohnInnes = new(
        "john-innes-metric",
        "How to make John Innes compost",
        "gardening text (UK)",
        2011,
        "https://gardenofeaden.blogspot.com/2011/03/how-to-make-john-innes-compost.html");

    private static readonly Source Nebraska = new(
        "nebraska-potting-mix",
        "Homemade potting mix",
        "Nebraska Extension after Penn State and University of Florida",
        null,
        "https://www.federatedgardenclubsofnebraskainc.com/homemade-potting-mix");

    private static readonly Source Cornell = new(
        "cornell-foliage-mix",
        "Cornell foliage mix (quoted)",
        "garden centre quoting Cornell University",
        null,
        "https://www.greenthumbalmanac.com/soils-mulch");

    private static readonly Source OrganicGardening = new(
        "organic-gardening-mixes",
        "Potting soil recipes",
        "Organic Gardening magazine",
        null,
        "http://www.organicgardening.com/learn-and-grow/potting-soil-recipes");

    private static readonly Source SanFrancisco = new(
        "san-francisco-organic-mix",
        "Make your own organic soil mix",
        "San Francisco master gardeners",
        2008,
        "http://sfmga.blogspot.com/2008/04/make-your-own-organic-soil-mix.html");

    private static readonly Source NewZealand = new(
        "new-zealand-uc-mix",
        "University of California mix ingredients",
        "orchid society archive (New Zealand)",
        1970,
        "https://orchids.herokuapp.com/articles/university-of-california-mix-ingredients");

    private static readonly Source Minnesota = new(
        "minnesota-compost-use",
        "Using compost",
        "Western Lake Superior Sanitary District (Minnesota)",
        null,
        "https://wlssd.com/products/garden-green-compost/using-compost/");

    private static readonly Source Beardsworths = new(
        "beardsworths-potting-compost", "Potting compost recipe", "plant nursery (UK)", null, "https://beardsworths.co.uk/?p=779");

    private static readonly Source BetterHomes = new(
        "better-homes-soil-recipe", "Soil recipe", "Better Homes and Gardens (US)", null, "http://www.bhg.com/advice/gardening/soil/soil-recipe/");

    private static readonly Source BarkMix = new(
        "bark-mix-quoted", "Bark mix for containers, quoted", "garden blog", null, "https://grnydgrl.com/tag/pwt/");

    /// <summary>Seven loam, three peat, two sand: the classic of British pots, numbers 1 to 3.</summary>
    public static MediumRecipe JohnInnesPotting { get; } = Recipe("John Innes potting", JohnInnes, ("loam", 7), ("peat", 3), ("sand", 2));

    /// <summary>Two loam, one peat, one sand: for seed.</summary>
    public static MediumRecipe JohnInnesSeed { get; } = Recipe("John Innes seed", JohnInnes, ("loam", 2), ("peat", 1), ("sand", 1));

    /// <summary>All of them, source by source.</summary>
    public static IReadOnlyList<MediumRecipe> Published { get; } = ValueList<MediumRecipe>.Of(
    [
        JohnInnesPotting,
        JohnInnesSeed,
        Recipe("soilless", Nebraska, ("peat", 1), ("perlite or vermiculite", 1)),
        Recipe("soil-based", Nebraska, ("loam", 1), ("sphagnum peat", 1), ("coarse sand", 1)),
        Recipe("Cornell foliage", Cornell, ("peat", 0.5), ("vermiculite", 0.25), ("perlite", 0.25)),
        Recipe("organic substitute for the Cornell mix", OrganicGardening, ("peat or coir", 0.5), ("perlite", 0.5)),
        Recipe("classic soil-based", OrganicGardening, ("compost", 1), ("topsoil", 1), ("sharp sand", 1)),
        Recipe("seedling", OrganicGardening, ("compost", 2), ("peat or coir", 2), ("perlite", 1)),
        Recipe("organic potting", OrganicGardening, ("peat or coir", 1), ("peat humus", 1), ("compost", 1), ("sharp sand", 1)),
        Recipe("prick-out, least of each", OrganicGardening, ("compost", 6), ("soil", 3), ("sand", 1), ("aged manure", 1), ("peat", 1), ("leaf mould", 1)),
        Recipe("prick-out, most of each", OrganicGardening, ("compost", 6), ("soil", 3), ("sand", 2), ("aged manure", 2), ("peat", 1), ("leaf mould", 2)),
        Recipe("bark, least perlite", BarkMix, ("pine bark fines", 5), ("peat", 1), ("perlite", 1)),
        Recipe("bark, most perlite", BarkMix, ("pine bark fines", 5), ("peat", 1), ("perlite", 2)),
        Recipe("organic soil", SanFrancisco, ("vermiculite", 2), ("peat", 3), ("perlite", 2), ("manure", 2), ("topsoil", 3)),
        Recipe("University of California, New Zealand", NewZealand, ("sand", 2), ("sphagnum peat", 6)),
        Recipe("general purpose, peat and composted bark", Beardsworths, ("peat", 80), ("composted bark", 20)),
        Recipe("medium-textured", BetterHomes, ("peat", 50), ("coarse sand or perlite", 25), ("ground pine bark", 25)),
        Recipe("peat, perlite and sand", BetterHomes, ("peat", 2), ("perlite", 1), ("coarse sand", 1)),
        Recipe("peat, sand and bark", BetterHomes, ("peat", 1), ("sand", 1), ("pine bark", 1)),
        Recipe("peat, bark and perlite", BetterHomes, ("peat", 1), ("pine bark", 1), ("perlite", 1)),
        Recipe("compost potting", Minnesota, ("compost", 1), ("potting soil", 4)),
        Recipe("tree backfill", Minnesota, ("compost", 1), ("native soil", 3)),
    ]);

    /// <summary>One published recipe.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The recipe.</returns>
    /// <exception cref="ArgumentException">There is none of that name; the message lists what there is.</exception>
    public static MediumRecipe Named(string name)
    {
        Guard.NotBlank(name);
        return Published.FirstOrDefault(recipe => recipe.Name == name)
            ?? throw new ArgumentException(
                $"name was '{name}'; allowed: {string.Join(", ", Published.Select(recipe => recipe.Name))}.", nameof(name));
    }

    private static MediumRecipe Recipe(string name, Source source, params (string Material, double Parts)[] components) =>
        new(name, [.. components.Select(component => new MediumComponent(component.Material, component.Parts))], source);
}
