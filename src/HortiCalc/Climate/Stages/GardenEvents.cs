using HortiCalc.Evidence;
using static HortiCalc.Climate.StageRows;

namespace HortiCalc.Climate;

/// <summary>Bloom, hatch and weeds above 50 °F, counted from 1 January by the mean of the day.</summary>
internal static class GardenEvents
{
    private static readonly Source Springfield = new(
        "ohio-plant-development-events",
        "Plant development and growing degree days",
        "Ohio State University Extension column, Springfield News-Sun",
        2017,
        "http://www.springfieldnewssun.com/lifestyles/home--garden/plant-development-and-growing-degree-days/X8HiDu6bS3PbaP9INvxUWM/amp.html");

    private static readonly Source Beacon = new(
        "ohio-crabgrass-degree-days",
        "Degree days predict when things will happen in the landscape",
        "Plant Lovers' Almanac, Akron Beacon Journal",
        2019,
        "https://www.beaconjournal.com/entertainmentlife/20190307/plant-lovers-almanac-degree-days-predict-when-things-will-happen-in-landscape");

    private static readonly Source BarkingDog = new(
        "barking-dog-bloom",
        "Growing degree days: how we know when plants will flower",
        "Barking Dog Gardens",
        2021,
        "https://barkingdoggardens.com/2021/04/08/growing-degree-days-how-we-know-when-plants-will-flower");

    private static readonly Biofix NewYear = Biofix.On(new MonthDay(1, 1));

    public static readonly StageTable[] Rows =
    [
        Events(Springfield, 50, NewYear, "Ohio garden",
            At("Silver maple in bloom", 42),
            At("Red maple in bloom", 44),
            At("Forsythia Northern Lights first bloom", 58),
            At("Eastern tent caterpillar egg hatch", 92),
            At("Forsythia Northern Lights full bloom", 94),
            At("Bradford callery pear first bloom", 142),
            At("European pine sawfly egg hatch", 144)),
        Events(Beacon, 50, NewYear, "Crabgrass", At("Smooth crabgrass emergence", 155), At("Large crabgrass emergence", 211)),
        Events(BarkingDog, 50, NewYear, "Early bloom", At("Cornelian cherry first bloom", 40), At("Star magnolia bloom", 83)),
    ];
}
