using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Data;

/// <summary>All the gear of one owner, each kind in the order of its names.</summary>
public sealed record GearLibrary(
    ValueList<Stored<OwnedGear<Device>>> Devices,
    ValueList<Stored<OwnedGear<Board>>> Boards,
    ValueList<Stored<OwnedGear<Supply>>> Supplies,
    ValueList<Stored<OwnedGear<Amp>>> Amps,
    ValueList<Stored<OwnedGear<OffBoardItem>>> OffBoard,
    ValueList<Stored<OwnedGear<Lead>>> Leads,
    ValueList<Stored<OwnedGear<Instrument>>> Instruments,
    PowerAdapters Adapters);
