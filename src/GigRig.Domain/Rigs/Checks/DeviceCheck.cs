using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs.Checks;

internal static class DeviceCheck
{
    public static void Run(Device device, Spot spot)
    {
        spot.Text("name", device.Name, Bounds.LongestName);
        SizeCheck.Run(device.Size, spot);
        spot.Mass("mass", device.Mass);
        CheckTurns(device.Turns, spot);
        if (device.Power is { } power)
            CheckPower(power, spot.Member("power", spot.Thing));
        CheckJacks(device, spot);
        spot.Word("bypass", device.Bypass);
        spot.Word("inputLevel", device.InputLevel);
        CheckSwitches(device, spot);
        FunctionsCheck.Run(device.Functions, spot);
    }

    private static void CheckTurns(ValueList<Turn> turns, Spot spot)
    {
        const string Limit = "0, 90, 180 or 270, each once";
        if (turns.Count == 0)
            spot.Say("turns", "nothing", Limit, $"{Spot.Capital(spot.Thing)} may stand in no way at all; give at least one turn.");
        var seen = new HashSet<Turn>();
        foreach (var (index, turn) in turns.Index())
            if (!Enum.IsDefined(turn))
                spot.Member("turns", "").Say($"{index}", $"{(int)turn}", Limit, $"{(int)turn}, a turn of {spot.Thing}, is not a right angle; give 0, 90, 180 or 270.");
            else if (!seen.Add(turn))
                spot.Member("turns", "").Say($"{index}", $"{(int)turn}", Limit, $"{Spot.Capital(spot.Thing)} lists the turn {(int)turn} twice; keep one.");
    }

    private static void CheckPower(PowerNeed power, Spot spot)
    {
        spot.Volts("min", $"The least voltage of {spot.Thing}", power.Min);
        spot.Volts("max", $"The greatest voltage of {spot.Thing}", power.Max);
        if (power.Min > power.Max)
            spot.Say("max", $"{power.Max}", $"at least {power.Min}", $"{Spot.Capital(spot.Thing)} needs {power.Min} at least and {power.Max} at most; swap or correct them.");
        spot.Whole("current", power.Current.Value, 0, Bounds.MostDraw, " mA");
        spot.Word("type", power.Type);
        spot.Word("polarity", power.Polarity);
        if (power.BatteryCapacity is { } capacity)
            spot.Whole("batteryCapacity", capacity, 1, Bounds.MostBatteryCapacity, " mAh");
    }

    private static void CheckJacks(Device device, Spot spot)
    {
        spot.Count("jacks", device.Jacks.Count, Bounds.MostJacks);
        foreach (var (index, jack) in device.Jacks.Index())
        {
            var place = spot.Item("jacks", index, $"jack {index + 1} of {spot.Thing}");
            place.Word("carries", jack.Use, $"What {place.Thing} carries");
            place.Word("side", jack.Side);
            CheckWithin("at", jack.At, jack.Side is Side.Left or Side.Right ? device.Size.Depth : device.Size.Width, place);
        }
    }

    private static void CheckSwitches(Device device, Spot spot)
    {
        spot.Count("switches", device.Switches.Count, Bounds.MostSwitches);
        foreach (var (index, point) in device.Switches.Index())
        {
            var place = spot.Item("switches", index, $"switch {index + 1} of {spot.Thing}");
            CheckWithin("x", point.X, device.Size.Width, place);
            CheckWithin("y", point.Y, device.Size.Depth, place);
        }
    }

    private static void CheckWithin(string member, Millimetres value, Millimetres side, Spot spot)
    {
        if (value < Millimetres.Zero || value > side)
            spot.Say(member, $"{value.Value}", $"0 to {side}", $"{Spot.Capital(spot.Thing)} is {value} along a side of {side}; give 0 to {side}.");
    }
}
