using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much of a fertiliser a litre of its solution holds, by temperature, as printed.</summary>
public sealed record FertiliserSolubility
{
    private readonly (double Celsius, double GramsPerLitre)[] points;

    internal FertiliserSolubility(string key, string name, params (double Celsius, double GramsPerLitre)[] points)
    {
        this.points = points;
        Key = key;
        Evidence = new Method(
            $"solubility.{key}",
            $"solubility of {name}",
            FeedingSources.Solubility,
            new Domain(
                "one fertiliser alone in water; between two printed temperatures in a straight line",
                new DomainLimit("temperature", points[0].Celsius, points[^1].Celsius, "°C")));
        Name = name;
    }

    /// <summary>The key of the salt, as in <see cref="NutrientSalts"/> where it is there.</summary>
    public string Key { get; }

    /// <summary>The name of the fertiliser.</summary>
    public string Name { get; }

    /// <summary>The table with its source and the temperatures it reaches.</summary>
    public Method Evidence { get; }

    /// <summary>The solubility at a temperature.</summary>
    /// <param name="temperature">From the lowest to the highest that is printed.</param>
    /// <returns>The mass of the fertiliser per volume of saturated solution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table does not reach so far.</exception>
    public Estimate<MassConcentration> At(Temperature temperature)
    {
        double celsius = Evidence.Require(Boundary.Celsius(temperature), "°C", nameof(temperature));
        Caution[] cautions = Key == "potassium-nitrate" && celsius < 25 ? [FeedingCautions.CommonIon, FeedingCautions.PrintedLow] : [FeedingCautions.CommonIon];
        return new Estimate<MassConcentration>(MassConcentration.FromMilligramsPerLiter(GramsPerLitre(celsius) * 1000), Evidence, cautions: cautions);
    }

    /// <summary>The fertiliser's name.</summary>
    /// <returns>For instance <c>potassium nitrate</c>.</returns>
    public override string ToString() => Name;

    internal bool Reaches(double celsius) => celsius >= points[0].Celsius && celsius <= points[^1].Celsius;

    internal double GramsPerLitre(double celsius)
    {
        int above = Array.FindIndex(points, point => point.Celsius >= celsius);
        if (above == 0)
            return points[0].GramsPerLitre;
        (double lowCelsius, double low) = points[above - 1];
        (double highCelsius, double high) = points[above];
        return low + (high - low) * (celsius - lowCelsius) / (highCelsius - lowCelsius);
    }
}
