using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;

namespace GigRig.Planning.Explaining;

/// <summary>Lists the facts of a problem that may be at odds, the least telling first: those are lifted first, so that the telling ones stay.</summary>
internal static class Facts
{
    public static IReadOnlyList<Fact> Of(RigProblem problem) =>
        [.. Bans(problem), .. Limits(problem), .. Belongings(problem), .. Sounds(problem), .. Needs(problem), .. Pins(problem), .. Fixed(problem)];

    private static IEnumerable<Fact> Needs(RigProblem problem) =>
        problem.Event.Needs.Where(n => n.Level == NeedLevel.Must).Reverse().Select(need => new Fact(
            RuleIds.MustsCovered,
            [],
            CanBeDone(problem, need) ? $"{problem.TitleOf(need.Role)} is a must." : $"{problem.TitleOf(need.Role)} is a must, and nothing that may come along does it.",
            $"Make {problem.TitleOf(need.Role)} a want instead of a must.",
            draft => draft with { Event = draft.Event with { Needs = draft.Event.Needs.Select(n => n == need ? n with { Level = NeedLevel.Want } : n).ToValueList() } }));

    private static bool CanBeDone(RigProblem problem, Need need) =>
        problem.Devices.SelectMany(device => device.Functions).Concat(problem.OffBoard.SelectMany(item => item.Functions)).Concat(problem.Amp?.Functions ?? [])
            .Any(function => function.Role.Meets(need.Role));

    private static IEnumerable<Fact> Sounds(RigProblem problem) =>
        problem.Event.Sounds.Where(s => s.Level == NeedLevel.Must).Reverse().Select(sound => new Fact(
            RuleIds.SoundsPlayable,
            [],
            $"The sound {sound.Name} ({string.Join(" + ", sound.Roles.Select(problem.TitleOf))}, all on at once) is a must.",
            $"Make the sound {sound.Name} a want instead of a must.",
            draft => draft with { Event = draft.Event with { Sounds = draft.Event.Sounds.Select(s => s == sound ? s with { Level = NeedLevel.Want } : s).ToValueList() } }));

    private static IEnumerable<Fact> Limits(RigProblem problem)
    {
        var limits = problem.Event.Limits;
        if (limits.Mass is { } mass)
            yield return Limit(RuleIds.MassLimit, $"No more than {Kilos(mass)} may be carried.", "Lift the limit on mass.", l => l with { Mass = null });
        if (limits.Devices is { } devices)
            yield return Limit(RuleIds.DeviceLimit, $"No more than {devices.Counted("device")} may stand on the board.", "Lift the limit on devices.", l => l with { Devices = null });
        if (limits.FreeArea is { } free)
            yield return Limit(RuleIds.FreeArea, $"{free} % of the board must stay free.", "Lift the limit on free area.", l => l with { FreeArea = null });
    }

    private static Fact Limit(string rule, Phrase sentence, string change, Func<EventLimits, EventLimits> lift) =>
        new(rule, [], sentence, change, draft => draft with { Event = draft.Event with { Limits = lift(draft.Event.Limits) } });

    private static IEnumerable<Fact> Belongings(RigProblem problem)
    {
        var board = problem.Board;
        if (board.ClearanceOver is { } over)
            yield return new(RuleIds.Lid, [board.Id], $"{board.Name} has {over} up to its lid.", "Leave the lid off.", d => d with { Board = d.Board with { ClearanceOver = null } });
        if (board.MaxLoad is { } load)
            yield return new(RuleIds.BoardLoad, [board.Id], $"{board.Name} carries no more than {Kilos(load)}.", null, d => d with { Board = d.Board with { MaxLoad = null } });
        if (problem.Options.SwitchSpacing > Millimetres.Zero)
            yield return new(RuleIds.SwitchSpacing, [], $"Foot switches must be {problem.Options.SwitchSpacing} apart.", "Allow foot switches closer together.", d => d with { Options = d.Options with { SwitchSpacing = Millimetres.Zero } });
        yield return new(RuleIds.DevicesFed, problem.Supply is { } s ? [s.Id] : [], PowerSentence(problem), null, d => d with { Devices = d.Devices.Select(x => x with { Power = null }).ToValueList() });
        yield return new(
            RuleIds.InsideBoard,
            [board.Id],
            $"{board.Name} is {board.Width:bare} × {board.Depth}.",
            null,
            d => d with { Board = Boundless(d.Board) });
    }

    private static IEnumerable<Fact> Pins(RigProblem problem) => problem.Options.Pin.Select(pin => new Fact(
        RuleIds.Pins,
        [pin],
        $"{NameOf(problem, pin)} is pinned.",
        $"Unpin {NameOf(problem, pin)}.",
        draft => draft with { Options = draft.Options with { Pin = draft.Options.Pin.Where(p => p != pin).ToValueList() } }));

    /// <summary>Being fixed brings a thing along; lifted, it may stand elsewhere or stay at home.</summary>
    public static IEnumerable<Fact> Fixed(RigProblem problem) => problem.Options.Fixed.Select(place => new Fact(
        RuleIds.FixedPlaces,
        [place.Id],
        $"{problem.NameOf(place.Id)} is fixed at {place.Said}.",
        $"Let {problem.NameOf(place.Id)} stand elsewhere.",
        draft => draft with { Options = draft.Options with { Fixed = draft.Options.Fixed.Where(f => f.Id != place.Id).ToValueList() } }));

    private static IEnumerable<Fact> Bans(RigProblem problem) => problem.Options.Ban.Select(ban => new Fact(
        RuleIds.Bans,
        [ban],
        $"{NameOf(problem, ban)} is banned.",
        $"Allow {NameOf(problem, ban)} again.",
        draft => draft with { Options = draft.Options with { Ban = draft.Options.Ban.Where(b => b != ban).ToValueList() } }));

    public static string PowerSentence(RigProblem problem) => problem.Supply is { } supply
        ? $"{supply.Name} has {supply.Outlets.Count.Counted("outlet")}: {string.Join(", ", supply.Outlets.CountBy(Describe).Select(o => $"{o.Value} × {o.Key}"))}."
        : "There is no supply.";

    private static string Describe(Outlet outlet) =>
        $"{string.Join("/", outlet.Volts.Select(v => v.ToString()))} {(outlet.Type == CurrentType.Ac ? "AC" : "DC")} {outlet.Current}";

    /// <summary>Room for anything.</summary>
    private static Board Boundless(Board board) => board with
    {
        Width = 3000.Mm,
        Depth = 3000.Mm,
        Rails = [],
        KeepOuts = [],
        Overhang = new(200.Mm, 200.Mm, 200.Mm, 200.Mm),
    };

    private static string NameOf(RigProblem problem, GearId id) => problem.FindDevice(id)?.Name ?? problem.FindOffBoard(id)?.Name ?? id.Value;

    private static string Kilos(Grams mass) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{mass.Value / 1000m:0.##} kg");
}
