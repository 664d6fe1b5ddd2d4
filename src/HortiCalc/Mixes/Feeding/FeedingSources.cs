using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>The sources of feeding. Each key is also the name of a file of published values, where the source prints any.</summary>
internal static class FeedingSources
{
    public static readonly Source AtomicWeights = new(
        "iupac-atomic-weights-2021",
        "Standard atomic weights of the elements 2021 (IUPAC Technical Report), abridged to five digits",
        "International Union of Pure and Applied Chemistry",
        2022,
        "https://doi.org/10.1515/pac-2019-0603");

    public static readonly Source Solubility = new(
        "fertilizer-solubility",
        "Fertilizer solubility against temperature",
        "agronomy page repeating an extension table",
        2015,
        "https://dramarnathgiri.blogspot.com/2015/08/fertilizer-solubility.html");

    public static readonly Source BagChart = new(
        "bag-chart-15-percent",
        "How to mix a concentrate for an injector: bag chart of a 15 % N soluble fertilizer",
        "horticultural supplier newsletter vol. 38",
        null,
        "http://www.hummert.com/newsletter/volume-38/how-to-mix-a-concentrate-for-an-injector");

    public static readonly Source Donnan = new(
        "donnan-ppm-to-amounts",
        "How do I convert a formula in ppm to amounts of individual fertilisers?",
        "Practical Hydroponics",
        null,
        "http://www.hydroponics.com.au/how-do-i-convert-a-formula-in-ppm-to-amounts-of-individual-fertilisers/");

    public static readonly Source InjectorCheck = new(
        "new-england-injectors",
        "Fertilizer injectors: calibration by conductivity",
        "New England Greenhouse Update",
        null,
        "http://www.negreenhouseupdate.info");

    public static readonly Source TwoTanks = new(
        "cooper-two-parts",
        "Hydro juice: Cooper's nutrient solution in two parts",
        "hydroponics page",
        null,
        "http://busiweb.tripod.com/hydro1/juice.htm");

    public static readonly Source Hershey = new(
        "hershey-hoagland",
        "Hoagland solutions no. 1 and no. 2, after Hoagland and Arnon 1950",
        "D. R. Hershey, plant education list",
        1997,
        "http://www.bio.net/bionet/mm/plant-ed/1997-September/002372.html");

    public static readonly Source TwelveSolutions = new(
        "twelve-standard-solutions",
        "Comparison of the mineral composition of twelve standard nutrient solutions",
        "Journal of Plant Nutrition 21:2115-2125 (De Rijck and Schrevens), as repeated by a page on hydroponics",
        1998,
        "https://scienceinhydroponics.com/2021/03/standard-hydroponic-formulations-from-the-scientific-literature.html?print=print");

    public static readonly Source Herbs = new(
        "modified-sonneveld-herbs",
        "Modified Sonneveld recipe for herbs (Mattson and Peters, Inside Grower)",
        "aquaponics teaching page",
        null,
        "https://borgmann-aquaponik-hydroponik.ch/po9d/index.php/en/duenger-vorwort-en/rezepte-menue-re-en");

    public static readonly Source LeafyGreens = new(
        "hydroponic-nutrient-basics",
        "Basic calculations to make your own hydroponics nutrients",
        "Grower's page",
        null,
        "https://ompathare.com/basic-calculations-to-make-your-own-hydroponics-nutrients/");

    /// <summary>Diffusion coefficients, stability of ion pairs and, in its program, how conductivity is made of them.</summary>
    public static readonly Source Phreeqc = new(
        "usgs-phreeqc",
        "PHREEQC: database phreeqc.dat, and specific conductance as its program computes it",
        "U.S. Geological Survey",
        null,
        "https://github.com/usgs-coupled/phreeqc");

    public static readonly Source LimitingConductivity = new(
        "aqion-diffusion-coefficients",
        "Electrical Conductivity based on Diffusion Coefficients",
        "aqion, hydrochemistry pages",
        null,
        "https://www.aqion.de/sd/diffusion-coefficients");

    public static readonly Source ConductivityFactors = new(
        "conductivity-factors-of-ions",
        "Conductivity factors of ions, after Standard Methods (1999) and Sawyer, McCarty and Parkin (2003), as a limnology package holds them",
        "RLimnology, function ion2ec",
        null,
        "https://rdrr.io/github/salah31416/RLimnology/man/ion2ec.html");

    public static readonly Source CationRule = new(
        "conductivity-of-mixed-solutions",
        "Conductivity of mixed solutions (question and answer)",
        "madsci.org",
        2001,
        "http://www.madsci.org/posts/archives/apr2001/987989403.Bt.r.html",
        SourceKind.CommonPractice);

    public static readonly Source PumiceConductivity = new(
        "conductivity-on-pumice",
        "Hydroponic pumice treatment, pH and EC of different crops",
        "FarmLink Kenya",
        null,
        "https://www.farmlinkkenya.com/hydroponic-pumice-treatment-ph-and-electroconductivity-of-different-crops/");

    public static readonly Source SaturatedMediaConductivity = new(
        "conductivity-of-saturated-media",
        "Preferred EC values for selected plants (saturated media extract)",
        "manual of a conductivity meter, appendix 1",
        null,
        "https://manualshive.com/en/manual/spectrum/fieldscout-2265fs/1344351?page=18");

    public static readonly Source Custom = Source.CommonPractice("feeding-common-practice", "an ion within 5 % of its target is reached");
}
