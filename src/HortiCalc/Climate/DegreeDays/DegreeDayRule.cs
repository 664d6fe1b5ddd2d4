namespace HortiCalc.Climate;

/// <summary>Which kernel counts for a method.</summary>
internal enum DegreeDayRule
{
    SimpleAverage,
    CappedMaximum,
    Clamped,
    CappedAndRaised,
    ReflectedMaximum,
    MaximumOnly,
    FourCase,
    SimpleAverageBelow,
    FourCaseBelow,
    TriangleBelow,
    SineBelow,
    Triangle,
    Sine,
    DoubleTriangle,
    DoubleSine,
    HourlySine,

    /// <summary>No kernel of extremes: the hours themselves are counted.</summary>
    MeasuredHours,
}
