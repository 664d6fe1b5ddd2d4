using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A nutrient solution as two stock tanks that an injector dilutes by the same ratio, into the same water.</summary>
/// <remarks>Immutable; equal by value. Calcium and chelated iron stand in tank A, all else in tank B.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record StockPlan : IFormattable, IDisplayable
{
    /// <summary>Describes two tanks.</summary>
    /// <param name="stock">The volume of each tank; more than 0.</param>
    /// <param name="injector">How much each is diluted.</param>
    /// <param name="tankA">The salts of tank A; none with sulfate or phosphate.</param>
    /// <param name="tankB">The salts of tank B; none with calcium.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0.</exception>
    /// <exception cref="ArgumentException">Calcium would meet sulfate or phosphate undiluted.</exception>
    public StockPlan(
        Volume stock, MixRatio injector, IReadOnlyList<StockSalt> tankA, IReadOnlyList<StockSalt> tankB, IReadOnlyList<Caution> cautions)
    {
        Guard.Positive(Boundary.Litres(stock), "L", nameof(stock));
        Stock = HouseUnits.Normalise(stock);
        Injector = injector;
        TankA = ValueList<StockSalt>.Of(Guard.NotNull(tankA));
        TankB = ValueList<StockSalt>.Of(Guard.NotNull(tankB));
        Cautions = ValueList<Caution>.Of(Guard.NotNull(cautions));
        RefuseGypsum(TankA, nameof(tankA));
        RefuseGypsum(TankB, nameof(tankB));
    }

    /// <summary>The volume of each tank.</summary>
    public Volume Stock { get; }

    /// <summary>How much each is diluted.</summary>
    public MixRatio Injector { get; }

    /// <summary>The salts of tank A.</summary>
    public IReadOnlyList<StockSalt> TankA { get; }

    /// <summary>The salts of tank B.</summary>
    public IReadOnlyList<StockSalt> TankB { get; }

    /// <summary>What to take care of.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Whether every salt with a known solubility dissolves by itself.</summary>
    [JsonIgnore]
    public bool Dissolves => TankA.Concat(TankB).All(salt => salt.ShareOfSolubility is not Ratio share || Boundary.Fraction(share) <= 1);

    /// <summary>The finished solution that the tanks make.</summary>
    [JsonIgnore]
    public Volume Solution => Volume.FromLiters(Boundary.Litres(Stock) * Injector.Factor);

    /// <summary>The tanks in metric units and invariant culture.</summary>
    /// <returns>One line: what goes into each tank, and the ratio.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The tanks as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: what goes into each tank, and the ratio.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string ratio = Injector.Factor.ToString("G6", style.Culture);
        return $"tank A: {Contents(TankA, style)}; tank B: {Contents(TankB, style)}; each in {QuantityText.Of(Stock, style)}, one in {ratio} of the feed"
            + (Dissolves ? "" : "; too strong to dissolve");
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new($"Stock tanks of {QuantityText.Of(Stock, style)}, {Injector.ToString(null, style.Culture)}")
    {
        Rows =
        [
            .. Cautions.Where(caution => caution.Level == CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            .. TankA.Select(salt => new DisplayRow($"A: {salt.Salt.Name}", QuantityText.Of(salt.Mass, style))),
            .. TankB.Select(salt => new DisplayRow($"B: {salt.Salt.Name}", QuantityText.Of(salt.Mass, style))),
            .. Cautions.Where(caution => caution.Level != CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
        ],
    };

    internal static StockPlan Of(NutrientPlan plan, Volume stock, MixRatio injector, Temperature temperature)
    {
        double stockLitres = Guard.Positive(Boundary.Litres(stock), "L", nameof(stock));
        double celsius = Guard.Finite(Boundary.Celsius(temperature), "°C", nameof(temperature));
        StockSalt[] salts =
        [
            .. plan.Amounts.Where(amount => amount.MilligramsPerLitre > 0).Select(amount => new StockSalt(
                amount.Salt,
                Mass.FromKilograms(amount.MilligramsPerLitre * injector.Factor * stockLitres / 1_000_000),
                MassConcentration.FromMilligramsPerLiter(amount.MilligramsPerLitre * injector.Factor),
                FertiliserSolubilities.OfSalt(amount.Salt.Key, celsius) is double gramsPerLitre
                    ? MassConcentration.FromMilligramsPerLiter(gramsPerLitre * 1000)
                    : null)),
        ];
        bool tooStrong = salts.Any(salt => salt.ShareOfSolubility is Ratio share && Boundary.Fraction(share) > 1);
        Caution[] cautions =
        [
            .. plan.Cautions,
            FeedingCautions.TwoTanks,
            .. tooStrong ? [FeedingCautions.TooStrong] : (Caution[])[],
            FeedingCautions.CommonIon,
        ];
        return new StockPlan(
            stock,
            injector,
            [.. salts.Where(salt => salt.Salt.Tank == StockTank.A)],
            [.. salts.Where(salt => salt.Salt.Tank == StockTank.B)],
            cautions);
    }

    private static void RefuseGypsum(IReadOnlyList<StockSalt> tank, string parameter)
    {
        StockSalt? calcium = tank.FirstOrDefault(salt => salt.Salt.Sets(SolutionIon.Calcium));
        StockSalt? other = tank.FirstOrDefault(salt => salt.Salt.Sets(SolutionIon.Sulfate) || salt.Salt.Sets(SolutionIon.DihydrogenPhosphate));
        if (calcium is null || other is null)
            return;
        string met = tank.FirstOrDefault(salt => salt.Salt.Sets(SolutionIon.Calcium) && salt.Salt.Sets(SolutionIon.Sulfate)) is StockSalt gypsum
            ? $"{gypsum.Salt.Name}, which hardly dissolves"
            : $"{calcium.Salt.Name} and {other.Salt.Name}, which make a sludge";
        throw new ArgumentException($"{parameter} holds {met}; allowed: calcium apart from sulfate and phosphate.", parameter);
    }

    private static string Contents(IReadOnlyList<StockSalt> tank, TextStyle style) => tank.Count == 0
        ? "nothing"
        : string.Join(", ", tank.Select(salt => $"{salt.Salt.Name} {QuantityText.Of(salt.Mass, style)}"));
}
