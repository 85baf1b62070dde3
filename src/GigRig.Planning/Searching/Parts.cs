using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning.Searching;

/// <summary>Says of part of a set, quickly, that it can never stand or never be fed. What is alike is asked about once.</summary>
internal sealed class Parts
{
    private readonly Question question;
    private readonly PlannerOptions options;
    private readonly Fitter fitter;
    private readonly Clock clock;
    private readonly char[] shapes;
    private readonly char[] consumers;
    private readonly Dictionary<string, bool> stands = new(StringComparer.Ordinal);
    private readonly Dictionary<string, bool> fed = new(StringComparer.Ordinal);

    public Parts(Question question, PlannerOptions options, Fitter fitter, Clock clock)
    {
        (this.question, this.options, this.fitter, this.clock) = (question, options, fitter, clock);

        // Where currents add up, consumers are alike only if they draw the same.
        var adds = question.Problem.Adapters.Splitter > 0 || question.Problem.Supply?.TotalCurrent is not null;
        shapes = Numbered(c => c.Shape.Key);
        consumers = Numbered(c => c.Consumer is { } fed ? adds ? $"{fed.Draw} {fed.Key}" : fed.Key : "");
    }

    public bool MayDo(IReadOnlyList<int> things)
    {
        int[] devices = [.. things.Where(t => t < shapes.Length)];
        var key = KeyOf(devices, shapes);
        if (!stands.TryGetValue(key, out var may))
            stands[key] = may = fitter.Rows.Admits(question.ShapesOf([.. devices.Select(i => question.Candidates[i])]));
        if (!may)
            return false;
        key = KeyOf(devices, consumers);
        if (!fed.TryGetValue(key, out may))
            fed[key] = may = question.Power.Feed([.. devices.Select(i => question.Candidates[i].Consumer).OfType<Consumer>()], clock, options.PowerStates) is not PowerAnswer.Starved;
        return may;
    }

    private char[] Numbered(Func<Candidate, string> kind)
    {
        var numbers = new Dictionary<string, char>(StringComparer.Ordinal);
        return [.. question.Candidates.Select(c =>
        {
            var key = kind(c);
            if (!numbers.TryGetValue(key, out var number))
                numbers[key] = number = (char)(numbers.Count + 1);
            return number;
        })];
    }

    private static string KeyOf(int[] devices, char[] numbers) => string.Create(devices.Length, (devices, numbers), (chars, from) =>
    {
        for (var i = 0; i < chars.Length; i++)
            chars[i] = from.numbers[from.devices[i]];
        chars.Sort();
    });
}
