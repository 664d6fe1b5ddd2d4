using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>The number of a strength on the basis that volumes scale, for arithmetic between strengths of one ingredient.</summary>
internal static class StrengthFigure
{
    public static double Of(Strength strength, string parameter) => strength.ScaledFigure ?? throw new ArgumentException(
        $"{parameter} was {strength} without a density; allowed: by volume, as mass per volume, or by mass with the density of the liquid.",
        parameter);

    /// <summary>The number, where the strength counts what another counts on the same basis.</summary>
    public static double Comparable(Strength strength, Strength other, string parameter)
    {
        RequireSameIngredient(strength, other, parameter);
        return strength.IsByVolume == other.IsByVolume
            ? Of(strength, parameter)
            : throw new ArgumentException(
                $"{parameter} was {strength}; allowed: the basis of {other}, or a density to turn one into the other.", parameter);
    }

    /// <summary>Refuses a strength that counts something else than another one.</summary>
    public static void RequireSameIngredient(Strength strength, Strength other, string parameter)
    {
        if (strength.Ingredient != other.Ingredient)
        {
            throw new ArgumentException(
                $"{parameter} counts '{strength.Ingredient}'; allowed: what the other strength counts, '{other.Ingredient}'.", parameter);
        }
    }

    /// <summary>A strength of the same ingredient and basis with another number.</summary>
    public static Strength Like(Strength strength, double figure) => strength.IsByVolume
        ? new StrengthByVolume(VolumeConcentration.FromPercent(Math.Min(100, figure * 100)), strength.Ingredient)
        : new StrengthPerVolume(MassConcentration.FromMilligramsPerLiter(figure), strength.Ingredient);
}
