using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Corn above 50 °F with the extremes held at 50 and 86 °F, wheat above 32 °F and cotton above 60 °F by the mean of the day.</summary>
internal static class CropStages
{
    private static readonly Source HighPlains = new(
        "hprcc-corn-stages",
        "Corn: growing degree days to stages in three maturity groups",
        "High Plains Regional Climate Center, University of Nebraska",
        null,
        "https://hprcc.unl.edu/archive/data/AWDN/crop_corn.txt");

    private static readonly Source Wisconsin = new(
        "wisconsin-corn-stages",
        "Corn development",
        "University of Wisconsin AgWeather",
        null,
        "https://agweather.cals.wisc.edu/thermal-models/corn-dev");

    private static readonly Source Arlington = new(
        "wisconsin-arlington-corn-stages",
        "Wisconsin Crop Manager W027: stages in an average year at Arlington",
        "University of Wisconsin",
        1996,
        "https://corn.agronomy.wisc.edu/WCM/W027.aspx");

    private static readonly Source Kansas = new(
        "kansas-wheat-stages",
        "Wheat growing degree days: estimated growth stage",
        "Kansas State University Mesonet",
        2025,
        "https://mesonet.k-state.edu/agriculture/wheat/gdd");

    private static readonly Source CottonGuide = new(
        "cotton-guide-stages",
        "Monitoring cotton growth",
        "Cotton management guide of a seed supplier",
        null,
        "https://www.aganytime.com/cotton/Pages/Article.aspx?name=Monitoring-Cotton-Growth&fields=article&article=1396");

    // Its first row is two leaves with 0, and its steps of 60 a leaf would put emergence there.
    private static readonly Biofix CornStart = Biofix.When("two leaves, which the source prints with a sum of 0");

    private static readonly Biofix MiddleOfMay = Biofix.On(new MonthDay(5, 15));

    private static readonly Biofix Planting = Biofix.When("planting");

    private static readonly Biofix Emergence = Biofix.When("emergence");

    public static readonly StageTable[] Rows =
    [
        Corn(HighPlains, CornStart, "Corn, 2100 °F·d to maturity",
            At("2 leaves", 0),
            At("4 leaves", 240),
            At("6 leaves", 360),
            At("8 leaves", 480),
            At("10 leaves", 600),
            At("12 leaves", 720),
            At("14 leaves", 840),
            At("16 leaves", 960),
            At("silks", 1143.6),
            At("blister", 1327.2),
            At("dough", 1510.9),
            At("beginning dent", 1694.5),
            At("full dent", 1878.1),
            At("black layer", 2061.7),
            At("full maturity", 2100.0)),
        Corn(HighPlains, CornStart, "Corn, 2450 °F·d to maturity",
            At("2 leaves", 0),
            At("4 leaves", 240),
            At("6 leaves", 360),
            At("8 leaves", 480),
            At("10 leaves", 600),
            At("12 leaves", 720),
            At("14 leaves", 840),
            At("16 leaves", 960),
            At("silks", 1200.0),
            At("blister", 1440.0),
            At("dough", 1680.0),
            At("beginning dent", 1920.0),
            At("full dent", 2160.0),
            At("black layer", 2400.0),
            At("full maturity", 2450.0)),
        Corn(HighPlains, CornStart, "Corn, 2900 °F·d to maturity",
            At("2 leaves", 0),
            At("4 leaves", 240),
            At("6 leaves", 360),
            At("8 leaves", 480),
            At("10 leaves", 600),
            At("12 leaves", 720),
            At("14 leaves", 840),
            At("16 leaves", 960),
            At("silks", 1272.5),
            At("blister", 1585.0),
            At("dough", 1897.4),
            At("beginning dent", 2209.9),
            At("full dent", 2522.4),
            At("black layer", 2834.9),
            At("full maturity", 2900.0)),
        Corn(Wisconsin, MiddleOfMay, "Corn, relative maturity 95 to 105 days",
            At("V8", 600),
            At("V13", 900),
            At("VT tassel", 1200),
            At("R3 milk", 1550),
            At("R4 dough", 1900),
            At("R5 dent", 2200),
            During("R6 black layer", 2400, 2600)),
        Corn(Arlington, Planting, "Corn at Arlington, Wisconsin",
            At("Planting", 0),
            At("VE", 125),
            At("V4", 380),
            At("V8", 600),
            At("V12", 900)),
        Crop(Kansas, 32, Biofix.NotStated, "Wheat",
            During("seedling or tillering", 0, 600),
            During("tillering or upright tillers", 600, 800),
            During("upright tillers or jointing", 800, 1000),
            During("jointing or near flag leaf", 1000, 1200),
            During("flag leaf or boot", 1200, 1400),
            During("boot or heading", 1400, 1600),
            During("heading to flowering", 1600, 1800),
            During("heading or flowering", 1800, 2000),
            During("flowering or watery ripe", 2000, 2200),
            During("watery ripe or milk", 2200, 2400),
            During("milk or dough", 2400, 2600),
            During("early dough or maturing", 2600, 2800),
            During("late dough or maturing", 2800, 3000),
            OpenFrom("mature or near harvest", 3000)),
        Crop(CottonGuide, 60, Planting, "Cotton from planting", During("emergence", 50, 60)),
        Crop(CottonGuide, 60, Emergence, "Cotton from emergence",
            During("first fruiting branch", 300, 340),
            During("first square", 425, 475),
            During("first white bloom", 825, 875),
            During("peak bloom", 1385, 1435),
            During("open boll", 1700, 1750),
            During("60 % open bolls", 2180, 2230)),
    ];
}
