using HortiCalc.Display;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>A crop that is ready a number of days after planting out, whatever the weather.</summary>
public sealed record DaysToMaturity : Maturity
{
    /// <summary>Describes a crop that is ready a number of days after planting out.</summary>
    /// <param name="days">Days from planting out to the first harvest, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is less than one day.</exception>
    public DaysToMaturity(int days) => Days = Guard.AtLeast(days, 1);

    /// <summary>Days from planting out to the first harvest.</summary>
    public int Days { get; }

    internal override string Text(TextStyle style) => $"{QuantityText.Of(Days, style)} {(Days == 1 ? "day" : "days")}";
}
