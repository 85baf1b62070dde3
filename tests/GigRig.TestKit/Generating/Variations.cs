using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>The same question told another way, or a little eased.</summary>
public static class Variations
{
    /// <summary>Everything that comes in a list, in another order.</summary>
    public static RigProblemDraft Shuffled(this RigProblemDraft draft, int seed)
    {
        var random = new Random(seed);
        return draft with
        {
            Devices = Mix(draft.Devices),
            OffBoard = Mix(draft.OffBoard),
            Supply = draft.Supply is { } supply ? supply with { Outlets = Mix(supply.Outlets) } : null,
            Event = draft.Event with { Needs = Mix(draft.Event.Needs), Sounds = Mix(draft.Event.Sounds) },
        };

        ValueList<T> Mix<T>(ValueList<T> items) => items.OrderBy(_ => random.Next()).ToValueList();
    }

    /// <summary>Left and right changed over. Exact where plugs are of even width.</summary>
    public static RigProblemDraft Mirrored(this RigProblemDraft draft)
    {
        var board = draft.Board;
        return draft with
        {
            Board = board with
            {
                KeepOuts = board.KeepOuts.Select(k => k with { X = board.Width - k.Right }).ToValueList(),
                Overhang = board.Overhang with { Left = board.Overhang.Right, Right = board.Overhang.Left },
            },
            Devices = draft.Devices.Select(Mirrored).ToValueList(),
            Options = draft.Options with { Fixed = draft.Options.Fixed.Select(place => Mirrored(place, draft)).ToValueList() },
        };
    }

    /// <summary>Every length twice as long. Exact on a plain surface without switch spacing: there a layout may be pushed to even millimetres.</summary>
    public static RigProblemDraft Doubled(this RigProblemDraft draft) => draft with
    {
        Board = Doubled(draft.Board),
        Supply = draft.Supply is { } supply ? supply with { Size = supply.Size is { } size ? Doubled(size) : null } : null,
        Devices = draft.Devices.Select(Doubled).ToValueList(),
        Options = draft.Options with
        {
            Plugs = new(Doubled(draft.Options.Plugs.Audio), Doubled(draft.Options.Plugs.Power)),
            SwitchSpacing = Twice(draft.Options.SwitchSpacing),
            Fixed = draft.Options.Fixed.Select(place => place with { At = new(Twice(place.At.X), Twice(place.At.Y)) }).ToValueList(),
        },
    };

    /// <summary>A supply on top may stand straight or turned a quarter, and looks the same turned half about.</summary>
    private static Placement Mirrored(Placement place, RigProblemDraft draft)
    {
        var device = draft.Devices.FirstOrDefault(d => d.Id == place.Id);
        var size = (device?.Size ?? draft.Supply!.Size!.Value).Turned(place.Turn);
        return new(place.Id, place.At with { X = draft.Board.Width - place.At.X - size.Width }, device is null ? place.Turn : Mirrored(place.Turn));
    }

    private static Turn Mirrored(Turn turn) => (Turn)((360 - (int)turn) % 360);

    private static Device Mirrored(Device device) => device with
    {
        Turns = device.Turns.Select(Mirrored).ToValueList(),
        Jacks = device.Jacks.Select(jack => Mirrored(jack, device.Size.Width)).ToValueList(),
        Switches = device.Switches.Select(s => s with { X = device.Size.Width - s.X }).ToValueList(),
    };

    private static Jack Mirrored(Jack jack, Millimetres width) => jack.Side switch
    {
        Side.Left => jack with { Side = Side.Right },
        Side.Right => jack with { Side = Side.Left },
        _ => jack with { At = width - jack.At },
    };

    private static Board Doubled(Board board) => board with
    {
        Width = Twice(board.Width),
        Depth = Twice(board.Depth),
        Rails = board.Rails.Select(rail => new Rail(Twice(rail.From), Twice(rail.To))).ToValueList(),
        KeepOuts = board.KeepOuts.Select(k => new Rect(Twice(k.X), Twice(k.Y), Twice(k.Width), Twice(k.Depth))).ToValueList(),
        Overhang = new(Twice(board.Overhang.Front), Twice(board.Overhang.Rear), Twice(board.Overhang.Left), Twice(board.Overhang.Right)),
        ClearanceUnder = board.ClearanceUnder is { } under ? Twice(under) : null,
        ClearanceOver = board.ClearanceOver is { } over ? Twice(over) : null,
    };

    private static Device Doubled(Device device) => device with
    {
        Size = Doubled(device.Size),
        Jacks = device.Jacks.Select(jack => jack with { At = Twice(jack.At) }).ToValueList(),
        Switches = device.Switches.Select(s => new Point(Twice(s.X), Twice(s.Y))).ToValueList(),
    };

    private static BodySize Doubled(BodySize size) => new(Twice(size.Width), Twice(size.Depth), Twice(size.Height));

    private static PlugSize Doubled(PlugSize plug) => new(Twice(plug.Out), Twice(plug.Width));

    private static Millimetres Twice(Millimetres length) => length + length;
}
