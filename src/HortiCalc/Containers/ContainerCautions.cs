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
}
