using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class TotalCurrentRule : IRule
{
    public string Id => RuleIds.TotalCurrent;

    public string Sentence => "All outlets together give no more than the supply can.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Supply is not { TotalCurrent: { } most } supply)
            yield break;
        // In series the same current flows through both outlets; in parallel they split it.
        var load = Connection.In(problem, rig).Aggregate(
            Milliamps.Zero,
            (sum, connection) => sum + connection.Draw + (connection.Feed.Join == OutletJoin.Series ? connection.Draw : Milliamps.Zero));
        if (load > most)
            yield return new(Id, [supply.Id], $"{load - most}", $"The outlets in use give {load}; {supply.Name} gives {most} in all.");
    }
}
