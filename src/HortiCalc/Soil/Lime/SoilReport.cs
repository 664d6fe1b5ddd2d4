using System.Text.Json.Serialization;
using HortiCalc.Units;

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

    /// <summary>The exchangeable acidity per mass of soil, as Penn State reports it in milliequivalents per 100 grams.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ExchangeableCharge? ExchangeableAcidity { get; init; }

    /// <summary>
    /// The acidity by the Mehlich buffer per volume of soil, as North Carolina reports it in milliequivalents per 100 cubic centimetres.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public VolumetricCharge? BufferAcidity { get; init; }

    /// <summary>The texture class.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The class is not one of the twelve.</exception>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SoilTexture? Texture
    {
        get;
        init => field = value is { } texture ? Guard.Defined(texture, nameof(Texture)) : null;
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
        if (ExchangeableAcidity is { } acidity)
            yield return $"exchangeable acidity {acidity}";
        if (BufferAcidity is { } bufferAcidity)
            yield return $"buffer acidity {bufferAcidity}";
        if (Texture is { } texture)
            yield return LimeRules.Words(texture);
    }
}
