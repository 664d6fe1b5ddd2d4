using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Where the rules of salts come from. A key is also the name of the file of published values, where the source prints any.</summary>
internal static class SaltSources
{
    public static Source ExtractEquations { get; } = new(
        "plos-extract-equations",
        "Conversion equations for EC on a saturated extract, Table 2 of PLoS One 13: e0198290",
        "PLoS One",
        2018,
        "https://pmc.ncbi.nlm.nih.gov/articles/PMC6002086/table/pone.0198290.t002");

    public static Source AustralianExtracts { get; } = new(
        "rayment-lyons-14b1",
        "Table 14.2 Relationships for Australian soils, EC of the saturation extract from EC 1:5",
        "Rayment and Lyons, Soil Chemical Methods, by ANZSoilData",
        2011,
        "https://raw.githack.com/ANZSoilData/def-au-scma/master/html/14-saturation-extracts/14B1.html");

    public static Source Slavich { get; } = new(
        "slavich-petterson-1993",
        "Estimating the electrical conductivity of saturated paste extracts from 1:5 soil:water suspensions and texture, abstract",
        "Australian Journal of Soil Research",
        1993,
        "https://scilit.net/publications/2e50a789b471894ef9ea88c9006b9f67");

    public static Source MediumLevels { get; } = new(
        "umass-medium-salt-levels",
        "Soluble salt levels by method for soilless media, Table 2",
        "UMass Extension, in a reworded copy",
        null,
        "https://commercial-construction-26.lestrompettesdechaumont.com/how-to/everything-soil-testing-guide-nevada-home-gardeners-extension-vD1xRfqzCG0");

    public static Source SodiumRatio { get; } = new(
        "uc-anr-salinity-units",
        "Units of salinity in laboratory reports, by Ben Faber",
        "University of California Agriculture and Natural Resources",
        null,
        "https://ucanr.edu/blogs/Topics/index.cfm?tagname=electrical%20conductivity");

    /// <summary>The regression of Handbook 60 of the U.S. Salinity Laboratory, as a state's code prints it.</summary>
    public static Source ExchangeableSodium { get; } = new(
        "oklahoma-code-exchangeable-sodium",
        "Oklahoma Administrative Code 165:10, exchangeable sodium percentage estimated from the sodium adsorption ratio",
        "Oklahoma Corporation Commission, by the IADC Lexicon",
        2013,
        "https://iadclexicon.org/exchangeable-sodium-percentage-esp/");

    public static Source Suarez { get; } = new(
        "suarez-1981",
        "Relation between pHc and SAR and an alternative method of estimating SAR, in the table of FAO Irrigation and Drainage Paper 29",
        "FAO, Rome",
        1985,
        null,
        SourceKind.FromMemory);

    public static Source SaltAffected { get; } = new(
        "usda-nam-salt-classes",
        "Salt-affected soil classes, National Agronomy Manual, 4th edition",
        "USDA Natural Resources Conservation Service",
        2011,
        "https://directives.nrcs.usda.gov");

    public static Source SalinityRanks { get; } = new(
        "ali-2011-salinity-hazard",
        "Practices of Irrigation and On-farm Water Management, Table 8.6 Interpretation of salinity hazard based on EC value",
        "Springer",
        2011,
        "http://what-when-how.com/Tutorial/topic-95721d49lk/Practices-of-Irrigation-and-On-farm-Water-Management-315.html");

    public static Source Gypsum { get; } = new(
        "ali-2011-gypsum",
        "Practices of Irrigation and On-farm Water Management, Example 8.7",
        "Springer",
        2011,
        "http://what-when-how.com/Tutorial/topic-95721d49lk/Practices-of-Irrigation-and-On-farm-Water-Management-344.html");

    public static Source Oster { get; } = new(
        "oster-1999-gypsum",
        "Reclamation of sodic and saline-sodic soils, in Agricultural Drainage",
        "American Society of Agronomy",
        1999,
        null,
        SourceKind.FromMemory);

