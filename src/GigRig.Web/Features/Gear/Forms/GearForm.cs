using System.Globalization;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>What all kinds of gear have: a name, and what the owner keeps beside the facts.</summary>
public abstract class GearForm : LiveForm
{
    public string Name { get; set; } = "";

    public GearStatus Status { get; set; }

    public string Note { get; set; } = "";

    public string Value { get; set; } = "";

    public override string Title => Name;

    protected void ShowOwnership(Ownership ownership)
    {
        Status = ownership.Status;
        Note = ownership.Note;
        Value = ownership.ValueCents is { } cents ? (cents / 100m).ToString("0.##", CultureInfo.InvariantCulture) : "";
    }
}

/// <summary>The form of one kind of gear.</summary>
public abstract class GearForm<T> : GearForm, IFormOf<OwnedGear<T>>
    where T : class
{
    /// <summary>A thing is checked on its own, before it gets the id it is stored under.</summary>
    protected static readonly GearId Unnamed = new("this");

    public void Show(OwnedGear<T> owned)
    {
        ShowOwnership(owned.Ownership);
        Show(owned.Thing);
    }

    public OwnedGear<T>? Read()
    {
        var read = new EntryReader(Unit);
        var thing = Read(read);
        var ownership = new Ownership(Status, Note.Trim(), read.Cents("value", "Value", Value));
        if (read.CanBeJudged)
            read.Add(Complaints(thing), PlaceInDocument);
        Errors.Set(read.Errors);
        return Errors.None ? new(thing, ownership) : null;
    }

    public override void Check() => Read();

    protected abstract void Show(T thing);

    protected abstract T Read(EntryReader read);

    /// <summary>What the domain has against it.</summary>
    protected abstract IEnumerable<Complaint> Complaints(T thing);

    /// <summary>Where the thing stands in the document its complaints speak of, such as <c>devices/0</c>.</summary>
    protected abstract string PlaceInDocument { get; }

    protected string Length(Millimetres length) => LengthText.Format(length, Unit);
}
