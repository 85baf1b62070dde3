using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Planning.Choosing;

namespace GigRig.Planning;

/// <summary>What a search has come to so far: the best rig, and what it had to set aside.</summary>
internal sealed class Findings(Question question)
{
    public Proposal? Best { get; private set; }

    public Choice? BestChoice { get; private set; }

    /// <summary>The most that sets of unknown standing could cover; they were set aside, not ruled out. Less than 0: there are none.</summary>
    public long OpenWants { get; private set; } = question.ListsEveryFeed ? -1 : question.AllWants;

    public bool LeavesNothingOpen => OpenWants < 0;

    /// <summary>Proposed already: whatever is looked for now leaves something of each at home. Otherwise the same with something useless beside would come next.</summary>
    public List<Choice> Answered { get; } = [];

    /// <summary>What no rig is better than, leaving out where things stand, as was proved before; null where nothing is known.</summary>
    public Score? KnownBest { get; set; }

    public bool IsKnownBest => KnownBest is { } known && Best?.Score.CompareChoice(known) >= 0;

    /// <summary>Called with each better rig.</summary>
    public Action<Proposal>? Found { get; init; }

    /// <summary>A rig that is known already.</summary>
    public void Begin(Proposal proposal, Choice choice) => (Best, BestChoice) = (proposal, choice);

    public void Accept(Proposal proposal, Choice choice)
    {
        if (Best is not null && proposal.Score.CompareChoice(Best.Score) <= 0)
            return;
        Begin(proposal, choice);
        Found?.Invoke(proposal);
    }

    public bool IsAnswered(Choice choice) => Answered.Any(choice.Holds);

    public void SetAside(long wants) => OpenWants = Math.Max(OpenWants, wants);
}
