using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Sheets;

/// <summary>One thing to do, such as <em>Hall echo: from 100 mm, 20 mm to 240 mm, 20 mm</em>.</summary>
/// <param name="What">Empty where the thing alone says it.</param>
public sealed record SwapLine(string Thing, string What);

/// <summary>What to do to turn one rig into another, in the order in which it is done: take off, put on, move, feed, plug in.</summary>
/// <param name="Off">What does not come along any more.</param>
/// <param name="On">What comes along now, and where it stands.</param>
public sealed record SwapSheet(ValueList<SwapLine> Off, ValueList<SwapLine> On, ValueList<SwapLine> Move, ValueList<SwapLine> Feed, ValueList<SwapLine> Plug)
{
    /// <summary>Whether the two are the same.</summary>
    public bool IsEmpty => Off.Count + On.Count + Move.Count + Feed.Count + Plug.Count == 0;

    /// <param name="unit">Of the places.</param>
    public static SwapSheet Of(RigProblem firstProblem, Rig first, RigProblem secondProblem, Rig second, LengthUnit unit)
    {
        var swap = RigComparison.Of(firstProblem, first, secondProblem, second);
        var standing = (second.Supply is { } supply ? second.Placements.Append(supply) : second.Placements).DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);
        var (fedFirst, fedSecond) = (Fed(firstProblem, first), Fed(secondProblem, second));
        return new(
            swap.Went.Select(id => new SwapLine(firstProblem.NameOf(id), "")).ToValueList(),
            swap.Came.Select(id => new SwapLine(secondProblem.NameOf(id), Arrival(id))).ToValueList(),
            swap.Moved.Select(moved => new SwapLine(secondProblem.NameOf(moved.Id), Move(moved))).ToValueList(),
            swap.Refed.Select(refed => new SwapLine(secondProblem.NameOf(refed.Id), $"from {fedFirst(refed.Id)} to {fedSecond(refed.Id)}")).ToValueList(),
            swap.Reordered.Select(thing => new SwapLine(secondProblem.NameOf(thing.Id), PlaceInChain(thing))).ToValueList());

        string Arrival(GearId id) => string.Join("; ", new[]
        {
            standing.TryGetValue(id, out var placement) ? $"at {PlaceOf(placement)}" : "",
            second.HookUp.Any(feed => feed.Device == id) ? $"fed from {fedSecond(id)}" : "",
            InChain(second.Chain, id) is { } part ? part : "",
        }.Where(words => words.Length > 0));

        string Move(MovedThing moved) => swap.OtherBoard ? $"to {PlaceOf(moved.To)}" : $"from {PlaceOf(moved.From)} to {PlaceOf(moved.To)}";

        string PlaceOf(Placement placement) =>
            $"{LengthText.Format(placement.At.X, unit)} from the left, {LengthText.Format(placement.At.Y, unit)} from the front"
            + (placement.Turn == Turn.None ? "" : $", turned {(int)placement.Turn}°");

        string PlaceInChain(ReorderedThing thing) => (thing.WasInLoop, thing.IsInLoop) switch
        {
            (false, true) => $"into the loop, {After(thing.After)}",
            (true, false) => $"out of the loop, {After(thing.After)}",
            _ => After(thing.After),
        };

        string? InChain(Chain chain, GearId id)
        {
            foreach (var (part, where) in new[] { (chain.Front, ""), (chain.Loop, "in the loop, ") })
                if (part.Index().FirstOrDefault(place => place.Item == id) is var (index, item) && item == id)
                    return where + After(index == 0 ? null : part[index - 1]);
            return null;
        }

        string After(GearId? before) => before is { } id ? $"after {secondProblem.NameOf(id)}" : "first";
    }

    private static Func<GearId, string> Fed(RigProblem problem, Rig rig)
    {
        var lines = HookUpSheet.Of(problem, rig).Lines.DistinctBy(line => line.Device).ToDictionary(line => line.Device);
        return id => lines.TryGetValue(id, out var line) ? line.Volts.Length > 0 ? $"{line.Outlet} at {line.Volts}" : line.Outlet : "nothing";
    }
}
