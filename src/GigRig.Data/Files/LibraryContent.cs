using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;

namespace GigRig.Data.Files;

/// <summary>A thing under the id it keeps for ever.</summary>
internal sealed record Kept<T>(Guid Id, T Item);

/// <summary>All that goes into a library file.</summary>
internal sealed record LibraryContent
{
    public ValueList<Kept<OwnedGear<Device>>> Devices { get; init; }

    public ValueList<Kept<OwnedGear<Board>>> Boards { get; init; }

    public ValueList<Kept<OwnedGear<Supply>>> Supplies { get; init; }

    public ValueList<Kept<OwnedGear<Amp>>> Amps { get; init; }

    public ValueList<Kept<OwnedGear<OffBoardItem>>> OffBoard { get; init; }

    public ValueList<Kept<OwnedGear<Lead>>> Leads { get; init; }

    public ValueList<Kept<OwnedGear<Instrument>>> Instruments { get; init; }

    /// <summary>False where the file says nothing about what the owner keeps beside the facts of things; it is left as it is.</summary>
    public bool SaysOwnership { get; init; } = true;

    /// <summary>Null where the file says nothing about them; they are left as they are.</summary>
    public PowerAdapters? Adapters { get; init; }

    /// <summary>Known by their keys.</summary>
    public ValueList<OwnRole> Roles { get; init; }

    public ValueList<Kept<EventType>> Events { get; init; }

    public ValueList<Kept<SavedRig>> Rigs { get; init; }
}
