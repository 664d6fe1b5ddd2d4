using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What the tables of rates by buffer pH have in common: one column a target, a straight line between neighbouring rows only.</summary>
internal abstract record BufferTableLiming : LimingMethod
{
    /// <summary>The target pHs that the source prints.</summary>
    private protected abstract ReadOnlySpan<double> Goals { get; }

    /// <summary>The buffer pH of each row, rising.</summary>
    private protected abstract ReadOnlySpan<double> Rows { get; }

    /// <summary>The rates to a goal in the unit of print, one a row.</summary>
    private protected abstract ReadOnlySpan<double> Column(double goal);

    private protected abstract double GramsPerSquareMetrePerPrintedUnit { get; }

    /// <summary>The name of the member of the report that holds the buffer pH.</summary>
    private protected abstract string Member { get; }

    private protected abstract Ph? BufferPh(SoilReport soil);

    internal sealed override IEnumerable<string> Absent(SoilReport soil)
    {
        if (BufferPh(soil) is null)
            yield return Member;
    }

    internal sealed override ArgumentException? Outside(SoilReport soil, Ph target) =>
        NotOneOf(Goals, target) ?? OutsideLimit(BufferPh(soil)!.Value.Value, "pH", Member);

    internal sealed override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        (double printed, bool isBetweenRows) = LimeInterpolation.Linear(Rows, Column(target.Value), BufferPh(soil)!.Value.Value);
        return Answer(
            printed * GramsPerSquareMetrePerPrintedUnit,
            isBetweenRows ? [LimeRules.BetweenRows] : null,
            printed == 0 ? [LimeCautions.NoAcidity] : []);
    }
}
