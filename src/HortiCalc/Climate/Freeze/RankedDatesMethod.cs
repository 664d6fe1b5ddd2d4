using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>Ranked dates: see <see cref="FreezeDateMethod.Ranked"/>.</summary>
public sealed record RankedDatesMethod : FreezeDateMethod
{
    /// <summary>Chooses a plotting position.</summary>
    /// <param name="position">The plotting position.</param>
    /// <exception cref="ArgumentNullException">There is none.</exception>
    public RankedDatesMethod(PlottingPosition position) => Position = Guard.NotNull(position);

    /// <summary>The plotting position.</summary>
    public PlottingPosition Position { get; }

    /// <summary>The method.</summary>
    /// <returns>Its name.</returns>
    public override string ToString() => $"ranked dates, {Position}";
}
