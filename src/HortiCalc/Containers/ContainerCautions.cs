using HortiCalc.Evidence;

namespace HortiCalc.Containers;

/// <summary>What to take care of when medium is mixed and potted.</summary>
public static class ContainerCautions
{
    /// <summary>Dust of potting medium can carry Legionella.</summary>
    public static Caution Dust { get; } = new(
        "medium.dust",
        CautionLevel.Danger,
        "Potting medium can carry Legionella: open bags slowly and away from the face, keep the medium damp, air the room,"
        + " wear gloves, wash your hands; see a doctor about a worsening cough or fever.",
        new Source(
            "queensland-legionella",
            "Legionella risks from work with potting mix and compost",
            "Workplace Health and Safety Queensland",
            null,
            "https://www.worksafe.qld.gov.au/safety-and-prevention/hazards/hazardous-exposures/biological-hazards/legionella-risks-from-work-with-potting-mix-and-compost"));

    /// <summary>Full pots are heavy.</summary>
    public static Caution Lifting { get; } = new(
        "container.lifting",
        CautionLevel.Care,
        "A watered pot can weigh several times the dry one: fill large pots where they are to stand, lift with the legs or with help.",
        Source.CommonPractice("lifting-pots", "large pots are filled where they stand"));

    /// <summary>Wet medium is a load on a structure.</summary>
    public static Caution Load { get; } = new(
        "container.structural-load",
        CautionLevel.Danger,
        "Balconies, roofs and benches bear only what they were built for: have an engineer or the owner say how much before you load one with wet medium.",
        Source.CommonPractice("load-on-structures", "the bearing load of a balcony or roof is asked of an engineer"));

    /// <summary>Lime and fertiliser mixed into medium.</summary>
    public static Caution Additions { get; } = new(
        "medium.additions",
        CautionLevel.Care,
        "Weigh lime and fertiliser and mix them in evenly, with gloves and without raising dust; too much harms roots. The product's label goes before any recipe.",
        Source.CommonPractice("medium-additions", "lime and fertiliser are weighed and mixed evenly into medium"));
}
