using HortiCalc.Evidence;

namespace HortiCalc.Mixes;

/// <summary>What to take care of when feeding. The codes are stable.</summary>
internal static class FeedingCautions
{
    public static readonly Caution LabelDecides = new(
        "feed.label-decides",
        CautionLevel.Note,
        "The product's label states what it holds; a pure formula is only near it.",
        FeedingSources.Donnan);

    public static readonly Caution MeterFirst = new(
        "feed.meter-first",
        CautionLevel.Care,
        "Check what comes out of the hose with a conductivity meter before plants get it: colour is no guide, and injectors drift.",
        FeedingSources.InjectorCheck);

    public static readonly Caution TwoTanks = new(
        "feed.two-tanks",
        CautionLevel.Care,
        "Keep calcium apart from sulfate and phosphate until both are diluted: in one tank they make a sludge that blocks lines and starves plants.",
        FeedingSources.TwoTanks);

    public static readonly Caution TooStrong = new(
        "feed.too-strong",
        CautionLevel.Care,
        "A salt cannot dissolve at this strength and temperature: use a larger tank, a smaller ratio or warmer water.",
        FeedingSources.Solubility);

    public static readonly Caution CommonIon = new(
        "feed.common-ion",
        CautionLevel.Note,
        "The solubility is that of one salt alone; salts with an ion in common hold each other back.",
        FeedingSources.Solubility);

    public static readonly Caution PrintedLow = new(
        "feed.solubility-printed-low",
        CautionLevel.Note,
        "The table's figures for potassium nitrate up to 20 °C lie below what handbooks have; they err on the safe side.",
        FeedingSources.Solubility);

    public static readonly Caution TargetUnbalanced = new(
        "feed.target-unbalanced",
        CautionLevel.Note,
        "The ions wanted do not balance in charge, so no salts can meet them all.",
        FeedingSources.TwelveSolutions);

    public static readonly Caution NotReached = new(
        "feed.not-reached",
        CautionLevel.Care,
        "An ion lies more than 5 % from what was wanted: offer another salt, or another target.",
        FeedingSources.Custom);

    public static readonly Caution ConductivityOfLabel = new(
        "feed.conductivity-of-label",
        CautionLevel.Note,
        "The factor is that of the product in pure water: the water's own conductivity is added, and meters differ by some per cent.",
        FeedingSources.BagChart);

    /// <summary>What goes with a recipe that holds acid.</summary>
    public static readonly IReadOnlyList<Caution> Acid = [.. WaterAcidCautions.Always];
}
