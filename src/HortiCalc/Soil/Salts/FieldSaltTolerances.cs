using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>Fiber, grain, forage and woody crops of the U.S. Salinity Laboratory; from memory.</summary>
internal static class FieldSaltTolerances
{
    private static readonly Source Printed = SaltSources.SalinityLaboratoryFields;

    public static IReadOnlyList<SaltTolerance> Rows { get; } =
    [
        SaltRows.Row(Printed, "barley", "Barley", 8.0, 8.0, 5.0, 5.0, SaltRows.T),
        SaltRows.Row(Printed, "bean", "Bean", 1.0, 1.0, 19, 19, SaltRows.S),
        SaltRows.Row(Printed, "broad bean", "Broadbean", 1.6, 1.6, 9.6, 9.6, SaltRows.MS),
        SaltRows.Row(Printed, "maize", "Corn", 1.7, 1.7, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "cotton", "Cotton", 7.7, 7.7, 5.2, 5.2, SaltRows.T),
        SaltRows.Row(Printed, "cowpea", "Cowpea", 4.9, 4.9, 12, 12, SaltRows.MT),
        SaltRows.Row(Printed, "flax", "Flax", 1.7, 1.7, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "guar", "Guar", 8.8, 8.8, 17, 17, SaltRows.T),
        SaltRows.Row(Printed, "peanut", "Peanut", 3.2, 3.2, 29, 29, SaltRows.MS),
        SaltRows.Row(Printed, "rice", "Rice, paddy", 3.0, 3.0, 12, 12, SaltRows.S),
        SaltRows.Row(Printed, "rye", "Rye", 11.4, 11.4, 10.8, 10.8, SaltRows.T),
        SaltRows.Row(Printed, "sorghum", "Sorghum", 6.8, 6.8, 16, 16, SaltRows.MT),
        SaltRows.Row(Printed, "soybean", "Soybean", 5.0, 5.0, 20, 20, SaltRows.MT),
        SaltRows.Row(Printed, "sugar beet", "Sugar beet", 7.0, 7.0, 5.9, 5.9, SaltRows.T),
        SaltRows.Row(Printed, "sugarcane", "Sugarcane", 1.7, 1.7, 5.9, 5.9, SaltRows.MS),
        SaltRows.Row(Printed, "triticale", "Triticale", 6.1, 6.1, 2.5, 2.5, SaltRows.T),
        SaltRows.Row(Printed, "wheat", "Wheat", 6.0, 6.0, 7.1, 7.1, SaltRows.MT),
        SaltRows.Row(Printed, "wheat, semidwarf", "Wheat, semidwarf", 8.6, 8.6, 3.0, 3.0, SaltRows.T),
        SaltRows.Row(Printed, "wheat, durum", "Wheat, durum", 5.9, 5.9, 3.8, 3.8, SaltRows.T),
        SaltRows.Row(Printed, "alfalfa", "Alfalfa", 2.0, 2.0, 7.3, 7.3, SaltRows.MS),
        SaltRows.Row(Printed, "barley for forage", "Barley (forage)", 6.0, 6.0, 7.1, 7.1, SaltRows.MT),
        SaltRows.Row(Printed, "bermudagrass", "Bermudagrass", 6.9, 6.9, 6.4, 6.4, SaltRows.T),
        SaltRows.Row(Printed, "clover, alsike", "Clover, alsike", 1.5, 1.5, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "clover, berseem", "Clover, berseem", 1.5, 1.5, 5.7, 5.7, SaltRows.MS),
        SaltRows.Row(Printed, "clover, ladino", "Clover, ladino", 1.5, 1.5, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "clover, red", "Clover, red", 1.5, 1.5, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "clover, strawberry", "Clover, strawberry", 1.5, 1.5, 12, 12, SaltRows.MS),
        SaltRows.Row(Printed, "maize for forage", "Corn (forage)", 1.8, 1.8, 7.4, 7.4, SaltRows.MS),
        SaltRows.Row(Printed, "cowpea for forage", "Cowpea (forage)", 2.5, 2.5, 11, 11, SaltRows.MS),
        SaltRows.Row(Printed, "fescue", "Fescue, tall", 3.9, 3.9, 5.3, 5.3, SaltRows.MT),
        SaltRows.Row(Printed, "foxtail", "Foxtail, meadow", 1.5, 1.5, 9.6, 9.6, SaltRows.MS),
        SaltRows.Row(Printed, "hardinggrass", "Hardinggrass", 4.6, 4.6, 7.6, 7.6, SaltRows.MT),
        SaltRows.Row(Printed, "lovegrass", "Lovegrass", 2.0, 2.0, 8.4, 8.4, SaltRows.MS),
        SaltRows.Row(Printed, "orchardgrass", "Orchardgrass", 1.5, 1.5, 6.2, 6.2, SaltRows.MS),
        SaltRows.Row(Printed, "ryegrass, perennial", "Ryegrass, perennial", 5.6, 5.6, 7.6, 7.6, SaltRows.MT),
        SaltRows.Row(Printed, "sesbania", "Sesbania", 2.3, 2.3, 7.0, 7.0, SaltRows.MS),
        SaltRows.Row(Printed, "sphaerophysa", "Sphaerophysa", 2.2, 2.2, 7.0, 7.0, SaltRows.MS),
        SaltRows.Row(Printed, "sudangrass", "Sudangrass", 2.8, 2.8, 4.3, 4.3, SaltRows.MT),
        SaltRows.Row(Printed, "trefoil, big", "Trefoil, big", 2.3, 2.3, 19, 19, SaltRows.MS),
        SaltRows.Row(Printed, "trefoil, narrowleaf birdsfoot", "Trefoil, narrowleaf birdsfoot", 5.0, 5.0, 10, 10, SaltRows.MT),
        SaltRows.Row(Printed, "vetch, common", "Vetch, common", 3.0, 3.0, 11, 11, SaltRows.MS),
        SaltRows.Row(Printed, "wheatgrass, fairway crested", "Wheatgrass, fairway crested", 7.5, 7.5, 6.9, 6.9, SaltRows.T),
        SaltRows.Row(Printed, "wheatgrass, standard crested", "Wheatgrass, standard crested", 3.5, 3.5, 4.0, 4.0, SaltRows.MT),
        SaltRows.Row(Printed, "wheatgrass, tall", "Wheatgrass, tall", 7.5, 7.5, 4.2, 4.2, SaltRows.T),
        SaltRows.Row(Printed, "wildrye, beardless", "Wildrye, beardless", 2.7, 2.7, 6.0, 6.0, SaltRows.MT),
        SaltRows.Row(Printed, "almond", "Almond", 1.5, 1.5, 19, 19, SaltRows.S),
        SaltRows.Row(Printed, "apricot", "Apricot", 1.6, 1.6, 24, 24, SaltRows.S),
        SaltRows.Row(Printed, "blackberry", "Blackberry", 1.5, 1.5, 22, 22, SaltRows.S),
        SaltRows.Row(Printed, "boysenberry", "Boysenberry", 1.5, 1.5, 22, 22, SaltRows.S),
        SaltRows.Row(Printed, "date palm", "Date palm", 4.0, 4.0, 3.6, 3.6, SaltRows.T),
        SaltRows.Row(Printed, "grape", "Grape", 1.5, 1.5, 9.6, 9.6, SaltRows.MS),
        SaltRows.Row(Printed, "grapefruit", "Grapefruit", 1.8, 1.8, 16, 16, SaltRows.S),
        SaltRows.Row(Printed, "orange", "Orange", 1.7, 1.7, 16, 16, SaltRows.S),
        SaltRows.Row(Printed, "peach", "Peach", 1.7, 1.7, 21, 21, SaltRows.S),
        SaltRows.Row(Printed, "plum", "Plum (prune)", 1.5, 1.5, 18, 18, SaltRows.S),
    ];
}
