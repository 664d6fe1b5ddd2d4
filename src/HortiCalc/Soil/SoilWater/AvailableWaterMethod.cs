using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>A published way to say how much water a soil holds for plants.</summary>
/// <remarks>
/// Immutable; equal when of the same key. A closed set: the values are the static members. <see cref="Fao56"/> is the one to choose where only the
/// texture is known, as it prints ranges; with particle sizes and organic matter <see cref="SaxtonRawls"/>.
/// </remarks>
public sealed record AvailableWaterMethod
{
    private readonly Func<SoilComposition, AvailableWaterMethod, WaterHolding> answer;

    private AvailableWaterMethod(Method method, Pressure? fullAt, bool needsParticles, Func<SoilComposition, AvailableWaterMethod, WaterHolding> answer)
    {
        Method = method;
        FullAt = fullAt;
        NeedsParticles = needsParticles;
        this.answer = answer;
    }

    /// <summary>The regressions of Saxton and Rawls 2006; gravel, compaction and salts count where they are given.</summary>
    public static AvailableWaterMethod SaxtonRawls { get; } = new(SoilHydraulics.Method, Pressure.FromKilopascals(33), true, FromHydraulics);

    /// <summary>FAO-56, table 19: ranges of nine classes. The middle of the range is taken as the value.</summary>
    public static AvailableWaterMethod Fao56 { get; } = new(
        new Method(
            "available-water-fao-56",
            "water by texture, FAO-56 table 19",
            SoilWaterSources.Fao56Table19,
            new Domain("nine classes, not sandy clay loam, clay loam or sandy clay; the value is the middle of the printed range")),
        null,
        false,
        AvailableWaterTables.Fao56);

    /// <summary>The USDA National Agronomy Manual, table 504-1: ranges of all classes and grades of sand, and a typical value.</summary>
    public static AvailableWaterMethod NationalAgronomyManual { get; } = new(
        new Method(
            "available-water-usda-nam",
            "water by texture, USDA National Agronomy Manual",
            SoilWaterSources.NationalAgronomyManual1,
            new Domain("all twelve classes; the value is the typical one per foot, the range the one per inch")),
        null,
        false,
        AvailableWaterTables.NationalAgronomyManual);

    /// <summary>The averages of the USDA Agricultural Research Service over 2128 samples; field capacity at one third of a bar.</summary>
    public static AvailableWaterMethod ArsAverages { get; } = new(
        new Method(
            "available-water-ars",
            "water by texture, averages of the USDA Agricultural Research Service",
            SoilWaterSources.ArsAverages,
            new Domain("all twelve classes; means of 2128 samples")),
        Pressure.FromKilopascals(33.3),
        false,
        AvailableWaterTables.Ars);

    /// <summary>Victoria and New South Wales, 360 samples, from 8 to 1500 kPa; field textures of Australia.</summary>
    public static AvailableWaterMethod VictoriaField { get; } = new(
        new Method(
            "available-water-victoria-field",
            "water from 8 to 1500 kPa, Victoria and New South Wales",
            SoilWaterSources.VictoriaField,
            new Domain("360 samples; Australian field textures, taken for the USDA class of the same name; full at 8 kPa")),
        Pressure.FromKilopascals(8),
        false,
        AvailableWaterTables.VictoriaField);

    /// <summary>Victoria, vegetables: ranges and averages; field textures of Australia.</summary>
    public static AvailableWaterMethod VictoriaVegetables { get; } = new(
        new Method(
            "available-water-victoria-vegetables",
            "total available water, Victoria vegetables",
            SoilWaterSources.VictoriaTotal,
            new Domain("Australian field textures, taken for the USDA class of the same name; averages as printed")),
        null,
        false,
        AvailableWaterTables.VictoriaVegetables);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<AvailableWaterMethod> All { get; } =
        ValueList<AvailableWaterMethod>.Of([SaxtonRawls, Fao56, NationalAgronomyManual, ArsAverages, VictoriaField, VictoriaVegetables]);

    /// <summary>The method, its source and what it was published for.</summary>
    public Method Method { get; }

    /// <summary>The tension at which the method counts the soil as full; <see langword="null"/> where it prints none.</summary>
    public Pressure? FullAt { get; }

    /// <summary>Whether it needs particle sizes and organic matter, beside the texture.</summary>
    public bool NeedsParticles { get; }

    /// <summary>The method of a key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of the method.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is none of that key, or it is empty.</exception>
    public static AvailableWaterMethod FromKey(string key)
    {
        Guard.NotBlank(key);
        return All.FirstOrDefault(method => method.Method.Key == key)
            ?? throw new ArgumentException($"key was '{key}'; allowed: {string.Join(", ", All.Select(method => method.Method.Key))}.", nameof(key));
    }

    /// <summary>The name and the source.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Method.ToString();

    internal WaterHolding Of(SoilComposition soil) => answer(soil, this);

    /// <summary>Why the method does not answer for a soil, or <see langword="null"/> where it does.</summary>
    internal string? Refusal(SoilComposition soil)
    {
        try
        {
            Of(soil);
            return null;
        }
        catch (ArgumentException refused)
        {
            return refused.Message.Split(" (Parameter '", 2)[0];
        }
    }

    private static WaterHolding FromHydraulics(SoilComposition soil, AvailableWaterMethod method)
    {
        SoilHydraulics hydraulics = new(soil);
        Estimate<VolumeConcentration> fine = hydraulics.AvailableWaterWithSalts;
        double gravel = Boundary.VolumeFraction(hydraulics.GravelVolume);
        return new WaterHolding(
            fine.Select(share => VolumeConcentration.FromPercent(Boundary.VolumeFraction(share) * (1 - gravel) * 100)),
            OnePoint(hydraulics.FieldCapacity, gravel),
            OnePoint(hydraulics.WiltingPoint, gravel));
    }

    private static EstimateRange<VolumeConcentration> OnePoint(VolumeConcentration share, double gravel)
    {
        VolumeConcentration whole = VolumeConcentration.FromPercent(Boundary.VolumeFraction(share) * (1 - gravel) * 100);
        return new EstimateRange<VolumeConcentration>(whole, whole, "one value");
    }
}
