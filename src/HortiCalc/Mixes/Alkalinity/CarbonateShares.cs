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
}
