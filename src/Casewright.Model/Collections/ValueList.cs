using System.Collections;
using System.Runtime.CompilerServices;

namespace Casewright.Model.Collections;

/// <summary>Makes <see cref="ValueList{T}"/> from collection expressions.</summary>
public static class ValueList
{
    /// <summary>Copies <paramref name="items"/> into a new list.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => items.IsEmpty ? ValueList<T>.Empty : new(items.ToArray());

    /// <summary>Copies a sequence into a new list.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        T[] copy = [.. items];
        return copy.Length == 0 ? ValueList<T>.Empty : new(copy);
    }
}

/// <summary>An immutable list that is equal to another when their items are equal in order, so that records holding lists compare by value.</summary>
/// <typeparam name="T">Item type; compared with its default equality.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] _items;

    internal ValueList(T[] items) => _items = items;

    /// <summary>The list without items.</summary>
    public static ValueList<T> Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => _items.Length;

    /// <inheritdoc/>
    public T this[int index] => _items[index];

    /// <summary>The items, without copying.</summary>
    public ReadOnlySpan<T> AsSpan() => _items;

    /// <summary>A list with <paramref name="item"/> after the present ones.</summary>
    public ValueList<T> Add(T item) => new([.. _items, item]);

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && (ReferenceEquals(this, other) || _items.AsSpan().SequenceEqual(other._items));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => _items.GetEnumerator();

    /// <inheritdoc/>
    public override string ToString() => "[" + string.Join(", ", _items) + "]";
}
