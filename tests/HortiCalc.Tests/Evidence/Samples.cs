using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Evidence;

/// <summary>Invented evidence for the tests of this room.</summary>
internal static class Samples
{
    public static Source Source { get; } = new("sample", "Sample Bulletin 7", "Sample Extension", 1999, "https://example.org/7");

    public static Method Method { get; } = new(
        "sample-method", "sample table", Source, new Domain("mineral soil", new DomainLimit("current", 5, 6.5, "pH"), new DomainLimit("depth", 0, 30, "cm")));

    public static Method Rule { get; } = new("sample-rule", "scaled to depth", Source.CommonPractice("scaling", "in proportion to depth"), new Domain(""));

    public static Caution Note { get; } = new("sample.note", CautionLevel.Note, "Read the table with care.", Source);

    public static Caution Danger { get; } = new("sample.danger", CautionLevel.Danger, "Wear goggles.", Source);

    public static Estimate<Length> Depth { get; } = new(
        Length.FromInches(6),
        Method,
        new EstimateRange<Length>(Length.FromInches(4), Length.FromInches(8), "range printed by the source"),
        cautions: [Note]);
}
