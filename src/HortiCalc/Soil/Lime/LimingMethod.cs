using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>
/// A published way to find how much lime a soil needs, with the depth, the material and the fineness that its rates assume.
/// </summary>
/// <remarks>
/// <para>Immutable; equal when of the same kind with the same inputs. A closed set: the values are the static members.</para>
/// <para>
/// With a report that gives exchangeable acidity or the Mehlich buffer, take the laboratory's own method: it measures what the lime must
/// neutralise. With only pH and texture, <see cref="UkGardenTexture"/> is the default to choose, because it is the one garden table here
/// that stands in a textbook; the two others name no original.
/// </para>
/// </remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(5.6), Texture = SoilTexture.Loam };
/// foreach (LimingMethod method in LimingMethod.All)
/// {
///     Console.WriteLine(method.CanUse(soil, new Ph(6.5), out string reason)
///         ? Liming.Requirement(soil, new Ph(6.5), method).ToString()
///         : reason);
/// }
/// </code></example>
public abstract record LimingMethod
{
    private protected LimingMethod()
    {
    }

    /// <summary>
    /// By texture and pH in water, 5.0 to 6.0, to 6.5 only: Table 14.4 of Principles of Horticulture (Routledge). Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. The table gives no depth.
    /// </summary>
    /// <remarks>
    /// The table's columns are light soils (very sandy), loams and heavy soils. Our reading: sand and loamy sand are light; sandy loam, loam,
    /// silt loam and silt are loams; sandy clay loam, clay loam, silty clay loam and all clays are heavy. The figures are those of 6, 7 and 8
    /// t/ha for each pH unit up to 6.7 to within rounding, all nine of them; <see cref="UkPerPhUnit"/> has those factors. A trade page gives
    /// them in print for light soils, for medium and deep silty ones, and for clays; that sandy loams are medium and clay loams heavy is
    /// the reading of the British farm guide, from memory. Between rows a straight line, our reading too; above pH 6.0 and below 5.0 the table is silent and
    /// the method refuses.
    /// </remarks>
    public static LimingMethod UkGardenTexture { get; } = new UkGardenTextureLiming();

    /// <summary>
    /// By texture and pH in water, 4.0 to 6.0, to 6.5 only: a table of ground limestone in pounds per 100 square feet that circulates in
    /// the United States without an original; common practice. Needs <see cref="SoilReport.PhInWater"/> and
    /// <see cref="SoilReport.Texture"/>. The table gives no depth.
    /// </summary>
    /// <remarks>
    /// The table's columns are sandy loam, loam and clay loam. Our reading: silt loam and silt are read as loam; sandy clay loam and
    /// silty clay loam as clay loam. Coarser and finer soils have no column and are refused. Between rows a straight line, our reading
    /// too.
    /// </remarks>
    public static LimingMethod UsGardenTexture { get; } = new UsGardenTextureLiming();

    /// <summary>
    /// By texture, from any pH to any higher one between 4.5 and 6.5, in the top 10 cm: an Australian table of lime for one pH unit that
    /// names no original; common practice. Needs <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>.
    /// </summary>
    /// <remarks>
    /// The table's rows are sand or loamy sand, sandy loam, one whose label is missing in the copy seen, silty loam, clay loam and
    /// organic soil. The row without label is not used, so loam is refused; silty loam is read for silt loam. Within a unit the rate is
    /// taken in proportion, our reading.
    /// </remarks>
    public static LimingMethod AustralianGardenTexture { get; } = new AustralianGardenTextureLiming();

    /// <summary>
    /// By exchangeable acidity, 2.0 to 25.7 meq/100 g, to pH 6.0, 6.5 or 7.0: Penn State's table for turf. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.ExchangeableAcidity"/>. The table gives no depth.
    /// </summary>
    /// <remarks>
    /// The laboratory reports the acidities of the table's 38 rows and prints no rule for others. Between rows a straight line is taken,
    /// as in the garden tables: the result never leaves the two printed rates beside it. Outside the rows the method refuses.
    /// </remarks>
    public static LimingMethod PennStateTurf { get; } = new PennStateTurfLiming();

