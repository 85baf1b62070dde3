using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Web.Features.Gear.Forms;
using GigRig.Web.Shared.Editing;

namespace GigRig.Web.Features.Gear;

/// <summary>Makes the state of a page that edits one owned thing, which depends on its kind.</summary>
public sealed class GearItemStates(GearStore gear, RoleStore roles)
{
    public ItemState Of(GearKind kind) => kind.Word switch
    {
        "device" => new GearItemState<Device, DeviceForm>(gear, roles),
        "board" => new GearItemState<Board, BoardForm>(gear, roles),
        "supply" => new GearItemState<Supply, SupplyForm>(gear, roles),
        "amp" => new GearItemState<Amp, AmpForm>(gear, roles),
        "off-board" => new GearItemState<OffBoardItem, OffBoardForm>(gear, roles),
        "lead" => new GearItemState<Lead, LeadForm>(gear, roles),
        "instrument" => new GearItemState<Instrument, InstrumentForm>(gear, roles),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind.Word, "No form for this kind of gear."),
    };
}

internal sealed class GearItemState<T, TForm>(GearStore gear, RoleStore roles) : ItemState<OwnedGear<T>, TForm>($"gear/{GearKind.Of<T>().Word}", roles)
    where T : class
    where TForm : GearForm<T>, new()
{
    protected override Task<Stored<OwnedGear<T>>?> FindAsync(Guid id) => gear.FindAsync<T>(id);

    protected override Task<Stored<OwnedGear<T>>> AddAsync(OwnedGear<T> owned) => gear.AddAsync(owned.Thing, owned.Ownership);

    protected override Task<Stored<OwnedGear<T>>> SaveAsync(Stored<OwnedGear<T>> mine) => gear.SaveAsync(mine);

    protected override Task DeleteAsync(Guid id, int version) => gear.DeleteAsync(id, version);

    protected override Task RestoreAsync(Guid id) => gear.RestoreAsync(id);
}
