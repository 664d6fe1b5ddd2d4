using HortiCalc.Beds;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>How many plants a bed holds: whole plants, each in the middle of its own rectangle of ground.</summary>
internal static class PlantGrid
{
    /// <summary>
    /// In a rectangle the better of rows along it and rows across it; in any other shape its area over the area of a plant.
    /// A bed too narrow for the distance of rows takes one row, and every bed takes one plant.
    /// </summary>
    public static int Count(Bed bed, Spacing spacing) => bed is RectangleBed rectangle
        ? Math.Max(
            Rows(Boundary.Metres(rectangle.Length), Boundary.Metres(rectangle.Width), spacing),
            Rows(Boundary.Metres(rectangle.Width), Boundary.Metres(rectangle.Length), spacing))
        : Whole(bed.SquareMetres / (Boundary.Metres(spacing.InRow) * Boundary.Metres(spacing.BetweenRows)));

    private static int Rows(double alongMetres, double acrossMetres, Spacing spacing) =>
        Whole(alongMetres / Boundary.Metres(spacing.InRow)) * Whole(acrossMetres / Boundary.Metres(spacing.BetweenRows));

    private static int Whole(double ratio) => Math.Max(1, WholeCount.Within(ratio, "plants", "bed"));
}
