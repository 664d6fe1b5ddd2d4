namespace HortiCalc.Soil;

/// <summary>The figures in which labels and laws state how much of a liming material is effective.</summary>
public enum LimeIndex
{
    /// <summary>Effective calcium carbonate equivalent, in percent (ECCE; also ECC).</summary>
    EffectiveCalciumCarbonateEquivalent,

    /// <summary>Effective calcium carbonate equivalent, in pounds per US ton (ECCE, Iowa).</summary>
    EffectiveCalciumCarbonateEquivalentPounds,

    /// <summary>Effective neutralizing value, in percent (ENV, New York).</summary>
    EffectiveNeutralizingValue,

    /// <summary>Effective neutralizing material, of which a US ton of pure fine lime has 800, not 2000 (ENM, Missouri).</summary>
    EffectiveNeutralizingMaterial,

    /// <summary>Effective neutralizing power, in pounds per US ton (ENP, Ohio and Minnesota).</summary>
    EffectiveNeutralizingPower,

    /// <summary>Relative neutralizing value, in percent (RNV).</summary>
    RelativeNeutralizingValue,

    /// <summary>Relative power of total neutralisation, in percent (PRNT, Brazil).</summary>
    RelativePowerOfNeutralisation,

    /// <summary>Neutralising value as calcium oxide, in percent: 56 for pure calcium carbonate (NV, United Kingdom, Ireland, Germany).</summary>
    NeutralisingValueAsCalciumOxide,

    /// <summary>Agricultural index, neutralising value times fineness (Ontario; the product from memory).</summary>
    AgriculturalIndex,
}
