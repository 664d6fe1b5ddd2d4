using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Published volumes of pots by the names they are sold under.</summary>
/// <remarks>
/// The sources differ, and none follows from the pots' dimensions: measure the pot, or fill it with water, where it matters. A Japanese <c>go</c> is 3 cm of diameter; P and a number
/// is the side of a square pot in centimetres.
/// </remarks>
/// <example><code>
/// Volume perPot = PotSizes.Named("us-true-volumes", "#1").Volume; // 2.8 L, not a gallon
/// Volume medium = PottingMedium.ForPots(perPot, pots: 40, compactionAllowance: Ratio.FromPercent(15));
/// </code></example>
public static class PotSizes
{
    private static readonly Source UkNursery = new(
        "uk-nursery-pots",
        "Plant pot size guide",
        "nursery (UK)",
        null,
        "https://www.jacksonsnurseries.co.uk/plant-pot-size-guide-page-2.html?selected_section=discussion");

    private static readonly Source UkByDiameter = new(
        "uk-pot-diameters",
        "What does the pot size mean",
        "plant seller (UK)",
        null,
        "https://hortico.online/blogs/news/what-does-the-pot-size-mean");

    private static readonly Source UsTrue = new(
        "us-true-volumes",
        "Nursery container names against true volume",
        "nursery (US, Colorado)",
        null,
        "https://bookcliffgardens.com/index.php/about-us/plant-catalog/item/currant-red-lake");

    private static readonly Source UsMeasured = new(
        "us-trade-measured",
        "Blow-moulded trade containers, actual volume",
        "grower forum (US)",
        null,
        "https://bonsainut.com/posts/1098490/");

    private static readonly Source Fabric = new(
        "fabric-pot-volumes",
        "Fabric pot sizes: volume in cubic yards and cubic feet",
        "fabric pot maker (US)",
        null,
        "https://smartpots.com/how-much-mix-or-medium-do-i-need/");

    private static readonly Source Illinois = new(
        "illinois-pot-diameters",
        "Recommended soil volume by pot diameter",
        "University of Illinois Extension column (re-posted)",
        null,
        "https://www.coquenexus5.com/tag/experimenting");

    private static readonly Source SmallPots = new(
        "us-small-pots",
        "Soil for standard clay and plastic pots",
        "garden advice site",
        null,
        "https://harvesttotable.com/container-and-pot-sizes-how-much-soil-do-i-need/");

    private static readonly Source OneGallonTable = new(
        "us-one-gallon-table",
        "Pots: volumes of nursery containers",
        "garden course page (US)",
        null,
        "https://sites.google.com/site/kevinplants/insideresources/nonpublicresource/potsinformation");

    private static readonly Source TradeGallons = new(
        "trade-gallon-definitions", "Gallon, trade gallon: two definitions and a class limit", "encyclopedia text, copied", null, "https://enow.com/content");

    private static readonly Source ThreeGallon = new(
        "three-gallon-pot", "How much soil do you need for a 3 gallon pot", "garden advice site", null, "https://biologyinsights.com/how-much-soil-do-you-need-for-a-3-gallon-pot");

    private static readonly Source Bulbs = new(
        "bulb-society-pots",
        "Pot sizes, measured",
        "Pacific Bulb Society, mailing list",
        2008,
        "https://pacificbulbsociety.org/pbslist/2008-July/mohem89ecmiikn6g7jm4ckk8a7.html");

    private static readonly Source Packs = new(
        "nursery-packs-arkansas", "Plant container sizes", "nursery (US, Arkansas)", null, "https://parksbrothers.com/plant-container-sizes/");

    private static readonly Source Australian = new(
        "australian-pot-widths",
        "How much potting mix does a garden pot hold",
        "garden text (Australia)",
        2021,
        "https://vitalforcewellness.net/2021/08/15/how-much-potting-mix-does-a-garden-pot-hold");

    private static readonly Source Bamboo = new(
        "uk-container-symbols", "Container sizes: symbols C and P", "plant nursery (UK)", null, "http://www.gohelios.co.uk/bamboo_size_container.aspx");

    private static readonly Source JapaneseNumbers = new(
        "japanese-go-sizes", "Sizes of pots in gō and the soil they take (in Japanese)", "gardening site (Japan)", null, "https://1gardening.net/51246286");

    private static readonly Source NevadaQuarts = new(
        "nevada-pot-quarts", "How much soil do I need, tip 1026", "nursery (US, Nevada)", 2006, "http://nevadagardens.com/StarNursery/page01/Tip%201026.htm");

    private static readonly Source TradePots = new(
        "trade-pots-listed",
        "Nursery container volumes, a maker's list quoted",
        "grower forum (US)",
        null,
        "https://davesgarden.com/community/forums/t/1290516/");

    private static readonly Source Polish = new(
        "polish-container-symbols",
        "What P and C with a number mean (Co oznaczają P i C przy nazwie donicy)",
        "garden designer (Poland)",
        null,
        "https://jakubgardner.pl/co-oznaczaja-p-liczba-i-c-liczba-przy-nazwie-donicy");

