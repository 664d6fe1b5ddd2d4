using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Hours from 32 to 45 °F of cultivars sold in a mild climate.</summary>
internal static class CalifornianNurseryChill
{
    private static readonly Source Table = new(
        "californian-nursery-chill",
        "Fruit tree chill hours",
        "Nursery in California",
        null,
        "http://evergreennursery.com/fruit-tree-chill-hours");

    public static readonly ChillRequirement[] Rows =
    [
        Row("Apple", "Anna", 100),
        Row("Apple", "Dorsett Golden", 100, 250),
        Row("Apple", "Granny Smith", 300, 400),
        Row("Apple", "Fuji", 300, 400),
        Row("Apple", "Gala", 400, 500),
        Row("Apricot", "Blenheim", 400, 500),
        Row("Apricot", "Gold Kist", 300),
        Row("Apricot", "Katy", 200, 300),
        Row("Nectarine", "Desert Delight", 100, 200),
        Row("Nectarine", "Fantasia", 400, 500),
        Row("Nectarine", "Goldmine", 400),
        Row("Nectarine", "Panamint", 250),
        Row("Nectarine", "Snow Queen", 250, 300),
        Row("Peach", "Babcock", 200, 300),
        Row("Peach", "Bonita", 100, 200),
        Row("Peach", "Desert Gold", 100, 200),
        Row("Peach", "Florida Prince", 100, 150),
        Row("Peach", "Red Baron", 250, 300),
        Row("Peach", "Santa Barbara", 150, 250),
        Row("Pear", "Comice", 600),
        Row("Pear", "Kieffer", 200, 300),
        Row("Pear", "Seckel", 500),
        Row("Asian pear", "20th Century", 300, 400),
        Row("Asian pear", "Shinseiki", 250, 300),
        Row("Plum", "Beauty", 250),
        Row("Plum", "Burgundy", 150, 300),
        Row("Plum", "Green Gage", 150, 300),
        Row("Plum", "Mariposa", 250),
        Row("Plum", "Methley", 250),
        Row("Plum", "Santa Rosa", 300),
        Row("Plum", "Satsuma", 300),
    ];

    private static ChillRequirement Row(string crop, string? cultivar, double amount) => Row(crop, cultivar, amount, amount);

    private static ChillRequirement Row(string crop, string? cultivar, double low, double? high) =>
        new(crop, cultivar, ChillModel.HoursFromFreezingFahrenheit, low, high, Table);
}
