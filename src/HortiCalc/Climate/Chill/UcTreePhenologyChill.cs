using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Chill portions of cultivars of fruits and nuts, to a tenth as the studies gave them.</summary>
internal static class UcTreePhenologyChill
{
    private static readonly Source Table = new(
        "uc-tree-phenology-portions",
        "Table 1. Chill Requirements in Chill Portions, calculated using the Dynamic Model",
        "University of California Davis, Tree Phenology",
        null,
        "http://treephenology.ucdavis.edu/chp/glc/table1.html");

    public static readonly ChillRequirement[] Rows =
    [
        Row("Almond", "Nonpareil", 23),
        Row("Almond", "Desmayo Largueta", 28),
        Row("Almond", "Ferragnes", 32),
        Row("Apple", "Golden Delicious", 50),
        Row("Apricot", "Currot (Murcia)", 34.3),
        Row("Apricot", "Currot (Murcia and Tuscany)", 39.6),
        Row("Apricot", "Rojo Pasion", 51.2),
        Row("Apricot", "Búlida", 53.8),
        Row("Apricot", "San Castrese", 55.25),
        Row("Apricot", "Murciana", 55.9),
        Row("Apricot", "Dorada", 56.2),
        Row("Apricot", "Selene", 57.4),
        Row("Apricot", "Orange Red (Murcia and Tuscany)", 61.35),
        Row("Apricot", "Goldrich", 61.9),
        Row("Apricot", "Bergeron", 64.8),
        Row("Apricot", "Orange Red (Murcia)", 69.1),
        Row("Cherry", "Cristobalina", 30.4),
        Row("Cherry", "Lapins", 35),
        Row("Cherry", "Brooks", 36.7),
        Row("Cherry", "Rainier", 45),
        Row("Cherry", "Ruby", 48),
        Row("Cherry", "Somerset", 48),
        Row("Cherry", "Burlat", 48),
        Row("Cherry", "New Star", 53.5),
        Row("Cherry", "Marvin", 57.6),
        Row("Cherry", "Sam", 70),
        Row("Nectarine", "Aprilglo", 12),
        Row("Nectarine", "Mayglo", 18),
        Row("Nectarine", "Sunlite", 33.2),
        Row("Nectarine", "Flavortop", 41.4),
        Row("Nectarine", "Fantasia", 41.7),
        Row("Peach", "Flordaprince", 8),
        Row("Peach", "Earligrande", 12),
        Row("Peach", "Maravilha", 12),
        Row("Peach", "Redhaven", 75),
        Row("Walnut", "Hartley", 53.8),
        Row("Walnut", "Payne", 68.2),
        Row("Walnut", "Scharsch Franquette", 69.7),
        Row("Walnut", "Chandler", 71.5),
    ];

    private static ChillRequirement Row(string crop, string? cultivar, double amount) => Row(crop, cultivar, amount, amount);

    private static ChillRequirement Row(string crop, string? cultivar, double low, double? high) =>
        new(crop, cultivar, ChillModel.Dynamic, low, high, Table);
}
