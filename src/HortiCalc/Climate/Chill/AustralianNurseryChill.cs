using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Hours below 7 °C of kinds of fruit.</summary>
internal static class AustralianNurseryChill
{
    private static readonly Source Table = ChillEvidence.AustralianHours;

    public static readonly ChillRequirement[] Rows =
    [
        Row("Almond", null, 400, 700),
        Row("Apple", null, 300, 1200),
        Row("Avocado", null, 0),
        Row("Apricot", null, 300, 1000),
        Row("Citrus", null, 0),
        Row("Chestnut", null, 400, 750),
        Row("Grapes", null, 100, 500),
        Row("Fig", null, 100, 500),
        Row("Olive", null, 400, 700),
        Row("Kiwi", null, 400, 800),
        Row("Pear", null, 150, 1500),
        Row("Peach", null, 150, 1200),
        Row("Persimmon", null, 100, 700),
        Row("Pecan", null, 150, 1600),
        Row("Plum", null, 275, 1000),
        Row("Nectarine", null, 150, 1200),
        Row("Quince", null, 100, 500),
        Row("Pomegranate", null, 100, 300),
        Row("Walnut", null, 400, 1500),
    ];

    private static ChillRequirement Row(string crop, string? cultivar, double amount) => Row(crop, cultivar, amount, amount);

    private static ChillRequirement Row(string crop, string? cultivar, double low, double? high) =>
        new(crop, cultivar, ChillModel.HoursBelowSeven, low, high, Table);
}
