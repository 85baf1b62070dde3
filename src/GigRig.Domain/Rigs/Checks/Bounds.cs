namespace GigRig.Domain.Rigs.Checks;

/// <summary>The limits of what can be asked, both ends allowed. Lengths in mm, masses in g, currents in mA, voltages in mV, times in ms.</summary>
public static class Bounds
{
    public const int LeastSize = 1;
    public const int MostSize = 3000;
    public const int MostMass = 200_000;
    public const int MostCarried = 10_000_000;
    public const int MostDraw = 20_000;
    public const int LeastOutletCurrent = 1;
    public const int MostOutletCurrent = 20_000;
    public const int MostTotalCurrent = MostOutlets * MostOutletCurrent;
    public const int LeastMillivolts = 100;
    public const int MostMillivolts = 60_000;
    public const int LeastMainsVolts = 50;
    public const int MostMainsVolts = 500;
    public const int MostMainsWatts = 10_000;
    public const int MostBatteryCapacity = 20_000;
    public const int MostPlug = 200;
    public const int MostOverhang = 500;
    public const int LeastRating = 1;
    public const int MostRating = 5;
    public const int MostSwitchSpacing = 500;
    public const int LeastTimeLimit = 1;
    public const int MostTimeLimit = 600_000;
    public const int MostHeadroom = 5;
    public const int MostAlternatives = 20;
    public const int MostAdapters = 99;
    public const int MostFreeArea = 100;

    public const int LongestName = 200;

    /// <summary>Of a section, a return group or an outlet's id.</summary>
    public const int LongestLabel = 100;

    public const int MostDevices = 1000;
    public const int MostOffBoard = 1000;
    public const int MostOutlets = 64;
    public const int MostSettings = 40;
    public const int MostJacks = 40;
    public const int MostSwitches = 40;
    public const int MostFunctions = 40;
    public const int MostRoles = 1000;
    public const int MostNeeds = 200;
    public const int MostSounds = 100;
    public const int MostRails = 40;
    public const int MostKeepOuts = 40;
    public const int MostLeads = 1000;

    /// <summary>A hundred metres.</summary>
    public const int MostLeadLength = 100_000;

    /// <summary>Equal ones.</summary>
    public const int MostOfALead = 999;

    /// <summary>Picofarads for each metre.</summary>
    public const int MostLeadCapacitance = 10_000;

    public const int MostAllowance = 1000;

    /// <summary>Millihenries.</summary>
    public const int MostInductance = 100_000;

    /// <summary>Picofarads.</summary>
    public const int MostWindingCapacitance = 100_000;

    /// <summary>Ohms.</summary>
    public const int MostVolume = 10_000_000;
}
