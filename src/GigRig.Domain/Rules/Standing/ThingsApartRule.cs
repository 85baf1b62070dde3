using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class ThingsApartRule : IRule
{
    public string Id => RuleIds.ThingsApart;

    public string Sentence => "Bodies and plugs of different things may touch but never overlap.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var things = StandingThing.On(problem, rig);
        for (var i = 0; i < things.Count; i++)
            for (var j = i + 1; j < things.Count; j++)
                if (Clash.Between(things[i], things[j]) is { } clash)
                    yield return new(Id, [things[i].Id, things[j].Id], $"{clash.By}", $"{clash.Of(things[i].Name, things[j].Name)} overlap by {clash.By}; move one of them.");
    }
}
