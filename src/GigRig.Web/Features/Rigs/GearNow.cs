using System.Globalization;
using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Web.Shared;

namespace GigRig.Web.Features.Rigs;

/// <summary>The owner's gear as it is now, under the names it goes by in problems.</summary>
internal sealed class GearNow
{
    private readonly Dictionary<GearId, (object Thing, Ownership Ownership)> things = [];
    private readonly GearLibrary library;

    public GearNow(GearLibrary library)
    {
        this.library = library;
        Note(library.Boards);
        Note(library.Supplies);
        Note(library.Amps);
        Note(library.Instruments);
        Note(library.Devices);
        Note(library.OffBoard);

        void Note<T>(ValueList<Stored<OwnedGear<T>>> stored)
            where T : class
        {
            foreach (var thing in stored)
                things[Stored.GearIdOf(thing.Id)] = (thing.Item.Thing, thing.Item.Ownership);
        }
    }

    /// <summary>False for a thing that never was stored, such as one in a question that came from elsewhere.</summary>
    public static bool MayKnow(GearId id) => Guid.TryParseExact(id.Value, "d", out _);

    public object? Find(GearId id) => things.TryGetValue(id, out var found) ? found.Thing : null;

    /// <summary>Why it is not at hand, such as <c>is lent out to Jo, back on 1 May 2027</c>; empty where it is.</summary>
    public string Lacking(GearId id)
    {
        if (!things.TryGetValue(id, out var found))
            return "is not among your gear any more";
        var (status, ownership) = (found.Ownership.Status, found.Ownership);
        var to = ownership.LentTo.Length > 0 ? $" to {ownership.LentTo}" : "";
        var back = ownership.BackOn is { } day ? $", back on {day.ToString("d MMMM yyyy", CultureInfo.CurrentCulture)}" : "";
        return status switch
        {
            GearStatus.Ready => "",
            GearStatus.LentOut => $"is lent out{to}{back}",
            GearStatus.Gone => "is not yours any more",
            _ => $"is {Words.Of(status).ToLowerInvariant()}",
        };
    }

    /// <summary>
    /// The same question with every thing as it is now. What the rig holds stays in it, with the facts it had where it is stored no more; what it does not hold is there
    /// to be planned with only while it is at hand. Leads and adapters are those that are ready now.
    /// </summary>
    public RigProblemDraft In(RigProblemDraft draft, Rig rig)
    {
        var (devices, offBoard) = (draft.Devices.Where(device => Stays(device.Id)).ToList(), draft.OffBoard.Where(item => Stays(item.Id)).ToList());
        return draft with
        {
            Board = Now(draft.Board, draft.Board.Id),
            Supply = draft.Supply is { } supply ? Now(supply, supply.Id) : null,
            Amp = draft.Amp is { } amp ? Now(amp, amp.Id) : null,
            Instrument = draft.Instrument is { } instrument ? Now(instrument, instrument.Id) : null,
            Devices = devices.Select(device => Now(device, device.Id)).ToValueList(),
            OffBoard = offBoard.Select(item => Now(item, item.Id)).ToValueList(),
            Leads = library.Leads.Where(lead => lead.Item.Ownership.Status == GearStatus.Ready).Select(lead => lead.Item.Thing).ToValueList(),
            Adapters = library.Adapters,
            Options = draft.Options with { Pin = draft.Options.Pin.Where(Stays).ToValueList(), Ban = draft.Options.Ban.Where(Stays).ToValueList() },
        };

        bool Stays(GearId id) => rig.Holds(id) || !MayKnow(id) || Lacking(id).Length == 0;
    }

    private T Now<T>(T then, GearId id)
        where T : class => Find(id) as T ?? then;
}
