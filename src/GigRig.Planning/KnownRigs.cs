using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.Planning.Choosing;

namespace GigRig.Planning;

/// <summary>Rigs from earlier questions that answer this one as well, chained anew.</summary>
internal sealed class KnownRigs(Question question, RigBuilder builder)
{
    public IEnumerable<(Proposal Proposal, Choice Choice)> In(PlanMemory? memory)
    {
        foreach (var rig in memory?.Rigs ?? [])
        {
            int[] devices = [.. rig.Placements.Select(p => Array.FindIndex(question.Candidates, c => c.Id == p.Id))];
            int[] offBoard = [.. rig.OffBoard.Select(id => Array.FindIndex(question.OffBoard, i => i.Id == id))];
            if (devices.Concat(offBoard).All(i => i >= 0) && builder.TryJudge(rig with { Chain = ChainOrder.Order(question.Problem, rig.Placements.Select(p => p.Id)), Silenced = [] }) is { } proposal)
                yield return (proposal, new(devices, offBoard));
        }
    }
}
