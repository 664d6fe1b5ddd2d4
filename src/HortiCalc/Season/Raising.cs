using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>How a crop is raised: from what, how much of it succeeds, and how long before planting out it is begun.</summary>
public sealed record Raising
{
    /// <summary>Describes how a crop is raised.</summary>
    /// <param name="from">What it is raised from.</param>
    /// <param name="success">The share that becomes a plant fit to plant out, above 0 and up to 100 %.</param>
    /// <param name="weeksToPlantOut">Weeks from sowing or taking cuttings to planting out; 0 where it is sown where it grows.</param>
    /// <param name="weeksToPotOn">Weeks from sowing or taking cuttings to potting on, or <see langword="null"/> where it is not potted on.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or potting on would come after planting out.</exception>
    public Raising(Propagule from, Ratio success, int weeksToPlantOut, int? weeksToPotOn = null)
    {
        From = Guard.Defined(from);
        double share = Boundary.Fraction(success);
        if (!(share is > 0 and <= 1))
            throw Guard.Refused(nameof(success), share * 100, "%", "above 0 and up to 100 %");
        Success = HouseUnits.Normalise(success);
        WeeksToPlantOut = (int)Guard.Within(weeksToPlantOut, 0, 104, "weeks");
        if (weeksToPotOn is int weeks)
            Guard.Within(weeks, 1, weeksToPlantOut, "weeks", nameof(weeksToPotOn));
        WeeksToPotOn = weeksToPotOn;
    }

    /// <summary>What it is raised from.</summary>
    public Propagule From { get; }

    /// <summary>The share that becomes a plant fit to plant out.</summary>
    public Ratio Success { get; }

    /// <summary>Weeks from sowing or taking cuttings to planting out; 0 where it is sown where it grows.</summary>
    public int WeeksToPlantOut { get; }

    /// <summary>Weeks from sowing or taking cuttings to potting on, or <see langword="null"/>.</summary>
    public int? WeeksToPotOn { get; }

    /// <summary>What is started with, how many succeed and when they are planted out, in invariant culture.</summary>
    /// <returns>For instance <c>seeds, 75 % succeed, 7 weeks to planting out</c>.</returns>
    public override string ToString() =>
        $"{(From == Propagule.Cutting ? "cuttings" : "seeds")}, {QuantityText.Of(Success, TextStyle.Default)} succeed, {Guard.Number(WeeksToPlantOut)} weeks to planting out";
}
