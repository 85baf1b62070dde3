using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Wiring;

/// <summary>What holds for the wiring of any rig, whether it keeps the rules or not.</summary>
public sealed class WiringPropertiesTests
{
    private static readonly Gen<(RigProblem Problem, Rig Rig)> Wired =
        from problem in GenProblem.Small
        from wiring in Gen.Int[0, 40].Array[5]
        let asked = problem.Draft with { Options = problem.Options with { Wiring = new(wiring[0].Mm, wiring[1].Mm, wiring[2].Mm, wiring[3].Mm, wiring[4].Mm) } }
        let known = ((ProblemCheck.Accepted)RigProblem.Create(asked)).Problem
        from rig in GenRig.For(known)
        select (known, rig);

    [Fact]
    public void Each_hop_has_one_lead_of_its_kind_that_reaches_or_is_missing_and_no_lead_is_used_more_often_than_owned() => Wired.Sample(wired =>
    {
        var plan = LeadPlan.Of(wired.Problem, wired.Rig);

        Assert.Equal(Hops.Of(wired.Problem, wired.Rig), plan.Hops.Select(hop => hop.Hop));
        Assert.All(plan.Hops, hop => Assert.True(hop.Lead is { } lead ? lead.Length >= hop.Needed && hop.Hop.Served.Contains(lead.Kind) : hop.IsMissing == hop.Hop.NeedsOwnedLead));
        Assert.All(plan.Used, used => Assert.InRange(used.Count, 1, used.Lead.Count));
    });

    [Fact]
    public void No_other_way_to_give_out_the_leads_serves_more_hops_or_as_many_with_less_to_spare() => Wired.Sample(wired =>
    {
        var plan = LeadPlan.Of(wired.Problem, wired.Rig);
        var hops = plan.Hops.Where(hop => hop.Hop.NeedsOwnedLead).ToList();
        var room = new PlugRoom(wired.Problem, wired.Rig);
        var spare = hops.Where(hop => hop.Lead is not null).Sum(hop => hop.Lead!.Length.Value - hop.Needed.Value);

        Assert.Equal(Best(0, wired.Problem.Leads.ToDictionary(lead => lead, lead => lead.Count)), (hops.Count(hop => hop.Lead is null), spare));

        (int Unserved, int Spare) Best(int at, Dictionary<Lead, int> left)
        {
            if (at == hops.Count)
                return (0, 0);
            var none = Best(at + 1, left);
            var best = (none.Unserved + 1, none.Spare);
            foreach (var lead in left.Where(pair => pair.Value > 0 && CanServe(pair.Key, hops[at])).Select(pair => pair.Key))
            {
                var rest = Best(at + 1, new(left) { [lead] = left[lead] - 1 });
                var with = (rest.Unserved, rest.Spare + lead.Length.Value - hops[at].Needed.Value);
                best = with.CompareTo(best) < 0 ? with : best;
            }

            return best;
        }

        bool CanServe(Lead lead, WiredHop hop)
        {
            var stays = hop.Hop.Kind == HopKind.Patch;
            return hop.Hop.Served.Contains(lead.Kind) && lead.Length >= hop.Needed
                && new[] { (lead.FirstPlug, lead.SecondPlug), (lead.SecondPlug, lead.FirstPlug) }.Any(way => room.Fits(way.Item1, hop.Hop.From, stays) && room.Fits(way.Item2, hop.Hop.To, stays));
        }
    }, iter: 300);

    [Fact]
    public void The_signal_enters_and_leaves_every_device_of_the_chain_and_no_jack_has_two_leads() => Wired.Sample(wired =>
    {
        var hops = Hops.Of(wired.Problem, wired.Rig);
        var stops = SignalPath.Of(wired.Problem, wired.Rig).Stops.Select(stop => stop.Id).ToList();

        Assert.Equal(stops.Count, stops.Distinct().Count());
        Assert.All(stops, id => Assert.Contains(hops, hop => hop.To.Id == id && hop.To.Jack == JackUse.In));
        Assert.All(stops, id => Assert.Contains(hops, hop => hop.From.Id == id && hop.From.Jack == JackUse.Out));
        Assert.Equal(hops.Count, hops.Select(hop => hop.From).Distinct().Count());
        Assert.Equal(hops.Count, hops.Select(hop => hop.To).Distinct().Count());
    });

    [Fact]
    public void What_is_in_the_loop_lies_between_send_and_return_and_the_rest_does_not() => Wired.Sample(wired =>
    {
        var (problem, path) = (wired.Problem, SignalPath.Of(wired.Problem, wired.Rig));
        var next = Hops.Of(problem, wired.Rig).Where(hop => hop.From.Number == 0 && hop.Kind is not (HopKind.DeskLine or HopKind.Footswitch)).ToDictionary(hop => (hop.From.Id, hop.From.Jack), hop => hop.To);
        var passed = problem.Amp is { } amp && next.TryGetValue((amp.Id, JackUse.Send), out var first) ? Follow(first).ToList() : [];

        Assert.Equal(path.Loop.Select(stop => stop.Id), passed.Where(id => id != path.Straddler?.Id));

        IEnumerable<GearId> Follow(HopEnd at)
        {
            while (at.Thing == HopThing.Device)
            {
                yield return at.Id!.Value;
                at = next[(at.Id, JackUse.Out)];
            }

            Assert.Equal((HopThing.Amp, JackUse.Return), (at.Thing, at.Jack));
        }
    });

    [Fact]
    public void A_route_begins_and_ends_at_its_plugs_and_is_never_shorter_than_straight() => Wired.Sample(wired =>
    {
        foreach (var hop in LeadPlan.Of(wired.Problem, wired.Rig).Hops.Where(hop => hop.Hop.Kind == HopKind.Patch))
        {
            var corners = hop.Route!.Corners;
            Assert.True(hop.Route.Length.Value >= LeadRoute.Distance(corners[0], corners[^1]));
            Assert.All(corners.Zip(corners.Skip(1)), pair => Assert.True(pair.First.X == pair.Second.X || pair.First.Y == pair.Second.Y));
        }
    });

    [Fact]
    public void Advice_names_things_of_the_rig_in_a_whole_sentence() => Wired.Sample(wired =>
        Assert.All(ChainAdvice.Of(wired.Problem, wired.Rig), heard =>
        {
            Assert.All(heard.Advice.Culprits, id => Assert.True(wired.Rig.Holds(id) || id == wired.Problem.Amp?.Id));
            Assert.EndsWith(".", heard.Advice.Sentence);
        }));
}
