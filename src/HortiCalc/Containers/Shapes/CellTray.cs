using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A tray of equal cells.</summary>
/// <remarks>Immutable; equal when cell, rows and columns are.</remarks>
/// <example><code>
/// CellTray tray = new(Container.SquareTapered(Length.FromCentimeters(4), Length.FromCentimeters(2.5), Length.FromCentimeters(5)), rows: 6, columns: 12);
/// Console.WriteLine($"{tray.Cells} cells, {tray.FillVolume(headspace: Length.FromMillimeters(3)).Liters:0.0} L of medium");
/// </code></example>
public sealed record CellTray : IFormattable
{
    /// <summary>Describes a tray.</summary>
    /// <param name="cell">One cell, by its inside dimensions.</param>
    /// <param name="rows">How many rows; 1 or more.</param>
    /// <param name="columns">How many cells a row has; 1 or more.</param>
    /// <exception cref="ArgumentNullException">The cell is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is below 1, or the tray has more than a million cells.</exception>
    public CellTray(Container cell, int rows, int columns)
    {
        Cell = Guard.NotNull(cell);
        Rows = Guard.AtLeast(rows, 1, nameof(rows));
        Columns = Guard.AtLeast(columns, 1, nameof(columns));
        Guard.Within((double)rows * columns, 1, 1e6, "cells", nameof(columns));
    }

    /// <summary>One cell.</summary>
    public Container Cell { get; }

    /// <summary>How many rows.</summary>
    public int Rows { get; }

    /// <summary>How many cells a row has.</summary>
    public int Columns { get; }

    /// <summary>How many cells the tray has.</summary>
    [JsonIgnore]
    public int Cells => Rows * Columns;

    /// <summary>What all cells hold to the brim.</summary>
    [JsonIgnore]
    public Volume BrimVolume => Volume.FromLiters(Boundary.Litres(Cell.BrimVolume) * Cells);

    /// <summary>What all cells hold when filled to a distance below the brim.</summary>
    /// <param name="headspace">The room left below the brim; from zero to the height of a cell.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The headspace is negative or more than the height.</exception>
    public Volume FillVolume(Length headspace) => Volume.FromLiters(Boundary.Litres(Cell.FillVolume(headspace)) * Cells);

    /// <summary>The whole trays for a number of plants.</summary>
    /// <param name="plants">How many; zero or more.</param>
    /// <returns>The trays, a part of one counted as one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public int TraysFor(int plants) => (int)((Guard.AtLeast(plants, 0, nameof(plants)) + (long)Cells - 1) / Cells);

    /// <summary>The tray in metric units and invariant culture.</summary>
    /// <returns>For instance <c>6 by 12 cells, 3.85 L to the brim</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The tray as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The cells and what they hold.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle style = TextStyle.Parse(format, formatProvider);
        return $"{QuantityText.Of(Rows, style)} by {QuantityText.Of(Columns, style)} cells, {QuantityText.Of(BrimVolume, style)} to the brim";
    }
}
