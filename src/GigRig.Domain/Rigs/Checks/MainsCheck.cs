using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class MainsCheck
{
    public static void Run(MainsInput mains, Spot spot)
    {
        CheckVolts("least", mains.Least, $"The least mains voltage of {spot.Thing}", spot);
        CheckVolts("most", mains.Most, $"The greatest mains voltage of {spot.Thing}", spot);
        if (mains.Most < mains.Least)
            spot.Say("most", $"{mains.Most} V", $"at least {mains.Least} V", $"{Spot.Capital(spot.Thing)} takes {mains.Least} V of mains at least and {mains.Most} V at most; swap or correct them.");
        if (mains is { Most: not null, Least: null })
            spot.Say("least", "nothing", "a voltage", $"{Spot.Capital(spot.Thing)} has a greatest mains voltage but no least; give both, or one as the least.");
        CheckPlug("plug", mains.Plug, spot);
        if (mains.Watts is { } watts)
            spot.Whole("watts", watts, 1, Bounds.MostMainsWatts, " W", $"The mains power of {spot.Thing}");
    }

    public static void Run(VenueMains venue, Spot spot)
    {
        CheckVolts("volts", venue.Volts, "The mains voltage at the venue", spot);
        CheckPlug("socket", venue.Socket, spot);
    }

    private static void CheckVolts(string member, int? volts, string what, Spot spot)
    {
        if (volts is { } value)
            spot.Whole(member, value, Bounds.LeastMainsVolts, Bounds.MostMainsVolts, " V", what);
    }

    private static void CheckPlug(string member, MainsPlug? plug, Spot spot)
    {
        if (plug is { } letter)
            spot.Word(member, letter);
    }
}
