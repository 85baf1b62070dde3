using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests;

public sealed class ProvenBestTests
{
    private static readonly RigProblemDraft Night = A.Draft().With(A.Device("echo").Doing("delay"), A.Device("fuzz").Doing("drive")).Wanting("delay").Wanting("drive");

    private static Score Worth(long wants) => new() { Wants = wants };

    [Fact]
    public void It_bounds_the_same_with_more_pinned_banned_or_fixed()
    {
        var known = new ProvenBest();
        known.Add(Night.Pinning("echo").Problem(), Worth(20));

        Assert.Equal(20, known.BoundOn(Night.Pinning("echo").Problem())?.Wants);
        Assert.Equal(20, known.BoundOn(Night.Pinning("echo", "fuzz").Problem())?.Wants);
        Assert.Equal(20, known.BoundOn(Night.Pinning("echo").Banning("fuzz").Problem())?.Wants);
    }

    [Fact]
    public void It_says_nothing_of_a_question_that_demands_less_or_asks_something_else()
    {
        var known = new ProvenBest();
        known.Add(Night.Pinning("echo").Problem(), Worth(20));

        Assert.Null(known.BoundOn(Night.Problem()));
        Assert.Null(known.BoundOn(Night.Pinning("fuzz").Problem()));
        Assert.Null(known.BoundOn(Night.Pinning("echo").Wanting("reverb").Problem()));
        Assert.Null(known.BoundOn(Night.Pinning("echo").With(A.Device("hall")).Problem()));
        Assert.Null(known.BoundOn((Night.Pinning("echo") with { Board = Night.Board with { Width = Night.Board.Width + 1.Mm } }).Problem()));
        Assert.Null(known.BoundOn(Night.Pinning("echo").WithHeadroom(0.1m).Problem()));
    }

    [Fact]
    public void Of_several_the_least_counts()
    {
        var known = new ProvenBest();
        known.Add(Night.Pinning("echo").Problem(), Worth(10));
        known.Add(Night.Problem(), Worth(20));

        Assert.Equal(10, known.BoundOn(Night.Pinning("echo").Problem())?.Wants);
        Assert.Equal(20, known.BoundOn(Night.Problem())?.Wants);
    }

    [Fact]
    public void It_forgets_the_oldest()
    {
        var known = new ProvenBest();
        known.Add(Night.Pinning("echo").Problem(), Worth(10));
        for (var i = 0; i < ProvenBest.Most; i++)
            known.Add(Night.Banning("echo").Problem(), Worth(20));

        Assert.Equal((ProvenBest.Most, null), (known.Count, known.BoundOn(Night.Pinning("echo").Problem())));
    }
}
