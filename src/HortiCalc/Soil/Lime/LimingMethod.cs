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
    /// t/ha for each pH unit up to 6.7, which the British farm guide gives for sands and loamy sands, for sandy loams and silt loams, and for
    /// clay loams and clays (from memory). Between rows a straight line, our reading too; above pH 6.0 and below 5.0 the table is silent and
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

    /// <summary>Every method, with no lime applied before where a method asks for it: to compare.</summary>
    public static IReadOnlyList<LimingMethod> All { get; } = ValueList<LimingMethod>.Of(
        [UkGardenTexture, UsGardenTexture, AustralianGardenTexture, PennStateTurf, PennStateAgronomic, NorthCarolina()]);

    /// <summary>The method, with its source and what it was published for.</summary>
    public Method Method => Facts.Method;

    /// <summary>The depth of soil that the rates are for, or <see langword="null"/> where the source gives none.</summary>
    public Length? Depth => Facts.Depth;

    /// <summary>The material that the rates are of.</summary>
    public LimingMaterial Material => Facts.Material;

    /// <summary>How fine the rates assume the material to be, in words; fineness is not corrected for again.</summary>
    public string Fineness => Facts.Fineness;

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
        reason = Refusal(Guard.NotNull(soil), target)?.Message ?? "";
        return reason.Length == 0;
    }

    /// <summary>The name and source of the method.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => Method.ToString();

    internal static bool IsAtTarget(SoilReport soil, Ph target) => soil.PhInWater is { } current && current >= target;

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