    /// <summary>
    /// By exchangeable acidity, to pH 6.5 or 7.0, for 7 inches of soil: Penn State's formulas for field crops. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.ExchangeableAcidity"/>.
    /// </summary>
    /// <remarks>
    /// To 7.0, 1000 lb/acre per meq/100 g. To 6.5, 840 lb/acre per meq/100 g above an acidity of 4.0, and 2000 lb/acre below it; at exactly
    /// 4.0 the source prints nothing and the smaller rate is taken, with the caution <c>lime.undefined-in-source</c>.
    /// </remarks>
    public static LimingMethod PennStateAgronomic { get; } = new PennStateAgronomicLiming();

    /// <summary>
    /// By texture, 6, 7 or 8 t/ha for each pH unit, up to pH 7.5 in 20 cm of soil: the rule of British agriculture; common practice. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>.
    /// </summary>
    /// <remarks>
    /// The textures are read as in <see cref="UkGardenTexture"/>. The depth is that of the Agricultural Lime Association's arable rates. An
    /// exercise of a horticulture course prints the 8 for heavy clay, to pH 7.5.
    /// </remarks>
    public static LimingMethod UkPerPhUnit { get; } = new PerPhUnitLiming(
        new LimingFacts(
            new Method(
                "lime-uk-per-ph-unit",
                "UK rule per pH unit by texture",
                LimeMethodSources.UkPerPhUnit,
                new Domain(
                    "mineral soils, arable depth",
                    new DomainLimit(nameof(SoilReport.PhInWater), 5, 7.5, "pH"),
                    new DomainLimit("target", 5, 7.5, "pH"))),
            Length.FromCentimeters(20),
            LimingMaterial.GroundLimestone,
            "ground limestone; the association's rates assume 40 % through 150 micrometres"),
        static texture => texture switch
        {
            SoilTexture.Sand or SoilTexture.LoamySand => ("light soils", 600),
            SoilTexture.SandyLoam or SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt => ("medium and deep silty soils", 700),
            _ => ("clays", 800),
        });

    /// <summary>
    /// By texture, 35, 50 or 70 lb/1000 sq ft for the pH unit from 5.5 to 6.5: a garden rule of the United States; common practice. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. The rule gives no depth.
    /// </summary>
    /// <remarks>
    /// Its textures are light sandy loam, medium loam and heavy clay loam, read as in <see cref="UsGardenTexture"/>. Within the unit the rate is
    /// taken in proportion, our reading.
    /// </remarks>
    public static LimingMethod UsPerPhUnit { get; } = new PerPhUnitLiming(
        new LimingFacts(
            new Method(
                "lime-us-per-ph-unit",
                "US garden rule per pH unit by texture",
                LimeMethodSources.UsPerPhUnit,
                new Domain(
                    "gardens, sandy loam to clay loam",
                    new DomainLimit(nameof(SoilReport.PhInWater), 5.5, 6.5, "pH"),
                    new DomainLimit("target", 5.5, 6.5, "pH"))),
            Depth: null,
            LimingMaterial.GroundLimestone,
            "ground limestone; no fineness stated"),
        static texture => texture switch
        {
            SoilTexture.SandyLoam => ("light sandy loam", 35 * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet),
            SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt =>
                ("medium loam", 50 * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet),
            SoilTexture.SandyClayLoam or SoilTexture.ClayLoam or SoilTexture.SiltyClayLoam =>
                ("heavy clay loam", 70 * LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet),
            _ => null,
        });

    /// <summary>
    /// By the Sikora buffer, 4.8 to 6.9, to pH 5.6, 6.0, 6.4, 6.8 or 7.2, for 6 inches of soil: Oregon's table in lime of score 100. Needs
    /// <see cref="SoilReport.SikoraBufferPh"/>.
    /// </summary>
    /// <remarks>
    /// The slope of the table breaks between buffer pH 5.8 and 5.7; no line is fitted, and a reading between two rows lies on the straight line
    /// between them, our reading.
    /// </remarks>
    public static LimingMethod OregonSikora { get; } = new OregonSikoraLiming();

