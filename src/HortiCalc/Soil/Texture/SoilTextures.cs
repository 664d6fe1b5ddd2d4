using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>The texture class of a soil from its particle sizes, by the triangle of the US Department of Agriculture.</summary>
/// <remarks>
/// The classes fill the triangle without gap or overlap. On a shared edge a soil belongs to the class of more clay, and of more silt; on the
/// USDA edges of 45 and 52 % of sand to the class of less sand, on that of 20 % to silty clay loam.
/// </remarks>
public static class SoilTextures
{
    /// <summary>The USDA class.</summary>
    /// <param name="particles">Sand, silt up to 50 µm, and clay.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException">There are no particles.</exception>
    /// <example><code>
    /// Estimate&lt;SoilTexture&gt; texture = SoilTextures.Classify(
    ///     ParticleSizes.FromSandAndClay(MassFraction.FromPercent(65), MassFraction.FromPercent(10)));
    /// Console.WriteLine(texture.Value);   // SandyLoam
    /// </code></example>
    public static Estimate<SoilTexture> Classify(ParticleSizes particles) =>
        new(TextureRules.Find(TextureRules.Usda, Guard.NotNull(particles)), TextureEvidence.Usda);
}
