using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>The model of a choice and the literals everything in it speaks of.</summary>
internal sealed class ChoiceVariables
{
    private readonly Dictionary<(string Members, int Least), BoolVar> counts = [];

    public ChoiceVariables(Question question, Clock clock)
    {
        Question = question;
        Clock = clock;
        Model = new CpModel();
        Devices = [.. question.Candidates.Select(c => Model.NewBoolVar($"takes {c.Id}"))];
        OffBoard = [.. question.OffBoard.Select(i => Model.NewBoolVar($"takes {i.Id}"))];
        Always = Model.TrueLiteral();
    }

    public Question Question { get; }

    /// <summary>Once it is up, what only makes the search faster need not be worked out.</summary>
    public Clock Clock { get; }

    public CpModel Model { get; }

    public BoolVar[] Devices { get; }

    public BoolVar[] OffBoard { get; }

    public ILiteral Always { get; }

    public ILiteral Takes(Performer performer) => performer.Kind switch
    {
        PerformerKind.Device => Devices[performer.Index],
        PerformerKind.OffBoard => OffBoard[performer.Index],
        _ => Always,
    };

    /// <summary>A literal that must hold when at least <paramref name="least"/> of these devices are taken.</summary>
    public BoolVar TakesAtLeast(IReadOnlyList<int> devices, int least)
    {
        var key = (string.Join(',', devices), least);
        if (counts.TryGetValue(key, out var known))
            return known;
        var literal = Model.NewBoolVar($"at least {least} of {key.Item1}");
        Model.Add(LinearExpr.Sum(devices.Select(i => Devices[i])) <= least - 1).OnlyEnforceIf(literal.Not());
        return counts[key] = literal;
    }
}
