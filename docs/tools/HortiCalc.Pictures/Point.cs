namespace HortiCalc.Pictures;

/// <summary>A point of a curve, in the units of what is drawn: hours and degrees, say.</summary>
public readonly record struct Point(double X, double Y);
