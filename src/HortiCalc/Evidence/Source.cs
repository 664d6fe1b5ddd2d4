using System.Globalization;
using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>Where a number comes from.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record Source
{
    /// <summary>Describes a source.</summary>
    /// <param name="key">A short stable name, the same as the file of published values it is checked against, where there is one.</param>
    /// <param name="title">The title as printed.</param>
    /// <param name="publisher">Who published it.</param>
    /// <param name="year">The year of publication, or <see langword="null"/> where the publication bears none.</param>
    /// <param name="address">Where to find it, or <see langword="null"/> where there is no address.</param>
    /// <param name="kind">How well the source stands behind the number.</param>
    /// <exception cref="ArgumentException">A text is empty, or the kind is not one of the defined ones.</exception>
    public Source(string key, string title, string publisher, int? year, string? address, SourceKind kind = SourceKind.Published)
    {
        Key = Guard.NotBlank(key);
        Title = Guard.NotBlank(title);
        Publisher = Guard.NotBlank(publisher);
        Year = year;
        Address = address;
        Kind = Guard.Defined(kind);
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>The title as printed.</summary>
    public string Title { get; }

    /// <summary>Who published it.</summary>
    public string Publisher { get; }

    /// <summary>The year of publication, or <see langword="null"/> where the publication bears none.</summary>
    public int? Year { get; }

    /// <summary>Where to find it, or <see langword="null"/> where there is no address.</summary>
    public string? Address { get; }

    /// <summary>How well the source stands behind the number.</summary>
    public SourceKind Kind { get; }

    /// <summary>A custom of the trade, which no publication stands behind.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="title">The custom in a few words.</param>
    /// <returns>A source of the kind <see cref="SourceKind.CommonPractice"/>.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public static Source CommonPractice(string key, string title) =>
        new(key, title, "common practice", null, null, SourceKind.CommonPractice);

    /// <summary>The source as a reference: publisher, title and year.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Kind switch
    {
        SourceKind.CommonPractice => $"common practice: {Title}",
        SourceKind.FromMemory => $"{Publisher}, {Title} (from memory)",
        SourceKind.Given => $"{Publisher}, {Title} (as given)",
        _ => $"{Publisher}, {Title} ({Year?.ToString(CultureInfo.InvariantCulture) ?? "no date"})",
    };
}
