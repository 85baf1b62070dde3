using GigRig.Planning.Powering;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Power as counts: how many consumers of a kind go to how many outlets of a class. Alike outlets and alike consumers are never told apart.
/// Exact without splitters; with them a relaxation, which the power search makes good.
/// </summary>
internal static class PowerParts
{
    public static void Add(ChoiceVariables variables)
    {
        var question = variables.Question;
        var adapters = question.Problem.Adapters;
        var consumers = question.Candidates.Where(c => c.Consumer is not null).ToArray();
        if (consumers.Length == 0)
            return;
        var classes = question.Outlets;
        var uses = classes.Select(_ => new List<LinearExpr>()).ToArray();
        var loads = classes.Select(_ => new List<LinearExpr>()).ToArray();
        List<LinearExpr> reverse = [], parallel = [], series = [], shares = [], totals = [];
        foreach (var kind in consumers.GroupBy(c => adapters.Splitter > 0 ? $"{c.Consumer!.Draw} {c.Consumer.Key}" : c.Consumer!.Key))
        {
            var members = kind.ToArray();
            var (need, patterns) = (members[0].Consumer!.Need, members[0].Consumer!.Patterns);
            var least = members.Min(c => c.Consumer!.Draw);
            var fed = new List<LinearExpr>();
            foreach (var pattern in patterns)
            {
                var times = variables.Model.NewIntVar(0, members.Length, $"{kind.Key} by {pattern.Key}");
                fed.Add(times);
                foreach (var c in pattern.Classes.Distinct())
                    uses[c].Add(LinearExpr.Term(times, pattern.Uses(c)));
                if (pattern.Join == Domain.Rigs.OutletJoin.Single)
                    loads[pattern.Classes[0]].Add(LinearExpr.Term(times, least));
                reverse.Add(LinearExpr.Term(times, pattern.ReverseLeads));
                parallel.Add(LinearExpr.Term(times, pattern.ParallelLeads));
                series.Add(LinearExpr.Term(times, pattern.SeriesLeads));
                if (!need.Battery)
                    totals.Add(LinearExpr.Term(times, (long)least * (pattern.LoadTimes - 1)));
            }

            for (var c = 0; adapters.Splitter > 0 && c < classes.Length; c++)
            {
                if (!classes[c].Volts.Any(v => FeedPatterns.MayShare(need, classes[c], v)))
                    continue;
                var sharing = variables.Model.NewIntVar(0, members.Length, $"{kind.Key} sharing {c}");
                fed.Add(sharing);
                shares.Add(sharing);
                loads[c].Add(LinearExpr.Term(sharing, least));
            }

            if (need.Battery)
                fed.Add(variables.Model.NewIntVar(0, members.Length, $"{kind.Key} on battery"));
            else
                totals.AddRange(members.Select(m => LinearExpr.Term(variables.Devices[m.Index], m.Consumer!.Draw)));
            variables.Model.Add(LinearExpr.Sum(fed) == LinearExpr.Sum(members.Select(m => variables.Devices[m.Index])));
        }

        for (var c = 0; c < classes.Length; c++)
        {
            Cap(uses[c], classes[c].Count);
            Cap(loads[c], (long)classes[c].Count * classes[c].Current);
        }

        Cap(reverse, adapters.Reverse);
        Cap(parallel, adapters.Parallel);
        Cap(series, adapters.Series);
        Cap(shares, adapters.Splitter);
        if (question.Problem.Supply?.TotalCurrent is { } total)
            Cap(totals, total.Value);

        void Cap(List<LinearExpr> terms, long most)
        {
            if (terms.Count > 0)
                variables.Model.Add(LinearExpr.Sum(terms) <= most);
        }
    }
}
