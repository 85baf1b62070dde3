using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>Which things there are, how often, and how much they weigh together.</summary>
internal static class NaiveBelongings
{
    public static IEnumerable<Fault> Faults(RigProblem problem, Rig rig)
    {
        var devices = problem.Devices.Select(d => d.Id.Value).ToHashSet();
        var offBoard = problem.OffBoard.Select(i => i.Id.Value).ToHashSet();
        var outlets = problem.Supply is { } s ? s.Outlets.Select(o => o.Id).ToHashSet() : [];
        var placed = rig.Placements.Select(p => p.Id.Value).ToList();
        var brought = rig.OffBoard.Select(id => id.Value).ToList();

        var strangers = placed.Where(id => !devices.Contains(id))
            .Concat(brought.Where(id => !offBoard.Contains(id)))
            .Concat(rig.Chain.Front.Select(id => id.Value).Where(id => !devices.Contains(id)))
            .Concat(rig.Chain.Loop.Select(id => id.Value).Where(id => !devices.Contains(id)))
            .Concat(rig.HookUp.Select(f => f.Device.Value).Where(id => !devices.Contains(id)))
            .Concat(rig.HookUp.SelectMany(f => f.Outlets).Where(id => !outlets.Contains(id)));
        foreach (var id in strangers)
            yield return new("known-things", id);
        if (rig.Supply is not null && rig.Supply.Id.Value != problem.Supply?.Id.Value)
            yield return new("known-things", "supply");

        if (placed.Concat(brought).GroupBy(id => id).Any(g => g.Count() > 1))
            yield return new("once-each", "a thing twice");
        foreach (var id in problem.Options.Pin.Select(p => p.Value))
            if (!placed.Contains(id) && !brought.Contains(id) && id != problem.Amp?.Id.Value)
                yield return new("pins", id);
        foreach (var place in problem.Options.Fixed)
            if (!rig.Placements.Any(p => Same(p, place)) && !(rig.Supply is not null && Same(rig.Supply, place)))
                yield return new("fixed-places", place.Id.Value);
        foreach (var id in problem.Options.Ban.Select(b => b.Value))
            if (placed.Contains(id) || brought.Contains(id))
                yield return new("bans", id);

        if (problem.Event.Limits.Mass is { } most && Mass(problem, rig) > most.Value)
            yield return new("mass-limit", $"{Mass(problem, rig)} g");
        if (problem.Event.Limits.Devices is { } many && PlacedDevices(problem, rig).Count > many)
            yield return new("device-limit", "too many");
    }

    private static bool Same(Placement a, Placement b) =>
        a.Id.Value == b.Id.Value && a.At.X.Value == b.At.X.Value && a.At.Y.Value == b.At.Y.Value && (int)a.Turn == (int)b.Turn;

    public static List<Device> PlacedDevices(RigProblem problem, Rig rig)
    {
        var found = new List<Device>();
        foreach (var device in problem.Devices)
            if (rig.Placements.Any(p => p.Id.Value == device.Id.Value))
                found.Add(device);
        return found;
    }

    public static List<OffBoardItem> Brought(RigProblem problem, Rig rig)
    {
        var found = new List<OffBoardItem>();
        foreach (var item in problem.OffBoard)
            if (rig.OffBoard.Any(id => id.Value == item.Id.Value))
                found.Add(item);
        return found;
    }

    public static int Mass(RigProblem problem, Rig rig)
    {
        var mass = problem.Board.Mass.Value;
        if (problem.Supply is not null)
            mass += problem.Supply.Mass.Value;
        if (problem.Amp is not null)
            mass += problem.Amp.Mass.Value;
        foreach (var device in PlacedDevices(problem, rig))
            mass += device.Mass.Value;
        foreach (var item in Brought(problem, rig))
            mass += item.Mass.Value;
        return mass;
    }
}
