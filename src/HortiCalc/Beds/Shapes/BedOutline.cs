namespace HortiCalc.Beds;

/// <summary>
/// How an outline grows when it is moved outward by a width w: the ground gained is perimeter times w plus a factor times w², and the
/// perimeter grows by twice that factor times w. Steiner's formula for round corners; for sharp ones the factor is the sum of the
/// tangents of half of each turn.
/// </summary>
internal readonly record struct BedOutline(double PerimeterMetres, double SharpFactor, double RoundFactor);
