using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

/// <summary>Asserts what <c>RigProblem.Create</c> complains about.</summary>
internal static class Complain
{
    /// <summary>A question that is fine, to be spoilt.</summary>
    public static RigProblemDraft Fine { get; } = A.Draft().FedBy(A.Outlet("1")).Through(A.Amp()).With(A.Device("echo") with { Name = "Echo" }).With(A.OffBoard("clip"));

    /// <summary>Exactly this complaint and no other.</summary>
    public static void About(RigProblemDraft draft, string path, string value, string limit, string message) =>
        Assert.Equal(new Complaint(path, value, limit, message), Assert.Single(All(draft)));

    public static void AboutBoard(Func<Board, Board> spoil, string path, string value, string limit, string message) =>
        About(Fine with { Board = spoil(Fine.Board) }, path, value, limit, message);

    public static void AboutSupply(Func<Supply, Supply> spoil, string path, string value, string limit, string message) =>
        About(Fine with { Supply = spoil(Fine.Supply!) }, path, value, limit, message);

    public static void AboutOutlet(Func<Outlet, Outlet> spoil, string path, string value, string limit, string message) =>
        AboutSupply(supply => supply with { Outlets = [spoil(supply.Outlets[0])] }, path, value, limit, message);

    public static void AboutDevice(Func<Device, Device> spoil, string path, string value, string limit, string message) =>
        About(Fine with { Devices = [spoil(Fine.Devices[0])] }, path, value, limit, message);

    public static void AboutOptions(Func<PlanOptions, PlanOptions> spoil, string path, string value, string limit, string message) =>
        About(Fine with { Options = spoil(Fine.Options) }, path, value, limit, message);

    public static void Nothing(RigProblemDraft draft) => Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(draft));

    public static ValueList<Complaint> All(RigProblemDraft draft) => Assert.IsType<ProblemCheck.Refused>(RigProblem.Create(draft)).Complaints;
}