    public static Source LeachingFraction { get; } = new(
        "fao-56-equation-93",
        "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, equation 93",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static Source SaltBalance { get; } = new(
        "leaching-salt-balance",
        "Leaching requirement, after the U.S. Bureau of Reclamation 1993",
        "environmental engineering vocabulary",
        1993,
        "https://slovar-vocab.com/english/environmental-engineering-vocab/leaching-requirement-6189440.html");

    public static Source HighFrequency { get; } = new(
        "fao-29-high-frequency",
        "Water quality for agriculture, FAO Irrigation and Drainage Paper 29, leaching under localised watering",
        "FAO, Rome",
        1985,
        null,
        SourceKind.FromMemory);

    public static Source Fao56Tolerance { get; } = new(
        "fao-56-table-23",
        "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, Table 23 Salt tolerance of common agricultural crops",
        "FAO, Rome",
        1998,
        "http://www.fao.org/docrep/X0490E/x0490e00.htm");

    public static Source SalinityLaboratory { get; } = new(
        "ussl-herbaceous-1990",
        "Relative Salt Tolerance of Herbaceous Crops, Vegetables and Fruit (Maas 1990)",
        "USDA-ARS U.S. Salinity Laboratory",
        1990,
        "https://webarchive.library.unt.edu/eot2008/20090508111628/http://www.ussl.ars.usda.gov/pls/caliche/SALTT42C");

    public static Source SalinityLaboratoryFields { get; } = new(
        "ussl-field-and-woody",
        "Salt tolerance of fiber, grain, forage and woody crops (Maas and Hoffman 1977, Maas 1990)",
        "USDA-ARS U.S. Salinity Laboratory",
        1990,
        null,
        SourceKind.FromMemory);

    public static Source YieldLecture { get; } = new(
        "sdsu-salt-yield",
        "CIVE 633 lecture notes on ASCE Manual 71, chapters 12 and 13",
        "San Diego State University",
        null,
        "http://facets.sdsu.edu/protected33/manual71_02.html");

    public static Source Boron { get; } = new(
        "ars-boron-tolerance",
        "Boron Tolerance Limits for Agricultural Crops (Maas 1990)",
        "USDA-ARS Riverside",
        1990,
        "https://www.ars.usda.gov/pacific-west-area/riverside-ca/agricultural-water-efficiency-and-salinity-research-unit/docs/databases/boron-tolerance-of-crops/");

    public static Source BoronFromMemory { get; } = new(
        "boron-tolerance-remembered",
        "Boron Tolerance Limits for Agricultural Crops (Maas 1990), the part that was not seen",
        "USDA-ARS Riverside",
        1990,
        null,
        SourceKind.FromMemory);

    public static Source WaterGuide { get; } = new(
        "salinity-management-guide-water",
        "Interpreting the results from salinity-related tests of irrigation water, adapted from FAO Irrigation and Drainage Paper 29",
        "Salinity Management Guide",
        null,
        "http://www.salinitymanagement.org/Salinity%20Management%20Guide/dw/dw_2a.html");

    public static Source WaterGuidelines { get; } = new(
        "fao-29-water-guidelines",
        "Guidelines for irrigation water quality, modified from FAO 1985, Table 6 of PMC9128324",
        "FAO Irrigation and Drainage Paper 29, by PubMed Central",
        2022,
        "https://pmc.ncbi.nlm.nih.gov/articles/PMC9128324/table/Tab6");

    public static Source ChlorideScale { get; } = Source.CommonPractice(
        "solids-sodium-chloride-scale", "meters of the sodium chloride scale show 500 mg/L for 1 dS/m");

    public static Source SaltyWaterSolids { get; } = new(
        "solids-above-five",
        "Dissolved solids of waters above 5 dS/m, 800 mg/L for 1 dS/m",
        "FAO, Rome",
        1985,
        null,
        SourceKind.FromMemory);
}
