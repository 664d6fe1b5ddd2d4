using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Chill portions of cultivars of fruits and nuts, compiled for California.</summary>
internal static class UcFruitAndNutChill
{
    private static readonly Source Table = new(
        "uc-fruit-and-nut-portions",
        "Fruit & Nut Crop Chill Portions Requirements",
        "University of California, compiled by K. Pope, Cooperative Extension",
        null,
        "https://fruitsandnuts.ucanr.edu/Weather_Services/chilling_accumulation_models/CropChillReq/");

    public static readonly ChillRequirement[] Rows =
    [
        Row("Almond", "Desmayo Largueta", 28),
        Row("Almond", "Ferragnes", 32),
        Row("Almond", "Nonpareil", 22, 23),
        Row("Apple", "Golden Delicious", 50),
        Row("Apricot", "Bergeron", 62, 65),
        Row("Apricot", "Búlida", 54, 56),
        Row("Apricot", "Canino", 30, 45),
        Row("Apricot", "Currot", 34, 40),
        Row("Apricot", "Dorada", 56, 58),
        Row("Apricot", "Goldrich", 62),
        Row("Apricot", "Murciana", 56),
        Row("Apricot", "Orange Red", 55, 69),
        Row("Apricot", "Palsteyn", 32, 37),
        Row("Apricot", "Rojo Pasion", 48, 51),
        Row("Apricot", "San Castrese", 55),
        Row("Apricot", "Selene", 57),
        Row("Cherry", "Brooks", 37),
        Row("Cherry", "Burlat", 48, 53),
        Row("Cherry", "Cristobalina", 30),
        Row("Cherry", "Lapins", 35),
        Row("Cherry", "Marvin", 58),
        Row("Cherry", "New Star", 54),
        Row("Cherry", "Rainier", 45),
        Row("Cherry", "Ruby", 48),
        Row("Cherry", "Sam", 70),
        Row("Cherry", "Somerset", 48),
        Row("Nectarine", "Aprilglo", 12),
        Row("Nectarine", "Fantasia", 42),
        Row("Nectarine", "Flavortop", 41),
        Row("Nectarine", "Mayglo", 18),
        Row("Nectarine", "Sunlite", 33),
        Row("Peach", "Andross", 63),
        Row("Peach", "Big Top", 63),
        Row("Peach", "Earligrande", 12),
        Row("Peach", "Flordaprince", 8),
        Row("Peach", "Maravilha", 12),
        Row("Peach", "O'Henry", 63),
        Row("Peach", "Redhaven", 75),
        Row("Pistachio", "Kerman", 54, 58),
        Row("Pistachio", "Mateur", 36),
        Row("Pistachio", "Peters", 58, 65),
        Row("Pistachio", "Sirora", 60),
        Row("Prune", "Improved French", 55, 60),
        Row("Walnut", "Chandler", 45, 50),
        Row("Walnut", "Hartley", 54),
        Row("Walnut", "Payne", 38),
    ];

    private static ChillRequirement Row(string crop, string? cultivar, double amount) => Row(crop, cultivar, amount, amount);

    private static ChillRequirement Row(string crop, string? cultivar, double low, double? high) =>
        new(crop, cultivar, ChillModel.Dynamic, low, high, Table);
}
