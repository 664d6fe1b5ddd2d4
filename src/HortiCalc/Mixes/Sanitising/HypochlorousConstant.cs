namespace HortiCalc.Mixes;

/// <summary>The published constants of hypochlorous acid that its share can be worked out by.</summary>
public enum HypochlorousConstant
{
    /// <summary>pKa 7.5692 at 25 °C, from the open database of the US Geological Survey. The default: it can be looked up by anyone.</summary>
    UsGeologicalSurvey,

    /// <summary>pKa 7.50, as examination problems take it.</summary>
    Rounded,

    /// <summary>pKa = 3000/T - 10.0686 + 0.0253 T with T in kelvin, for 5 to 35 °C; Morris (1966), from memory.</summary>
    Morris,
}
