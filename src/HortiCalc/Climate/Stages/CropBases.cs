using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Base and upper temperatures of crops, source by source.</summary>
internal static class CropBases
{
    private static readonly Source Purdue = new(
        "purdue-corn-base",
        "Heat unit concepts related to corn development",
        "Purdue University",
        null,
        "http://www.agry.purdue.edu/ext/corn/news/timeless/HeatUnits.html");

    private static readonly Source Ams = new(
        "ams-corn-base",
        "Corn heat unit (Glossary of Meteorology)",
        "American Meteorological Society",
        null,
        "https://glossary.ametsoc.org/wiki/Corn_heat_unit");

    private static readonly Source Oklahoma = new(
        "oklahoma-bases",
        "Growing degree days",
        "Oklahoma State University",
        null,
        "http://nue.okstate.edu/GDD_calc.html");

    private static readonly Source Idaho = new(
        "idaho-wheat-base",
        "What are growing degree days and how are they measured",
        "Idaho Wheat Commission",
        null,
        "https://idahowheat.org/news/what-are-growing-degree-days-and-how-are-they-measured");

    private static readonly Source KansasWheat = new(
        "kansas-wheat-base",
        "Wheat growing degree days",
        "Kansas State University Mesonet",
        2025,
        "https://mesonet.k-state.edu/agriculture/wheat/gdd");

    private static readonly Source Oregon = new(
        "oregon-cereal-base",
        "Growing degree days of winter wheat",
        "Oregon State University and USDA Agricultural Research Service",
        null,
        "http://oregonstate.edu/cpcrc/webcam_GDDWW.html");

    private static readonly Source Ontario = new(
        "ontario-publication-811",
        "Publication 811: growing degree days and crop heat units",
        "Ontario Ministry of Agriculture",
        null,
        "http://www.omafra.gov.on.ca/english/crops/pub811/1gddchu.htm");

    private static readonly Source OklahomaCotton = new(
        "oklahoma-cotton-base",
        "Utilizing heat units in Oklahoma cotton production",
        "Oklahoma State University Extension",
        null,
        "https://extension.okstate.edu/fact-sheets/utilizing-heat-units-in-oklahoma-cotton-production.html");

    private static readonly Source Beltwide = new(
        "beltwide-cotton-base",
        "Degree days above 60 °F in cotton",
        "Beltwide Cotton Conference",
        1983,
        "https://www.cotton.org/beltwide/proceedings/8395/abstracts/126.cfm");

    private static readonly Source CucumberTrial = new(
        "cucumber-base",
        "A heat unit accumulation method for predicting cucumber harvest date",
        "HortTechnology 6(1):27-30",
        1996,
        "https://studylib.net/doc/11069199/a-heat-unit-accumulation-method-for-predicting");

    private static readonly Source OregonSweetCorn = new(
        "oregon-sweet-corn-base",
        "Croptime: scheduling vegetables with degree-day models",
        "Oregon State University Extension",
        null,
        "https://extension.oregonstate.edu/es/crop-production/vegetables/croptime-scheduling-vegetables-degree-day-models");

    private static readonly Source GardenColumn = new(
        "garden-column-bases",
        "How to know exactly when to plant and harvest",
        "Garden column",
        2011,
        "https://www.mygardening411.com/2011/10/garden-vegetables-how-to-know-exactly-when-to-plant-and-harvest-them/");

    private static readonly Source MetOffice = new(
        "ukcp18-base",
        "Annual growing degree days: projections",
        "Met Office",
        null,
        "https://services.arcgis.com/Lq3V5RFuTBC9I7kv/ArcGIS/rest/services/Annual_Growing_Degree_Days___GDD__Projections/FeatureServer");

    public static readonly BaseTemperature[] Rows =
    [
        Base(StageSubject.Crop, "Corn", Between(50, 86), DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal, Purdue),
        Base(StageSubject.Crop, "Corn", BetweenCelsius(10, 30), DegreeDayMethod.ClampedAverage, UpperCutoff.Horizontal, Ams),
        Base(StageSubject.Crop, "Corn", Between(50, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, Oklahoma),
        Base(StageSubject.Crop, "Winter wheat", Between(40, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, Oklahoma),
        Base(StageSubject.Crop, "Wheat", Between(32, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, Idaho),
        Base(StageSubject.Crop, "Wheat", Between(32, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, KansasWheat),
        Base(StageSubject.Crop, "Winter cereals", Between(32, null), null, UpperCutoff.None, Oregon),
        Base(StageSubject.Crop, "Cereals", BetweenCelsius(0, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, Ontario),
        Base(StageSubject.Crop, "Alfalfa", BetweenCelsius(5, null), null, UpperCutoff.None, Ontario),
        Base(StageSubject.Crop, "Canola", BetweenCelsius(5, null), null, UpperCutoff.None, Ontario),
        Base(StageSubject.Crop, "Cotton", Between(60, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, OklahomaCotton),
        Base(StageSubject.Crop, "Cotton", Between(60, null), DegreeDayMethod.SingleTriangle, UpperCutoff.None, Beltwide),
        Base(StageSubject.Crop, "Cucumber", Between(60, 90), DegreeDayMethod.MaximumOnly, UpperCutoff.Intermediate, CucumberTrial),
        Base(StageSubject.Crop, "Sweet corn Jubilee", Between(50, 86), null, UpperCutoff.Horizontal, OregonSweetCorn),
        Base(StageSubject.Crop, "Cool-season garden crops", Between(40, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, GardenColumn),
        Base(StageSubject.Crop, "Warm-season garden crops", Between(55, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, GardenColumn),
        Base(StageSubject.Crop, "Plants in general", BetweenCelsius(5.5, null), DegreeDayMethod.SimpleAverage, UpperCutoff.None, MetOffice),
    ];
}
