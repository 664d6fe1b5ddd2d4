using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>A strength and a time that a source gives for a use or against a pathogen.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="ContactTimes"/> holds published ones.</remarks>
public sealed record ContactRecord
{
    /// <summary>Describes a record.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="name">What it is for, in plain English.</param>
    /// <param name="use">The use.</param>
    /// <param name="agent">What is used.</param>
    /// <param name="low">The lowest level printed; more than 0.</param>
    /// <param name="high">The highest level printed; the same where one is printed.</param>
    /// <param name="time">The least time of contact, or <see langword="null"/> where the source prints none.</param>
    /// <param name="rinse">What the source says about rinsing.</param>
    /// <param name="source">Who says so.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public ContactRecord(
        string key,
        string name,
        MixUse use,
        MixIngredient agent,
        MassConcentration low,
        MassConcentration high,
        Duration? time,
        RinseAdvice rinse,
        Source source)
    {
        Key = Guard.NotBlank(key);
        Name = Guard.NotBlank(name);
        Use = Guard.Defined(use);
        Agent = Guard.NotNull(agent);
        double lowest = Guard.Positive(Boundary.MilligramsPerLitre(low), "mg/L", nameof(low));
        Guard.AtLeast(Boundary.MilligramsPerLitre(high), lowest, "mg/L", nameof(high));
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        if (time is Duration known)
        {
            Guard.Positive(Boundary.Days(known) * 1440, "min", nameof(time));
            Time = HouseUnits.Normalise(known);
        }

        Rinse = Guard.Defined(rinse);
        Source = Guard.NotNull(source);
        Cautions = ValueList<Caution>.Of(MixCautions.OfDisinfectant(agent, use));
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>What it is for, in plain English.</summary>
    public string Name { get; }

    /// <summary>The use.</summary>
    public MixUse Use { get; }

    /// <summary>What is used.</summary>
    public MixIngredient Agent { get; }

    /// <summary>The lowest level printed, of available chlorine or of the active ingredient.</summary>
    public MassConcentration Low { get; }

    /// <summary>The highest level printed.</summary>
    public MassConcentration High { get; }

    /// <summary>The least time of contact, or <see langword="null"/> where the source prints none.</summary>
    public Duration? Time { get; }

    /// <summary>What the source says about rinsing.</summary>
    public RinseAdvice Rinse { get; }

    /// <summary>Who says so.</summary>
    public Source Source { get; }

    /// <summary>What to take care of, by what is used and where.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The concentrate and water for a batch at the low end of the record, or at the high end.</summary>
    /// <param name="total">The volume of the finished mix; more than 0.</param>
    /// <param name="concentrate">
    /// The strength of the product, above the level, counted as the record counts: of bleach the available chlorine, as
    /// <see cref="HypochloriteLabel.Strength"/> gives it.
    /// </param>
    /// <param name="atHighEnd">Whether the highest level printed is wanted.</param>
    /// <returns>Concentrate, water and strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not above 0, or the product is too weak.</exception>
    /// <exception cref="ArgumentException">
    /// The product is by volume, or by mass without a density, or is bleach that is not counted in available chlorine.
    /// </exception>
    public MixBatch MakeUpTo(Volume total, Strength concentrate, bool atHighEnd)
    {
        bool isBleach = Agent.Classes.Contains(IngredientClass.Hypochlorite);
        StrengthPerVolume level = new(atHighEnd ? High : Low, isBleach ? Hypochlorite.Ingredient : Guard.NotNull(concentrate).Ingredient);
        StrengthFigure.RequireSameIngredient(Guard.NotNull(concentrate), level, nameof(concentrate));
        return Dilution.MakeUpTo(total, concentrate, level);
    }

    /// <summary>The record in metric units and invariant culture.</summary>
    /// <returns>For instance <c>Fusarium oxysporum in water: 14 mg/L by household bleach for 6 min</c>.</returns>
    public override string ToString() =>
        $"{Name}: {MixAmount.Span(Low, High, TextStyle.Default)} by {Agent}{(Time is Duration known ? $" for {QuantityText.Of(known, TextStyle.Default)}" : "")} [{Source}]";
}
