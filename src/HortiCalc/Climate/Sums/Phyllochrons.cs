using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published phyllochrons.</summary>
public static class Phyllochrons
{
    private static readonly Source CaoMoss = new(
        "cao-moss-1989",
        "Temperature effect on leaf emergence and phyllochron in wheat and barley",
        "Crop Science 29:1018",
        1989,
        "http://eprints.icrisat.ac.in/12343/");

    private static readonly Source HighPlains = new(
        "hprcc-corn-leaves",
        "Corn: growing degree days to stages",
        "High Plains Regional Climate Center, University of Nebraska",
        null,
        "https://hprcc.unl.edu/archive/data/AWDN/crop_corn.txt");

    private static readonly Source Wisconsin = new(
        "wisconsin-corn-leaves",
        "Wisconsin Crop Manager W027",
        "University of Wisconsin",
        1996,
        "https://corn.agronomy.wisc.edu/WCM/W027.aspx");

    private static readonly Source ColumbiaBasin = new(
        "oregon-winter-cereals",
        "Winter cereal stage by growing degree days",
        "Oregon State University and USDA Agricultural Research Service, Columbia Basin",
        2016,
        "http://oregonstate.edu/cpcrc/webcam_GDDWW.html");

    private static readonly DegreeDayThresholds AboveFreezing = new(Temperature.FromDegreesCelsius(0));

    private static readonly DegreeDayThresholds Maize = new(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(30));

    /// <summary>Wheat and barley in constant cold, 7.5 °C: the lowest of eight genotypes, 57.2 °C·d.</summary>
    public static Phyllochron WheatAndBarleyInCold { get; } = Of(
        "wheat and barley", "7.5 °C constant, lowest of eight genotypes", CelsiusDays(57.2), CelsiusDays(57.2), AboveFreezing, CaoMoss);

    /// <summary>Wheat and barley in constant warmth, 25 °C: the highest of eight genotypes, 116.2 °C·d.</summary>
    public static Phyllochron WheatAndBarleyInWarmth { get; } = Of(
        "wheat and barley", "25 °C constant, highest of eight genotypes", CelsiusDays(116.2), CelsiusDays(116.2), AboveFreezing, CaoMoss);

    /// <summary>Winter cereals in the field, 180 °F·d: not printed, but the step of the printed stages from leaf to leaf.</summary>
    public static Phyllochron WinterCereals { get; } = Of(
        "winter cereals", "field, Oregon; the step of the stages printed", FahrenheitDays(180), FahrenheitDays(180), AboveFreezing, ColumbiaBasin);

    /// <summary>Maize from 4 to 16 leaves, 60 °F·d (120 for two leaves), counted by the 86/50 method.</summary>
    public static Phyllochron MaizeFourToSixteenLeaves { get; } = Of(
        "maize", "from 4 to 16 leaves", FahrenheitDays(60), FahrenheitDays(60), Maize, HighPlains);

    /// <summary>Maize early in its life, 50 to 60 °F·d a leaf collar, counted by the 86/50 method.</summary>
    public static Phyllochron MaizeLeafCollars { get; } = Of(
        "maize", "leaf collars, early development", FahrenheitDays(50), FahrenheitDays(60), Maize, Wisconsin);

    /// <summary>Every phyllochron there is.</summary>
    public static IReadOnlyList<Phyllochron> All { get; } = ValueList<Phyllochron>.Of(
        [WheatAndBarleyInCold, WheatAndBarleyInWarmth, WinterCereals, MaizeFourToSixteenLeaves, MaizeLeafCollars]);

    private static Phyllochron Of(
        string crop, string condition, ThermalTime low, ThermalTime high, DegreeDayThresholds thresholds, Source source) =>
        new(crop, condition, low, high, thresholds, source);

    private static ThermalTime CelsiusDays(double value) => ThermalTime.FromCelsiusDays(value);

    private static ThermalTime FahrenheitDays(double value) => ThermalTime.FromFahrenheitDays(value);
}
