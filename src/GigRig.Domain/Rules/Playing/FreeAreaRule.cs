using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Playing;

internal sealed class FreeAreaRule : IRule
{
    public string Id => RuleIds.FreeArea;

    public string Sentence => "As much of the board stays empty as the event asks.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Event.Limits.FreeArea is not { } free)
            yield break;
        var covered = StandingThing.On(problem, rig).Sum(thing => AreaOf(thing.Body));
        var whole = AreaOf(problem.Board.Surface);
        // Hundredths of the whole, so that nothing is rounded before it is judged.
        var excess = covered * 100 - whole * (100 - free);
        if (excess > 0)
            yield return new(Id, [], $"{(excess + 99) / 100} mm²", $"The bodies cover {new SquareMillimetres(covered):bare} of {new SquareMillimetres(whole)}; {problem.Event.Name} keeps {free} % of the board free.");
    }

    private static long AreaOf(Rect rect) => (long)rect.Width.Value * rect.Depth.Value;
}
