using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Rigs;

/// <summary>
/// What became of the things of a rig since it was saved. A rig keeps copies of them, so that it can always be looked at; before it is built again somebody must say
/// that one of them is lent out, sold, or larger than was thought.
/// </summary>
/// <param name="Lacking">Things in use that are not at hand, a sentence each.</param>
/// <param name="Changed">Things in use whose facts are others now, by name.</param>
/// <param name="LeadsChanged">Whether the leads that are owned now would wire it otherwise.</param>
/// <param name="Today">The question with the facts as they are now; null where nothing that matters is another, or they make no question.</param>
/// <param name="Broken">Rules the rig would break with them.</param>
public sealed record GearSince(ValueList<string> Lacking, ValueList<string> Changed, bool LeadsChanged, RigProblem? Today, ValueList<Violation> Broken)
{
    public bool SaysSomething => Lacking.Count > 0 || Changed.Count > 0 || LeadsChanged;

    public static GearSince Of(LeadPlan plan, GearLibrary library)
    {
        var (problem, rig, now) = (plan.Problem, plan.Rig, new GearNow(library));
        var used = Used(problem, rig).Where(thing => GearNow.MayKnow(thing.Id)).ToList();
        var lacking = used.Select(thing => now.Lacking(thing.Id) is { Length: > 0 } why ? $"{thing.Name} {why}." : "").Where(sentence => sentence.Length > 0).ToValueList();
        var changed = used.Where(thing => now.Find(thing.Id) is { } other && !other.Equals(thing.Thing)).Select(thing => thing.Name).ToValueList();
        var today = RigProblem.Create(now.In(problem.Draft, rig)) is ProblemCheck.Accepted accepted ? accepted.Problem : null;
        var rewired = today is not null && problem.Leads.All(lead => GearNow.MayKnow(lead.Id)) && !LeadPlan.Of(today, rig).Hops.Select(hop => hop.Lead).SequenceEqual(plan.Hops.Select(hop => hop.Lead));
        return changed.Count > 0 || rewired
            ? new(lacking, changed, rewired, today, today is null ? [] : RuleBook.Check(today, rig))
            : new(lacking, changed, false, null, []);
    }

    private static IEnumerable<(GearId Id, string Name, object Thing)> Used(RigProblem problem, Rig rig)
    {
        yield return (problem.Board.Id, problem.Board.Name, problem.Board);
        if (problem.Supply is { } supply)
            yield return (supply.Id, supply.Name, supply);
        if (problem.Amp is { } amp)
            yield return (amp.Id, amp.Name, amp);
        if (problem.Instrument is { } instrument)
            yield return (instrument.Id, instrument.Name, instrument);
        foreach (var device in problem.DevicesOn(rig))
            yield return (device.Id, device.Name, device);
        foreach (var item in problem.OffBoardIn(rig))
            yield return (item.Id, item.Name, item);
    }
}
