using GigRig.Data;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Tests.Hosting;

namespace GigRig.Web.Tests.Features.Rigs;

/// <summary>Rigs to put into a library.</summary>
internal static class SavedRigs
{
    private static readonly RigProblem Problem = A.Draft(A.Board(460, 140) with { Name = "Small board" })
        .With(A.Device("tuner").Sized(45, 101).Doing("tuner").Drawing(30) with { Name = "Pocket tuner" }, A.Device("echo").Doing("delay") with { Name = "Hall echo" })
        .FedBy(A.Outlet("1"))
        .Needing("tuner")
        .Problem();

    private static readonly Rig Clean = A.Rig().Placing("tuner", 300, 10).Feeding("tuner", "1");

    public static Task<Stored<SavedRig>> SaveAsync(this Library library, string name, string note = "") =>
        library.Rigs.AddAsync(name, note, Problem, Clean);

    /// <summary>The tuner hangs over the right edge.</summary>
    public static Task<Stored<SavedRig>> SaveBrokenAsync(this Library library, string name) =>
        library.Rigs.AddAsync(name, "", Problem, A.Rig().Placing("tuner", 440, 10).Feeding("tuner", "1"));
}
