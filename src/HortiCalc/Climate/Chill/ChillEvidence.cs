using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>The sources and cautions that counts of hours and their requirements share.</summary>
internal static class ChillEvidence
{
    /// <summary>
    /// The largest share of missing hours that is accepted unless told otherwise, as for degree days: left out, a twentieth of the
    /// hours takes about a twentieth of the count, which is less than the choice of the model does.
    /// </summary>
    public const double MaximumMissingPercent = 5;

    public static readonly Source AustralianHours = new(
        "australian-nursery-chill",
        "General chilling requirements of various fruits and nuts",
        "Australian nursery information page",
        null,
        "http://daleysfruit.com.au/fruit%20pages/chillfactor.htm");

    public static readonly Source NotProportional = new(
        "luedeling-brown-2011",
        "A global analysis of the comparability of winter chill models for fruit and nut trees",
        "International Journal of Biometeorology 55:411-421",
        2011,
        "https://link.springer.com/article/10.1007/s00484-010-0352-y");

    public static readonly Caution OwnModel = new(
        "chill.method",
        CautionLevel.Note,
        "Compare this count only with requirements measured by the same model, and by hours made in the same way.",
        NotProportional);

    public static readonly Caution OtherModel = new(
        "chill.other-model",
        CautionLevel.Care,
        "The requirement was measured with another model than this count: models are not proportional, and the answer may be wrong by months.",
        NotProportional);

    public static readonly Caution RequirementVaries = new(
        "chill.requirement-varies",
        CautionLevel.Note,
        "Requirements differ between studies, places and years by a fifth and more: a bare fulfilment is no promise of an even bloom.",
        NotProportional);

    public static readonly Caution LeftOut = new(
        "hours.missing-left-out",
        CautionLevel.Care,
        "Hours without a temperature add nothing and change nothing: the true count is another, and the true time of a requirement may be earlier.",
        Source.CommonPractice("hours-missing", "missing hours of a count are reported"));
}
