using GigRig.Domain.Events;

namespace GigRig.Planning.Searching;

/// <summary>Which sounds a set can play: all roles of a sound at one moment, functions of one section being either/or.</summary>
internal sealed class Sounds
{
    private readonly Part[][] parts;

    public Sounds(Question question)
    {
        All = [.. question.Problem.Event.Sounds];
        parts = [.. All.Select(sound => PartsOf(question, sound).ToArray())];
    }

    public Sound[] All { get; }

    public bool Plays(int sound, Func<int, bool> takes)
    {
        var all = (1 << All[sound].Roles.Count) - 1;
        var met = new HashSet<int> { 0 };
        foreach (var part in parts[sound].Where(p => p.Thing < 0 || takes(p.Thing)))
        {
            foreach (var before in met.ToArray())
            {
                foreach (var roles in part.Roles)
                    met.Add(before | roles);
            }
        }

        return met.Contains(all);
    }

    /// <summary>The things with a part in the sound.</summary>
    public IEnumerable<int> Players(int sound) => parts[sound].Select(p => p.Thing).Where(t => t >= 0).Distinct();

    /// <summary>The parts a thing has in all the sounds: equal for things that could play in each other's place.</summary>
    public string SignOf(int thing) => string.Join(' ', parts.Select((sound, i) => (
        Sound: i,
        Sections: sound.Where(p => p.Thing == thing).Select(p => string.Join('|', p.Roles.Order())).Order(StringComparer.Ordinal).ToArray()))
        .Where(part => part.Sections.Length > 0)
        .Select(part => $"{part.Sound}:{string.Join('+', part.Sections)}"));

    private static IEnumerable<Part> PartsOf(Question question, Sound sound) => question.Functions
        .Select((f, i) => (Thing: question.ThingOf(f.Performer), f.Function, Section: f.Function.Section ?? $" {i}"))
        .GroupBy(f => (f.Thing, f.Section), f => RolesMet(sound, f.Function.Role))
        .Select(section => new Part(section.Key.Thing, [.. section.Where(roles => roles != 0).Distinct()]))
        .Where(part => part.Roles.Length > 0);

    private static int RolesMet(Sound sound, Domain.Gear.Role role) => sound.Roles.Select((wanted, i) => role.Meets(wanted) ? 1 << i : 0).Sum();

    /// <summary>A section of a thing (-1: the amp), and the sets of roles it can meet, one at a time.</summary>
    private sealed record Part(int Thing, int[] Roles);
}
