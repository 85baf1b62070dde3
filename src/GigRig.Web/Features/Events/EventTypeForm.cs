using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Events;

/// <summary>A need, as typed. The weight counts only for a want.</summary>
public sealed class NeedRow
{
    public string Role { get; set; } = "";

    public NeedLevel Level { get; set; }

    public int? Weight { get; set; } = Need.DefaultWeight;
}

/// <summary>A sound, as typed.</summary>
public sealed class SoundRow
{
    public string Name { get; set; } = "";

    public List<string> Roles { get; set; } = [];

    public NeedLevel Level { get; set; }

    public int? Weight { get; set; } = Need.DefaultWeight;
}

public sealed class EventTypeForm : LiveForm, IFormOf<EventType>
{
    public string Name { get; set; } = "";

    public List<NeedRow> Needs { get; set; } = [new()];

    public List<SoundRow> Sounds { get; set; } = [];

    /// <summary>In kilograms; empty for no limit.</summary>
    public string Mass { get; set; } = "";

    public int? Devices { get; set; }

    public int? FreeArea { get; set; }

    public ChainPolicy Chain { get; set; }

    public int? VenueVolts { get; set; }

    public MainsPlug? VenueSocket { get; set; }

    public override string Title => Name;

    public override IEnumerable<string> UsedRoles => Needs.Select(need => need.Role).Concat(Sounds.SelectMany(sound => sound.Roles));

    public void Show(EventType type)
    {
        Name = type.Name;
        Needs = [.. type.Needs.Select(need => new NeedRow { Role = need.Role.Key, Level = need.Level, Weight = need.Weight })];
        Sounds = [.. type.Sounds.Select(Show)];
        Mass = type.Limits.Mass is { } mass ? (mass.Value / 1000m).ToString("0.###", CultureInfo.InvariantCulture) : "";
        Devices = type.Limits.Devices;
        FreeArea = type.Limits.FreeArea;
        Chain = type.Chain;
        (VenueVolts, VenueSocket) = type.Venue;
    }

    public EventType? Read()
    {
        var read = new EntryReader(Unit);
        var type = new EventType(
            read.Name("name", "Name", Name),
            Needs.Select((need, i) => Read(need, $"needs/{i}", read)).ToValueList(),
            Sounds.Select((sound, i) => Read(sound, $"sounds/{i}", read)).ToValueList(),
            new EventLimits(read.OptionalKilograms("limits/mass", "Largest mass", Mass), Devices, FreeArea),
            Chain)
        {
            Venue = new(VenueVolts, VenueSocket),
        };
        read.Add(Complaints(type), "event");
        Errors.Set(read.Errors);
        return Errors.None ? type : null;
    }

    public override void Check() => Read();

    private static SoundRow Show(Sound sound) =>
        new() { Name = sound.Name, Roles = [.. sound.Roles.Select(role => role.Key)], Level = sound.Level, Weight = sound.Weight };

    private static Need Read(NeedRow row, string field, EntryReader read)
    {
        if (row.Role.Length == 0)
            read.Add($"{field}/role", "No role is picked. Pick one, or take the line away.");
        return new(new(row.Role), row.Level, Weight(row.Level, row.Weight, field, read));
    }

    private static Sound Read(SoundRow row, string field, EntryReader read)
    {
        if (row.Roles.Count == 0)
            read.Add($"{field}/roles", "No role is picked. Pick those that are on together, or take the sound away.");
        return new(read.Name($"{field}/name", "Name", row.Name), row.Roles.Select(key => new Role(key)).ToValueList(), row.Level, Weight(row.Level, row.Weight, field, read));
    }

    private static int Weight(NeedLevel level, int? typed, string field, EntryReader read) =>
        level == NeedLevel.Must ? Need.DefaultWeight : read.Whole($"{field}/weight", "Weight", typed);

    /// <summary>Checked by the same code that checks a whole question to the planner, in an otherwise harmless one.</summary>
    private static IEnumerable<Complaint> Complaints(EventType type)
    {
        var board = new Board(new("harmless board"), "Board", 500.Mm, 300.Mm, Grams.Zero, [], [], Overhang.Usual);
        return RigProblem.Create(new() { Board = board, Event = type }) is ProblemCheck.Refused refused ? refused.Complaints : [];
    }
}
