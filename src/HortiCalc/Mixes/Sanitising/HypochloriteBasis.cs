namespace HortiCalc.Mixes;

/// <summary>What the per cent on a bottle of bleach means.</summary>
public enum HypochloriteBasis
{
    /// <summary>Mass of sodium hypochlorite per mass of bleach, as on household bleach.</summary>
    SodiumHypochloriteByMass,

    /// <summary>Grams of sodium hypochlorite per 100 mL, per cent weight by volume, as waterworks and laboratories state it.</summary>
    SodiumHypochloritePerVolume,

    /// <summary>Mass of available chlorine per mass of bleach.</summary>
    AvailableChlorineByMass,

    /// <summary>Trade per cent: grams of available chlorine per 100 mL, as on pool bleach.</summary>
    TradePercent,

    /// <summary>The custom of many charts: the label's per cent, whatever it counts, taken as grams of chlorine per 100 mL.</summary>
    PercentAsWeightPerVolume,
}
