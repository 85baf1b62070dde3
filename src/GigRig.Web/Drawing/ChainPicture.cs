using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.Web.Sheets;

namespace GigRig.Web.Drawing;

/// <summary>A stop of the chain diagram.</summary>
/// <param name="Key">Unlike any other's in the picture.</param>
/// <param name="Device">Null for an end, which can't be moved.</param>
/// <param name="Number">As in the board drawing; null for an end, and for what stands nowhere.</param>
/// <param name="Column">From the left, 0 for the end the signal comes from.</param>
public sealed record ChainPictureNode(string Key, GearId? Device, int? Number, string Title, ChainPart Part, int Column);

/// <summary>All leads from one stop to another, by the keys of the two.</summary>
/// <param name="Marks">The letters they go by in the list of leads; none for a long lead.</param>
public sealed record ChainPictureLink(string From, string To, ValueList<string> Marks);

/// <summary>The chain as two rows of stops, front over loop, and who leads to whom. The loop's row is there wherever the amp has a loop.</summary>
public sealed record ChainPicture(ValueList<ChainPictureNode> Nodes, ValueList<ChainPictureLink> Links)
{
    private const string Instrument = "end:instrument";
    private const string AmpInput = "end:in";
    private const string Send = "end:send";
    private const string Return = "end:return";

    public bool HasLoop => Nodes.Any(node => node.Part == ChainPart.Loop);

    public static ChainPicture Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        var front = Row(ChainPart.Front, (Instrument, problem.Instrument?.Name ?? "instrument"), rig.Chain.Front, (AmpInput, problem.Amp is { } amp ? $"{amp.Name}, input" : "desk"));
        var loop = problem.Amp is { Loop: not AmpLoop.None } ? Row(ChainPart.Loop, (Send, "send"), rig.Chain.Loop, (Return, "return")) : [];
        var nodes = front.Concat(loop).ToValueList();
        return new(nodes, LinksOf(Hops.Of(problem, rig), nodes.Select(node => node.Key).ToHashSet()).ToValueList());

        IEnumerable<ChainPictureNode> Row(ChainPart part, (string Key, string Title) from, ValueList<GearId> ids, (string Key, string Title) to) =>
        [
            new(from.Key, null, null, from.Title, part, 0),
            .. ids.Distinct().Select((id, i) => new ChainPictureNode(KeyOf(id), id, numbers.TryGetValue(id, out var number) ? number : null, problem.NameOf(id), part, i + 1)),
            new(to.Key, null, null, to.Title, part, ids.Distinct().Count() + 1),
        ];
    }

    private static IEnumerable<ChainPictureLink> LinksOf(IEnumerable<Hop> hops, HashSet<string> keys)
    {
        var marks = 0;
        return hops.Where(hop => hop.Kind != HopKind.Footswitch)
            .Select(hop => (From: KeyOf(hop.From), To: KeyOf(hop.To), Mark: hop.Kind == HopKind.Patch ? LeadMarks.Of(marks++) : ""))
            .Where(link => keys.Contains(link.From) && keys.Contains(link.To))
            .GroupBy(link => (link.From, link.To))
            .Select(leads => new ChainPictureLink(leads.Key.From, leads.Key.To, leads.Select(lead => lead.Mark).Where(mark => mark.Length > 0).ToValueList()));
    }

    private static string KeyOf(GearId id) => $"device:{id.Value}";

    private static string KeyOf(HopEnd end) => (end.Thing, end.Jack) switch
    {
        (HopThing.Device, _) => KeyOf(end.Id!.Value),
        (HopThing.Instrument, _) => Instrument,
        (HopThing.Amp, JackUse.Send) => Send,
        (HopThing.Amp, JackUse.Return) => Return,
        (HopThing.Amp, JackUse.In) or (HopThing.Desk, _) => AmpInput,
        _ => "",
    };
}
