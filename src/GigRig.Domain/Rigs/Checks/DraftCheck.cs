using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

/// <summary>Everything about a draft that must hold before it can be worked with. Names every fault; never throws.</summary>
internal static class DraftCheck
{
    public static ValueList<Complaint> Run(RigProblemDraft draft)
    {
        var list = new CheckList();
        var root = new Spot(list, "", "the problem");
        BoardCheck.Run(draft.Board, root.Member("board", "the board"));
        if (draft.Supply is { } supply)
            SupplyCheck.Run(supply, root.Member("supply", Named("supply", supply.Name)));
        SupplyCheck.Run(draft.Adapters, root.Member("adapters", "the power adapters"));
        if (draft.Amp is { } amp)
            CheckAmp(amp, root.Member("amp", Named("amp", amp.Name)));
        root.Count("devices", draft.Devices.Count, Bounds.MostDevices);
        foreach (var (index, device) in draft.Devices.Index())
            DeviceCheck.Run(device, root.Item("devices", index, Named("device", device.Name, index)));
        root.Count("offBoard", draft.OffBoard.Count, Bounds.MostOffBoard);
        foreach (var (index, item) in draft.OffBoard.Index())
            CheckOffBoard(item, root.Item("offBoard", index, Named("off-board thing", item.Name, index)));
        root.Count("leads", draft.Leads.Count, Bounds.MostLeads);
        foreach (var (index, lead) in draft.Leads.Index())
            LeadCheck.Run(lead, root.Item("leads", index, Named("lead", lead.Name, index)));
        if (draft.Instrument is { } instrument)
            InstrumentCheck.Run(instrument, root.Member("instrument", Named("instrument", instrument.Name)));
        IdsCheck.Run(draft, list);
        EventCheck.Run(draft.Event, root.Member("event", "the event"));
        CheckRoles(draft.Roles, root);
        OptionsCheck.Run(draft, root.Member("options", "the options"));
        return list.Complaints;
    }

    private static void CheckAmp(Amp amp, Spot spot)
    {
        spot.Text("name", amp.Name, Bounds.LongestName);
        spot.Mass("mass", amp.Mass);
        FunctionsCheck.Run(amp.Functions, spot);
        spot.Word("loop", amp.Loop);
        spot.Word("loopLevel", amp.LoopLevel);
        MainsCheck.Run(amp.Mains, spot.Member("mains", spot.Thing));
    }

    private static void CheckOffBoard(OffBoardItem item, Spot spot)
    {
        spot.Text("name", item.Name, Bounds.LongestName);
        spot.Mass("mass", item.Mass);
        FunctionsCheck.Run(item.Functions, spot);
    }

    private static void CheckRoles(ValueList<RoleTitle> roles, Spot root)
    {
        root.Count("roles", roles.Count, Bounds.MostRoles);
        var seen = new HashSet<string?>(StringComparer.Ordinal);
        foreach (var (index, role) in roles.Index())
        {
            var place = root.Item("roles", index, $"role {index + 1}");
            FunctionsCheck.CheckRole(role.Role, "key", place);
            place.Text("title", role.Title, Bounds.LongestName);
            if (!seen.Add(role.Role.Key))
                place.Say("key", Spot.Shown(role.Role.Key), "once", $"{Spot.Shown(role.Role.Key)} has two titles; keep one.");
        }
    }

    private static string Named(string kind, string? name, int? index = null) =>
        string.IsNullOrWhiteSpace(name) ? index is { } i ? $"{kind} {i + 1}" : $"the {kind}" : $"{kind} {Spot.Shown(name)}";
}
