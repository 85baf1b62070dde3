using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;

namespace GigRig.Domain.Rigs.Checks;

/// <summary>
/// Fixed places name one thing each, turned as it may be, on the board. Whether things so fixed get on with each other, with plugs, rails and keep-outs is no
/// matter of sense: that is answered with a reason.
/// </summary>
internal static class FixedCheck
{
    public static void Run(RigProblemDraft draft, Spot options)
    {
        options.Count("fixed", draft.Options.Fixed.Count, Bounds.MostDevices + 1);
        var banned = draft.Options.Ban.ToHashSet();
        var seen = new HashSet<GearId>();
        foreach (var (index, place) in draft.Options.Fixed.Index())
        {
            var shown = Spot.Shown(place.Id.Value);
            var spot = options.Item("fixed", index, shown);
            if (Find(draft, place.Id) is not var (size, turns))
                spot.Say("id", shown, "the id of a device or of a supply on top", $"\"{shown}\" is fixed but is no device and no supply on top; correct the id or drop it.");
            else if (!seen.Add(place.Id))
                spot.Say("id", shown, "once", $"{shown} is fixed twice; keep one.");
            else if (banned.Contains(place.Id))
                spot.Say("id", shown, "not banned as well", $"{shown} is both fixed and banned; drop one of them.");
            else if (!turns.Contains(place.Turn))
                spot.Say("turn", $"{(int)place.Turn}", $"one of {string.Join(", ", turns.Select(t => (int)t))}", $"{shown} is fixed at a turn of {(int)place.Turn}°; it may stand at {string.Join(", ", turns.Select(t => $"{(int)t}°"))} only.");
            else
                CheckOnBoard(draft.Board, place, size.Turned(place.Turn), spot);
        }
    }

    private static (BodySize Size, ValueList<Turn> Turns)? Find(RigProblemDraft draft, GearId id)
    {
        if (draft.Devices.FirstOrDefault(d => d.Id == id) is { } device)
            return (device.Size, device.Turns);
        return draft.Supply is { Mount: SupplyMount.Top, Size: { } size } supply && supply.Id == id ? (size, [Turn.None, Turn.Quarter]) : null;
    }

    private static void CheckOnBoard(Board board, Placement place, BodySize body, Spot spot)
    {
        Check("x", place.At.X.Value, body.Width.Value, board.Width.Value, "from the left", "wide");
        Check("y", place.At.Y.Value, body.Depth.Value, board.Depth.Value, "from the front", "deep");

        void Check(string member, int at, int side, int whole, string from, string measured)
        {
            if (at < 0 || at > (long)whole - side)
                spot.Say(member, $"{at}", $"0 to {Math.Max(0, (long)whole - side)} mm", $"{spot.Thing} is fixed {at} mm {from} and is {side} mm {measured}; the board is {whole} mm {measured}. Fix it where it stands on the board.");
        }
    }
}
