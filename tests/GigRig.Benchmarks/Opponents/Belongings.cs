using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>A thing that may come along, with the literal that says whether it does.</summary>
internal sealed record Belonging<T>(T Thing, BoolVar Taken);

/// <summary>What may come along at all: banned things and things too tall for the lid are left out.</summary>
internal sealed class Belongings
{
    public Belongings(RigProblem problem)
    {
        Problem = problem;
        var banned = problem.Options.Ban.ToHashSet();
        Devices =
        [
            .. problem.Devices
                .Where(d => !banned.Contains(d.Id) && !(d.Size.Height > problem.Board.ClearanceOver))
                .Select(d => new Belonging<Device>(d, Model.NewBoolVar(d.Id.Value))),
        ];
        OffBoard = [.. problem.OffBoard.Where(i => !banned.Contains(i.Id)).Select(i => new Belonging<OffBoardItem>(i, Model.NewBoolVar(i.Id.Value)))];
        Always = Model.NewBoolVar("always");
        Model.Add(Always == 1);
    }

    public CpModel Model { get; } = new();

    public RigProblem Problem { get; }

    public Belonging<Device>[] Devices { get; }

    public Belonging<OffBoardItem>[] OffBoard { get; }

    /// <summary>True.</summary>
    public BoolVar Always { get; }

    /// <summary>Whatever can cover a role, with the literal that says whether it comes along.</summary>
    public IEnumerable<(GearId Thing, RoleFunction Function, BoolVar Taken)> Functions =>
    [
        .. Devices.SelectMany(d => d.Thing.Functions, (d, f) => (d.Thing.Id, f, d.Taken)),
        .. (Problem.Amp?.Functions ?? []).Select(f => (Problem.Amp!.Id, f, Always)),
        .. OffBoard.SelectMany(i => i.Thing.Functions, (i, f) => (i.Thing.Id, f, i.Taken)),
    ];

    /// <summary>Makes the whole question unanswerable.</summary>
    public void Refuse() => Model.Add(Always == 0);
}
