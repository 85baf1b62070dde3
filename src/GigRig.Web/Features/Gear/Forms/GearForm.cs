using System.Globalization;
using System.Text.Json.Serialization;
using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>What all kinds of gear have: a name, and what the owner keeps beside the facts.</summary>
public abstract class GearForm : LiveForm
{
    private const string DayFormat = "yyyy-MM-dd";

    public string Name { get; set; } = "";

    public GearStatus Status { get; set; }

    public string Note { get; set; } = "";

    public string Value { get; set; } = "";

    /// <summary>With commas between them.</summary>
    public string Tags { get; set; } = "";

    public string LentTo { get; set; } = "";

    /// <summary>As the browser's own calendar writes it: <c>2027-03-06</c>.</summary>
    public string BackOn { get; set; } = "";

    /// <summary>What the app filled in and nobody has looked at since.</summary>
    public List<Guess> Guesses { get; set; } = [];

    public override string Title => Name;

    /// <summary>The thing as it last made sense; null where it never did.</summary>
    [JsonIgnore]
    public abstract object? Thing { get; }

    /// <summary>Its owner says that what was guessed is right.</summary>
    public void Confirm(Guess guess)
    {
        Guesses.Remove(guess);
        Changed("guesses");
    }

    protected override void Touched(string field) => Guesses.RemoveAll(GuessedFields.Of(field).Contains);

    protected Ownership ReadOwnership(EntryReader read)
    {
        var tags = TagText.Read(Tags);
        if (TagText.FaultOf(tags) is { } fault)
            read.Add("tags", fault);
        DateOnly? back = DateOnly.TryParseExact(BackOn, DayFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
        if (back is null && BackOn.Trim().Length > 0)
            read.Add("backOn", $"\"{BackOn}\" is not a day. Type one such as 2027-03-06.");
        return new(Status, Note.Trim(), read.Cents("value", "Value", Value))
        {
            Tags = tags,
            LentTo = LentTo.Trim(),
            BackOn = back,
            Guesses = Guesses.Distinct().Order().ToValueList(),
        };
    }

    protected void ShowOwnership(Ownership ownership)
    {
        Tags = TagText.Show(ownership.Tags);
        LentTo = ownership.LentTo;
        BackOn = ownership.BackOn?.ToString(DayFormat, CultureInfo.InvariantCulture) ?? "";
        Guesses = [.. ownership.Guesses];
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

    /// <summary>As typed, while it makes sense; what it last was, while it does not.</summary>
    [JsonIgnore]
    public T? Sketch { get; private set; }

    [JsonIgnore]
    public override object? Thing => Sketch;

    public void Show(OwnedGear<T> owned)
    {
        ShowOwnership(owned.Ownership);
        Show(owned.Thing);
    }

    public OwnedGear<T>? Read()
    {
        var read = new EntryReader(Unit);
        var thing = Read(read);
        var ownership = ReadOwnership(read);
        if (read.CanBeJudged)
            read.Add(Complaints(thing), PlaceInDocument);
        Errors.Set(read.Errors);
        if (!Errors.None)
            return null;
        Sketch = thing;
        return new(thing, ownership);
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
