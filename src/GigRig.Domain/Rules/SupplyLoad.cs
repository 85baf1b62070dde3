using GigRig.Domain.Formulas;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules;

/// <summary>What one outlet, or several joined ones, carry.</summary>
/// <param name="Outlets">One, or all of a join in the feed's order.</param>
/// <param name="Settings">The voltages that are set, each once, or one for each outlet of a join.</param>
/// <param name="Devices">Fed from here, in the hook-up's order.</param>
/// <param name="Draw">Of all of them, headroom included.</param>
/// <param name="Gives">What can be drawn.</param>
public sealed record OutletLoad(ValueList<Outlet> Outlets, OutletJoin Join, ValueList<Millivolts> Settings, ValueList<GearId> Devices, Milliamps Draw, Milliamps Gives)
{
    /// <summary>Below zero where more is asked than can be drawn.</summary>
    public Milliamps Left => Gives - Draw;

    /// <summary>What arrives at the devices.</summary>
    public Millivolts Volts => JoinedOutlets.Volts(Join, Settings);

    internal static OutletLoad Alone(Outlet outlet, IReadOnlyCollection<Connection> connections) => new(
        [outlet],
        OutletJoin.Single,
        connections.SelectMany(connection => connection.Feed.Settings).Distinct().ToValueList(),
        connections.Select(connection => connection.Device.Id).ToValueList(),
        connections.Aggregate(Milliamps.Zero, (sum, connection) => sum + connection.Draw),
        outlet.Current);

    internal static OutletLoad Joined(Connection connection) => new(
        connection.Outlets,
        connection.Feed.Join,
        connection.Feed.Settings,
        [connection.Device.Id],
        connection.Draw,
        JoinedOutlets.Current(connection.Feed.Join, connection.Outlets.Select(outlet => outlet.Current)));
}

/// <summary>What a hook-up asks of the supply, outlet by outlet and in all. Empty without a supply.</summary>
/// <param name="Outlets">Those in use, in the supply's order.</param>
/// <param name="Unused">The others.</param>
/// <param name="Taken">Of the supply as a whole: a pair in series gives its current twice.</param>
/// <param name="Gives">The supply's total, or the sum of its outlets where none is said.</param>
public sealed record SupplyLoad(ValueList<OutletLoad> Outlets, ValueList<Outlet> Unused, Milliamps Taken, Milliamps Gives)
{
    public Milliamps Left => Gives - Taken;

    public static SupplyLoad Of(RigProblem problem, Rig rig)
    {
        var outlets = (problem.Supply?.Outlets ?? []).ToList();
        var connections = Connection.In(problem, rig);
        var loads = connections.Where(connection => connection.Joined).Select(OutletLoad.Joined)
            .Concat(Connection.ByOutlet(problem, rig)
                .Select(pair => (pair.Outlet, Singles: pair.Connections.Where(connection => !connection.Joined).ToList()))
                .Where(pair => pair.Singles.Count > 0)
                .Select(pair => OutletLoad.Alone(pair.Outlet, pair.Singles)))
            .OrderBy(load => outlets.IndexOf(load.Outlets[0]))
            .ToValueList();
        return new(
            loads,
            outlets.Except(loads.SelectMany(load => load.Outlets)).ToValueList(),
            connections.Aggregate(Milliamps.Zero, (sum, connection) => sum + connection.Draw + (connection.Feed.Join == OutletJoin.Series ? connection.Draw : Milliamps.Zero)),
            problem.Supply?.TotalCurrent ?? outlets.Aggregate(Milliamps.Zero, (sum, outlet) => sum + outlet.Current));
    }
}
