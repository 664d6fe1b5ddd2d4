using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Hours from 32 to 45 °F of kinds of fruit.</summary>
internal static class MidwesternClimateCenterChill
{
    private static readonly Source Table = new(
        "mrcc-chilling-hours",
        "Chilling hour requirements by type of fruit",
        "Midwestern Regional Climate Center, Purdue University (courtesy of a nursery)",
        null,
        "https://mrcc.geddes.rcac.purdue.edu/VIP/cropspecs");

    public static readonly ChillRequirement[] Rows =
    [
        Row("Almond", null, 500, 600),
        Row("Apple", null, 400, 1000),
        Row("Apricot", null, 500, 600),
        Row("Blackberry", null, 200, 500),
        Row("Blueberry, northern", null, 800),
        Row("Cherry", null, 700, 800),
        Row("Chestnut", null, 400, 500),
        Row("Citrus", null, 0),
        Row("Currant", null, 800, 1000),
        Row("Fig", null, 100, 200),
        Row("Filbert", null, 800),
        Row("Gooseberry", null, 800, 1000),
        Open("Grape", null, 100),
        Row("Kiwi", null, 600, 800),
        Row("Mulberry", null, 400),
        Row("Peach", null, 600, 800),
        Row("Pear, European", null, 600, 800),
        Row("Pear, Japanese", null, 400, 500),
        Row("Persimmon", null, 200, 400),
        Row("Plum Cot", null, 400),
        Row("Plum, European", null, 800, 900),
        Row("Plum, Japanese", null, 300, 500),
        Row("Pomegranate", null, 100, 200),
        Row("Quince", null, 300, 500),
        Row("Raspberries", null, 700, 800),
        Row("Strawberry", null, 200, 300),
        Row("Walnut", null, 600, 700),
    ];

    private static ChillRequirement Row(string crop, string? cultivar, double amount) => Row(crop, cultivar, amount, amount);

    private static ChillRequirement Row(string crop, string? cultivar, double low, double? high) =>
        new(crop, cultivar, ChillModel.HoursFromFreezingFahrenheit, low, high, Table);

    private static ChillRequirement Open(string crop, string? cultivar, double low) => Row(crop, cultivar, low, null);
}
