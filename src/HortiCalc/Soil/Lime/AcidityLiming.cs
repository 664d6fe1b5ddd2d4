using HortiCalc.Units;

namespace HortiCalc.Soil;

/// <summary>What the methods by exchangeable acidity per mass have in common.</summary>
internal abstract record AcidityLiming : LimingMethod
{
    /// <summary>The target pHs that the source prints.</summary>
    private protected abstract ReadOnlySpan<double> Goals { get; }

    internal sealed override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (soil.ExchangeableAcidity is null)
            yield return nameof(SoilReport.ExchangeableAcidity);
    }

    internal sealed override ArgumentException? Outside(SoilReport soil, Ph target) =>
        NotOneOf(Goals, target)
        ?? OutsideLimit(soil.ExchangeableAcidity!.Value.MilliequivalentsPer100Grams, "meq/100 g", nameof(SoilReport.ExchangeableAcidity));
}
