using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>In which forms the inorganic carbon of a water is.</summary>
public sealed record CarbonateShares
{
    /// <summary>States the shares.</summary>
    /// <param name="carbonDioxide">Dissolved carbon dioxide with carbonic acid; from 0 to 100 %.</param>
    /// <param name="bicarbonate">Bicarbonate; from 0 to 100 %.</param>
    /// <param name="carbonate">Carbonate; from 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 100 %.</exception>
    public CarbonateShares(Ratio carbonDioxide, Ratio bicarbonate, Ratio carbonate)
    {
        Guard.Within(Boundary.Fraction(carbonDioxide) * 100, 0, 100, "%", nameof(carbonDioxide));
        Guard.Within(Boundary.Fraction(bicarbonate) * 100, 0, 100, "%", nameof(bicarbonate));
        Guard.Within(Boundary.Fraction(carbonate) * 100, 0, 100, "%", nameof(carbonate));
        CarbonDioxide = HouseUnits.Normalise(carbonDioxide);
        Bicarbonate = HouseUnits.Normalise(bicarbonate);
        Carbonate = HouseUnits.Normalise(carbonate);
    }

    /// <summary>Dissolved carbon dioxide with carbonic acid.</summary>
    public Ratio CarbonDioxide { get; }

    /// <summary>Bicarbonate.</summary>
    public Ratio Bicarbonate { get; }

    /// <summary>Carbonate.</summary>
    public Ratio Carbonate { get; }

    /// <summary>One line of text in metric units and invariant culture.</summary>
    /// <returns>For instance <c>carbon dioxide 41.6 %, bicarbonate 58.4 %, carbonate 0.0087 %</c>.</returns>
    public override string ToString() => $"carbon dioxide {QuantityText.Of(CarbonDioxide, TextStyle.Default)}, bicarbonate {QuantityText.Of(Bicarbonate, TextStyle.Default)}, carbonate {QuantityText.Of(Carbonate, TextStyle.Default)}";
}
