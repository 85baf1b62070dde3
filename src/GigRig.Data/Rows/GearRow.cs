using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>An owned thing: its facts in the columns of its kind, and what the owner keeps beside them.</summary>
internal abstract class GearRow<T> : ThingRow<OwnedGear<T>>
    where T : class
{
    public string Name { get; set; } = "";

    public GearStatus Status { get; set; }

    public string Note { get; set; } = "";

    public int? ValueCents { get; set; }

    protected GearId GearId => Stored.GearIdOf(Id);

    public sealed override void Set(OwnedGear<T> item)
    {
        (Status, Note, ValueCents) = item.Ownership;
        SetThing(item.Thing);
    }

    public sealed override OwnedGear<T> ToItem() => new(ToThing(), new Ownership(Status, Note, ValueCents));

    protected abstract void SetThing(T thing);

    protected abstract T ToThing();
}
