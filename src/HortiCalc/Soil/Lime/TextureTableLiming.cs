using HortiCalc.Evidence;

namespace HortiCalc.Soil;

/// <summary>What the tables of rates by present pH, to one target, have in common.</summary>
internal abstract record TextureTableLiming : TextureLiming
{
    /// <summary>The present pH of each row, rising.</summary>
    private protected abstract ReadOnlySpan<double> Rows { get; }

    /// <summary>The rates in a column in the unit of print, one a row.</summary>
    private protected abstract ReadOnlySpan<double> Column(string heading);

    private protected abstract double GramsPerSquareMetrePerPrintedUnit { get; }

    private protected sealed override (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh)
    {
        (double printed, bool isBetweenRows) = LimeInterpolation.Linear(Rows, Column(heading), currentPh);
        return (printed * GramsPerSquareMetrePerPrintedUnit, isBetweenRows ? LimeRules.BetweenRows : null);
    }
}
