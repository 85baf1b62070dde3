using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Planning.Fitting;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Fitting;

public sealed class FitterTests
{
    private const int Problems = 400;

    [Fact]
    public void A_set_fits_exactly_where_trying_every_place_finds_one() =>
        Gen.OneOf(GenContest.Crowded, GenContest.InARow, GenProblem.SmallDraft).Sample(draft =>
        {
            var problem = draft.Problem();
            var devices = problem.Devices.Take(4).ToList();

            var answer = Fit(problem, devices);

            Assert.IsNotType<FitAnswer.Open>(answer);
            Assert.Equal(new EveryStanding(WithoutSupplyAndLid(problem)).Find(devices.Select(d => d.Id)) is not null, answer is FitAnswer.Stands);
        }, iter: Problems);

    [Fact]
    public void What_it_calls_a_misfit_cannot_stand_and_unless_a_row_is_too_long_can_without_any_one() =>
        Gen.OneOf(GenContest.Crowded, GenContest.InARow).Sample(draft =>
        {
            var problem = WithoutSupplyAndLid(draft.Problem());
            if (Fit(problem, [.. problem.Devices]) is not FitAnswer.Misfit misfit)
                return;
            var every = new EveryStanding(problem);
            var ids = misfit.Items.Select(i => problem.Devices[i].Id).ToList();

            Assert.Null(every.Find(ids));

            // A set that its row is too long for is left as it is: that proof says more about other sets than a smaller set would.
            if (misfit.RowExcess is not null)
                return;
            Assert.All(ids, left => Assert.NotNull(every.Find(ids.Where(id => id != left))));
        }, iter: Problems);

    /// <summary>The lid is looked at before anything is placed, and a supply is one more shape.</summary>
    private static RigProblem WithoutSupplyAndLid(RigProblem problem) =>
        (problem.Draft with { Supply = null, Board = problem.Board with { ClearanceOver = null }, Options = problem.Options with { Fixed = [] } }).Problem();

    private static FitAnswer Fit(RigProblem problem, IReadOnlyList<Domain.Gear.Device> devices)
    {
        var fitter = new Fitter(new Surface(problem.Board, problem.Options.SwitchSpacing.Value), PlannerOptions.Default);
        return fitter.Fit([.. devices.Select(device => Shapes.Of(device, problem.Options.Plugs))], new Clock(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken));
    }
}
