using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Building;

public static class DraftBuilding
{
    public static RigProblemDraft With(this RigProblemDraft draft, params Device[] devices) =>
        draft with { Devices = [.. draft.Devices, .. devices] };

    public static RigProblemDraft With(this RigProblemDraft draft, params OffBoardItem[] items) =>
        draft with { OffBoard = [.. draft.OffBoard, .. items] };

    public static RigProblemDraft FedBy(this RigProblemDraft draft, Supply supply) => draft with { Supply = supply };

    public static RigProblemDraft FedBy(this RigProblemDraft draft, params Outlet[] outlets) => draft.FedBy(A.Supply(outlets));

    public static RigProblemDraft Through(this RigProblemDraft draft, Amp amp) => draft with { Amp = amp };

    public static RigProblemDraft OwningAdapters(this RigProblemDraft draft, int reverse = 0, int parallel = 0, int series = 0, int splitter = 0) =>
        draft with { Adapters = new(reverse, parallel, series, splitter) };

    /// <summary>Adds musts.</summary>
    public static RigProblemDraft Needing(this RigProblemDraft draft, params string[] roles) =>
        draft.WithNeeds(roles.Select(role => new Need(new(role))));

    /// <summary>Adds a want.</summary>
    public static RigProblemDraft Wanting(this RigProblemDraft draft, string role, int weight = Need.DefaultWeight) =>
        draft.WithNeeds([new(new(role), NeedLevel.Want, weight)]);

    /// <summary>Adds a sound that must be playable.</summary>
    public static RigProblemDraft Playing(this RigProblemDraft draft, string name, params string[] roles) =>
        draft.WithSound(new(name, [.. roles.Select(role => new Role(role))]));

    /// <summary>Adds a sound that would be nice.</summary>
    public static RigProblemDraft WantingSound(this RigProblemDraft draft, string name, int weight, params string[] roles) =>
        draft.WithSound(new(name, [.. roles.Select(role => new Role(role))], NeedLevel.Want, weight));

    public static RigProblemDraft Limited(this RigProblemDraft draft, int? mass = null, int? devices = null, int? freeArea = null) =>
        draft with { Event = draft.Event with { Limits = new(mass?.G, devices, freeArea) } };

    public static RigProblemDraft Pinning(this RigProblemDraft draft, params string[] ids) =>
        draft with { Options = draft.Options with { Pin = [.. ids.Select(id => new GearId(id))] } };

    public static RigProblemDraft Banning(this RigProblemDraft draft, params string[] ids) =>
        draft with { Options = draft.Options with { Ban = [.. ids.Select(id => new GearId(id))] } };

    public static RigProblemDraft Fixing(this RigProblemDraft draft, string id, int x, int y, Turn turn = Turn.None) =>
        draft with { Options = draft.Options with { Fixed = [.. draft.Options.Fixed, new(new(id), new(x.Mm, y.Mm), turn)] } };

    public static RigProblemDraft WithHeadroom(this RigProblemDraft draft, decimal headroom) =>
        draft with { Options = draft.Options with { Headroom = headroom } };

    public static RigProblemDraft SpacingSwitches(this RigProblemDraft draft, int millimetres) =>
        draft with { Options = draft.Options with { SwitchSpacing = millimetres.Mm } };

    /// <summary>The checked problem. Throws, naming the complaints, where the draft is refused.</summary>
    public static RigProblem Problem(this RigProblemDraft draft) => RigProblem.Create(draft) switch
    {
        ProblemCheck.Accepted accepted => accepted.Problem,
        ProblemCheck.Refused refused => throw new InvalidOperationException(string.Join("\n", refused.Complaints.Select(c => $"{c.Path}: {c.Message}"))),
        _ => throw new InvalidOperationException("A third kind of answer."),
    };

    private static RigProblemDraft WithNeeds(this RigProblemDraft draft, IEnumerable<Need> needs) =>
        draft with { Event = draft.Event with { Needs = [.. draft.Event.Needs, .. needs] } };

    private static RigProblemDraft WithSound(this RigProblemDraft draft, Sound sound) =>
        draft with { Event = draft.Event with { Sounds = [.. draft.Event.Sounds, sound] } };
}
