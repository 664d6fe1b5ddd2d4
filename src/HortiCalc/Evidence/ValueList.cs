using System.Collections;

namespace HortiCalc.Evidence;

/// <summary>A read-only list that equals another with the same items in the same order, so that results holding lists compare by value.</summary>
internal sealed class ValueList<T> : IReadOnlyList<T>
{
    public static readonly ValueList<T> Empty = new([]);

    private readonly T[] items;

    private ValueList(T[] items) => this.items = items;

    public int Count => items.Length;

    public T this[int index] => items[index];

    /// <summary>Copies the items, so that later changes of the source do not show.</summary>
    public static ValueList<T> Of(IEnumerable<T>? source) => source switch
    {
        null => Empty,
        ValueList<T> list => list,
        _ => new ValueList<T>([.. source]),
    };

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
