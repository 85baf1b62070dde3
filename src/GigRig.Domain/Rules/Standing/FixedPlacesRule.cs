using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class FixedPlacesRule : IRule
{
    public string Id => RuleIds.FixedPlaces;

    public string Sentence => "Everything that is fixed stands exactly there.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var place in problem.Options.Fixed)
        {
            var stands = rig.Placements.Append(rig.Supply).OfType<Placement>().Where(placement => placement.Id == place.Id).ToList();
            if (stands.Count == 0)
                yield return new(Id, [place.Id], "", $"{problem.NameOf(place.Id)} is fixed at {place.Said} but does not come along.");
            else if (!stands.Contains(place))
                yield return new(Id, [place.Id], Off(stands[0], place), $"{problem.NameOf(place.Id)} is fixed at {place.Said} but stands at {stands[0].Said}.");
        }
    }

    private static string Off(Placement stands, Placement place) =>
        $"{Math.Abs(stands.At.X.Value - place.At.X.Value) + Math.Abs(stands.At.Y.Value - place.At.Y.Value)} mm";
}
