using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using HortiCalc.Units;

namespace HortiCalc.Json;

/// <summary>
/// Reads and writes every public input and result of this library as JSON, without reflection, so that it works when
/// trimmed and compiled ahead of time.
/// </summary>
/// <remarks>
/// A quantity is an object with its value and the abbreviation of its unit, every digit kept: <c>{"value":1.5,"unit":"kg/m²"}</c>.
/// Where a keyboard has no °, ², ³ or ·, a unit is also read as <c>m2</c>, <c>m3</c>, <c>degC</c>, <c>degC.d</c>. Unknown units and
/// malformed values give a <see cref="JsonException"/> that says which quantity it was, what was found and what was expected.
/// </remarks>
/// <example><code>
/// SoilReport soil = new() { PhInWater = new Ph(5.5), Texture = SoilTexture.Loam };
/// Estimate&lt;Mass&gt; dose = Liming.Requirement(soil, new Ph(6.5), LimingMethod.UkGardenTexture).Over(Area.FromSquareMeters(4.8));
/// string json = HortiCalcJson.Serialize(dose);
/// Estimate&lt;Mass&gt; same = HortiCalcJson.Deserialize&lt;Estimate&lt;Mass&gt;&gt;(json);
/// </code></example>
public static class HortiCalcJson
{
    /// <summary>The options that this library writes with: camel case, enumerations by name, unknown members refused. Read-only.</summary>
    public static JsonSerializerOptions Options => HortiCalcJsonContext.Default.Options;

    /// <summary>How a type of this library is read and written, for the methods of <see cref="JsonSerializer"/> that take it.</summary>
    /// <typeparam name="T">A public input or result of this library, or an estimate of a quantity.</typeparam>
    /// <returns>The type's contract.</returns>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static JsonTypeInfo<T> TypeInfo<T>() =>
        Options.TryGetTypeInfo(typeof(T), out JsonTypeInfo? contract)
            ? (JsonTypeInfo<T>)contract
            : throw new NotSupportedException($"{typeof(T)} is not one of the inputs and results that this library reads and writes as JSON.");

    /// <summary>Writes an input or a result as JSON.</summary>
    /// <typeparam name="T">A public input or result of this library, or an estimate of a quantity.</typeparam>
    /// <param name="value">The input or result.</param>
    /// <returns>The JSON in one line.</returns>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static string Serialize<T>(T value) => JsonSerializer.Serialize(value, TypeInfo<T>());

    /// <summary>Reads an input or a result from JSON.</summary>
    /// <typeparam name="T">A public input or result of this library, or an estimate of a quantity.</typeparam>
    /// <param name="json">The JSON.</param>
    /// <returns>The input or result.</returns>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="JsonException">The text is not what was expected; the message says which quantity or member and why.</exception>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static T Deserialize<T>(string json) =>
        JsonSerializer.Deserialize(Guard.NotNull(json), TypeInfo<T>()) ?? throw new JsonException($"null is not a {typeof(T).Name}.");

    /// <summary>Adds the quantities and the types of this library to an application's own options.</summary>
    /// <param name="options">The options, which must not be in use yet.</param>
    /// <returns>The same options.</returns>
    /// <remarks>The application keeps its own naming, its own context and its own encoder.</remarks>
    /// <exception cref="ArgumentNullException">There are no options.</exception>
    /// <exception cref="InvalidOperationException">The options are in use already.</exception>
    /// <example><code>
    /// JsonSerializerOptions options = new() { WriteIndented = true };
    /// options.AddHortiCalc();
    /// string json = JsonSerializer.Serialize(Mass.FromKilograms(1.5), options);
    /// </code></example>
    public static JsonSerializerOptions AddHortiCalc(this JsonSerializerOptions options)
    {
        Guard.NotNull(options);
        foreach (JsonConverter converter in HortiCalcJsonContext.Default.Options.Converters)
            options.Converters.Add(converter);
        options.TypeInfoResolverChain.Add(HortiCalcJsonContext.Default);
        return options;
    }
}
