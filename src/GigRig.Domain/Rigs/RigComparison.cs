using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs;

/// <summary>A thing that stands in both rigs, and not in the same way.</summary>
public sealed record MovedThing(GearId Id, Placement From, Placement To);

/// <summary>A device of both rigs that gets its power otherwise.</summary>
/// <param name="From">Null where it was not fed.</param>
/// <param name="To">Null where it is not fed any more.</param>
public sealed record RefedThing(GearId Id, Feed? From, Feed? To);

/// <summary>A device of both chains that has to be plugged in elsewhere.</summary>
/// <param name="WasInLoop">Whether it was in the amp's loop.</param>
/// <param name="IsInLoop">Whether it is there in the other rig.</param>
/// <param name="After">What comes before it in its part of the other rig; null at the beginning.</param>
public sealed record ReorderedThing(GearId Id, bool WasInLoop, bool IsInLoop, GearId? After);

/// <summary>
/// What differs between two rigs, said as what to do to make the second out of the first. Pure; a rig that breaks rules can be compared as well.
/// Things are the same where their ids are.
/// </summary>
/// <param name="OtherBoard">Whether they stand on different boards; then all that stands in both has moved.</param>
/// <param name="OtherSupply">Whether they are fed by different supplies; then all that is fed from an outlet in both is fed anew.</param>
/// <param name="Went">What comes along in the first alone: board, supply, amp, instrument, devices, off-board things, in this order.</param>
/// <param name="Came">What comes along in the second alone, in the same order.</param>
/// <param name="Reordered">The fewest devices of both chains that must change places for the others to be in order.</param>
public sealed record RigComparison(
    bool OtherBoard,
    bool OtherSupply,
    ValueList<GearId> Went,
    ValueList<GearId> Came,
    ValueList<MovedThing> Moved,
    ValueList<RefedThing> Refed,
    ValueList<ReorderedThing> Reordered)
{
    /// <summary>Whether nothing needs to be done.</summary>
    public bool IsEmpty => Went.Count + Came.Count + Moved.Count + Refed.Count + Reordered.Count == 0;

    public static RigComparison Of(RigProblem firstProblem, Rig first, RigProblem secondProblem, Rig second)
    {
        var (carried, carriedThen) = (Carried(firstProblem, first), Carried(secondProblem, second));
        var otherBoard = firstProblem.Board.Id != secondProblem.Board.Id;
        var otherSupply = firstProblem.Supply?.Id != secondProblem.Supply?.Id;
        return new(
            otherBoard,
            otherSupply,
            carried.Except(carriedThen).ToValueList(),
            carriedThen.Except(carried).ToValueList(),
            MovedIn(first, second, otherBoard).ToValueList(),
            RefedIn(first, second, otherSupply).ToValueList(),
            ReorderedIn(first.Chain, second.Chain).ToValueList());
    }

    private static List<GearId> Carried(RigProblem problem, Rig rig)
    {
        GearId?[] whole = [problem.Board.Id, problem.Supply?.Id, problem.Amp?.Id, problem.Instrument?.Id];
        return [.. whole.OfType<GearId>().Concat(rig.Placements.Select(placement => placement.Id)).Concat(rig.OffBoard).Distinct()];
    }

    private static IEnumerable<MovedThing> MovedIn(Rig first, Rig second, bool otherBoard)
    {
        var before = Standing(first).DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);
        return Standing(second).DistinctBy(placement => placement.Id)
            .Where(now => before.TryGetValue(now.Id, out var was) && (otherBoard || was != now))
            .Select(now => new MovedThing(now.Id, before[now.Id], now));
    }

    private static IEnumerable<Placement> Standing(Rig rig) => rig.Supply is { } supply ? rig.Placements.Append(supply) : rig.Placements;

    private static IEnumerable<RefedThing> RefedIn(Rig first, Rig second, bool otherSupply)
    {
        var (before, after) = (FeedsOf(first), FeedsOf(second));
        var both = first.Placements.Select(placement => placement.Id).Intersect(second.Placements.Select(placement => placement.Id));
        return from id in both
               let was = before.GetValueOrDefault(id)
               let becomes = after.GetValueOrDefault(id)
               where was != becomes || (otherSupply && becomes is { OnBattery: false })
               select new RefedThing(id, was, becomes);
    }

    private static Dictionary<GearId, Feed> FeedsOf(Rig rig) => rig.HookUp.DistinctBy(feed => feed.Device).ToDictionary(feed => feed.Device);

    private static IEnumerable<ReorderedThing> ReorderedIn(Chain first, Chain second)
    {
        var before = first.Front.Concat(first.Loop).ToHashSet();
        var kept = Unmoved(first.Front, second.Front).Concat(Unmoved(first.Loop, second.Loop)).ToHashSet();
        return In(second.Front, inLoop: false).Concat(In(second.Loop, inLoop: true)).DistinctBy(thing => thing.Id);

        IEnumerable<ReorderedThing> In(ValueList<GearId> part, bool inLoop) =>
            from place in part.Index()
            where before.Contains(place.Item) && !kept.Contains(place.Item)
            select new ReorderedThing(place.Item, first.Loop.Contains(place.Item), inLoop, place.Index == 0 ? null : part[place.Index - 1]);
    }

    /// <summary>A longest run of things that both parts have in the same order, not necessarily side by side.</summary>
    private static List<GearId> Unmoved(ValueList<GearId> first, ValueList<GearId> second)
    {
        var length = new int[first.Count + 1, second.Count + 1];
        for (var i = first.Count - 1; i >= 0; i--)
            for (var j = second.Count - 1; j >= 0; j--)
                length[i, j] = first[i] == second[j] ? length[i + 1, j + 1] + 1 : Math.Max(length[i + 1, j], length[i, j + 1]);

        var kept = new List<GearId>();
        for (int i = 0, j = 0; i < first.Count && j < second.Count;)
        {
            if (first[i] == second[j])
            {
                kept.Add(first[i]);
                (i, j) = (i + 1, j + 1);
            }
            else if (length[i + 1, j] >= length[i, j + 1])
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return kept;
    }
}
