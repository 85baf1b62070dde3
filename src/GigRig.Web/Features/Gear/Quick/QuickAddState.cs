using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Adds one thing after the other from one line each.</summary>
public sealed class QuickAddState
{
    public const string DraftKey = "gear/quick-lines";

    private readonly GearBatchStore batch;
    private readonly RoleStore roles;
    private GearLineReader? reader;

    public QuickAddState(GearBatchStore batch, RoleStore roles)
    {
        (this.batch, this.roles) = (batch, roles);
        GoOn(GearKind.All[0].Word);
    }

    /// <summary>The unit of bare numbers; null until the page began to load.</summary>
    public LengthUnit? Unit { get; private set; }

    /// <summary>One line at least; the last is the open one.</summary>
    public QuickLines Form { get; private set; } = new();

    public RoleChoices Roles { get; private set; } = new([]);

    /// <summary>What was added last; null before the first.</summary>
    public NewGear? Added { get; private set; }

    /// <summary>Where that one is to be found.</summary>
    public Guid AddedId { get; private set; }

    public async Task LoadAsync(LengthUnit unit)
    {
        Unit = unit;
        Roles = new((await roles.AllAsync()).Select(stored => stored.Item));
        reader = new(Roles, new(unit));
        Form.Lines.ForEach(Prepare);
    }

    /// <summary>False where the line has faults, which then all show. A line that was added is gone, and an empty one of its kind is open.</summary>
    public async Task<bool> AddAsync(QuickForm line)
    {
        line.Errors.ShowAll();
        if (line.Read() is not { } gear)
            return false;
        var added = await batch.AddAsync([(gear.Thing, gear.Ownership)]);
        (Added, AddedId) = (gear, added[0].Id);
        LeaveOut(line);
        return true;
    }

    /// <summary>Opens an empty line of this kind below the others, unless the last one is empty.</summary>
    public void GoOn(string kind)
    {
        if (Form.Lines is [.., { IsBlank: true }])
            return;
        var line = new QuickForm { Kind = kind };
        Connect(line);
        Form.Lines.Add(line);
    }

    public void LeaveOut(QuickForm line)
    {
        Form.Lines.Remove(line);
        GoOn(line.Kind);
    }

    /// <summary>Above all others.</summary>
    public void PutBack(QuickForm line) => Form.Lines.Insert(0, line);

    /// <summary>Goes on from what was typed earlier.</summary>
    public void BringBack(QuickLines kept)
    {
        var kind = Form.Lines[^1].Kind;
        Form = kept;
        Form.Lines.ForEach(Connect);
        if (Form.Lines.Count == 0)
            GoOn(kind);
        // The open one may be half typed; the others were refused before.
        foreach (var line in Form.Lines.SkipLast(1))
        {
            line.Errors.ShowAll();
            line.Check();
        }
    }

    /// <summary>What changes in a line is to be kept with all others.</summary>
    private void Connect(QuickForm line)
    {
        Prepare(line);
        line.Updated += () => Form.Changed("lines");
    }

    private void Prepare(QuickForm line) => (line.Unit, line.Reader) = (Unit ?? LengthUnit.Millimetres, reader);
}
