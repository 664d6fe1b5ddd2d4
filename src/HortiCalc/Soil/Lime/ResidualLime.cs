using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>Lime applied before, part of which has not reacted yet, as North Carolina credits it.</summary>
/// <remarks>
/// <para>Immutable; equal when all members are equal.</para>
/// <para>
/// Source: N.C. Department of Agriculture and Consumer Services, Lime and Fertilizer Requirements,
/// https://ncagr.gov/agronomic-services-soil-testing-lime-and-fertilizer-requirements: the credit is the whole rate at first and shrinks
/// by 8 % of it each month on mineral soils, 16 % on others.
/// </para>
/// </remarks>
/// <example><code>
/// ResidualLime lastYear = new(Mass.FromShortTons(1) / Area.FromAcres(1), months: 5, NorthCarolinaSoilClass.Mineral);
/// SoilReport soil = new() { PhInWater = new Ph(5), BufferAcidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(1.6) };
/// Console.WriteLine(Liming.Requirement(soil, new Ph(6), LimingMethod.NorthCarolina(lastYear)));
/// </code></example>
public sealed record ResidualLime
{
    /// <summary>Describes lime applied before.</summary>
    /// <param name="rate">How much standard lime was applied; zero or more.</param>
    /// <param name="months">Whole months since then; zero or more.</param>
    /// <param name="soilClass">The class printed on the soil test report.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate or the months are negative, or the class is unknown.</exception>
    public ResidualLime(AreaDensity rate, int months, NorthCarolinaSoilClass soilClass)
    {
        Guard.NotNegative(Boundary.GramsPerSquareMetre(rate), "g/m²", nameof(rate));
        Rate = HouseUnits.Normalise(rate);
        Months = Guard.AtLeast(months, 0);
        SoilClass = Guard.Defined(soilClass);
    }

    /// <summary>How much standard lime was applied.</summary>
    public AreaDensity Rate { get; }

    /// <summary>Whole months since then.</summary>
    public int Months { get; }

    /// <summary>The class printed on the soil test report.</summary>
    public NorthCarolinaSoilClass SoilClass { get; }

    /// <summary>What of it still counts; zero when all has reacted.</summary>
    [JsonIgnore]
    public AreaDensity Credit => AreaDensity.FromGramsPerSquareMeter(CreditGramsPerSquareMetre);

    internal double CreditGramsPerSquareMetre => Boundary.GramsPerSquareMetre(Rate) * Math.Max(0, 1 - Months * ShareLostPerMonth);

    private double ShareLostPerMonth => SoilClass == NorthCarolinaSoilClass.Mineral ? 0.08 : 0.16;

    /// <summary>The lime applied before, in metric units and invariant culture.</summary>
    /// <returns>For instance <c>100 g/m² of lime 6 months ago, on mineral soil</c>.</returns>
    public override string ToString() =>
        $"{QuantityText.Of(Rate, TextStyle.Default)} of lime {Guard.Number(Months)} {(Months == 1 ? "month" : "months")} ago, on {ClassName} soil";

    private string ClassName => SoilClass switch
    {
        NorthCarolinaSoilClass.Mineral => "mineral",
        NorthCarolinaSoilClass.MineralOrganic => "mineral-organic",
        _ => "organic",
    };
}
