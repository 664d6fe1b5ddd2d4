using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Season;

/// <summary>Something to take care of, and the lines of the plan it belongs to.</summary>
public sealed record CautionLine : IFormattable
{
    /// <summary>Names a caution and where it belongs.</summary>
    /// <param name="caution">The caution.</param>
    /// <param name="appliesTo">The beds, pots, mixes or jobs it belongs to.</param>
    public CautionLine(Caution caution, IReadOnlyList<string> appliesTo)
    {
        Caution = Guard.NotNull(caution);
        AppliesTo = ValueList<string>.Of(Guard.NotNull(appliesTo));
    }

    /// <summary>The caution, with its source.</summary>
    public Caution Caution { get; }

    /// <summary>The beds, pots, mixes or jobs it belongs to.</summary>
    public IReadOnlyList<string> AppliesTo { get; }

    /// <summary>The caution as one line.</summary>
    /// <returns>Level, sentence, where it belongs, source.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The caution as one line.</summary>
    /// <param name="format"><c>M</c>, <c>U</c> or nothing; a caution is the same in all units.</param>
    /// <param name="formatProvider">Not used.</param>
    /// <returns>Level, sentence, where it belongs, source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        TextStyle.Parse(format, formatProvider);
        return $"{Caution.LevelWord}: {Caution.Sentence} ({string.Join(", ", AppliesTo)}) [{Caution.Source}]";
    }
}
