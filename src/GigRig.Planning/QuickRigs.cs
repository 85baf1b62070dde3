using GigRig.Domain.Rigs;
using GigRig.Planning.Choosing;

namespace GigRig.Planning;

/// <summary>Rigs to begin with, each in milliseconds: those known from earlier questions, then a first one of this.</summary>
internal sealed class QuickRigs(Question question, RigBuilder builder, PlannerOptions options, Clock clock)
{
    public IEnumerable<(Proposal Proposal, Choice Choice)> All()
    {
        foreach (var known in new KnownRigs(question, builder, clock).In(options.Memory))
            yield return known;
        foreach (var (choice, standings, feeds) in new FirstRig(question, options, clock).Find())
        {
            if (builder.TryBuild(choice, standings, feeds) is { } proposal)
                yield return (proposal, choice);
        }
    }
}
