using System.Collections;
using System.Runtime.CompilerServices;

namespace GigRig.Domain;

/// <summary>
/// An immutable list that is equal to another when its items are, in order, so that records holding lists compare by value.
/// Built by a collection expression; <c>default</c> is empty.
/// </summary>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[]? items;

    internal ValueList(T[] items) => this.items = items;

    public int Count => items?.Length ?? 0;

    public T this[int index] => Items[index];

    private T[] Items => items ?? [];

    public bool Equals(ValueList<T> other) => Items.AsSpan().SequenceEqual(other.Items);

    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in Items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public override string ToString() => $"[{string.Join(", ", Items)}]";

    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);
}

/// <summary>Makes <see cref="ValueList{T}"/>.</summary>
public static class ValueList
{
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new(items.ToArray());
}
