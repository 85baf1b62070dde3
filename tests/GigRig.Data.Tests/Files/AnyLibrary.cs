using CsCheck;
using GigRig.Data.Files;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.TestKit.Generating;

namespace GigRig.Data.Tests.Files;

/// <summary>Random contents of a whole library.</summary>
internal static class AnyLibrary
{
    private static Gen<SavedRig> Saved { get; } =
        from problem in AnyRig.Problem
        from rig in AnyRig.Of(problem)
        from texts in Gen.Select(AnyValue.Name, AnyValue.Name)
        from ticks in Gen.Long[0, TimeSpan.TicksPerDay * 365 * 100]
        select new SavedRig(texts.Item1, texts.Item2, problem, rig, new DateTime(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddTicks(ticks));

    public static Gen<LibraryContent> Content { get; } =
        from devices in Gear(AnyGear.Device, (device, id) => device with { Id = id })
        from boards in Gear(AnyBoard.Board, (board, id) => board with { Id = id })
        from supplies in Gear(AnyBoard.Supply, (supply, id) => supply with { Id = id })
        from amps in Gear(AnyGear.Amp, (amp, id) => amp with { Id = id })
        from offBoard in Gear(AnyGear.OffBoard, (item, id) => item with { Id = id })
        from leads in Gear(AnyGear.Lead, (lead, id) => lead with { Id = id })
        from instruments in Gear(AnyGear.Instrument, (instrument, id) => instrument with { Id = id })
        from adapters in AnyGear.Adapters
        from title in AnyValue.Name
        from events in Kept(AnyEvent.EventType)
        from rigs in Kept(Saved)
        select new LibraryContent
        {
            Devices = devices,
            Boards = boards,
            Supplies = supplies,
            Amps = amps,
            OffBoard = offBoard,
            Leads = leads,
            Instruments = instruments,
            Adapters = adapters == PowerAdapters.None ? null : adapters,
            Roles = [new OwnRole(new("bird-song"), title)],
            Events = events,
            Rigs = rigs,
        };

    private static Gen<ValueList<Kept<OwnedGear<T>>>> Gear<T>(Gen<T> gen, Func<T, GearId, T> named)
        where T : class => Gen.Select(Gen.Guid, gen, AnyGear.Ownership, (id, thing, ownership) =>
            new Kept<OwnedGear<T>>(id, new(named(thing, Stored.GearIdOf(id)), ownership))).ListOf(2);

    private static Gen<ValueList<Kept<T>>> Kept<T>(Gen<T> gen) => Gen.Select(Gen.Guid, gen, (id, item) => new Kept<T>(id, item)).ListOf(2);
}
