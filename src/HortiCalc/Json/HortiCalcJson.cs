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
    /// <remarks>
    /// For a shape or another of a closed set ask for the base type, <c>TypeInfo&lt;Bed&gt;()</c>: only that contract writes the
    /// <c>kind</c> that it is read by.
    /// </remarks>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static JsonTypeInfo<T> TypeInfo<T>() =>
        Options.TryGetTypeInfo(typeof(T), out JsonTypeInfo? contract)
            ? (JsonTypeInfo<T>)contract
            : throw new NotSupportedException($"{typeof(T)} is not one of the inputs and results that this library reads and writes as JSON.");

    /// <summary>Writes an input or a result as JSON.</summary>
    /// <typeparam name="T">A public input or result of this library, or an estimate of a quantity.</typeparam>
    /// <param name="value">The input or result.</param>
    /// <returns>The JSON in one line.</returns>
    /// <remarks>One of a closed set is written with its <c>kind</c>, whether it is known as the set or as itself.</remarks>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static string Serialize<T>(T value) => JsonSerializer.Serialize(value, Stored<T>());

    /// <summary>Reads an input or a result from JSON.</summary>
    /// <typeparam name="T">A public input or result of this library, or an estimate of a quantity.</typeparam>
    /// <param name="json">The JSON.</param>
    /// <returns>The input or result.</returns>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="JsonException">The text is not what was expected, or it holds a value that the type refuses; the message says
    /// which quantity or member and why.</exception>
    /// <exception cref="NotSupportedException">The type is not one of this library's inputs and results.</exception>
    public static T Deserialize<T>(string json)
    {
        Guard.NotNull(json);
        JsonTypeInfo contract = Stored<T>();
        object? read;
        try
        {
            read = JsonSerializer.Deserialize(json, contract);
        }
        catch (Exception refused) when (refused is ArgumentException or NotSupportedException)
        {
            // A constructor refused a value, or an object of a closed set has no kind.
            throw new JsonException(refused.Message, refused);
        }

        return read is T value ? value : throw new JsonException($"{read?.GetType().Name ?? "null"} is not a {typeof(T).Name}.");
    }

    /// <summary>Adds the quantities and the types of this library to an application's own options.</summary>
    /// <param name="options">The options, which must not be in use yet.</param>
    /// <returns>The same options.</returns>
    /// <remarks>
    /// <para>The application keeps its own naming, its own context and its own encoder. It must name the resolver of its own types,
    /// as the example does; options without one read and write the types of this library only.</para>
    /// <para>Enumerations are words, as in <see cref="Options"/>. A value that a type refuses gives the <see cref="ArgumentException"/> of its
    /// constructor, which <see cref="Deserialize"/> turns into a <see cref="JsonException"/>.</para>
    /// </remarks>
    /// <exception cref="ArgumentNullException">There are no options.</exception>
    /// <exception cref="InvalidOperationException">The options are in use already.</exception>
    /// <example><code>
    /// using System.Text.Json.Serialization.Metadata;
    ///
    /// // With a generated context: TypeInfoResolver = MyContext.Default.
    /// JsonSerializerOptions options = new(JsonSerializerDefaults.Web) { TypeInfoResolver = new DefaultJsonTypeInfoResolver() };
    /// options.AddHortiCalc();
    /// Dictionary&lt;string, Bed&gt; plots = new() { ["south"] = Bed.Circle(Length.FromMeters(2)) };
    /// string json = JsonSerializer.Serialize(plots, options);   // {"south":{"kind":"circle","diameter":{"value":2,"unit":"m"}}}
    /// </code></example>
    public static JsonSerializerOptions AddHortiCalc(this JsonSerializerOptions options)
    {
        Guard.NotNull(options);
        foreach (JsonConverter converter in HortiCalcJsonContext.Default.Options.Converters)
            options.Converters.Add(converter);
        options.TypeInfoResolverChain.Add(HortiCalcJsonContext.Default);
        return options;
    }

    /// <summary>The contract by which a value is stored: that of its closed set, where it belongs to one, for the sake of the kind.</summary>
    private static JsonTypeInfo Stored<T>()
    {
        JsonTypeInfo own = TypeInfo<T>();
        return typeof(T).BaseType is Type set && Options.TryGetTypeInfo(set, out JsonTypeInfo? family) && family.PolymorphismOptions is not null
            ? family
            : own;
    }
}
