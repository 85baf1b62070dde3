namespace GigRig.Planning.Powering;

/// <summary>What the consumers from one of them on ask for together.</summary>
/// <param name="WithoutBatteries">Leaving out those that may run on a battery.</param>
internal sealed record Demand(int Count, long Total, long WithoutBatteries, int Least)
{
    public static Demand[] From(Consumer[] consumers)
    {
        var demands = new Demand[consumers.Length];
        var behind = new Demand(0, 0, 0, int.MaxValue);
        for (var i = consumers.Length - 1; i >= 0; i--)
        {
            var (need, draw) = (consumers[i].Need, consumers[i].Draw);
            behind = demands[i] = new(behind.Count + 1, behind.Total + draw, behind.WithoutBatteries + (need.Battery ? 0 : draw), Math.Min(behind.Least, draw));
        }

        return demands;
    }
}
