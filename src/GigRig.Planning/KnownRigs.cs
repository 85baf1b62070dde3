using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.Planning.Choosing;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>Rigs from earlier questions, or what of them may still come along, where they answer this one as well: hooked up and chained anew.</summary>
internal sealed class KnownRigs(Question question, RigBuilder builder, Clock clock)
{
    /// <summary>States of power looked at for one rig.</summary>
    private const int MostStates = 2_000;

    public IEnumerable<(Proposal Proposal, Choice Choice)> In(PlanMemory? memory)
    {
        foreach (var rig in memory?.Rigs ?? [])
        {
            int[] devices = [.. rig.Placements.Select(p => Array.FindIndex(question.Candidates, c => c.Id == p.Id)).Where(i => i >= 0)];
            int[] offBoard = [.. rig.OffBoard.Select(id => Array.FindIndex(question.OffBoard, i => i.Id == id)).Where(i => i >= 0)];
            if (devices.Length + offBoard.Length == 0
                || question.Power.Feed([.. devices.Select(i => question.Candidates[i].Consumer).OfType<Consumer>()], clock, MostStates) is not PowerAnswer.Fed fed)
                continue;
            GearId[] ids = [.. devices.Select(i => question.Candidates[i].Id)];
            var here = rig with
            {
                Placements = rig.Placements.Where(p => ids.Contains(p.Id)).ToValueList(),
                OffBoard = offBoard.Select(i => question.OffBoard[i].Id).ToValueList(),
                HookUp = builder.Plugged(ids, fed.Feeds),
                Chain = ChainOrder.Order(question.Problem, ids),
                Silenced = [],
            };
            if (builder.TryJudge(here) is { } proposal)
                yield return (proposal, new(devices, offBoard));
        }
    }
}
