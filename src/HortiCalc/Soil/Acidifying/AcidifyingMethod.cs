using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published way to find how much of an acidifying material a soil needs, with the depth and the material that its rates are for.</summary>
/// <remarks>
/// <para>Immutable; equal when of the same kind. A closed set: the values are the static members.</para>
/// <para>
/// <see cref="Michigan"/> is the default to choose for blueberries and other plants of pH 4.5: it is a table by pH and texture that goes back to
/// a university. For a garden soil of pH 7.0 to 7.5 take <see cref="Rhs"/>: it is a society's own, and the only one that says its depth and is not
/// a supplier's. The others are custom, or for one pH unit only.
/// </para>
/// </remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(6.0), Texture = SoilTexture.SandyLoam };
/// foreach (AcidifyingMethod method in AcidifyingMethod.All)
/// {
///     Console.WriteLine(method.CanUse(soil, new Ph(5.0), out string reason)
///         ? Acidifying.Requirement(soil, new Ph(5.0), method).ToString()
///         : reason);
/// }
/// </code></example>
public abstract record AcidifyingMethod
{
    private protected AcidifyingMethod()
    {
    }

    /// <summary>
    /// Elemental sulfur by texture and pH in water, 5.0 to 7.0, to 4.5 only: pounds per acre with data of Michigan State University. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. The table gives no depth.
    /// </summary>
    /// <remarks>
    /// The columns are sand, loam and clay. Our reading: sand and loamy sand are sand; sandy loam, loam, silt loam, silt and sandy clay loam are
    /// loam; clay loam, silty clay loam and the clays are clay. Between rows, and from the first row down to 4.5 where the need ends, a straight
    /// line, our reading too.
    /// </remarks>
    public static AcidifyingMethod Michigan { get; } = new MichiganAcidifying();

