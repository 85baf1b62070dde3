using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>Whether everything can be played, role by role, by trying every way.</summary>
internal static class NaiveMusic
{
    public static IEnumerable<Fault> Faults(RigProblem problem, Rig rig)
    {
        var functions = Functions(problem, rig);
        foreach (var need in problem.Event.Needs)
            if (need.Level == NeedLevel.Must && BestRating(need.Role.Key, functions) == 0)
                yield return new("musts-covered", need.Role.Key);
        foreach (var sound in problem.Event.Sounds)
            if (sound.Level == NeedLevel.Must && !CanSound([.. sound.Roles.Select(r => r.Key)], functions, []))
                yield return new("sounds-playable", sound.Name);
        foreach (var fault in OfChain(problem, rig))
            yield return fault;
    }

    /// <summary>Each with a name for its section that no other section has.</summary>
    public static List<(string Section, string Role, int Rating)> Functions(RigProblem problem, Rig rig)
    {
        var all = new List<(string, string, int)>();
        foreach (var device in NaiveBelongings.PlacedDevices(problem, rig))
            Add(device.Id.Value, device.Functions);
        if (problem.Amp is { } amp)
            Add(amp.Id.Value, amp.Functions);
        foreach (var item in NaiveBelongings.Brought(problem, rig))
            Add(item.Id.Value, item.Functions);
        return all;

        void Add(string thing, IEnumerable<RoleFunction> functions)
        {
            foreach (var function in functions)
                all.Add((function.Section is { } section ? $"{thing}\n{section}" : $"{all.Count}", function.Role.Key, function.Rating));
        }
    }

    /// <summary>Zero where nothing does it.</summary>
    public static int BestRating(string role, List<(string Section, string Role, int Rating)> functions) =>
        functions.Where(f => Does(f.Role, role)).Select(f => f.Rating).DefaultIfEmpty(0).Max();

    /// <param name="on">By section, the role of the function that is on already.</param>
    public static bool CanSound(string[] roles, List<(string Section, string Role, int Rating)> functions, Dictionary<string, string> on) =>
        roles.Length == 0 || functions.Any(f =>
            Does(f.Role, roles[0])
            && (!on.TryGetValue(f.Section, out var busy) || busy == f.Role)
            && CanSound(roles[1..], functions, new(on) { [f.Section] = f.Role }));

    private static bool Does(string has, string wanted) =>
        has.Split('.') is var parts && wanted.Split('.') is var asked && parts.Length >= asked.Length && parts.Take(asked.Length).SequenceEqual(asked);

    private static IEnumerable<Fault> OfChain(RigProblem problem, Rig rig)
    {
        var visits = rig.Chain.Front.Concat(rig.Chain.Loop).Select(id => id.Value).ToList();
        foreach (var device in problem.Devices)
        {
            var here = rig.Placements.Any(p => p.Id.Value == device.Id.Value);
            var audible = device.Jacks.Count == 0 || device.Jacks.Any(j => j.Use == JackUse.In || j.Use == JackUse.Out);
            if (visits.Count(id => id == device.Id.Value) != (here && audible ? 1 : 0))
                yield return new("audio-chain", device.Id.Value);
        }

        if (rig.Chain.Loop.Count > 0 && (problem.Amp is null || problem.Amp.Loop == AmpLoop.None))
            yield return new("audio-chain", "no loop");
    }
}
