using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests.Arranging;

public sealed class ArrangerTests
{
    [Fact]
    public Task It_never_breaks_a_rule_never_takes_more_lead_and_leaves_the_choice_alone() =>
        Gen.OneOf(GenContest.Crowded, GenContest.InARow, GenContest.Larger).SampleAsync(async draft =>
        {
            if (await Ask.Quietly(Arranging(draft, false)) is not PlanOutcome.Proposed before)
                return;

            var after = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(Arranging(draft, true)));

            Assert.Equal(0, after.Best.Score.CompareChoice(before.Best.Score));
            Assert.InRange(after.Best.Score.Leads.Value, 0, before.Best.Score.Leads.Value);
            Assert.Empty(NaiveRigChecker.Faults(draft.Problem(), after.Best.Rig));
        }, iter: 80);

    [Fact]
    public async Task Boxes_in_a_row_stand_in_the_order_of_the_chain_so_that_leads_are_short()
    {
        // In on the right, out on the left: the chain runs from right to left, from plug tip to plug tip without a gap.
        var draft = A.Draft(A.Board(500, 100))
            .With(A.Device("hall").WithAudioJacks().Doing("reverb"), A.Device("fuzz").WithAudioJacks().Doing("drive"), A.Device("echo").WithAudioJacks().Doing("delay"))
            .Needing("drive", "delay", "reverb");

        var best = await Ask.Best(draft);

        Assert.Equal(["hall", "echo", "fuzz"], best.Rig.Placements.OrderBy(p => p.At.X).Select(p => p.Id.Value));
        Assert.Equal(0.Mm, best.Score.Leads);
    }

    [Fact]
    public async Task An_empty_board_is_left_as_it_is()
    {
        var best = await Ask.Best(A.Draft().With(A.Device("fuzz").Doing("drive.fuzz")).Wanting("delay"));

        Assert.Empty(best.Rig.Placements);
    }

    private static RigProblemDraft Arranging(RigProblemDraft draft, bool arrange) => draft with { Options = draft.Options with { Arrange = arrange } };
}
