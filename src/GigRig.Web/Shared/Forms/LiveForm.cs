using System.Text.Json.Serialization;
using GigRig.Domain.Units;

namespace GigRig.Web.Shared.Forms;

/// <summary>What is typed into a page, as typed. Plain values, so that it can be put aside as text and brought back.</summary>
public abstract class LiveForm
{
    /// <summary>The unit of bare numbers in length fields, and the one lengths are shown in.</summary>
    public LengthUnit Unit { get; set; }

    /// <summary>Of the stored thing that is edited; 0 for a new one. Saving refuses if the stored one has moved on.</summary>
    public int Version { get; set; }

    [JsonIgnore]
    public FieldErrors Errors { get; } = new();

    /// <summary>What the thing is called, as typed.</summary>
    [JsonIgnore]
    public virtual string Title => "";

    /// <summary>The keys of the roles it names.</summary>
    [JsonIgnore]
    public virtual IEnumerable<string> UsedRoles => [];

    /// <summary>After every change by a field.</summary>
    public event Action? Updated;

    /// <summary>Reads and checks everything anew; errors show at the fields that were touched.</summary>
    public abstract void Check();

    /// <summary>Called by a field whose value changed.</summary>
    public void Changed(string field)
    {
        Errors.Touch(field);
        Touched(field);
        Check();
        Updated?.Invoke();
    }

    /// <summary>What else follows from a change of this field.</summary>
    protected virtual void Touched(string field)
    {
    }
}

/// <summary>A form that a thing can be shown in and read from.</summary>
public interface IFormOf<TItem>
    where TItem : class
{
    void Show(TItem item);

    /// <summary>The thing as typed; null where something is wrong, which is then in <see cref="LiveForm.Errors"/>.</summary>
    TItem? Read();
}
