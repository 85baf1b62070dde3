using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;

namespace GigRig.Web.Tests.Features.Workbench;

/// <summary>Rigs on the bench, and short ways to ask about them.</summary>
internal static class Benches
{
    public static readonly GearId Tuner = new("tuner");
    public static readonly GearId Echo = new("echo");
    public static readonly GearId Hall = new("hall");
    public static readonly GearId Fuzz = new("fuzz");

    /// <summary>A tuner and an echo on a small board; a hall and a fuzz on the shelf, a clip beside it. Three outlets.</summary>
    public static RigProblemDraft Draft { get; } = A.Draft(A.Board(460, 140))
        .With(
            A.Device("tuner").Sized(45, 100).Doing("tuner").Drawing(30),
            A.Device("echo").Sized(70, 120).Doing("delay").Drawing(50).Turning(Turn.None, Turn.Quarter),
            A.Device("hall").Sized(95, 120).Doing("reverb").Drawing(60),
            A.Device("fuzz").Sized(60, 110).Doing("drive.fuzz").Drawing(5))
        .With(A.OffBoard("clip").Doing("tuner"))
        .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"))
        .Needing("tuner");

    public static Rig Laid { get; } = A.Rig().Placing("tuner", 10, 0).Placing("echo", 100, 0).Feeding("tuner", "1").Feeding("echo", "2");

    public static BoardEditor Editor(RigProblem? problem = null, Rig? rig = null, SolveHookUp? solve = null) =>
        new(problem ?? Draft.Problem(), BoardEdit.Of(rig ?? Laid), solve ?? Unsolved);

    public static ValueList<Feed>? Unsolved(RigProblem problem, ValueList<GearId> devices, ValueList<Feed> before) => null;

    /// <summary>Front-left corner in millimetres.</summary>
    public static (int X, int Y) At(this BoardEditor editor, GearId id) => editor.Edit.PlacementOf(id) is { At: var at } ? (at.X.Value, at.Y.Value) : throw new InvalidOperationException($"{id} does not stand.");

    public static string? OutletOf(this BoardEditor editor, GearId id) => editor.Rig.HookUp.SingleOrDefault(feed => feed.Device == id)?.Outlets.Single();
}