    /// <summary>
    /// By buffer pH, 5.8 to 7.0, to pH 6.5 or 6.9, for 6 inches of soil: Iowa's table of 2002 in lime of 100 % effective equivalent. Needs
    /// <see cref="SoilReport.SmpBufferPh"/>.
    /// </summary>
    /// <remarks>The copy seen says buffer pH and names no buffer; in 2002 it was the SMP buffer, from memory. Between rows a straight line.</remarks>
    public static LimingMethod Iowa { get; } = new IowaLiming();

    /// <summary>
    /// By the SMP buffer, for grass on mineral soil to pH 6.3: (6.7 − buffer pH) × 12.5 t/ha of ground limestone, Teagasc, Ireland. Needs
    /// <see cref="SoilReport.SmpBufferPh"/>. The source gives no depth.
    /// </summary>
    /// <remarks>
    /// Printed without the brackets; the worked example holds only with them. The target buffer pH of other crops is in a table that was not
    /// seen, so other targets are refused.
    /// </remarks>
    public static LimingMethod Teagasc { get; } = new TeagascLiming();

    /// <summary>
    /// By the lime buffer capacity, to any pH, for 15 cm of soil: capacity × rise × mass of soil, by definition, in pure calcium carbonate. Needs
    /// <see cref="SoilReport.PhInWater"/>, <see cref="SoilReport.LimeBufferCapacity"/> and <see cref="SoilReport.BulkDensity"/>.
    /// </summary>
    /// <remarks>
    /// Where the laboratory measured in calcium chloride, the rise is that of the pH in calcium chloride; it differs little from the one in water.
    /// </remarks>
    public static LimingMethod BufferCapacity { get; } = new BufferCapacityLiming();

    /// <summary>
    /// By exchange capacity and calcium, at any pH: (130 × capacity − calcium) × 4 / 43 lb/1000 sq ft. A rule that circulates among gardeners
    /// without a peer-reviewed source; every answer says so. Needs <see cref="SoilReport.CationExchangeCapacity"/> and
    /// <see cref="SoilReport.ExtractableCalcium"/>.
    /// </summary>
    /// <remarks>The capacity is rounded up, as the rule says. Its table misprints the optimum at 6 meq/100 g, 708 for 780.</remarks>
    public static LimingMethod GardenCalcium { get; } = new GardenCalciumLiming();

    /// <summary>
    /// By the Adams-Evans buffer, for sandy soils of the south-eastern United States. Needs <see cref="SoilReport.PhInWater"/> and
    /// <see cref="SoilReport.AdamsEvansBufferPh"/>. Not in <see cref="All"/>: one of its two equations was not found in print.
    /// </summary>
    /// <remarks>
    /// From memory is the curve between pH and acid saturation, 7.79 − 5.55 H + 2.27 H². Every answer carries the caution
    /// <c>lime.unconfirmed</c>.
    /// </remarks>
    public static LimingMethod AdamsEvans { get; } = new AdamsEvansLiming();

    /// <summary>Every method whose coefficients are confirmed, with the most usual inputs where a method takes some: to compare.</summary>
    /// <remarks>
    /// No lime applied before; 70 % base saturation, which is that for vegetables and fruit; no aluminium tolerated.
    /// <see cref="AdamsEvans"/> stays out.
    /// </remarks>
    public static IReadOnlyList<LimingMethod> All { get; } = ValueList<LimingMethod>.Of(
    [
        UkGardenTexture, UsGardenTexture, AustralianGardenTexture, UkPerPhUnit, UsPerPhUnit,
        PennStateTurf, PennStateAgronomic, NorthCarolina(),
        OregonSikora, Iowa, Teagasc, BufferCapacity,
        BrazilBaseSaturation(Ratio.FromPercent(70)), BrazilAluminium(), Cochrane(Ratio.Zero), GardenCalcium,
    ]);

    /// <summary>The method, with its source and what it was published for.</summary>
    public Method Method => Facts.Method;