    private static readonly Source German = new(
        "german-round-pots", "Usual sizes of round pots (in German)", "garden text (Germany)", null, "http://www.meine-pflanzenwelt-des-suedens.de/989-2/");

    private static readonly Source JapaneseSoil = new(
        "japanese-go-soil", "Size of pots in gō and amount of soil (in Japanese)", "garden advice site (Japan)", null, "https://sodatekata.net/flowers/page/1410.html");

    private static readonly Source JapaneseGuide = new(
        "japanese-go-guide", "What the gō of a pot is (in Japanese)", "garden column (Japan)", null, "https://allabout.co.jp/gm/gc/72841");

    private static readonly ValueList<PotSize> All = ValueList<PotSize>.Of(
    [
        Uk("1 L", 1, 13, 10, 11),
        Uk("2 L", 2, 17, 12, 13),
        Uk("3 L", 3, 19, 13, 15),
        Uk("4 L", 4, 20, 15.5, 16.5),
        Uk("5 L", 5, 22.5, 16.5, 18),
        Uk("7 L", 7, 25, 19, 20),
        Uk("10 L", 10, 28, 24, 22.5),
        Uk("15 L", 15, 33, 25.5, 30),
        .. Litres(
            UkByDiameter,
            ("9 cm", 0.27), ("10.5 cm", 0.43), ("11 cm", 0.5), ("13 cm", 1), ("15 cm", 1.35), ("17 cm", 2), ("19 cm", 3), ("23 cm", 5)),
        .. Litres(
            UsTrue,
            ("#1", 2.8), ("#2", 6), ("#3", 9), ("#5", 14.9), ("#6", 19), ("#7", 24.6), ("#10", 34.1), ("#15", 54.9), ("#20", 74.2),
            ("#24 fibre", 112.2), ("#25", 104.5)),
        .. Gallons(UsMeasured, ("#1", 0.734), ("#2", 1.66), ("#3", 2.296), ("#5", 3.843)),
        .. ((double[])[1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 45, 65, 100, 200, 300, 400])
            .SelectMany(gallons => Gallons(Fabric, ($"{Guard.Number(gallons)} gal", gallons))),
        .. Gallons(Illinois, ("10 in", 3), ("12 in", 5), ("14 in", 7), ("16 in", 10), ("18 in", 15), ("24 in", 25), ("30 in", 30)),
        new PotSize("#1", Volume.FromCubicInches(183), OneGallonTable),
        .. Gallons(TradeGallons, ("trade gallon", 0.75), ("trade gallon, other sources", 0.71), ("#1, least of its class", 0.625)),
        new PotSize("#3", Volume.FromUsGallons(2.3), ThreeGallon, volumeHigh: Volume.FromUsGallons(2.5)),
        new PotSize(
            "5.5 in square",
            Volume.FromLiters(3),
            Bulbs,
            Container.Square(Length.FromInches(5.5), Length.FromInches(6))),
        new PotSize("1 gallon", Volume.FromLiters(2.9), Bulbs, Tapered(15.3, 13.5, 17.5)),
        new PotSize("2 gallon", Volume.FromLiters(5.6), Bulbs, Tapered(19.8, 17, 21.1)),
        new PotSize("2 gallon, of another maker", Volume.FromLiters(8.4), Bulbs, Tapered(22, 22, 22)),
        .. Litres(Packs, ("cell of 36 a tray", 0.147), ("cell of 18 a tray", 0.36), ("3.5 in round", 0.365), ("3.25 in square", 0.473), ("4 in round", 0.473)),
        .. Litres(
            Australian,
            ("10 cm", 0.5), ("15 cm", 1.9), ("20 cm", 4.5), ("25 cm", 8), ("30 cm", 13.5), ("33 cm", 18), ("42 cm", 28), ("50 cm", 52)),
        .. Litres(Bamboo, ("P9", 0.5), ("P11", 1), ("P13", 1.5)),
        .. Litres(Polish, ("P7", 0.25), ("P11", 1), ("P13", 2), ("P15", 3)),
        new PotSize("P9", Volume.FromLiters(0.5), Polish, volumeHigh: Volume.FromLiters(0.8)),
        .. Litres(
            German,
            ("15 cm", 2), ("18 cm", 3), ("20 cm", 5), ("22 cm", 7), ("26 cm", 12), ("28 cm", 15), ("30 cm", 18), ("33 cm", 25), ("35 cm", 30), ("42 cm", 50)),
        .. Litres(JapaneseSoil, ("6 go", 2.2), ("7 go", 3.5), ("8 go", 5.1), ("9 go", 7.3), ("10 go", 8.4)),
        new PotSize("12 go", Volume.FromLiters(13), JapaneseSoil, volumeHigh: Volume.FromLiters(15)),
        .. Litres(JapaneseGuide, ("3 go", 0.3), ("5 go", 1), ("7 go", 3)),
        .. Gallons(SmallPots, ("4 in", 0.125), ("5 to 6 in", 0.25), ("7 to 8 in", 1)),
        .. Litres(
            JapaneseNumbers,
            ("1 go", 0.02), ("2 go", 0.06), ("3 go", 0.3), ("4 go", 0.6), ("5 go", 1.3), ("6 go", 2.2), ("7 go", 3.5), ("8 go", 5.2), ("9 go", 7.8)),
        new PotSize("65 cm trough", Volume.FromLiters(12), JapaneseNumbers, volumeHigh: Volume.FromLiters(14)),
        .. (((string Name, double CubicFeet)[])[("3.5 in", 0.007), ("4 in", 0.016), ("6 in", 0.042)])
            .Select(size => new PotSize(size.Name, Volume.FromCubicFeet(size.CubicFeet), NevadaQuarts)),
        .. (((string Name, double Quarts)[])
            [("8 in", 3), ("10 in", 5), ("12 in", 12), ("14 in", 18), ("16 in", 22), ("20 in", 28), ("24 in", 36), ("30 in", 72), ("36 in", 96)])
            .Select(size => new PotSize(size.Name, Volume.FromUsQuarts(size.Quarts), NevadaQuarts)),
        .. Gallons(
            TradePots,
            ("#1", 0.75), ("#2", 1.6), ("#3", 2.8), ("#3 squat", 2.8), ("#3 full", 3), ("#5", 4.1), ("#5 squat", 4.86), ("#7", 6.2), ("#15", 14.35), ("#25", 25.7)),
    ]);

