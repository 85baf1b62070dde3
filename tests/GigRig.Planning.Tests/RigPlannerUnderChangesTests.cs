using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests;

/// <summary>What must not matter does not, and what eases a problem never makes its answer worse.</summary>
public sealed class RigPlannerUnderChangesTests
{
    private const int Problems = 80;

    [Fact]
    public Task The_order_of_lists_does_not_matter() =>
        Gen.Select(GenContest.Mixed, Gen.Int[0, 1000]).SampleAsync((draft, seed) => SameAsync(draft, draft.Shuffled(seed)), iter: Problems);

    [Fact]
    public Task Left_and_right_do_not_matter() =>
        GenContest.Mixed.SampleAsync(
            draft =>
            {
                var even = WithEvenPlugs(draft);
                return SameAsync(even, even.Mirrored());
            },
            iter: Problems);

    [Fact]
    public Task The_scale_does_not_matter_on_a_plain_surface() =>
        GenContest.Mixed.SampleAsync(
            draft =>
            {
                var even = WithEvenPlugs(draft);
                var plain = even with { Board = draft.Board with { Rails = [] }, Options = even.Options with { SwitchSpacing = Millimetres.Zero } };
                return SameAsync(plain, plain.Doubled());
            },
            iter: Problems);

    [Fact]
    public Task A_finer_scale_never_makes_it_worse() =>
        GenProblem.SmallDraft.SampleAsync(draft => NeverWorseAsync(WithEvenPlugs(draft), WithEvenPlugs(draft).Doubled()), iter: Problems);

    [Fact]
    public Task A_device_that_can_never_be_used_does_not_matter() =>
        GenContest.Mixed.SampleAsync(
            draft =>
            {
                var everything = A.Device("vast") with { Functions = draft.Event.Needs.Select(need => new RoleFunction(need.Role, 5)).ToValueList() };
                var vast = everything.Sized(draft.Board.Width.Value + 1, draft.Board.Width.Value + 1, 1).Weighing(0);
                var thirsty = (everything with { Id = new("thirsty") }).Sized(1, 1, 1).Weighing(0).Drawing(1).AtVolts(60, 60);
                return SameAsync(draft, draft.With(vast, thirsty));
            },
            iter: Problems);

    [Fact]
    public Task A_wider_board_never_makes_it_worse() =>
        GenContest.Mixed.SampleAsync(draft => NeverWorseAsync(draft, draft with { Board = draft.Board with { Width = draft.Board.Width + 2.Mm } }), iter: Problems);

    [Fact]
    public Task Stronger_outlets_never_make_it_worse() =>
        GenContest.Hungry.SampleAsync(draft => NeverWorseAsync(draft, Fed(draft, s => s with { Outlets = s.Outlets.Select(o => o with { Current = o.Current + 50.MilliA }).ToValueList() })), iter: Problems);

    [Fact]
    public Task One_more_outlet_never_makes_it_worse() =>
        GenContest.Hungry.SampleAsync(draft => NeverWorseAsync(draft, Fed(draft, s => s with { Outlets = [.. s.Outlets, A.Outlet("one more")] })), iter: Problems);

    [Fact]
    public Task More_power_leads_never_make_it_worse() =>
        GenContest.Hungry.SampleAsync(draft => NeverWorseAsync(draft, draft with { Adapters = new(draft.Adapters.Reverse + 1, draft.Adapters.Parallel + 1, draft.Adapters.Series + 1, draft.Adapters.Splitter + 1) }), iter: Problems);

    [Fact]
    public Task One_more_device_never_makes_it_worse() =>
        Gen.Select(GenContest.Mixed, GenGear.Device(99)).SampleAsync((draft, device) => NeverWorseAsync(draft, draft.With(device with { Id = new("one more") })), iter: Problems);

    /// <summary>A plug of odd width is half a millimetre off its jack, always to the same side.</summary>
    private static RigProblemDraft WithEvenPlugs(RigProblemDraft draft)
    {
        var (audio, power) = (draft.Options.Plugs.Audio, draft.Options.Plugs.Power);
        return draft with { Options = draft.Options with { Plugs = new(audio with { Width = (audio.Width.Value / 2 * 2).Mm }, power with { Width = (power.Width.Value / 2 * 2).Mm }) } };
    }

    [Fact]
    public Task None_of_it_matters_at_life_size_either() =>
        Gen.Select(GenLifelike.Night, Gen.Int[0, 1000]).SampleAsync(
            async (draft, seed) =>
            {
                var asked = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(draft));
                foreach (var same in new[] { draft.Shuffled(seed), draft.Mirrored(), draft.Doubled() })
                    AssertAgree(asked, Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(same)));
            },
            iter: Problems / 4);

    /// <summary>What is proved is equal; what is not keeps within what the other proved.</summary>
    private static void AssertAgree(PlanOutcome.Proposed one, PlanOutcome.Proposed other)
    {
        Assert.InRange(one.Best.Score.Wants, 0, other.Bound);
        Assert.InRange(other.Best.Score.Wants, 0, one.Bound);
        if (one.Proven)
            Assert.InRange(other.Best.Score.CompareChoice(one.Best.Score), -1, 0);
        if (other.Proven)
            Assert.InRange(one.Best.Score.CompareChoice(other.Best.Score), -1, 0);
    }

    private static RigProblemDraft Fed(RigProblemDraft draft, Func<Supply, Supply> change) => draft.Supply is { } supply ? draft with { Supply = change(supply) } : draft;

    private static async Task SameAsync(RigProblemDraft one, RigProblemDraft other) => Assert.Equal(0, await CompareAsync(one, other));

    private static async Task NeverWorseAsync(RigProblemDraft before, RigProblemDraft eased) => Assert.InRange(await CompareAsync(eased, before), 0, 1);

    /// <summary>Positive where the first is answered better: proposed rather than impossible, then by the first four tiers.</summary>
    private static async Task<int> CompareAsync(RigProblemDraft one, RigProblemDraft other) => (await Ask.Quietly(one), await Ask.Quietly(other)) switch
    {
        (PlanOutcome.Impossible, PlanOutcome.Impossible) => 0,
        (PlanOutcome.Proposed { Proven: true }, PlanOutcome.Impossible) => 1,
        (PlanOutcome.Impossible, PlanOutcome.Proposed { Proven: true }) => -1,
        (PlanOutcome.Proposed { Proven: true } a, PlanOutcome.Proposed { Proven: true } b) => Math.Sign(a.Best.Score.CompareChoice(b.Best.Score)),
        var undecided => throw new InvalidOperationException($"Not proved within the time limit: {undecided}"),
    };
}
