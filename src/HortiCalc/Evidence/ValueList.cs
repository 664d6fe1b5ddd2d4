using System.Collections;
using System.Runtime.CompilerServices;

namespace HortiCalc.Evidence;

/// <summary>A read-only list that equals another with the same items in the same order, so that results holding lists compare by value.</summary>
internal sealed class ValueList<T> : IReadOnlyList<T>
{
    public static readonly ValueList<T> Empty = new([]);

    private readonly T[] items;

    private ValueList(T[] items) => this.items = items;

    public int Count => items.Length;

    public T this[int index] => items[index];

    /// <summary>Copies the items, so that later changes of the source do not show. No item may be missing.</summary>
    public static ValueList<T> Of(IEnumerable<T>? source, [CallerArgumentExpression(nameof(source))] string parameter = "")
    {
        if (source is null)
            return Empty;
        if (source is ValueList<T> list)
            return list;
        T[] items = [.. source];
        int missing = Array.FindIndex(items, item => item is null);
        return missing < 0 ? new ValueList<T>(items) : throw Missing(missing, parameter.Replace("Guard.NotNull(", "", StringComparison.Ordinal));
    }

    // The argument may be more than the parameter: (cautions), or cautions ?? others.
    private static ArgumentException Missing(int index, string argument)
    {
        string parameter = argument[..argument.TakeWhile(char.IsAsciiLetterOrDigit).Count()];
        return new ArgumentException($"{parameter} has no item at {index}: null; allowed: items that are there.", parameter);
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    public override bool Equals(object? obj) => obj is ValueList<T> other && items.AsSpan().SequenceEqual(other.items);

    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T item in items)
            hash.Add(item);
        return hash.ToHashCode();
    }
}