    /// <summary>
    /// Sulfur powder for the top 15 cm, from pH 7.0 to 7.5 to pH 6.0 to 6.5: one rate for sandy soil and one for clay, Royal Horticultural Society.
    /// Needs <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>.
    /// </summary>
    /// <remarks>
    /// The same rate stands for any of these changes. Our reading: sand, loamy sand and sandy loam are sandy; the clays are clay. For what lies
    /// between the source gives no rate and the method refuses.
    /// </remarks>
    public static AcidifyingMethod Rhs { get; } = new FlatAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-rhs",
                "RHS rate of sulfur for sandy soil and clay",
                AcidSources.Rhs,
                new Domain(
                    "the top 15 cm of soil without free lime",
                    new DomainLimit(nameof(SoilReport.PhInWater), 7.0, 7.5, "pH"),
                    new DomainLimit("target", 6.0, 6.5, "pH"))),
            Length.FromCentimeters(15),
            AcidifyingMaterial.ElementalSulfur),
        SandGramsPerSquareMetre: 135,
        ClayGramsPerSquareMetre: 270);

    /// <summary>
    /// Sulfur for the top 10 cm, from pH 7.5 to pH 6.0 to 6.5: an Australian supplier's rates for sandy soil and clay; common practice. Needs
    /// <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>.
    /// </summary>
    /// <remarks>Textures are read as for <see cref="Rhs"/>. For clay it asks 100 g/m² where the RHS asks 270; 10 against 15 cm explains only half as much again.</remarks>
    public static AcidifyingMethod Australian { get; } = new FlatAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-australian",
                "Australian rate of sulfur for sandy soil and clay",
                AcidSources.Australian,
                new Domain(
                    "the top 10 cm of soil",
                    new DomainLimit(nameof(SoilReport.PhInWater), 7.5, 7.5, "pH"),
                    new DomainLimit("target", 6.0, 6.5, "pH"))),
            Length.FromCentimeters(10),
            AcidifyingMaterial.ElementalSulfur),
        SandGramsPerSquareMetre: 25,
        ClayGramsPerSquareMetre: 100);

    /// <summary>
    /// Sulfur for blueberries, 1 lb/100 sq ft for one pH unit on sandy soil and 2 lb on any heavier one, from at most pH 6.0 to pH 4.0 to 5.3:
    /// eXtension. Needs <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. The source gives no depth.
    /// </summary>
    /// <remarks>
    /// Soil with more than 2 % of organic matter counts as heavier, whatever its texture. Above pH 6.0 the source says that blueberries are
    /// difficult to grow, and the method refuses. Within a unit in proportion, our reading.
    /// </remarks>
    public static AcidifyingMethod Blueberry { get; } = new UnitAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-blueberry",
                "rate of sulfur per pH unit for blueberries",
                AcidSources.Blueberry,
                new Domain(
                    "before planting blueberries; soil with more than 2 % of organic matter counts as heavy",
                    new DomainLimit(nameof(SoilReport.PhInWater), 4.0, 6.0, "pH"),
                    new DomainLimit("target", 4.0, 5.3, "pH"))),
            null,
            AcidifyingMaterial.ElementalSulfur),
        LimeUnits.GramsPerSquareMetrePerPoundPer100SquareFeet,
        texture => AcidTextures.IsSand(texture) ? "sandy soil" : "heavier soil",
        heading => heading == "sandy soil" ? 1 : 2);

    /// <summary>
    /// Dusting sulfur for one pH unit by texture, 10, 15 or 20 lb/1000 sq ft, within pH 6.0 to 5.0: a garden book's rates as they circulate in the
    /// United States; common practice. Needs <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. No depth is given.
    /// </summary>
    /// <remarks>
    /// The headings are light sandy loam, medium loam and heavy clay loam. Our reading: silt loam and silt are read as loam, the sandy and silty
    /// clay loams as clay loam; coarser and finer soils have no heading and are refused.
    /// </remarks>
    public static AcidifyingMethod GardenSoil { get; } = new UnitAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-garden-soil",
                "garden rate of sulfur per pH unit by texture",
                AcidSources.GardenSoil,
                new Domain(
                    "dusting sulfur for one pH unit, from 6.0 to 5.0",
                    new DomainLimit(nameof(SoilReport.PhInWater), 5.0, 6.0, "pH"),
                    new DomainLimit("target", 5.0, 6.0, "pH"))),
            null,
            AcidifyingMaterial.ElementalSulfur),
        LimeUnits.GramsPerSquareMetrePerPoundPer1000SquareFeet,
        texture => texture switch
        {
            SoilTexture.SandyLoam => "sandy loam",
            SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt => "loam",
            SoilTexture.ClayLoam or SoilTexture.SandyClayLoam or SoilTexture.SiltyClayLoam => "clay loam",
            _ => null,
        },
        heading => heading switch
        {
            "sandy loam" => 10,
            "loam" => 15,
            _ => 20,
        });

    /// <summary>
    /// Sulfur for one pH unit in any soil, 0.2 lb/10 sq ft, within pH 7.0 to 5.0: a how-to article; common practice, and the crudest rate here.
    /// Needs <see cref="SoilReport.PhInWater"/>. No depth is given.
    /// </summary>
    public static AcidifyingMethod AnySoil { get; } = new UnitAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-any-soil",
                "general rate of sulfur per pH unit",
                AcidSources.HowTo,
                new Domain(
                    "one pH unit, as from 7.0 to 6.0 or from 6.0 to 5.0",
                    new DomainLimit(nameof(SoilReport.PhInWater), 5.0, 7.0, "pH"),
                    new DomainLimit("target", 5.0, 7.0, "pH"))),
            null,
            AcidifyingMaterial.ElementalSulfur),
        10 * LimeUnits.GramsPerSquareMetrePerPoundPer100SquareFeet,
        HeadingOf: null,
        _ => 0.2);

    /// <summary>
    /// Aluminium sulfate for half a pH unit by texture, 0.6 lb/10 sq ft on loam, a half more on clay and a third less on sand, within pH 7.0 to
    /// 6.5: a garden blog; common practice. Needs <see cref="SoilReport.PhInWater"/> and <see cref="SoilReport.Texture"/>. No depth is given, and
    /// no hydrate: the crystallised salt with 18 waters is taken.
    /// </summary>
    /// <remarks>Textures are read as for <see cref="Michigan"/>.</remarks>
    public static AcidifyingMethod AluminiumSulfate { get; } = new UnitAcidifying(
        new AcidifyingFacts(
            new Method(
                "acid-aluminium-sulfate",
                "garden rate of aluminium sulfate by texture",
                AcidSources.AluminiumByTexture,
                new Domain(
                    "half a pH unit, from 7.0 to 6.5",
                    new DomainLimit(nameof(SoilReport.PhInWater), 6.5, 7.0, "pH"),
                    new DomainLimit("target", 6.5, 7.0, "pH"))),
            null,
            AcidifyingMaterial.AluminiumSulfate(18)),
        10 * LimeUnits.GramsPerSquareMetrePerPoundPer100SquareFeet,
        AcidTextures.SandLoamOrClay,
        heading => heading switch
        {
            AcidTextures.Sand => 2 * 0.6 * 2 / 3,
            AcidTextures.Loam => 2 * 0.6,
            _ => 2 * 0.6 * 3 / 2,
        });

    /// <summary>Every method: to compare.</summary>
    public static IReadOnlyList<AcidifyingMethod> All { get; } = ValueList<AcidifyingMethod>.Of(
        [Michigan, Rhs, Australian, Blueberry, GardenSoil, AnySoil, AluminiumSulfate]);

    /// <summary>The method, with its source and what it was published for.</summary>
    public Method Method => Facts.Method;

    /// <summary>The depth of soil that the rates are for, or <see langword="null"/> where the source gives none.</summary>
    public Length? Depth => Facts.Depth;

    /// <summary>The material that the rates are of.</summary>
    public AcidifyingMaterial Material => Facts.Material;

    internal abstract AcidifyingFacts Facts { get; }

    /// <summary>The method of a key.</summary>
    /// <param name="key">The <see cref="Method.Key"/>, for instance <c>acid-rhs</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is none of that key.</exception>
    public static AcidifyingMethod FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(method => method.Method.Key == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", All.Select(method => method.Method.Key))}.", nameof(key));
    }

    /// <summary>What the method needs and a soil report does not hold, to ask a grower for.</summary>
    /// <param name="soil">The report.</param>
    /// <returns>The names of members of <see cref="SoilReport"/>; none where all is there.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    public IReadOnlyList<string> Missing(SoilReport soil) => ValueList<string>.Of(Absent(Guard.NotNull(soil)));

    /// <summary>Whether the method answers for a soil and a target: all it needs is there, and inside what it was published for.</summary>
    /// <param name="soil">The report.</param>
    /// <param name="target">The pH in water wanted.</param>
    /// <param name="reason">Why it does not; empty where it does.</param>
    /// <returns><see langword="true"/> where <see cref="Acidifying.Requirement"/> gives an answer.</returns>
    /// <exception cref="ArgumentNullException">The report is <see langword="null"/>.</exception>
    public bool CanUse(SoilReport soil, Ph target, out string reason)
    {
        reason = Refusal(Guard.NotNull(soil), target) is { } refusal ? Guard.Sentence(refusal) : "";
        return reason.Length == 0;
    }

    /// <summary>The name and source of the method.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => Method.ToString();

    internal static bool IsAtTarget(SoilReport soil, Ph target) => soil.PhInWater is { } current && current <= target;

    /// <summary>The exception that says why the method does not answer, or nothing where it does.</summary>
    internal ArgumentException? Refusal(SoilReport soil, Ph target)
    {
        string[] missing = [.. Absent(soil)];
        if (missing.Length > 0)
            return new ArgumentException($"{nameof(soil)} has no {string.Join(" and no ", missing)}, which '{Method.Name}' needs.", nameof(soil));
        if (IsAtTarget(soil, target))
            return null;
        if (NeedsTexture && Heading(soil.Texture!.Value) is null)
        {
            IEnumerable<SoilTexture> known = Enum.GetValues<SoilTexture>().Where(other => Heading(other) is not null);
            return NoRate(
                nameof(SoilReport.Texture),
                $"{nameof(SoilReport.Texture)} was {soil.Texture}; allowed: {string.Join(", ", known)}, for which '{Method.Name}' has a rate.");
        }

        return OutsideLimit(soil.PhInWater!.Value.Value, nameof(SoilReport.PhInWater)) ?? OutsideLimit(target.Value, nameof(target));
    }

    /// <summary>The rate for a soil above the target, inside what the method was published for.</summary>
    internal Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        List<Method> adjustments = [];
        string heading = "";
        if (NeedsTexture)
        {
            SoilTexture texture = soil.Texture!.Value;
            heading = Heading(texture)!;
            if (LimeRules.Words(texture) != heading)
                adjustments.Add(AcidRules.Column(texture, heading));
        }

        (double gramsPerSquareMetre, Method? reading) = Read(heading, soil.PhInWater!.Value.Value, target.Value);
        if (reading is not null)
            adjustments.Add(reading);
        return new Estimate<AreaDensity>(AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre), Method, null, adjustments);
    }

    private protected virtual bool NeedsTexture => true;

    /// <summary>The heading of the rate for a texture class, or nothing where the source has none for it.</summary>
    private protected abstract string? Heading(SoilTexture texture);

    /// <summary>The rate under a heading, and the rule of reading where the value is not printed as such.</summary>
    private protected abstract (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh);

    private static ArgumentOutOfRangeException NoRate(string parameter, string message) => new(parameter, message);

    private IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (NeedsTexture && soil.Texture is null)
            yield return nameof(SoilReport.Texture);
    }

    private ArgumentOutOfRangeException? OutsideLimit(double ph, string parameter)
    {
        DomainLimit? limit = Method.Domain.Limits.FirstOrDefault(limit => limit.Parameter == parameter && !limit.Contains(ph));
        return limit is null ? null : Guard.Refused(parameter, ph, "pH", $"{limit.Span}, which is what '{Method.Name}' was published for");
    }
}
