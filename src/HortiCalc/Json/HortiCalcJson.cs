using System.Text.Json;
using System.Text.Json.Serialization;
using HortiCalc.Units;

namespace HortiCalc.Json;

/// <summary>Brings this library's JSON into an application's own options.</summary>
public static class HortiCalcJson
{
    /// <summary>Adds the quantities and the types of this library to an application's own options.</summary>
    /// <param name="options">The options, which must not be in use yet.</param>
    /// <returns>The same options.</returns>
    /// <remarks>
    /// The application keeps its own naming, its own context and its own encoder; the converters of the quantities and the types of
    /// <see cref="HortiCalcJsonContext"/> are added behind them.
    /// </remarks>
    /// <exception cref="ArgumentNullException">There are no options.</exception>
    /// <exception cref="InvalidOperationException">The options are in use already.</exception>
    /// <example><code>
    /// JsonSerializerOptions options = new() { TypeInfoResolver = AppJsonContext.Default, WriteIndented = true };
    /// options.AddHortiCalc();
    /// string json = JsonSerializer.Serialize(order, options);
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
