namespace HortiCalc.Soil;

/// <summary>The chemical form of a liming material. It decides which cautions go with a dose of it.</summary>
public enum LimeForm
{
    /// <summary>A carbonate: ground limestone, chalk, dolomite, marl, shells. It does not burn.</summary>
    Carbonate,

    /// <summary>A hydroxide: hydrated, slaked or builder's lime. Caustic.</summary>
    Hydroxide,

    /// <summary>An oxide: quicklime, burnt lime. Caustic, and reacts with water.</summary>
    Oxide,
}
