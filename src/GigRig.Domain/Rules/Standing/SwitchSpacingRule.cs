using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

internal sealed class SwitchSpacingRule : IRule
{
    public string Id => RuleIds.SwitchSpacing;

    public string Sentence => "Foot switches of different devices are far enough apart to be hit one at a time.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var least = problem.Options.SwitchSpacing;
        var things = StandingThing.On(problem, rig);
        for (var i = 0; i < things.Count; i++)
            for (var j = i + 1; j < things.Count; j++)
                if (Apart(things[i], things[j]) is { } apart && apart < least)
                    yield return new(Id, [things[i].Id, things[j].Id], $"{least - apart}", $"Switches of {things[i].Name} and {things[j].Name} are {apart} apart; {least} are asked for.");
    }

    /// <summary>Between the nearest two switch centres, rounded down; null where one of them has none. Rounding down never turns enough into too little, as the limit is a whole number.</summary>
    private static Millimetres? Apart(StandingThing a, StandingThing b)
    {
        var squares = (from p in a.Switches from q in b.Switches select Square(p.X - q.X) + Square(p.Y - q.Y)).ToList();
        return squares.Count == 0 ? null : ((int)Math.Sqrt(squares.Min())).Mm;
    }

    private static long Square(Millimetres length) => (long)length.Value * length.Value;
}
