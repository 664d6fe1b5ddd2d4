using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>When a job is due, and what that date rests on.</summary>
public sealed record DateLine : PlanLine
{
    /// <summary>Says when a job is due.</summary>
    /// <param name="place">The bed or the pots.</param>
    /// <param name="crop">The crop.</param>
    /// <param name="step">The job.</param>
    /// <param name="basis">What the date rests on.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="date">The first day, or <see langword="null"/> where there is none.</param>
    /// <param name="until">The last day, where the job has a span of days.</param>
    /// <param name="chance">The chance that the date rests on, in one season.</param>
    /// <param name="threshold">The night temperature that the chance is about, or the mean temperature waited for.</param>
    /// <param name="count">The weeks or days counted, or the number of seasons on record.</param>
    /// <param name="heat">The sum of warmth waited for.</param>
    public DateLine(
        string place,
        string crop,
        PlanStep step,
        DateBasis basis,
        IReadOnlyList<Method> evidence,
        DateOnly? date = null,
        DateOnly? until = null,
        Ratio? chance = null,
        Temperature? threshold = null,
        int? count = null,
        ThermalTime? heat = null)
        : base(place, evidence)
    {
        Crop = Guard.NotBlank(crop);
        Step = Guard.Defined(step);
        Basis = Guard.Defined(basis);
        Date = date;
        Until = until;
        Chance = chance is Ratio share ? HouseUnits.Normalise(share) : null;
        Threshold = threshold is Temperature temperature ? HouseUnits.Normalise(temperature) : null;
        Count = count;
        Heat = heat;
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The job.</summary>
    public PlanStep Step { get; }

    /// <summary>What the date rests on.</summary>
    public DateBasis Basis { get; }

    /// <summary>The first day, or <see langword="null"/> where there is none.</summary>
    public DateOnly? Date { get; }

    /// <summary>The last day, where the job has a span of days.</summary>
    public DateOnly? Until { get; }

    /// <summary>The chance that the date rests on, in one season; <see langword="null"/> where it rests on none.</summary>
    public Ratio? Chance { get; }

    /// <summary>The night temperature that the chance is about, or the mean temperature waited for.</summary>
    public Temperature? Threshold { get; }

    /// <summary>The weeks or days counted, or the number of seasons on record.</summary>
    public int? Count { get; }

    /// <summary>The sum of warmth waited for.</summary>
    public ThermalTime? Heat { get; }

    internal override IReadOnlyList<string> Cells(TextStyle style) => [When(style), Job, Crop, Reason(style)];

    internal string When(TextStyle style) => (Date, Until) switch
    {
        (null, _) => Basis == DateBasis.ColdNightsTooRare ? "any time" : "no date",
        (DateOnly first, null) => QuantityText.Of(first, style),
        (DateOnly first, DateOnly last) => $"{QuantityText.Of(first, style)} to {QuantityText.Of(last, style)}",
    };

    internal string Job => Step switch
    {
        PlanStep.Start => "start",
        PlanStep.PotOn => "pot on",
        PlanStep.PlantOut => "plant out",
        PlanStep.Harvest => "first harvest",
        PlanStep.LastPruning => "last pruning",
        _ => "bring indoors",
    };

    private string Reason(TextStyle style)
    {
        string cold = Threshold is Temperature night ? $"{QuantityText.Of(night, style)} or colder" : "cold";
        string chance = Chance is Ratio share ? QuantityText.Of(share, style) : "";
        string count = Count is int number ? QuantityText.Of(number, style) : "";
        bool spring = Step == PlanStep.PlantOut;
        return Basis switch
        {
            DateBasis.ColdNightChance when Step == PlanStep.LastPruning =>
                $"4 to 6 weeks before the day by which {cold} has come in {chance} of autumns",
            DateBasis.ColdNightChance when spring => $"{chance} chance of {cold} from this day on",
            DateBasis.ColdNightChance => $"{chance} chance of {cold} by the next day",
            DateBasis.ColdNightOnRecord when spring => $"day after the latest {cold} in {count} springs on record; too few for a chance",
            DateBasis.ColdNightOnRecord => $"by the earliest {cold} in {count} autumns on record; too few for a chance",
            DateBasis.ColdNightsTooRare => $"{cold} comes in {chance} of {count} seasons on record, no more than accepted",
            DateBasis.MeanWarmth => $"days reach a mean of {(Threshold is Temperature mean ? QuantityText.Of(mean, style) : "")}"
                + (chance.Length > 0 ? $"; {chance} chance of a night that hurts from then on" : ""),
            DateBasis.WeeksBeforePlantingOut => $"{count} weeks before planting out",
            DateBasis.WeeksAfterStart => $"{count} weeks after the start",
            DateBasis.DaysAfterPlantingOut => $"{count} days after planting out",
            DateBasis.HeatSum => $"{(Heat is ThermalTime sum ? QuantityText.Of(sum, style) : "")} since planting out"
                + (chance.Length > 0 ? $"; later in {chance} of {count} past years" : $"; latest of {count} past years, too few for a chance"),
            _ => "not to be had from this record",
        };
    }
}
