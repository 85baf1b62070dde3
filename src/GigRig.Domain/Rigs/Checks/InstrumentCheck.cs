using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class InstrumentCheck
{
    public static void Run(Instrument instrument, Spot spot)
    {
        spot.Text("name", instrument.Name, Bounds.LongestName);
        spot.Text("kind", instrument.Kind, Bounds.LongestName);
        spot.Word("family", instrument.Family);
        var pickup = spot.Member("pickup", $"the pickup of {spot.Thing}");
        if (instrument.Pickup.Inductance is { } inductance)
            pickup.Whole("inductance", inductance, 1, Bounds.MostInductance, " mH");
        if (instrument.Pickup.Capacitance is { } capacitance)
            pickup.Whole("capacitance", capacitance, 0, Bounds.MostWindingCapacitance, " pF");
        if (instrument.Pickup.Volume is { } volume)
            pickup.Whole("volume", volume, 1, Bounds.MostVolume, " Ω", $"The volume control of {spot.Thing}");
    }
}
