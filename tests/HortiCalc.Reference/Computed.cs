namespace HortiCalc.Reference;

/// <summary>What the library gave for one published value: a number or a word.</summary>
public readonly record struct Computed(double Number, string? Text)
{
    public static implicit operator Computed(double number) => new(number, null);

    public static implicit operator Computed(string text) => new(0, text);

    public static implicit operator Computed(DateOnly date) => new(ReferenceValue.DayOfYear(date), null);
}
