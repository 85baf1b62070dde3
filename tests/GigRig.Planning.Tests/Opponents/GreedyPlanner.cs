using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>
/// What somebody does with a board on the floor: take what brings most, put it in the first free place, plug it in, go on until nothing more helps. Never moves
/// anything again.
/// </summary>
internal sealed class GreedyPlanner(RigProblem problem)
{
    private readonly EveryChoice choices = new(problem);
    private readonly EveryStanding standings = new(problem);
    private readonly EveryHookUp hookUps = new(problem);
    private readonly List<OneStanding> stood = [];
    private IReadOnlyList<Feed> feeds = [];

    /// <summary>Null where it ends up short of a must; says nothing about whether there is a rig.</summary>
    public Rig? Rig()
    {
        if (!standings.HasRoomForSupplyBelow)
            return null;
        if (standings.OfSupply is { } places)
        {
            if (places.Length == 0)
                return null;
            stood.Add(places[0]);
        }

        if (choices.Weigh([], []) is not { } now)
            return null;
        while (Better(now).OrderBy(next => next.Order).FirstOrDefault(Accept) is { } next)
            now = next;
        return now.Missing == 0 && problem.Options.Pin.All(Holds) && problem.Options.Fixed.All(place => place.Id == problem.Supply?.Id || Holds(place.Id)) ? RigOf(now) : null;

        bool Holds(GearId pin) => pin == problem.Amp?.Id || now.Devices.Any(d => d.Id == pin) || now.OffBoard.Any(i => i.Id == pin);
    }

    /// <summary>One thing more, where it brings something or is pinned.</summary>
    private IEnumerable<OneChoice> Better(OneChoice now)
    {
        var devices = problem.Devices.Except(now.Devices).Where(d => IsAllowed(d.Id)).Select(d => (d.Id, Choice: choices.Weigh([.. now.Devices, d], now.OffBoard)));
        var items = problem.OffBoard.Except(now.OffBoard).Where(i => IsAllowed(i.Id)).Select(i => (i.Id, Choice: choices.Weigh(now.Devices, [.. now.OffBoard, i])));
        foreach (var (id, choice) in devices.Concat(items))
            if (choice is not null && (choice.Order.CompareTo(now.Order) < 0 || problem.Options.Pin.Contains(id)))
                yield return choice;
    }

    private bool IsAllowed(GearId id) => !problem.Options.Ban.Contains(id);

    private bool Accept(OneChoice next)
    {
        var placed = stood.Select(s => s.Placement.Id).ToHashSet();
        if (next.Devices.FirstOrDefault(d => !placed.Contains(d.Id)) is not { } device)
            return true;
        if (hookUps.Find(next.Devices.Select(d => d.Id)) is not { } fed
            || standings.Of(device.Id).FirstOrDefault(place => stood.All(other => standings.AreApart(place, other))) is not { } free)
            return false;
        feeds = fed;
        stood.Add(free);
        return true;
    }

    private Rig RigOf(OneChoice choice) => new(
        stood.Select(s => s.Placement).Where(p => p.Id != problem.Supply?.Id).ToValueList(),
        stood.Select(s => s.Placement).SingleOrDefault(p => p.Id == problem.Supply?.Id),
        choice.OffBoard.Select(i => i.Id).ToValueList(),
        feeds.ToValueList(),
        new Chain(choice.Devices.Where(d => d.CarriesAudio).Select(d => d.Id).ToValueList(), []));
}
