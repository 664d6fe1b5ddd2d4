using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>The list of herbaceous crops of the U.S. Salinity Laboratory, whole.</summary>
internal static class HerbaceousSaltTolerances
{
    private static readonly Source Printed = SaltSources.SalinityLaboratory;

    public static IReadOnlyList<SaltTolerance> Rows { get; } =
    [
        SaltRows.Rated(Printed, "artichoke", "Artichoke", SaltRows.MT, true),
        SaltRows.Row(Printed, "asparagus", "Asparagus", 4.1, 4.1, 2.0, 2.0, SaltRows.T),
        SaltRows.Row(Printed, "bean", "Bean", 1.0, 1.0, 19.0, 19.0, SaltRows.S),
        SaltRows.Row(Printed, "bean, mung", "Bean, mung", 1.8, 1.8, 20.7, 20.7, SaltRows.S),
        SaltRows.Row(Printed, "beet", "Beet, red (h)", 4.0, 4.0, 9.0, 9.0, SaltRows.MT),
        SaltRows.Row(Printed, "broccoli", "Broccoli", 2.8, 2.8, 9.2, 9.2, SaltRows.MS),
        SaltRows.Rated(Printed, "brussels sprouts", "Brussel Sprouts", SaltRows.MS, true),
        SaltRows.Row(Printed, "cabbage", "Cabbage", 1.8, 1.8, 9.7, 9.7, SaltRows.MS),
        SaltRows.Row(Printed, "carrot", "Carrot", 1.0, 1.0, 14.0, 14.0, SaltRows.S),
        SaltRows.Rated(Printed, "cauliflower", "Cauliflower", SaltRows.MS, true),
        SaltRows.Row(Printed, "celery", "Celery", 1.8, 1.8, 6.2, 6.2, SaltRows.MS),
        SaltRows.Row(Printed, "sweet corn", "Corn, sweet", 1.7, 1.7, 12.0, 12.0, SaltRows.MS),
        SaltRows.Row(Printed, "cucumber", "Cucumber", 2.5, 2.5, 13.0, 13.0, SaltRows.MS),
        SaltRows.Row(Printed, "eggplant", "Eggplant", 1.1, 1.1, 6.9, 6.9, SaltRows.MS),
        SaltRows.Rated(Printed, "kale", "Kale", SaltRows.MS, true),
        SaltRows.Rated(Printed, "kohlrabi", "Kohlrabi", SaltRows.MS, true),
        SaltRows.Row(Printed, "lettuce", "Lettuce", 1.3, 1.3, 13.0, 13.0, SaltRows.MS),
        SaltRows.Rated(Printed, "melon", "Muskmelon", SaltRows.MS),
        SaltRows.Rated(Printed, "okra", "Okra", SaltRows.S),
        SaltRows.Row(Printed, "onion", "Onion", 1.2, 1.2, 16.0, 16.0, SaltRows.S),
        SaltRows.Rated(Printed, "parsnip", "Parsnip", SaltRows.S, true),
        SaltRows.Rated(Printed, "pea", "Pea", SaltRows.S, true),
        SaltRows.Row(Printed, "pepper", "Pepper", 1.5, 1.5, 14.0, 14.0, SaltRows.MS),
        SaltRows.Row(Printed, "potato", "Potato", 1.7, 1.7, 12.0, 12.0, SaltRows.MS),
        SaltRows.Rated(Printed, "pumpkin", "Pumpkin", SaltRows.MS, true),
        SaltRows.Row(Printed, "radish", "Radish", 1.2, 1.2, 13.0, 13.0, SaltRows.MS),
        SaltRows.Row(Printed, "spinach", "Spinach", 2.0, 2.0, 7.6, 7.6, SaltRows.MS),
        SaltRows.Row(Printed, "squash, scallop", "Squash, scallop", 3.2, 3.2, 16.0, 16.0, SaltRows.MS),
        SaltRows.Row(Printed, "squash, zucchini", "Squash, zucchini", 4.7, 4.7, 9.4, 9.4, SaltRows.MT),
        SaltRows.Row(Printed, "strawberry", "Strawberry", 1, 1, 33, 33, SaltRows.S),
        SaltRows.Row(Printed, "sweet potato", "Sweet potato", 1.5, 1.5, 11, 11, SaltRows.MS),
        SaltRows.Row(Printed, "tomato", "Tomato", 2.5, 2.5, 9.9, 9.9, SaltRows.MS),
        SaltRows.Row(Printed, "tomato, cherry", "Tomato, cherry", 1.7, 1.7, 9.1, 9.1, SaltRows.MS),
        SaltRows.Row(Printed, "turnip", "Turnip", 0.9, 0.9, 9, 9, SaltRows.MS),
        SaltRows.Rated(Printed, "watermelon", "Watermelon", SaltRows.MS, true),
    ];
}
