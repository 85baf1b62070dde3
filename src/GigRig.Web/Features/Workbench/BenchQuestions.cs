using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Workbench;

/// <summary>What the planner is asked from the bench. What is locked stays exactly where it stands.</summary>
internal static class BenchQuestions
{
    /// <summary>The same things, placed anew: whether they do the job is not asked, as the musician chose them.</summary>
    public static RigProblemDraft SameThings(RigProblem problem, BoardEdit edit)
    {
        var here = edit.Rig.Placements.Select(placement => placement.Id).Concat(edit.Rig.OffBoard).ToHashSet();
        var (along, home) = Sorted(problem, here);
        return Asking(problem, edit) with
        {
            Event = problem.Event with { Needs = [], Sounds = [], Limits = EventLimits.None },
            Options = Asking(problem, edit).Options with { Pin = along, Ban = home },
        };
    }

    /// <summary>The event's own question, with nothing given but what is locked.</summary>
    public static RigProblemDraft Anew(RigProblem problem, BoardEdit edit) => Asking(problem, edit);

    private static RigProblemDraft Asking(RigProblem problem, BoardEdit edit) => problem.Draft with
    {
        Options = problem.Options with { Arrange = true, Alternatives = 0, Fixed = edit.Locked.Select(edit.PlacementOf).OfType<Placement>().ToValueList() },
    };

    private static (ValueList<GearId> Along, ValueList<GearId> Home) Sorted(RigProblem problem, HashSet<GearId> here)
    {
        var all = problem.Devices.Select(device => device.Id).Concat(problem.OffBoard.Select(item => item.Id)).ToLookup(here.Contains);
        return (all[true].ToValueList(), all[false].ToValueList());
    }
}
