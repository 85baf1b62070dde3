using System.Globalization;
using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class OptionsCheck
{
    public static void Run(RigProblemDraft draft, Spot spot)
    {
        var options = draft.Options;
        CheckNumbers(options, spot);
        CheckPlug(options.Plugs.Audio, spot.Member("plugs", "").Member("audio", "audio plugs"));
        CheckPlug(options.Plugs.Power, spot.Member("plugs", "").Member("power", "power plugs"));

        CheckWiring(options.Wiring, spot.Member("wiring", ""));

        var choosable = draft.Devices.Select(device => device.Id).Concat(draft.OffBoard.Select(item => item.Id)).ToHashSet();
        CheckIds(options.Ban, "ban", "banned", choosable, spot);
        // The amp comes along anyway, so that pinning it changes nothing and banning it cannot be.
        if (draft.Amp is { } amp)
            choosable.Add(amp.Id);
        CheckIds(options.Pin, "pin", "pinned", choosable, spot);
        var pinned = options.Pin.ToHashSet();
        foreach (var (index, id) in options.Ban.Index())
            if (pinned.Contains(id))
                spot.Member("ban", "").Say($"{index}", Spot.Shown(id.Value), "not pinned as well", $"{Spot.Shown(id.Value)} is both pinned and banned; drop one of them.");
        FixedCheck.Run(draft, spot);
    }

    private static void CheckNumbers(PlanOptions options, Spot spot)
    {
        var milliseconds = (decimal)options.TimeLimit.Ticks / TimeSpan.TicksPerMillisecond;
        if (milliseconds is < Bounds.LeastTimeLimit or > Bounds.MostTimeLimit || milliseconds % 1 != 0)
            spot.Say(
                "timeLimit",
                milliseconds.ToString(CultureInfo.InvariantCulture),
                $"{Bounds.LeastTimeLimit} to {Bounds.MostTimeLimit} ms",
                string.Create(CultureInfo.InvariantCulture, $"The time limit is {milliseconds} ms; give {Bounds.LeastTimeLimit} to {Bounds.MostTimeLimit} whole milliseconds."));
        if (options.Headroom is < 0 or > Bounds.MostHeadroom)
            spot.Say(
                "headroom",
                options.Headroom.ToString(CultureInfo.InvariantCulture),
                $"0 to {Bounds.MostHeadroom}",
                string.Create(CultureInfo.InvariantCulture, $"The headroom is {options.Headroom}; give a fraction from 0 to {Bounds.MostHeadroom}, such as 0.25 for a quarter more."));
        spot.Length("switchSpacing", options.SwitchSpacing, 0, Bounds.MostSwitchSpacing, "The switch spacing");
        spot.Whole("alternatives", options.Alternatives, 0, Bounds.MostAlternatives, what: "The number of alternatives");
    }

    private static void CheckWiring(WiringAllowances wiring, Spot spot)
    {
        spot.Length("bend", wiring.Bend, 0, Bounds.MostAllowance, "The bend at each end of a lead");
        spot.Length("slack", wiring.Slack, 0, Bounds.MostAllowance, "The slack of each lead");
        spot.Length("swallowed", wiring.Swallowed, 0, Bounds.MostAllowance, "The cable inside each plug");
        spot.Length("toBoard", wiring.ToBoard, 0, Bounds.MostLeadLength, "The lead from instrument to board");
        spot.Length("toAmp", wiring.ToAmp, 0, Bounds.MostLeadLength, "The lead from board to amp");
    }

    private static void CheckPlug(PlugSize plug, Spot spot)
    {
        if (plug.Out.Value is < 0 or > Bounds.MostPlug)
            spot.Say("out", $"{plug.Out.Value}", $"0 to {Bounds.MostPlug} mm", $"{Spot.Capital(spot.Thing)} stand out {plug.Out}; give 0 to {Bounds.MostPlug} mm.");
        spot.Length("width", plug.Width, 0, Bounds.MostPlug);
    }

    private static void CheckIds(ValueList<GearId> ids, string member, string done, HashSet<GearId> choosable, Spot spot)
    {
        var seen = new HashSet<GearId>();
        foreach (var (index, id) in ids.Index())
            if (!choosable.Contains(id))
                spot.Member(member, "").Say($"{index}", Spot.Shown(id.Value), "the id of a device or an off-board thing", $"\"{Spot.Shown(id.Value)}\" is {done} but is no device and no off-board thing on offer; correct the id or drop it.");
            else if (!seen.Add(id))
                spot.Member(member, "").Say($"{index}", Spot.Shown(id.Value), "once", $"{Spot.Shown(id.Value)} is {done} twice; keep one.");
    }
}
