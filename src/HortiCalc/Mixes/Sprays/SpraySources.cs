using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of calibration, spray limits, waiting times and of further mild mixes.</summary>
internal static class SpraySources
{
    public static readonly Source OuncesEqualGallons = new(
        "lsu-ounces-equal-gallons",
        "Ounces Equal Gallons: Sprayer Calibration",
        "Louisiana State University AgCenter",
        null,
        "https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/equipment/sprayers/ounces-equal-gallons-sprayer-calibration");

    public static readonly Source TreeRowVolume = new(
        "ohio-tree-row-volume",
        "Sprayer calibration for nurseries: tree row volume",
        "Ohio State University Extension, in Nursery Management",
        null,
        "https://www.nurserymag.com/news/bioworks-enews-sprayers");

    public static readonly Source CornellTreeRowVolume = new(
        "cornell-tree-row-volume",
        "Tree Row Volume (Andrew Landers)",
        "Cornell University, New York State Agricultural Experiment Station",
        null,
        "https://info.5y1.org/gallons-per-minute-psi-calculator_1_306331.html");

    public static readonly Source NozzlesAndPumps = new(
        "nozzles-and-pumps-slides",
        "Nozzles and Pumps: nozzle performance",
        "training slides",
        null,
        "http://slideplayer.com/slide/4179859/");

    public static readonly Source Drift = new(
        "epa-spray-drift",
        "For Your Information: Spray Drift of Pesticides (735F99024)",
        "US Environmental Protection Agency",
        1999,
        "https://www.cdpr.ca.gov/docs/dept/factshts/epadoc.htm");

    public static readonly Source PurdueLimeSulfur = new(
        "purdue-lime-sulfur-1914",
        "Diluting lime-sulphur for scale control",
        "Purdue University Agricultural Extension",
        1914,
        "https://newspapers.library.in.gov/?a=d&d=EVRP19140506.2.12");

    public static readonly Source Baume = new(
        "baume-modulus-145",
        "Baumé hydrometer scale, heavy liquids, modulus 145 (after CRC Handbook, 51st edition)",
        "potters.org",
        null,
        "http://www.potters.org");

    public static readonly Source EntryByCategory = new(
        "epa-rei-by-category",
        "Label Review Training, Module 3: determining restricted entry intervals",
        "US Environmental Protection Agency",
        null,
        "http://www.epa.gov/pesticides/regulating/labels/pest-label-training/module3/page27.html");

    public static readonly Source EntryBeforeHarvest = new(
        "wsu-entry-and-preharvest",
        "Entry and Preharvest Intervals",
        "Washington State University Tree Fruit",
        null,
        "https://cpg.treefruit.wsu.edu/pesticide-safety/entry-and-preharvest-intervals/");

    public static readonly Source CaliforniaMildewGarden = new(
        "uc-ipm-pn7493",
        "Powdery mildew on ornamentals (7493)",
        "University of California Statewide IPM Program",
        null,
        "https://ipm.ucanr.edu/m/pn7493-3.html");

    public static readonly Source LiquidSulfurSeller = new(
        "norganics-liquid-sulfur",
        "Liquid sulfur",
        "seller of sulfur",
        null,
        "http://norganics.com/liquid-sulfur",
        SourceKind.CommonPractice);

    public static readonly Source MildewColumn = new(
        "mildew-column-colorado",
        "Dreaded powdery mildew, citing Colorado State University",
        "garden column",
        2011,
        "https://gardens.intonowhere.com/2011/03/06/dreaded-powdery-mildew/",
        SourceKind.CommonPractice);

    public static readonly Source NeemPage = new(
        "neem-organic-gardening",
        "Green organic gardening: neem",
        "garden advice page",
        null,
        "https://98905.com/plants-flowers-herbs/green-organic/100338.html",
        SourceKind.CommonPractice);

    public static readonly Source DormantOilForum = new(
        "dormant-oil-forum",
        "Dormant oil spray question",
        "habitat forum",
        null,
        "https://habitat-talk.com/threads/dormant-oil-spray-question.10753",
        SourceKind.CommonPractice);

    public static readonly Source CaliforniaBordeaux = new(
        "uc-bordeaux-stocks",
        "Bordeaux mixture from stock solutions",
        "University of California text on a citrus growers forum",
        null,
        "http://citrusgrowersstatic.chez.com/web/viewtopic7db6-2.php");

    public static readonly Source FruitDiseases = new(
        "manual-of-fruit-diseases",
        "Manual of Fruit Diseases: formulae for preparation, Bordeaux mixture",
        "chestofbooks.com",
        null,
        "http://chestofbooks.com/gardening-horticulture/fruit/Manual-of-Fruit-Diseases/Formulae-For-Preparation-Bordeaux-Mixture.html");

    public static readonly Source BordeauxBySpoons = new(
        "bordeaux-by-spoons",
        "Gardening: Bordeaux mix",
        "garden page (New Zealand)",
        2005,
        "http://nzlandscapes.blogspot.com/2005/06/gardening-bordeaux-mix.html",
        SourceKind.CommonPractice);

    public static readonly Source AustralianBordeaux = new(
        "bordeaux-one-percent",
        "Bordeaux of 1 % from copper sulfate and slaked lime",
        "garden advice page (Australia)",
        null,
        "https://karolinfelix.com/home-depot-copper-fungicide/",
        SourceKind.CommonPractice);

    public static readonly Source Castile = new(
        "castile-soap-tipspit",
        "What are the dangers of insecticidal soap",
        "household advice page",
        null,
        "https://tipspit.com/What-Are-the-Dangers-of-Insecticidal-Soap-t47528",
        SourceKind.CommonPractice);

    public static readonly Source NeemTeaspoon = new(
        "neem-teaspoon", "Neem", "hobby page", null, "http://anitasplace.com/garden/neem.shtml");

    public static readonly Source NeemOunce = new(
        "neem-ounce-per-gallon",
        "Tips on using neem oil",
        "garden page",
        null,
        "https://indexagro.blogspot.com/2017/04/tips-on-using-neem-oil.html",
        SourceKind.CommonPractice);

    public static readonly Source Oisat = new(
        "oisat-baking-soda",
        "Baking soda",
        "OISAT, PAN Germany",
        null,
        "http://oisat.org/control_methods/other_substances/baking_soda.html",
        SourceKind.CommonPractice);
}
