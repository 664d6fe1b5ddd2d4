using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The bulk density from which a soil holds roots back, and that which suits them where it is printed.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record RootDensityLimit
{
    /// <summary>Holds a printed row.</summary>
    /// <param name="printed">The soils, as printed.</param>
    /// <param name="textures">The USDA classes that they are.</param>
    /// <param name="restrictsAt">The bulk density from which roots are held back; above zero.</param>
    /// <param name="source">Where it is printed.</param>
    /// <param name="idealBelow">The bulk density below which roots grow best, where it is printed; above zero, not above the other.</param>
    /// <param name="sandGrade">The grade of sand that the row is for, where it matters.</param>
    /// <exception cref="ArgumentNullException">The classes or the source are missing.</exception>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A density is outside its range.</exception>
    public RootDensityLimit(
        string printed,
        IReadOnlyList<SoilTexture> textures,
        Density restrictsAt,
        Source source,
        Density? idealBelow = null,
        SandGrade? sandGrade = null)
    {
        Printed = Guard.NotBlank(printed);
        Textures = ValueList<SoilTexture>.Of(Guard.NotNull(textures));
        double limit = Guard.Positive(Boundary.KilogramsPerCubicMetre(restrictsAt), "kg/m³", nameof(restrictsAt));
        RestrictsAt = HouseUnits.Normalise(restrictsAt);
        Source = Guard.NotNull(source);
        if (idealBelow is { } ideal)
        {
            Guard.Within(Guard.Positive(Boundary.KilogramsPerCubicMetre(ideal), "kg/m³", nameof(idealBelow)), 0, limit, "kg/m³", nameof(idealBelow));
            IdealBelow = HouseUnits.Normalise(ideal);
        }

        SandGrade = sandGrade is { } grade ? Guard.Defined(grade, nameof(sandGrade)) : null;
    }

    /// <summary>The soils, as printed.</summary>
    public string Printed { get; }

    /// <summary>The USDA classes that they are.</summary>
    public IReadOnlyList<SoilTexture> Textures { get; }

    /// <summary>The bulk density from which roots are held back.</summary>
    public Density RestrictsAt { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The bulk density below which roots grow best, where it is printed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Density? IdealBelow { get; }

    /// <summary>The grade of sand that the row is for, where it matters.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public SandGrade? SandGrade { get; }

    /// <summary>Whether a soil holds roots back.</summary>
    /// <param name="bulk">Its bulk density; above zero.</param>
    /// <returns>Whether it is at the limit or above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not above zero.</exception>
    public bool Restricts(Density bulk) =>
        Guard.Positive(Boundary.KilogramsPerCubicMetre(bulk), "kg/m³", nameof(bulk)) >= Boundary.KilogramsPerCubicMetre(RestrictsAt);

    /// <summary>The soils and the limit.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Printed}: roots held back from {QuantityText.Of(RestrictsAt, TextStyle.Default)} [{Source}]";
}
