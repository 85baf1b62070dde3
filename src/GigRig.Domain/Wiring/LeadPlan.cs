using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>A hop with the lead that serves it.</summary>
/// <param name="Route">Null for a hop that leaves the board.</param>
/// <param name="Needed">The least length of cable between the plugs; zero for a line that comes with something else.</param>
/// <param name="Lead">Null where nothing owned serves it, or nothing need be owned.</param>
public sealed record WiredHop(Hop Hop, LeadRoute? Route, Millimetres Needed, Lead? Lead)
{
    /// <summary>Where a lead is missing: the shortest owned one that reaches and whose plugs have no room here; null where that is not why.</summary>
    public Lead? WithoutRoom { get; init; }

    public bool IsMissing => Lead is null && Hop.NeedsOwnedLead;
}

/// <summary>
/// The owned lead for each hop: the most hops served that can be, then the least cable left over. A lead serves a hop of its kind that it is long enough for and whose
/// jacks have room for its plugs. Follows from problem and rig alone, so that a rig re-wires itself when something is moved. Worked out once for all that speaks of leads.
/// </summary>
/// <param name="Hops">In the order of the signal.</param>
public sealed record LeadPlan(RigProblem Problem, Rig Rig, ValueList<WiredHop> Hops)
{
    /// <summary>What must be bought or made.</summary>
    public IEnumerable<WiredHop> Missing => Hops.Where(hop => hop.IsMissing);

    /// <summary>The leads in use with how many of each, in the problem's order.</summary>
    public IEnumerable<(Lead Lead, int Count)> Used => Hops.Select(hop => hop.Lead).OfType<Lead>().CountBy(lead => lead).Select(pair => (pair.Key, pair.Value));

    public static LeadPlan Of(RigProblem problem, Rig rig)
    {
        var routes = new LeadRoutes(problem, rig);
        var hops = Wiring.Hops.Of(problem, rig).Select(hop => (hop, route: routes.Of(hop))).Select(h => new WiredHop(h.hop, h.route, NeededFor(h.hop, h.route, problem.Options.Wiring), null)).ToList();
        var asking = hops.Where(hop => hop.Hop.NeedsOwnedLead).ToList();
        var room = new PlugRoom(problem, rig);
        var given = asking.Zip(LeadMatching.Of(asking, problem.Leads, room)).ToDictionary(pair => pair.First.Hop, pair => pair.Second);
        return new(problem, rig, hops.Select(Given).ToValueList());

        WiredHop Given(WiredHop hop) => given.GetValueOrDefault(hop.Hop) is { } lead ? hop with { Lead = lead } : hop with { WithoutRoom = LeadMatching.WithoutRoom(hop, problem.Leads, room) };
    }

    private static Millimetres NeededFor(Hop hop, LeadRoute? route, WiringAllowances wiring) => (hop.Kind, route) switch
    {
        (_, { } way) => way.Length + wiring.Bend + wiring.Bend + wiring.Slack,
        (HopKind.Instrument, _) => wiring.ToBoard,
        (HopKind.ToAmp or HopKind.Loop, _) => wiring.ToAmp,
        _ => Millimetres.Zero,
    };
}
