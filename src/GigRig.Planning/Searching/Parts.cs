using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning.Searching;

/// <summary>
/// Says of part of a set, quickly, that it can never stand or never be fed. What is alike is asked about once. A larger part can be turned only in ways in which
/// the smaller part before it could be, which leaves few to look at.
/// </summary>
internal sealed class Parts
{
    /// <summary>With more ways of turning than this open, only rows are asked.</summary>
    private const int MostTurned = 64;

    private readonly Question question;
    private readonly PlannerOptions options;
    private readonly Fitter fitter;
    private readonly Clock clock;
    private readonly Dictionary<string, char> numbers = new(StringComparer.Ordinal);
    private readonly WaysToStand ways;
    private readonly Dictionary<(int Thing, Posture Posture), (Shape Shape, char Number)> inPosture = [];
    private readonly char[] consumers;
    private readonly Dictionary<string, Stance[][]?> turned = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> rows = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> fed = new(StringComparer.Ordinal);
    private char[] shapes;
    private Shape[] standing;

    public Parts(Question question, PlannerOptions options, Fitter fitter, WaysToStand ways, Clock clock)
    {
        (this.question, this.options, this.fitter, this.ways, this.clock) = (question, options, fitter, ways, clock);

        // Where currents add up, consumers are alike only if they draw the same.
        var adds = question.Problem.Adapters.Splitter > 0 || question.Problem.Supply?.TotalCurrent is not null;
        consumers = [.. question.Candidates.Select(c => NumberOf(c.Consumer is { } eats ? adds ? $"{eats.Draw} {eats.Key}" : eats.Key : ""))];
        (shapes, standing) = ([], []);
        Stand([.. Enumerable.Repeat(Posture.Any, ways.Things)]);
        AreRows = fitter.Turning.IsRow(question.Candidates.Select(c => c.Shape));
        turned[""] = question.SupplyShape is { } supply ? [.. fitter.Turning.WaysOf(supply).Select(s => (Stance[])[s])] : [[]];
    }

    /// <summary>Whether some things are too deep for the board to stand behind one another: only then does the width say much.</summary>
    public bool AreRows { get; }

    /// <summary>From now on things stand like this.</summary>
    public void Stand(Posture[] postures)
    {
        var each = postures.Select((posture, thing) => Standing(thing, posture)).ToArray();
        (shapes, standing) = ([.. each.Select(one => one.Number)], [.. each.Select(one => one.Shape)]);
    }

    /// <summary>As they are to stand; the supply last where it stands among them.</summary>
    public Shape[] ShapesOf(IEnumerable<int> devices) => question.SupplyShape is { } supply ? [.. devices.Select(d => standing[d]), supply] : [.. devices.Select(d => standing[d])];

    /// <param name="things">The last of them was added to a part that may do.</param>
    public bool MayDo(IReadOnlyList<int> things)
    {
        var devices = InOrder(things);
        return (!AreRows || MayStand(devices, things[^1])) && IsFed(devices);
    }

    /// <summary>The ways of turning them all that are not ruled out, in the order of <paramref name="devices"/> with the supply last; null where that is not known.</summary>
    public IReadOnlyList<Stance[]>? TurnedOf(IReadOnlyList<int> devices)
    {
        var inOrder = InOrder(devices);
        if (!turned.TryGetValue(KeyOf(inOrder, shapes), out var ways) || ways is null)
            return null;
        int[] places = [.. devices.Select(d => Array.IndexOf(inOrder, d)), .. question.SupplyShape is null ? [] : new[] { inOrder.Length }];
        return [.. ways.Select(way => (Stance[])[.. places.Select(p => way[p])])];
    }

    private bool MayStand(int[] devices, int last)
    {
        var key = KeyOf(devices, shapes);
        if (!turned.TryGetValue(key, out var ways))
            turned[key] = ways = Turned(devices, last);
        if (ways is not null)
            return ways.Length > 0;
        if (!rows.TryGetValue(key, out var may))
            rows[key] = may = fitter.Rows.Admits(ShapesOf(devices));
        return may;
    }

    private Stance[][]? Turned(int[] devices, int last)
    {
        var place = Array.IndexOf(devices, last);
        if (question.Surface.SwitchSpacing > 0 || !turned.TryGetValue(KeyOf([.. devices.Where(d => d != last)], shapes), out var before) || before is null)
            return null;
        var added = fitter.Turning.WaysOf(standing[last]);
        return before.Length * added.Length > MostTurned ? null :
        [
            .. before.SelectMany(_ => added, (rest, one) => (Stance[])[.. rest[..place], one, .. rest[place..]]).Where(all => !fitter.Turning.Refutes(all, clock)),
        ];
    }

    private bool IsFed(int[] devices)
    {
        var key = KeyOf(devices, consumers);
        if (!fed.TryGetValue(key, out var may))
            fed[key] = may = question.Power.Feed([.. devices.Select(i => question.Candidates[i].Consumer).OfType<Consumer>()], clock, options.PowerStates) is not PowerAnswer.Starved;
        return may;
    }

    /// <summary>Devices of like shape next to each other, so that sets that look alike are in like order.</summary>
    private int[] InOrder(IEnumerable<int> things) => [.. things.Where(t => t < shapes.Length).OrderBy(t => shapes[t]).ThenBy(t => t)];

    private (Shape Shape, char Number) Standing(int thing, Posture posture)
    {
        if (!inPosture.TryGetValue((thing, posture), out var known))
        {
            var shape = question.Candidates[thing].Shape;
            Stance[] some = [.. ways.Of(thing, posture)];
            var standing = some.Length == 0 || some.Length == fitter.Turning.WaysOf(shape).Length ? shape : fitter.Turning.Narrowed(some);
            inPosture[(thing, posture)] = known = (standing, NumberOf(standing.Key));
        }

        return known;
    }

    private char NumberOf(string key)
    {
        if (!numbers.TryGetValue(key, out var number))
            numbers[key] = number = (char)(numbers.Count + 1);
        return number;
    }

    private static string KeyOf(int[] devices, char[] numbers) => string.Create(devices.Length, (devices, numbers), (chars, from) =>
    {
        for (var i = 0; i < chars.Length; i++)
            chars[i] = from.numbers[from.devices[i]];
        chars.Sort();
    });
}
