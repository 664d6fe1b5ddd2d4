using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>How much water a soil holds for plants, by every published method, behind one question.</summary>
public static class AvailableWater
{
    /// <summary>The available water of a soil.</summary>
    /// <param name="soil">The soil.</param>
    /// <param name="method">The method, for instance <see cref="AvailableWaterMethod.Fao56"/>.</param>
    /// <returns>The water by volume, with the range that the source prints.</returns>
    /// <exception cref="ArgumentNullException">The soil or the method is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The method has no value for the class, or needs more than is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The soil is outside what the method was published for.</exception>
    /// <example><code>
    /// WaterHolding loam = AvailableWater.Of(new SoilComposition(SoilTexture.Loam), AvailableWaterMethod.NationalAgronomyManual);
    /// Estimate&lt;Length&gt; inTheRootZone = loam.In(Length.FromCentimeters(60));
    /// Console.WriteLine(inTheRootZone);   // 10 cm (9.6 cm to 10.8 cm, ...)
    /// </code></example>
    public static WaterHolding Of(SoilComposition soil, AvailableWaterMethod method) => Guard.NotNull(method).Of(Guard.NotNull(soil));

    /// <summary>The available water by every method that answers, and why they differ.</summary>
    /// <param name="soil">The soil.</param>
    /// <returns>The answers and the refusals.</returns>
    /// <exception cref="ArgumentNullException">There is no soil.</exception>
    /// <example><code>
    /// AvailableWaterComparison sides = AvailableWater.Compare(new SoilComposition(SoilTexture.SandyLoam));
    /// foreach (string reason in sides.WhyTheyDiffer)
    ///     Console.WriteLine(reason);
    /// </code></example>
    public static AvailableWaterComparison Compare(SoilComposition soil)
    {
        Guard.NotNull(soil);
        ILookup<bool, (AvailableWaterMethod Method, string? Refusal)> all =
            AvailableWaterMethod.All.Select(method => (method, method.Refusal(soil))).ToLookup(pair => pair.Item2 is null);
        return new AvailableWaterComparison(
            soil,
            [.. all[true].Select(pair => pair.Method.Of(soil))],
            [.. all[false].Select(pair => new AvailableWaterRefusal(pair.Method, pair.Refusal!))]);
    }
}
