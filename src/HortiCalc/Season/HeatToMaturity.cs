using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>A crop that is ready when the days since planting out have brought a sum of warmth.</summary>
public sealed record HeatToMaturity : Maturity
{
    /// <summary>Describes a crop that is ready after a sum of warmth.</summary>
    /// <param name="sum">Degree days from planting out to the first harvest, above <paramref name="lower"/>; more than zero.</param>
    /// <param name="lower">The temperature below which the crop makes no progress.</param>
    /// <param name="upper">The temperature above which more warmth brings no more progress, or <see langword="null"/> where there is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not more than zero, a temperature is not one of open air, or the upper is not above the lower.</exception>
    public HeatToMaturity(ThermalTime sum, Temperature lower, Temperature? upper = null)
    {
        Guard.Positive(sum.CelsiusDays, "°C·d", nameof(sum));
        double lowerCelsius = Guard.Within(Boundary.Celsius(lower), -20, 40, "°C", nameof(lower));
        if (upper is Temperature given && !(Boundary.Celsius(given) > lowerCelsius && Boundary.Celsius(given) <= 60))
            throw Guard.Refused(nameof(upper), Boundary.Celsius(given), "°C", $"above the lower, {Guard.Number(lowerCelsius)} °C, and up to 60 °C");
        Sum = sum;
        Lower = HouseUnits.Normalise(lower);
        Upper = upper is Temperature top ? HouseUnits.Normalise(top) : null;
    }

    /// <summary>Degree days from planting out to the first harvest.</summary>
    public ThermalTime Sum { get; }

    /// <summary>The temperature below which the crop makes no progress.</summary>
    public Temperature Lower { get; }

    /// <summary>The temperature above which more warmth brings no more progress.</summary>
    public Temperature? Upper { get; }
}
