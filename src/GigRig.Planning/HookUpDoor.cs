using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Planning.Explaining;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>Hooks up a given set of devices, or says in numbers why that cannot be.</summary>
internal static class HookUpDoor
{
    public static HookUpAnswer Answer(RigProblem problem, IEnumerable<GearId> devices, IEnumerable<Feed> before, Clock clock)
    {
        var hunger = new Hunger(problem);
        Consumer[] consumers = [.. devices.Distinct().Select(problem.FindDevice).OfType<Device>().Select(hunger.Of).OfType<Consumer>()];
        return hunger.Search.Feed(consumers, clock) switch
        {
            PowerAnswer.Fed fed => new HookUpAnswer.Fed([.. hunger.Search.WithFewestLeads(consumers, fed.Feeds, new PluggedBefore(before), clock)]),
            PowerAnswer.Starved starved when hunger.ListsEveryFeed => Starved(problem, [.. starved.Consumers.Select(i => consumers[i])]),
            _ => new HookUpAnswer.Undecided(),
        };
    }

    private static HookUpAnswer.Starved Starved(RigProblem problem, Consumer[] consumers)
    {
        var draws = consumers.Select(c => $"{problem.NameOf(c.Id)} ({Wants(c)})").ToArray();
        var who = draws.Length == 1 ? $"{draws[0]} cannot be fed" : $"{draws.Listed()} cannot all be fed";
        var total = problem.Supply?.TotalCurrent is { } most ? $" All together give no more than {most}." : "";
        return new([.. consumers.Select(c => c.Id)], $"{who}. {Facts.PowerSentence(problem)}{total}");
    }

    private static string Wants(Consumer consumer)
    {
        var need = consumer.Need;
        var volts = need.Min == need.Max ? $"{need.Min}" : $"{need.Min} to {need.Max}";
        var polarity = need.Type == CurrentType.Dc && need.Polarity == Polarity.Positive ? ", centre positive" : "";
        var headroom = consumer.Draw == need.Current.Value ? "" : $", {consumer.Draw} mA with headroom";
        return $"{volts} {(need.Type == CurrentType.Ac ? "AC" : "DC")}, {need.Current}{headroom}{polarity}";
    }
}