    /// <summary>The depth of soil that the rates are for, or <see langword="null"/> where the source gives none.</summary>
    public Length? Depth => Facts.Depth;

    /// <summary>The material that the rates are of.</summary>
    public LimingMaterial Material => Facts.Material;

    /// <summary>How fine the rates assume the material to be, in words; fineness is not corrected for again.</summary>
    public string Fineness => Facts.Fineness;

    /// <summary>Whether the method aims at the target pH; others aim at a saturation and take no notice of the target.</summary>
    public virtual bool AimsAtPh => true;

    internal abstract LimingFacts Facts { get; }

    /// <summary>
    /// By the acidity in the Mehlich buffer, to any pH up to 6.6, less a credit for lime applied before: the formula of North Carolina's
    /// soil testing laboratory. Needs <see cref="SoilReport.PhInWater"/>, and <see cref="SoilReport.BufferAcidity"/> or
    /// <see cref="SoilReport.MehlichBufferPh"/>; where both are given the acidity is taken. The source gives no depth.
    /// </summary>
    /// <remarks>
    /// US tons per acre = acidity × (target − current) / (6.6 − current) − credit, of standard lime, which has a calcium carbonate
    /// equivalent of 90 %. At pH 6.6 the formula has no value and above it turns negative; no soil there is below a target of 6.6 or
    /// less, so the method never reaches it. A credit larger than the need gives zero, with the caution <c>lime.credit-covers</c>.
    /// </remarks>
    /// <param name="residual">Lime applied before that may not have reacted yet, or <see langword="null"/> for none.</param>
    /// <returns>The method.</returns>
    public static LimingMethod NorthCarolina(ResidualLime? residual = null) => new NorthCarolinaLiming(residual);

    /// <summary>
    /// By base saturation, for 20 cm of soil: (target − present) × capacity at pH 7, in tonnes per hectare of lime of relative power 100; Brazil.
    /// Needs <see cref="SoilReport.Cations"/> with <see cref="SoilCations.PotentialAcidity"/>. The target pH is not used.
    /// </summary>
    /// <param name="targetSaturation">The base saturation wanted, 0 to 100 %: 50 for cereals, 60 for legumes, 70 for vegetables and fruit.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The saturation is not from 0 to 100 %.</exception>
    public static LimingMethod BrazilBaseSaturation(Ratio targetSaturation) => new BrazilBaseSaturationLiming(targetSaturation);

    /// <summary>
    /// By aluminium, calcium and magnesium, for 20 cm of soil: twice the aluminium, and what calcium and magnesium lack of 2 cmol/dm³; Brazil.
    /// Needs <see cref="SoilReport.Cations"/>. The target pH is not used.
    /// </summary>
    /// <remarks>One copy prints the second part as 2 (Ca + Mg), without the minus sign.</remarks>
    /// <returns>The method.</returns>
    public static LimingMethod BrazilAluminium() => BrazilAluminium(2, Ratio.Zero, VolumetricCharge.FromCentimolesPerLitre(2));

    /// <summary>
    /// By aluminium, calcium and magnesium, for 20 cm of soil: factor × (Al − tolerated × (bases + Al)) + (wanted − (Ca + Mg)), each part at
    /// least zero; Brazil. Needs <see cref="SoilReport.Cations"/>. The target pH is not used.
    /// </summary>
    /// <param name="factor">0 to 1 for sandy soils, 1 to 2 for medium ones, 2 to 3 for clays, 3 to 4 for heavy clays.</param>
    /// <param name="tolerated">The aluminium saturation that the crop stands, 0 to 100 %.</param>
    /// <param name="calciumAndMagnesium">The calcium and magnesium that the crop wants.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not from 0 to 4, or the saturation not from 0 to 100 %.</exception>
    public static LimingMethod BrazilAluminium(double factor, Ratio tolerated, VolumetricCharge calciumAndMagnesium) =>
        new BrazilAluminiumLiming(factor, tolerated, calciumAndMagnesium);

