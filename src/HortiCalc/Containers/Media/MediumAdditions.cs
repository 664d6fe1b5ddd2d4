using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Published rates of lime and base fertiliser by volume of medium.</summary>
/// <remarks>
/// The sources of John Innes agree on the base, 3, 6 and 9 kg/m³, and not on the lime: one has 0.6 kg/m³ throughout, another 1, 2 and 3 lb a cubic yard. "Ounces a bushel" are of
/// the bushel of the country: 36.4 L in Britain, 35.2 L in the United States. The base of John Innes is two parts of hoof and horn, two of superphosphate and one of potassium
/// sulphate by weight. What sources measure by the spoon or the cup is not here: they print no weight for it.
/// </remarks>
public static class MediumAdditions
{
    private const double KilogramsPerCubicMetrePerPoundPerCubicYard = 0.45359237 / 0.764554857984;
    private const double KilogramsPerCubicMetrePerOunceBushelUk = 0.45359237 / 16 / (8 * 4.54609 / 1000);
    private const double KilogramsPerCubicMetrePerOunceHalfBushelUs = 0.45359237 / 16 / (35.23907016688 / 2 / 1000);

    private static readonly Source JohnInnesMetric = new(
        "john-innes-metric", "How to make John Innes compost", "gardening text (UK)", 2011, "https://gardenofeaden.blogspot.com/2011/03/how-to-make-john-innes-compost.html");

    private static readonly Source JohnInnesImperial = new(
        "john-innes-imperial", "How to make John Innes compost", "gardening text (Ireland)", 2007, "http://inishindie.blogspot.com/2007/04/how-to-make-john-innes-compost.html");

    private static readonly Source Encyclopedia = new(
        "john-innes-encyclopedia", "Sanders' Encyclopedia of Gardening 1981, quoted", "gardening forum (UK)", 1981, "https://www.gardenbanter.co.uk/501470-post18.html");

    private static readonly Source TexasDolomite = new(
        "texas-dolomite-quoted",
        "Adjusting pH with dolomite, quoting Texas A&M and the University of Georgia",
        "growers' forum",
        null,
        "https://www.autoflower.org/threads/adjusting-soil-ph-with-dolomite-garden-lime.16359");

    private static readonly Source Annuals = new(
        "growing-annuals-lime", "Growing annuals in pots", "garden advice page", null, "https://98905.com/plants-flowers-herbs/growing-annuals/101380.html");

    private static readonly Source OrganicGardening = new(
        "organic-gardening-mixes", "Potting soil recipes", "Organic Gardening magazine", null, "http://www.organicgardening.com/learn-and-grow/potting-soil-recipes");

    private static readonly Source NewZealand = new(
        "new-zealand-uc-mix",
        "University of California mix ingredients",
        "orchid society archive (New Zealand)",
        1970,
        "https://orchids.herokuapp.com/articles/university-of-california-mix-ingredients");

    private static readonly Source Beardsworths = new(
        "beardsworths-potting-compost", "Potting compost recipe", "plant nursery (UK)", null, "https://beardsworths.co.uk/?p=779");

    private static readonly Source PeatLime = new(
        "ucdavis-peat-lime",
        "Growing media: peat and lime requirements",
        "University of California, Davis, International Programs",
        2007,
        "http://afghanag.ucdavis.edu/natural-resource-management/soil-topics/soil-fact-sheets/FS_Growing_Media_Peat_Lime_requirement.doc/view");

