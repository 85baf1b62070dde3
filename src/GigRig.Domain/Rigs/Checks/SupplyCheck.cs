using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class SupplyCheck
{
    public static void Run(Supply supply, Spot spot)
    {
        spot.Text("name", supply.Name, Bounds.LongestName);
        spot.Mass("mass", supply.Mass);
        spot.Word("mount", supply.Mount);
        if (supply.Size is { } size)
            SizeCheck.Run(size, spot);
        else if (supply.Mount != SupplyMount.Off)
            spot.Say("width", "nothing", "required", $"{Spot.Capital(spot.Thing)} goes {(supply.Mount == SupplyMount.Top ? "on top of" : "under")} the board but has no size; give its width, depth and height.");
        if (supply.TotalCurrent is { } total)
            spot.Whole("totalCurrent", total.Value, 1, Bounds.MostTotalCurrent, " mA");
        MainsCheck.Run(supply.Mains, spot.Member("mains", spot.Thing));
        CheckOutlets(supply, spot);
    }

    public static void Run(PowerAdapters adapters, Spot spot)
    {
        spot.Whole("reverse", adapters.Reverse, 0, Bounds.MostAdapters, what: "The number of reversing leads");
        spot.Whole("parallel", adapters.Parallel, 0, Bounds.MostAdapters, what: "The number of parallel leads");
        spot.Whole("series", adapters.Series, 0, Bounds.MostAdapters, what: "The number of series leads");
        spot.Whole("splitter", adapters.Splitter, 0, Bounds.MostAdapters, what: "The number of splitters");
    }

    private static void CheckOutlets(Supply supply, Spot spot)
    {
        spot.Count("outlets", supply.Outlets.Count, Bounds.MostOutlets);
        var seen = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (index, outlet) in supply.Outlets.Index())
        {
            var place = spot.Item("outlets", index, $"outlet {(string.IsNullOrWhiteSpace(outlet.Id) ? $"{index + 1}" : Spot.Shown(outlet.Id))}");
            Check(outlet, place);
            if (!seen.Add(outlet.Id))
                place.Say("id", Spot.Shown(outlet.Id), "once", $"{Spot.Capital(place.Thing)} is there twice; give each outlet an id of its own.");
        }
    }

    private static void Check(Outlet outlet, Spot spot)
    {
        spot.Text("id", outlet.Id, Bounds.LongestLabel);
        if (outlet.Volts.Count == 0)
            spot.Say("volts", "nothing", "at least one voltage", $"{Spot.Capital(spot.Thing)} has no voltage; give at least one.");
        spot.Count("volts", outlet.Volts.Count, Bounds.MostSettings);
        foreach (var (index, volts) in outlet.Volts.Index())
            spot.Member("volts", "").Volts($"{index}", $"Setting {index + 1} of {spot.Thing}", volts);
        spot.Whole("current", outlet.Current.Value, Bounds.LeastOutletCurrent, Bounds.MostOutletCurrent, " mA");
        spot.Word("type", outlet.Type);
        spot.Word("polarity", outlet.Polarity);
        if (outlet.Group is { } group)
            spot.Text("group", group, Bounds.LongestLabel);
    }
}
