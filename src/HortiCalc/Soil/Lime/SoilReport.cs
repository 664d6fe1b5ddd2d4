using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>
/// What a laboratory report or a home test says of a soil. Every member may be absent; a method that needs an absent one refuses by its
/// name.
/// </summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(5.4), Texture = SoilTexture.SandyLoam };
/// Console.WriteLine(LimingMethod.PennStateTurf.Missing(soil)[0]);   // ExchangeableAcidity
/// </code></example>
public sealed record SoilReport
{
    /// <summary>The pH of soil stirred in water. A pH read in calcium chloride is lower and does not belong here.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ph? PhInWater { get; init; }

    /// <summary>
    /// The pH of soil stirred in the Mehlich buffer, whose own pH is 6.6. Buffers of other names are not interchangeable with it.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ph? MehlichBufferPh { get; init; }

    /// <summary>The pH of soil stirred in the SMP buffer of Shoemaker, McLean and Pratt, whose own pH is 7.5.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ph? SmpBufferPh { get; init; }

    /// <summary>The pH of soil stirred in the Sikora buffer, which replaces the SMP buffer in many laboratories.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ph? SikoraBufferPh { get; init; }

    /// <summary>The pH of soil stirred in the Adams-Evans buffer, whose own pH is 8.0.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Ph? AdamsEvansBufferPh { get; init; }

    /// <summary>The exchangeable acidity per mass of soil, as Penn State reports it in milliequivalents per 100 grams.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ExchangeableCharge? ExchangeableAcidity { get; init; }

    /// <summary>
    /// The acidity by the Mehlich buffer per volume of soil, as North Carolina reports it in milliequivalents per 100 cubic centimetres.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? BufferAcidity { get; init; }

    /// <summary>The exchangeable cations per volume; <see cref="SoilCations.FromMass"/> takes a report per mass.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SoilCations? Cations { get; init; }

    /// <summary>The cation exchange capacity per mass of soil.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ExchangeableCharge? CationExchangeCapacity { get; init; }

    /// <summary>Extractable calcium per mass of soil, which many reports give in parts per million.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not from 0 to 100 %.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassFraction? ExtractableCalcium
    {
        get;
        init => field = value is { } share ? ShareOfSoil(share, nameof(ExtractableCalcium)) : null;
    }

    /// <summary>The lime buffer capacity: calcium carbonate per mass of soil that raises it by one pH unit, as mg/kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not from 0 to 100 %.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassFraction? LimeBufferCapacity
    {
        get;
        init => field = value is { } share ? ShareOfSoil(share, nameof(LimeBufferCapacity)) : null;
    }

    /// <summary>The mass of dry soil per volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above zero.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Density? BulkDensity
    {
        get;
        init
        {
            if (value is { } density)
                Guard.Positive(Boundary.KilogramsPerCubicMetre(density), "kg/m³", nameof(BulkDensity));
            field = value is { } given ? HouseUnits.Normalise(given) : null;
        }
    }

    /// <summary>The texture class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the twelve.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SoilTexture? Texture
    {
        get;
        init => field = value is { } texture ? Guard.Defined(texture, nameof(Texture)) : null;
    }

    /// <summary>The free calcium carbonate, free lime, by mass of dry soil.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public MassFraction? FreeCarbonate
    {
        get;
        init => field = value is { } share ? ShareOfSoil(share, nameof(FreeCarbonate)) : null;
    }

    /// <summary>What the report holds, in invariant culture.</summary>
    /// <returns>For instance <c>pH 5.4, sandy loam</c>.</returns>
    public override string ToString() =>
        string.Join(", ", Known()) is { Length: > 0 } known ? known : "nothing known";

    private IEnumerable<string> Known()
    {
        if (PhInWater is { } ph)
            yield return ph.ToString();
        if (MehlichBufferPh is { } buffer)
            yield return $"Mehlich buffer {buffer}";
        if (SmpBufferPh is { } smp)
            yield return $"SMP buffer {smp}";
        if (SikoraBufferPh is { } sikora)
            yield return $"Sikora buffer {sikora}";
        if (AdamsEvansBufferPh is { } adamsEvans)
            yield return $"Adams-Evans buffer {adamsEvans}";
        if (ExchangeableAcidity is { } acidity)
            yield return $"exchangeable acidity {acidity}";
        if (BufferAcidity is { } bufferAcidity)
            yield return $"buffer acidity {bufferAcidity}";
        if (Cations is { } cations)
            yield return cations.ToString();
        if (CationExchangeCapacity is { } capacity)
            yield return $"exchange capacity {capacity}";
        if (ExtractableCalcium is { } calcium)
            yield return $"calcium {Guard.Number(Boundary.MassFraction(calcium) * 1e6)} mg/kg";
        if (LimeBufferCapacity is { } buffering)
            yield return $"lime buffer capacity {Guard.Number(Boundary.MassFraction(buffering) * 1e6)} mg/kg";
        if (BulkDensity is { } density)
            yield return $"bulk density {Guard.Number(Boundary.KilogramsPerCubicMetre(density))} kg/m³";
        if (Texture is { } texture)
            yield return LimeRules.Words(texture);
        if (FreeCarbonate is { } carbonate)
            yield return $"free carbonate {QuantityText.Of(carbonate, TextStyle.Default)}";
    }

    private static MassFraction ShareOfSoil(MassFraction share, string member)
    {
        Guard.Within(Boundary.MassFraction(share) * 100, 0, 100, "%", member);
        return HouseUnits.Normalise(share);
    }
}
