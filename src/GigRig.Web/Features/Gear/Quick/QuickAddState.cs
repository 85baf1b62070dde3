using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Adds one thing after the other from one line each.</summary>
public sealed class QuickAddState(GearBatchStore batch, RoleStore roles)
{
    public const string DraftKey = "gear/quick";

    public QuickForm Form { get; private set; } = new();

    public RoleChoices Roles { get; private set; } = new([]);

    /// <summary>What was added last; null before the first.</summary>
    public NewGear? Added { get; private set; }

    /// <summary>Where that one is to be found.</summary>
    public Guid AddedId { get; private set; }

    public async Task LoadAsync(LengthUnit unit)
    {
        Roles = new((await roles.AllAsync()).Select(stored => stored.Item));
        Prepare(Form, unit);
    }

    /// <summary>False where the line has faults, which then all show. A line that was added is empty again, of the same kind.</summary>
    public async Task<bool> AddAsync()
    {
        Form.Errors.ShowAll();
        if (Form.Read() is not { } gear)
            return false;
        var added = await batch.AddAsync([(gear.Thing, gear.Ownership)]);
        (Added, AddedId) = (gear, added[0].Id);
        var next = new QuickForm { Kind = Form.Kind };
        Prepare(next, Form.Unit);
        Form = next;
        return true;
    }

    /// <summary>Goes on from what was typed earlier.</summary>
    public void BringBack(QuickForm kept)
    {
        Prepare(kept, Form.Unit);
        Form = kept;
    }

    private void Prepare(QuickForm form, LengthUnit unit) => (form.Unit, form.Reader) = (unit, new(Roles, new(unit)));
}
