using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>A row with something its owner keeps beside its facts, whatever its kind.</summary>
internal interface IOwnershipRow
{
    Ownership Ownership { get; set; }
}

/// <summary>An owned thing: its facts in the columns of its kind, and what the owner keeps beside them.</summary>
internal abstract class GearRow<T> : ThingRow<OwnedGear<T>>, IOwnershipRow
    where T : class
{
    public string Name { get; set; } = "";

    public GearStatus Status { get; set; }

    public string Note { get; set; } = "";

    public int? ValueCents { get; set; }

    public List<string> Tags { get; set; } = [];

    public string LentTo { get; set; } = "";

    public DateOnly? BackOn { get; set; }

    /// <summary>Words of <see cref="Guess"/>.</summary>
    public List<string> Guesses { get; set; } = [];

    Ownership IOwnershipRow.Ownership
    {
        get => new(Status, Note, ValueCents)
        {
            Tags = Tags.ToValueList(),
            LentTo = LentTo,
            BackOn = BackOn,
            Guesses = Guesses.Select(Enum.Parse<Guess>).ToValueList(),
        };
        set
        {
            (Status, Note, ValueCents) = value;
            Tags = [.. value.Tags];
            LentTo = value.LentTo;
            BackOn = value.BackOn;
            Guesses = [.. value.Guesses.Select(guess => guess.ToString())];
        }
    }

    protected GearId GearId => Stored.GearIdOf(Id);

    public sealed override void Set(OwnedGear<T> item)
    {
        ((IOwnershipRow)this).Ownership = item.Ownership;
        SetThing(item.Thing);
    }

    public sealed override OwnedGear<T> ToItem() => new(ToThing(), ((IOwnershipRow)this).Ownership);

    protected abstract void SetThing(T thing);

    protected abstract T ToThing();
}
