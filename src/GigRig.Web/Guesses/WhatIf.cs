using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Guessing;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Web.Guesses;

/// <summary>The same question with one guess turned out the other way, for seeing whether a rig would stand it.</summary>
internal static class WhatIf
{
    /// <summary>As large as boxes of its word get; null where no figure is known.</summary>
    public static Device? AtItsLargest(Device device) => EnclosureShape.All.FirstOrDefault(shape => shape.Size.Width == device.Size.Width && shape.Size.Depth == device.Size.Depth) is
        { WordWidth: { } width, WordDepth: { } depth }
        ? device with { Size = device.Size with { Width = width, Depth = depth } }
        : null;

    /// <summary>Every side plug at the rear, side by side.</summary>
    public static Device WithPlugsAtTheRear(Device device)
    {
        var sides = device.Jacks.Count(jack => jack.Side != Side.Top);
        var place = 0;
        return device with
        {
            Jacks = device.Jacks
                .Select(jack => jack.Side == Side.Top ? jack : jack with { Side = Side.Rear, At = Domain.Units.Millimetres.From(device.Size.Width.Value * (2 * place++ + 1) / (2 * sides)) })
                .ToValueList(),
        };
    }

    public static RigProblemDraft With(RigProblem problem, Device changed) =>
        problem.Draft with { Devices = problem.Devices.Select(device => device.Id == changed.Id ? changed : device).ToValueList() };

    public static RigProblemDraft WithoutOverhang(RigProblem problem) =>
        problem.Draft with { Board = problem.Board with { Overhang = new(default, default, default, default) } };

    /// <summary>All outlets on one return.</summary>
    public static RigProblemDraft WithOneReturn(RigProblem problem) => problem.Draft with
    {
        Supply = problem.Supply! with { Outlets = problem.Supply.Outlets.Select(outlet => outlet with { Group = "all" }).ToValueList() },
    };

    /// <summary>What the rig would break that it does not break now; null where the change can't be asked at all.</summary>
    public static ValueList<Violation>? Breaks(RigProblem problem, Rig rig, RigProblemDraft changed)
    {
        if (RigProblem.Create(changed) is not ProblemCheck.Accepted accepted)
            return null;
        var now = RuleBook.Check(problem, rig).ToHashSet();
        return RuleBook.Check(accepted.Problem, rig).Where(violation => !now.Contains(violation)).ToValueList();
    }
}
