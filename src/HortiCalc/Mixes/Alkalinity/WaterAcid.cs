namespace HortiCalc.Mixes;

/// <summary>An acid that waters are brought down with.</summary>
public enum WaterAcid
{
    /// <summary>Nitric acid, HNO₃: one hydrogen at any pH, and nitrogen.</summary>
    Nitric,

    /// <summary>Sulfuric acid, H₂SO₄: two hydrogens at any pH of a feed, and sulfur.</summary>
    Sulfuric,

    /// <summary>Phosphoric acid, H₃PO₄: one hydrogen below pH 6, more above, and phosphorus.</summary>
    Phosphoric,

    /// <summary>Citric acid, C₆H₈O₇: 1.7 hydrogens at pH 5, 2.3 at pH 6, 2.8 at pH 7; roots and microbes consume it, and the alkalinity comes back.</summary>
    Citric,
}
