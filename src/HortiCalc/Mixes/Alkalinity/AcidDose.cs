using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much acid goes into a water, and what becomes of it.</summary>
/// <remarks>Immutable; equal by value.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record AcidDose : IFormattable, IDisplayable
{
    /// <summary>Describes a dose.</summary>
    /// <param name="product">The acid as it is bought.</param>
    /// <param name="water">The water before.</param>
    /// <param name="amount">Moles of the acid per volume of water; 0 or more.</param>
    /// <param name="ph">The pH after.</param>
    /// <param name="alkalinity">The alkalinity of the carbonates after; 0 where free acid is left.</param>
    /// <param name="freeAcid">The free acid after, in excess of all alkalinity; 0 as long as alkalinity is left.</param>
    /// <param name="exchange">What became of the carbon dioxide.</param>
    /// <param name="method">The method.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or the exchange is not a defined one.</exception>
    public AcidDose(
        AcidProduct product,
        SourceWater water,
        Molarity amount,
        Ph ph,
        VolumetricCharge alkalinity,
        VolumetricCharge freeAcid,
        GasExchange exchange,
        Method method,
        IReadOnlyList<Caution> cautions)
    {
        Product = Guard.NotNull(product);
        Water = Guard.NotNull(water);
        Guard.NotNegative(Boundary.MolesPerLitre(amount), "mol/L", nameof(amount));
        Amount = HouseUnits.Normalise(amount);
        Ph = ph;
        Alkalinity = alkalinity;
        FreeAcid = freeAcid;
        Exchange = Guard.Defined(exchange);
        Method = Guard.NotNull(method);
        Cautions = ValueList<Caution>.Of(Guard.NotNull(cautions));
    }

    /// <summary>The acid as it is bought.</summary>
    public AcidProduct Product { get; }

    /// <summary>The water before.</summary>
    public SourceWater Water { get; }

    /// <summary>Moles of the acid per volume of water.</summary>
    public Molarity Amount { get; }

    /// <summary>The pH after.</summary>
    public Ph Ph { get; }

    /// <summary>The alkalinity of the carbonates after; 0 where free acid is left.</summary>
    public VolumetricCharge Alkalinity { get; }

    /// <summary>The free acid after, in excess of all alkalinity.</summary>
    public VolumetricCharge FreeAcid { get; }

    /// <summary>What became of the carbon dioxide.</summary>
    public GasExchange Exchange { get; }

    /// <summary>The method.</summary>
    public Method Method { get; }

    /// <summary>What to take care of, the dangers first.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The mass of the product per volume of water.</summary>
    [JsonIgnore]
    public MassConcentration ProductMass =>
        MassConcentration.FromMilligramsPerLiter(MolesPerLitre * Product.ProductGramsPerMole * 1000);

    /// <summary>The volume of the product per volume of water, or <see langword="null"/> for a dry acid.</summary>
    [JsonIgnore]
    public VolumeConcentration? ProductVolume => Product.Molarity is Molarity molarity
        ? VolumeConcentration.FromPercent(100 * MolesPerLitre / Boundary.MolesPerLitre(molarity))
        : null;

    /// <summary>The nitrogen that the acid brings.</summary>
    [JsonIgnore]
    public MassConcentration Nitrogen => Of(NutrientElement.Nitrogen);

    /// <summary>The phosphorus that the acid brings, as the element.</summary>
    [JsonIgnore]
    public MassConcentration Phosphorus => Of(NutrientElement.Phosphorus);

    /// <summary>The sulfur that the acid brings, as the element.</summary>
    [JsonIgnore]
    public MassConcentration Sulfur => Of(NutrientElement.Sulfur);

    /// <summary>The alkalinity that a mole of the acid took away; 0 where there is no acid.</summary>
    [JsonIgnore]
    public double EquivalentsPerMole => MolesPerLitre == 0
        ? 0
        : (Water.Alkalinity.MilliequivalentsPerLitre - Alkalinity.MilliequivalentsPerLitre + FreeAcid.MilliequivalentsPerLitre) / 1000 / MolesPerLitre;

    /// <summary>The volume of a liquid acid for a volume of water.</summary>
    /// <param name="water">The volume of water; 0 or more.</param>
    /// <returns>The volume of the product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    /// <exception cref="InvalidOperationException">The acid is dry: weigh it.</exception>
    public Volume VolumeFor(Volume water)
    {
        double litres = Guard.NotNegative(Boundary.Litres(water), "L", nameof(water));
        return ProductVolume is VolumeConcentration share
            ? Volume.FromLiters(litres * Boundary.VolumeFraction(share))
            : throw new InvalidOperationException("A dry acid has no volume to measure; weigh it by MassFor.");
    }

    /// <summary>The mass of the acid for a volume of water.</summary>
    /// <param name="water">The volume of water; 0 or more.</param>
    /// <returns>The mass of the product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative.</exception>
    public Mass MassFor(Volume water) => Mass.FromKilograms(
        Guard.NotNegative(Boundary.Litres(water), "L", nameof(water)) * Boundary.MilligramsPerLitre(ProductMass) / 1_000_000);

    /// <summary>The dose in metric units and invariant culture.</summary>
    /// <returns>One line: amount, pH, alkalinity, number of cautions.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The dose as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: amount, pH, alkalinity, number of cautions.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        string cautions = Cautions.Count == 1 ? "1 caution" : $"{Cautions.Count} cautions";
        return $"{Dosed(style)}: {Ph.ToString(style.Format, style.Culture)}, "
            + $"alkalinity {Left(style)}; {Method}; {cautions}";
    }

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(Dosed(style))
    {
        Rows =
        [
            .. Cautions.Where(caution => caution.Level == CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("pH", Ph.ToString(style.Format, style.Culture)),
            new DisplayRow("alkalinity", Left(style)),
            .. Nutrient("nitrogen", Nitrogen, style),
            .. Nutrient("phosphorus", Phosphorus, style),
            .. Nutrient("sulfur", Sulfur, style),
            new DisplayRow("method", Method.Name),
            .. Cautions.Where(caution => caution.Level != CautionLevel.Danger).Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Method.Source.ToString()),
        ],
    };

    internal double MolesPerLitre => Boundary.MolesPerLitre(Amount);

    private static DisplayRow[] Nutrient(string name, MassConcentration amount, TextStyle style) =>
        Boundary.MilligramsPerLitre(amount) > 0 ? [new DisplayRow(name, QuantityText.Of(amount, style))] : [];

    // US laboratories print alkalinity as calcium carbonate.
    private string Left(TextStyle style) => style.Units == MeasurementSystem.UsCustomary
        ? $"{QuantityText.Number(Boundary.MilligramsPerLitre(WaterAlkalinity.ToCalciumCarbonate(Alkalinity)), style)} ppm as calcium carbonate"
        : $"{QuantityText.Number(Alkalinity.MilliequivalentsPerLitre, style)} meq/L";

    // By the trade's measures of water, which no ladder of units would pick: a cubic metre, a hundred gallons. No acid is measured in a spoon.
    private string Dosed(TextStyle style)
    {
        bool us = style.Units == MeasurementSystem.UsCustomary;
        Volume water = us ? Volume.FromUsGallons(100) : Volume.FromCubicMeters(1);
        string amount = ProductVolume is null ? QuantityText.Of(MassFor(water), style)
            : us ? $"{QuantityText.Number(Boundary.Litres(VolumeFor(water)) / Boundary.LitresPerUsGallon * 128, style)} fl oz"
            : QuantityText.Of(VolumeFor(water), style);
        return $"{Product}, {amount} to {(us ? "100 gal (US)" : "1 m³")} of water";
    }

    private MassConcentration Of(NutrientElement element) => MassConcentration.FromMilligramsPerLiter(
        AcidFacts.Of(Product.Acid).Element == element ? MolesPerLitre * AtomicWeights.Of(element) * 1000 : 0);
}