    /// <summary>
    /// By aluminium saturation, for 20 cm of soil: 1.5 × (Al − tolerated × (Al + Ca + Mg)), with 2 instead of 1.5 where that is more than the
    /// aluminium; Cochrane, Salinas and Sanchez (1980). Needs <see cref="SoilReport.Cations"/>. The target pH is not used.
    /// </summary>
    /// <remarks>
    /// The paper says that meq/100 g times the apparent density is about the tonnes per hectare; by arithmetic that is so for 20 cm. With nothing
    /// tolerated and the 1.5 alone it is the older rule of Kamprath.
    /// </remarks>
    /// <param name="tolerated">The aluminium saturation that the crop stands, 0 to 100 %.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The saturation is not from 0 to 100 %.</exception>
    public static LimingMethod Cochrane(Ratio tolerated) => new CochraneLiming(tolerated);

    /// <summary>What the method needs and a soil report does not hold, to ask a grower for.</summary>
    /// <param name="soil">The report.</param>
    /// <returns>The names of members of <see cref="SoilReport"/>; none where all is there.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    public IReadOnlyList<string> Missing(SoilReport soil) => ValueList<string>.Of(Absent(Guard.NotNull(soil)));

    /// <summary>Whether the method answers for a soil and a target: all it needs is there, and inside what it was published for.</summary>
    /// <param name="soil">The report.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="reason">Why it does not; empty where it does.</param>
    /// <returns><see langword="true"/> where <see cref="Liming.Requirement"/> gives an answer.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    public bool CanUse(SoilReport soil, Ph target, out string reason)
    {
        reason = Refusal(Guard.NotNull(soil), target) is { } refusal ? Guard.Sentence(refusal) : "";
        return reason.Length == 0;
    }

    /// <summary>The name and source of the method.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => Method.ToString();

    /// <summary>Whether the soil is where the method aims already.</summary>
    internal virtual bool IsAtTarget(SoilReport soil, Ph target) => soil.PhInWater is { } current && current >= target;

    /// <summary>The exception that says why the method does not answer, or nothing where it does.</summary>
    internal ArgumentException? Refusal(SoilReport soil, Ph target)
    {
        string[] missing = [.. Absent(soil)];
        if (missing.Length > 0)
            return new ArgumentException($"{nameof(soil)} has no {string.Join(" and no ", missing)}, which '{Method.Name}' needs.", nameof(soil));
        return IsAtTarget(soil, target) ? null : Outside(soil, target);
    }

    /// <summary>The members of the report that are needed and absent.</summary>
    internal abstract IEnumerable<string> Absent(SoilReport soil);

    /// <summary>Why a complete report of a soil below the target is outside what the method was published for.</summary>
    internal abstract ArgumentException? Outside(SoilReport soil, Ph target);

    /// <summary>The rate for a soil below the target, inside what the method was published for.</summary>
    internal abstract Estimate<AreaDensity> Rate(SoilReport soil, Ph target);

    private protected ArgumentException? OutsideLimit(double value, string unit, string parameter)
    {
        foreach (DomainLimit limit in Method.Domain.Limits)
        {
            if (limit.Parameter == parameter && !limit.Contains(value))
                return Guard.Refused(parameter, value, unit, $"{limit.Span}, which is what '{Method.Name}' was published for");
        }

        return null;
    }

    private protected static ArgumentException Refused(string parameter, string message) => new ArgumentOutOfRangeException(parameter, message);

    private protected ArgumentException? NotOneOf(ReadOnlySpan<double> goals, Ph target)
    {
        foreach (double goal in goals)
        {
            if (goal == target.Value)
                return null;
        }

        string list = string.Join(" or ", goals.ToArray().Select(Guard.Number));
        return Guard.Refused(nameof(target), target.Value, "pH", $"{list} pH, which is what '{Method.Name}' was published for");
    }

    private protected Estimate<AreaDensity> Answer(
        double gramsPerSquareMetre, IReadOnlyList<Method>? adjustments = null, params IEnumerable<Caution> cautions) =>
        new(AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre), Method, null, adjustments, [.. cautions]);
}
