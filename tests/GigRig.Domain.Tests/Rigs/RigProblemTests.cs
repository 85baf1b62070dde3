using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Rigs;

public sealed class RigProblemTests
{
    [Fact]
    public void Every_fault_is_named_at_once()
    {
        var draft = A.Draft(A.Board(0, 300)).With(A.Device("a").Weighing(-1)).Needing("A").Pinning("ghost");
        Assert.Equal(
            ["/board/width", "/devices/0/mass", "/event/needs/0/role", "/options/pin/0"],
            Assert.IsType<ProblemCheck.Refused>(RigProblem.Create(draft)).Complaints.Select(complaint => complaint.Path));
    }

    [Fact]
    public void No_draft_makes_it_throw_and_every_complaint_says_something() =>
        GenWild.Draft.Sample(draft => RigProblem.Create(draft) switch
        {
            ProblemCheck.Refused refused => refused.Complaints.All(complaint => complaint.Message.Length > 10 && complaint.Limit.Length > 0),
            _ => true,
        });

    [Fact]
    public void A_problem_keeps_its_draft() => GenProblem.SmallDraft.Sample(draft => draft.Problem().Draft == draft);

    [Fact]
    public void Things_are_found_and_named_by_id()
    {
        var problem = A.Draft().FedBy(A.Outlet("1")).With(A.Device("echo") with { Name = "Echo" }).With(A.OffBoard("clip")).Problem();
        Assert.Equal("Echo", problem.FindDevice(new("echo"))?.Name);
        Assert.Null(problem.FindDevice(new("clip")));
        Assert.Equal(new GearId("clip"), problem.FindOffBoard(new("clip"))?.Id);
        Assert.Equal(100.MilliA, problem.FindOutlet("1")?.Current);
        Assert.Equal(["Echo", "clip", "board", "supply", "ghost"], new[] { "echo", "clip", "board", "supply", "ghost" }.Select(id => problem.NameOf(new(id))));
    }
}
