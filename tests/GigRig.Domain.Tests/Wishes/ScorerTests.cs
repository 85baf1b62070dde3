using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wishes;

public sealed class ScorerTests
{
    [Fact]
    public void Counts_each_tier()
    {
        var problem = A.Draft(A.Board().Weighing(2000))
            .FedBy(A.Supply(A.Outlet("1")).Weighing(800))
            .Through(A.Amp() with { Mass = 10_000.G })
            .With(A.Device("echo").Rated("delay", 4).Weighing(400), A.Device("hall").Rated("reverb", 2).Weighing(300), A.Device("spare").Weighing(9999))
            .With(A.OffBoard("clip").Doing("tuner"))
            .Needing("tuner").Wanting("delay", 7).Wanting("reverb", 5).Wanting("gate", 100)
            .Playing("must", "tuner").WantingSound("wash", 3, "delay", "reverb").WantingSound("never", 50, "gate")
            .Problem();
        var rig = A.Rig().Placing("echo", 0, 0).Placing("hall", 200, 0).Bringing("clip");

        Assert.Equal(new Score(7 + 5 + 3, 4 + 2 + 3, 2, (2000 + 800 + 10_000 + 400 + 300 + 50).G, 200.Mm, 0, 1), Scorer.Score(problem, rig));
    }

    [Fact]
    public void A_thing_named_twice_or_unknown_counts_once_or_not_at_all()
    {
        var problem = A.Draft(A.Board().Weighing(0)).With(A.Device("echo").Weighing(400)).Problem();
        var score = Scorer.Score(problem, A.Rig().Placing("echo", 0, 0).Placing("echo", 0, 0).Placing("ghost", 0, 0));
        Assert.Equal((1, 400.G), (score.Devices, score.Mass));
    }
}
