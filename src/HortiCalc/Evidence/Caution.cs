using HortiCalc.Units;

namespace HortiCalc.Evidence;

/// <summary>Something to take care of before acting on a result.</summary>
/// <remarks>Immutable; equal when all members are equal. The code is stable, so that an application can translate the sentence by it.</remarks>
public sealed record Caution
{
    /// <summary>Describes something to take care of.</summary>
    /// <param name="code">A stable code of lower-case words: subject, a dot, the matter, as in <c>lime.caustic</c>.</param>
    /// <param name="level">How much is at stake.</param>
    /// <param name="sentence">One plain sentence in English.</param>
    /// <param name="source">Where the caution comes from.</param>
    /// <exception cref="ArgumentException">A text is empty, the level is not one of the defined ones, or the source is missing.</exception>
    public Caution(string code, CautionLevel level, string sentence, Source source)
    {
        Code = Guard.NotBlank(code);
        Level = Guard.Defined(level);
        Sentence = Guard.NotBlank(sentence);
        Source = Guard.NotNull(source);
    }

    /// <summary>A stable code, to translate the sentence by.</summary>
    public string Code { get; }

    /// <summary>How much is at stake.</summary>
    public CautionLevel Level { get; }

    /// <summary>One plain sentence in English.</summary>
    public string Sentence { get; }

    /// <summary>Where the caution comes from.</summary>
    public Source Source { get; }

    /// <summary>The level and the sentence.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => $"{Level}: {Sentence}";

    internal string LevelWord => Level switch
    {
        CautionLevel.Danger => "danger",
        CautionLevel.Care => "care",
        _ => "note",
    };
}
