using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

/// <summary>Ids name one thing each, over everything in the problem together.</summary>
internal static class IdsCheck
{
    public static void Run(RigProblemDraft draft, CheckList list)
    {
        var first = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (pointer, id) in All(draft))
        {
            new Spot(list, pointer, pointer).Text("id", id.Value, GearId.MaxLength);
            if (!first.TryAdd(id.Value ?? "", pointer))
                list.Add(
                    pointer.Member("id"),
                    Spot.Shown(id.Value),
                    "once",
                    $"The id \"{Spot.Shown(id.Value)}\" of {pointer} is taken by {first[id.Value ?? ""]}; give each thing an id of its own.");
        }
    }

    private static IEnumerable<(string Pointer, GearId Id)> All(RigProblemDraft draft)
    {
        yield return ("/board", draft.Board.Id);
        if (draft.Supply is { } supply)
            yield return ("/supply", supply.Id);
        if (draft.Amp is { } amp)
            yield return ("/amp", amp.Id);
        foreach (var (index, device) in draft.Devices.Index())
            yield return ($"/devices/{index}", device.Id);
        foreach (var (index, item) in draft.OffBoard.Index())
            yield return ($"/offBoard/{index}", item.Id);
        foreach (var (index, lead) in draft.Leads.Index())
            yield return ($"/leads/{index}", lead.Id);
        if (draft.Instrument is { } instrument)
            yield return ("/instrument", instrument.Id);
    }
}
