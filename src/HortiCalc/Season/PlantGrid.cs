using HortiCalc.Beds;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>How many plants a bed holds: whole plants, each in the middle of its own rectangle of ground.</summary>
internal static class PlantGrid
{
    // 1.2 m divided by 0.4 m comes out a hair below 3.
    private const double Slack = 1e-9;

    /// <summary>In a rectangle: the better of rows along it and rows across it. Where it is narrower than the distance of rows it takes one.</summary>
    public static int InRectangle(double widthMetres, double lengthMetres, Spacing spacing)
    {
        double inRowMetres = Boundary.Metres(spacing.InRow);
        double betweenRowsMetres = Boundary.Metres(spacing.BetweenRows);
        int along = Whole(lengthMetres / inRowMetres) * Whole(widthMetres / betweenRowsMetres);
        int across = Whole(widthMetres / inRowMetres) * Whole(lengthMetres / betweenRowsMetres);
        return Math.Max(along, across);
    }

    /// <summary>In any other shape: its area over the area of a plant. The edge may take a few of them away.</summary>
    public static int InArea(double squareMetres, Spacing spacing) =>
        Whole(squareMetres / (Boundary.Metres(spacing.InRow) * Boundary.Metres(spacing.BetweenRows)));

    private static int Whole(double count) => Math.Max(1, (int)Math.Floor(count * (1 + Slack)));
}