    /// <summary>All of them, source by source.</summary>
    public static IReadOnlyList<PotSize> Published => All;

    /// <summary>One published size.</summary>
    /// <param name="sourceKey">The key of its source.</param>
    /// <param name="name">What such pots are called.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentException">There is none of that name from that source; the message lists what there
    /// is.</exception>
    public static PotSize Named(string sourceKey, string name)
    {
        Guard.NotBlank(sourceKey);
        Guard.NotBlank(name);
        List<PotSize> ofSource = [.. All.Where(size => size.Source.Key == sourceKey)];
        if (ofSource.Count == 0)
        {
            throw new ArgumentException(
                $"sourceKey was '{sourceKey}'; allowed: {string.Join(", ", All.Select(size => size.Source.Key).Distinct())}.",
                nameof(sourceKey));
        }

        return ofSource.Find(size => size.Name == name)
            ?? throw new ArgumentException(
                $"name was '{name}'; allowed: {string.Join(", ", ofSource.Select(size => size.Name))}.", nameof(name));
    }

    /// <summary>Everything that sources give for pots of one name, side by side: a name is not geometry.</summary>
    /// <param name="name">What such pots are called: <c>#1</c>.</param>
    /// <returns>The sizes; none where no source has the name.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<PotSize> OfName(string name)
    {
        Guard.NotBlank(name);
        return ValueList<PotSize>.Of(All.Where(size => size.Name.Equals(name, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>From the smallest to the largest volume that sources give for pots of one name.</summary>
    /// <param name="name">What such pots are called: <c>#1</c>.</param>
    /// <returns>The range; <see langword="null"/> where no source has the name.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <example><code>
    /// EstimateRange&lt;Volume&gt; gallonPot = PotSizes.Spread("#1")!;
    /// Console.WriteLine($"{gallonPot.Low.Liters:0.0} to {gallonPot.High.Liters:0.0} L");
    /// </code></example>
    public static EstimateRange<Volume>? Spread(string name)
    {
        IReadOnlyList<PotSize> sizes = OfName(name);
        return sizes.Count == 0
            ? null
            : new EstimateRange<Volume>(
                sizes.MinBy(size => Boundary.Litres(size.Volume))!.Volume,
                sizes.Select(size => size.VolumeHigh ?? size.Volume).MaxBy(Boundary.Litres),
                $"what {Guard.Number(sizes.Count)} sources give");
    }

    private static PotSize Uk(string name, double litres, double topCentimetres, double baseCentimetres, double heightCentimetres) => new(
        name,
        Volume.FromLiters(litres),
        UkNursery,
        Tapered(topCentimetres, baseCentimetres, heightCentimetres));

    private static RoundContainer Tapered(double topCentimetres, double baseCentimetres, double heightCentimetres) => Container.RoundTapered(
        Length.FromCentimeters(topCentimetres), Length.FromCentimeters(baseCentimetres), Length.FromCentimeters(heightCentimetres));

    private static IEnumerable<PotSize> Litres(Source source, params (string Name, double Litres)[] sizes) =>
        sizes.Select(size => new PotSize(size.Name, Volume.FromLiters(size.Litres), source));

    private static IEnumerable<PotSize> Gallons(Source source, params (string Name, double UsGallons)[] sizes) =>
        sizes.Select(size => new PotSize(size.Name, Volume.FromUsGallons(size.UsGallons), source));
}
