using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>A set of things: candidates and off-board items by their positions in the question.</summary>
/// <param name="Standings">Where they stand, by their positions in <c>Question.ShapesOf</c>; null where the model did not place them.</param>
internal sealed record Choice(IReadOnlyList<int> Devices, IReadOnlyList<int> OffBoard, IReadOnlyList<Standing>? Standings = null)
{
    /// <summary>Whether everything of another is in it.</summary>
    public bool Holds(Choice other) => other.Devices.All(Devices.Contains) && other.OffBoard.All(OffBoard.Contains);
}

/// <summary>How a round of choosing ended.</summary>
internal abstract record ChoosingAnswer
{
    private ChoosingAnswer()
    {
    }

    /// <summary>The best set not yet known to be unbuildable.</summary>
    /// <param name="IsBest">Whether it is proved that no better set is left.</param>
    public sealed record Chosen(Choice Choice, bool IsBest) : ChoosingAnswer;

    /// <summary>Proved: nothing (better) is left to choose.</summary>
    public sealed record Exhausted : ChoosingAnswer;

    public sealed record OutOfTime : ChoosingAnswer;
}
