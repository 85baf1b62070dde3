namespace GigRig.Data.Rows;

/// <summary>What every row has. The owner, the version and the times are written by <see cref="Owners.OwnerGuard"/> alone.</summary>
internal abstract class OwnedRow
{
    public Guid OwnerId { get; set; }

    /// <summary>1 when first stored, one more at each change.</summary>
    public int Version { get; set; }

    public DateTime CreatedUtc { get; set; }

    public DateTime ChangedUtc { get; set; }
}

/// <summary>A row that stands for something the owner can name, edit, delete and bring back.</summary>
internal abstract class ThingRow : OwnedRow
{
    public Guid Id { get; set; }

    /// <summary>Null while it is there. Deleting only sets this, so that every delete can be undone.</summary>
    public DateTime? DeletedUtc { get; set; }

    /// <summary>What to call it in a message: its kind and its name.</summary>
    public abstract string Title { get; }
}

/// <summary>A row that holds one <typeparamref name="T"/> of the domain.</summary>
internal abstract class ThingRow<T> : ThingRow
{
    public abstract void Set(T item);

    public abstract T ToItem();
}