    /// <summary>Every rate there is.</summary>
    public static IReadOnlyList<MediumAddition> All { get; } = ValueList<MediumAddition>.Of(
    [
        Metric("John Innes No 1", "base fertiliser", 3.0),
        Metric("John Innes No 2", "base fertiliser", 6.0),
        Metric("John Innes No 3", "base fertiliser", 9.0),
        Metric("John Innes No 1 to 3 and seed", "ground limestone or chalk", 0.6),
        Metric("John Innes seed", "superphosphate", 1.2),
        .. ((double[])[1, 2, 3]).SelectMany(number => (MediumAddition[])
        [
            Metric($"John Innes No {Guard.Number(number)}", "hoof and horn, of the base", 1.2 * number),
            Metric($"John Innes No {Guard.Number(number)}", "superphosphate, of the base", 1.2 * number),
            Metric($"John Innes No {Guard.Number(number)}", "potassium sulphate, of the base", 0.6 * number),
        ]),
        Imperial("John Innes No 1", "base fertiliser", 5),
        Imperial("John Innes No 2", "base fertiliser", 10),
        Imperial("John Innes No 3", "base fertiliser", 15),
        Imperial("John Innes No 1", "lime or chalk", 1),
        Imperial("John Innes No 2", "lime or chalk", 2),
        Imperial("John Innes No 3", "lime or chalk", 3),
        Bushel("John Innes potting, basic", "base fertiliser", 4, Encyclopedia),
        Bushel("John Innes potting, basic", "chalk", 0.75, Encyclopedia),
        Bushel("John Innes seed", "superphosphate", 1.5, Encyclopedia),
        Bushel("John Innes seed", "chalk", 0.75, Encyclopedia),
        new("potting mixes, one pH unit and twice does not give two", "dolomite", Yard(8), null, TexasDolomite),
        new("most plants", "dolomitic limestone", HalfBushel(2), HalfBushel(3), TexasDolomite),
        new("most plants", "ground limestone", HalfBushel(2), null, Annuals),
        new("peat and perlite", "ground limestone", Yard(5), null, OrganicGardening),
        new("peat and perlite", "bone meal", Yard(10), null, OrganicGardening),
        new("peat and perlite", "blood meal", Yard(5), null, OrganicGardening),
        UniversityOfCalifornia("hoof and horn", 2),
        UniversityOfCalifornia("single superphosphate", 1.5),
        UniversityOfCalifornia("potassium sulphate", 0.5),
        UniversityOfCalifornia("potassium nitrate", 0.75),
        UniversityOfCalifornia("dolomite", 1),
        UniversityOfCalifornia("gypsum", 3),
        General("dolomitic lime", 200),
        General("controlled-release fertiliser for 12 months", 400),
        General("bone meal", 80),
        Lime("sphagnum peat", 3, 4),
        Lime("sphagnum peat, a lasting dose", 8, 10),
        Lime("acid peat humus", 10, 15),
    ]);

    private static MediumAddition UniversityOfCalifornia(string material, double ounces) =>
        Bushel("University of California, New Zealand", material, ounces, NewZealand);

    private static MediumAddition General(string material, double gramsPerHundredLitres) => new(
        "general purpose, peat and composted bark", material, Density.FromGramsPerLiter(gramsPerHundredLitres / 100), null, Beardsworths);

    private static MediumAddition Lime(string mix, double low, double high) => new(
        mix, "ground limestone", Density.FromKilogramsPerCubicMeter(low), Density.FromKilogramsPerCubicMeter(high), PeatLime);

    private static MediumAddition Metric(string mix, string material, double kilogramsPerCubicMetre) =>
        new(mix, material, Density.FromKilogramsPerCubicMeter(kilogramsPerCubicMetre), null, JohnInnesMetric);

    private static MediumAddition Imperial(string mix, string material, double poundsPerCubicYard) => new(mix, material, Yard(poundsPerCubicYard), null, JohnInnesImperial);

    // A British bushel is 8 imperial gallons.
    private static MediumAddition Bushel(string mix, string material, double ounces, Source source) => new(
        mix, material, Density.FromKilogramsPerCubicMeter(ounces * KilogramsPerCubicMetrePerOunceBushelUk), null, source);

    private static Density Yard(double pounds) => Density.FromKilogramsPerCubicMeter(pounds * KilogramsPerCubicMetrePerPoundPerCubicYard);

    private static Density HalfBushel(double ounces) => Density.FromKilogramsPerCubicMeter(ounces * KilogramsPerCubicMetrePerOunceHalfBushelUs);
}
