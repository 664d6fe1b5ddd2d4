using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>Lime that brings the soil of a bed into the range of its crop.</summary>
public sealed record LimeSupply : SupplyLine
{
    /// <summary>Describes the lime for a bed.</summary>
    /// <param name="place">The bed.</param>
    /// <param name="dose">The mass of material for the whole bed, with its method, adjustments and cautions.</param>
    /// <param name="material">The material.</param>
    /// <param name="soilPh">The pH of the soil.</param>
    /// <param name="target">The pH aimed for.</param>
    /// <param name="applications">In how many applications it is best given.</param>
    /// <param name="monthsApart">The months between them, or <see langword="null"/> where the rule gives none.</param>
    /// <param name="others">What the other published methods that take this soil give for the bed; may be empty.</param>
    /// <param name="evidence">The methods it rests on; at least one.</param>
    /// <param name="bag">The mass of one bag, or <see langword="null"/> where it is bought by mass.</param>
    public LimeSupply(
        string place,
        Estimate<Mass> dose,
        LimingMaterial material,
        Ph soilPh,
        Ph target,
        int applications,
        int? monthsApart,
        IReadOnlyList<Estimate<Mass>> others,
        IReadOnlyList<Method> evidence,
        Mass? bag = null)
        : base(place, evidence)
    {
        Dose = Guard.NotNull(dose);
        Material = Guard.NotNull(material);
        SoilPh = soilPh;
        Target = target;
        Applications = Guard.AtLeast(applications, 0);
        MonthsApart = monthsApart;
        Others = ValueList<Estimate<Mass>>.Of(Guard.NotNull(others));
        if (bag is Mass mass)
        {
            Guard.Positive(Boundary.Kilograms(mass), "kg", nameof(bag));
            Bag = HouseUnits.Normalise(mass);
        }
    }

    /// <summary>The mass of material for the whole bed.</summary>
    public Estimate<Mass> Dose { get; }

    /// <summary>The material.</summary>
    public LimingMaterial Material { get; }

    /// <summary>The pH of the soil.</summary>
    public Ph SoilPh { get; }

    /// <summary>The pH aimed for.</summary>
    public Ph Target { get; }

    /// <summary>In how many applications it is best given.</summary>
    public int Applications { get; }

    /// <summary>The months between them.</summary>
    public int? MonthsApart { get; }

    /// <summary>What the other published methods that take this soil give for the bed.</summary>
    public IReadOnlyList<Estimate<Mass>> Others { get; }

    /// <summary>The mass of one bag, or <see langword="null"/>.</summary>
    public Mass? Bag { get; }

    /// <summary>Whole bags to buy, or <see langword="null"/> where it is bought by mass.</summary>
    [JsonIgnore]
    public int? BagCount => Bag is Mass bag
        ? WholeCount.Covering(Boundary.Kilograms(Dose.Value) / Boundary.Kilograms(bag), "bags", nameof(Dose))
        : null;

    /// <inheritdoc/>
    [JsonIgnore]
    public override string Item => Material.Name;

    private protected override string Amount(TextStyle style) => QuantityText.Of(Dose.Value, style);

    private protected override string Bags(TextStyle style) => BagCount is int count && Bag is Mass bag ? BagText(count, bag, style) : "";

    private protected override string Note(TextStyle style)
    {
        string split = Applications > 1
            ? $", {QuantityText.Of(Applications, style)} applications" + (MonthsApart is int months ? $" {QuantityText.Of(months, style)} months apart" : "")
            : "";
        string spread = "";
        if (Others.Count > 0)
        {
            string low = QuantityText.Of(Mass.FromKilograms(Others.Min(other => Boundary.Kilograms(other.Value))), style);
            string high = QuantityText.Of(Mass.FromKilograms(Others.Max(other => Boundary.Kilograms(other.Value))), style);
            string range = low == high ? low : $"{low} to {high}";
            spread = $"; {(Others.Count == 1 ? "another method" : $"{QuantityText.Of(Others.Count, style)} other methods")}: {range}";
        }

        return $"pH {QuantityText.Of(SoilPh.Value, style)} to {QuantityText.Of(Target.Value, style)}{split}{spread}";
    }
}
