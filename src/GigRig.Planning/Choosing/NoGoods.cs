using GigRig.Planning.Fitting;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Turns one set that failed into a clause against every set that must fail for the same reason. A set fails again when its things can be matched one to one
/// with things at least as big (or as hungry); by Hall's theorem that is so exactly when, for every group of the failed things, enough such things are taken.
/// </summary>
internal sealed class NoGoods(ChoiceVariables variables)
{
    /// <summary>Beyond so many kinds the groups are too many to look at; then only things of equal kind are lifted.</summary>
    private const int MostKinds = 10;

    private readonly ShapeOrder order = new(variables.Question.Surface);

    private Candidate[] Candidates => variables.Question.Candidates;

    public void ForbidMisfit(IReadOnlyList<int> devices) =>
        Forbid(devices, c => c.Shape.Key, (big, small) => order.IsAtLeastAsBig(big.Shape, small.Shape));

    /// <param name="excess">By how many millimetres the row of these is too long: what may be lost, in all, by taking other things in their place.</param>
    public void ForbidRow(IReadOnlyList<int> devices, Rows rows, int excess)
    {
        rows.Know(Candidates.Select(c => c.Shape));
        var allowed = (excess - 1) / Math.Max(1, devices.Count);
        Forbid(devices, c => c.Shape.Key, (big, small) => big.Shape.Key == small.Shape.Key || rows.Loss(big.Shape, small.Shape) <= allowed);
    }

    public void ForbidStarved(IReadOnlyList<int> devices) =>
        Forbid(devices, c => $"{c.Consumer?.Draw} {c.Consumer?.Key}", (big, small) => big.Consumer is { } hungry && hungry.IsAtLeastAsHungryAs(small.Consumer!));

    /// <summary>This very set of devices and no other.</summary>
    public void ForbidOnly(IReadOnlyList<int> devices)
    {
        var taken = devices.ToHashSet();
        variables.Model.AddBoolOr(variables.Devices.Select((y, i) => taken.Contains(i) ? y.Not() : y));
    }

    /// <summary>Everything of this choice together, whatever else is taken.</summary>
    public void ForbidAllOf(Choice choice) => variables.Model.AddBoolOr(
        [.. choice.Devices.Select(i => variables.Devices[i].Not()), .. choice.OffBoard.Select(i => variables.OffBoard[i].Not()), variables.Always.Not()]);

    private void Forbid(IReadOnlyList<int> devices, Func<Candidate, string> kindOf, Func<Candidate, Candidate, bool> isAtLeast)
    {
        if (devices.Count == 0)
        {
            // Not even the empty set: the supply on top finds no place.
            variables.Model.AddBoolOr([variables.Always.Not()]);
            return;
        }

        // With hundreds of candidates this takes a while. Once the clock is up nothing more is asked, and the clause is not needed.
        var failed = devices.Select(i => Candidates[i]).GroupBy(kindOf).ToArray();
        var lift = failed.Length <= MostKinds;
        Kind[] kinds = [.. failed.Select(kind => new Kind(kind.Count(), Members(kind.Key, kind.First())))];
        var conditions = Conditions(kinds).ToArray();
        if (variables.Clock.IsUp)
            return;
        variables.Model.AddBoolOr(conditions.Select(c => variables.TakesAtLeast(c.Members, c.Least).Not()));
        AddSum(devices, kinds);

        int[] Members(string kind, Candidate one) => [.. Candidates.TakeWhile(_ => !variables.Clock.IsUp).Where(c => lift ? isAtLeast(c, one) : kindOf(c) == kind).Select(c => c.Index)];
    }

    /// <summary>The same, weaker, as a sum for the linear relaxation: the failed things and whatever is at least as big as every one of them.</summary>
    private void AddSum(IReadOnlyList<int> devices, Kind[] kinds)
    {
        var atLeastAll = kinds.Select(k => k.Members).Aggregate((a, b) => [.. a.Intersect(b)]);
        variables.Model.Add(LinearExpr.Sum(devices.Union(atLeastAll).Select(i => variables.Devices[i])) <= devices.Count - 1);
    }

    /// <summary>For every group of kinds: at least as many of their members as there are failed things of them. What follows from another condition is left out. Not all of them once the clock is up.</summary>
    private IEnumerable<(int[] Members, int Least)> Conditions(Kind[] kinds)
    {
        if (kinds.Length > MostKinds)
            return kinds.Select(k => (k.Members, k.Count));
        var strongest = new Dictionary<string, (int[] Members, int Least)>();
        for (var subset = 1; subset < 1 << kinds.Length && !variables.Clock.IsUp; subset++)
        {
            var group = kinds.Where((_, k) => (subset >> k & 1) == 1).ToArray();
            int[] members = [.. group.SelectMany(k => k.Members).Distinct().Order()];
            var least = group.Sum(k => k.Count);
            var key = string.Join(',', members);
            if (!strongest.TryGetValue(key, out var known) || known.Least < least)
                strongest[key] = (members, least);
        }

        var needed = new List<(HashSet<int> Members, int Least)>();
        foreach (var (members, least) in strongest.Values.OrderBy(c => c.Members.Length).TakeWhile(_ => !variables.Clock.IsUp))
        {
            if (!needed.Any(n => n.Least >= least && n.Members.IsSubsetOf(members)))
                needed.Add((members.ToHashSet(), least));
        }

        return needed.Select(n => (n.Members.Order().ToArray(), n.Least));
    }

    private sealed record Kind(int Count, int[] Members);
}
