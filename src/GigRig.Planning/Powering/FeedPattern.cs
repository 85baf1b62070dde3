using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>One way to feed one device on its own: an outlet, or several joined.</summary>
/// <param name="Classes">The class of each outlet used, in order.</param>
/// <param name="Settings">The millivolts set at each of them.</param>
internal sealed record FeedPattern(int[] Classes, int[] Settings, OutletJoin Join, bool Reversed)
{
    public int ParallelLeads => Join == OutletJoin.Parallel ? Classes.Length - 1 : 0;

    public int SeriesLeads => Join == OutletJoin.Series ? 1 : 0;

    public int ReverseLeads => Reversed ? 1 : 0;

    /// <summary>Every adapter lead but splitters, which are counted where outlets are shared.</summary>
    public int JoinLeads => ReverseLeads + ParallelLeads + SeriesLeads;

    /// <summary>In series every outlet carries the whole draw.</summary>
    public int LoadTimes => Join == OutletJoin.Series ? Classes.Length : 1;

    public int Volts => Join == OutletJoin.Series ? Settings.Sum() : Settings[0];

    public int Uses(int outletClass) => Classes.Count(c => c == outletClass);

    public string Key => $"{Join} {string.Join(',', Classes)} at {string.Join(',', Settings)} {Reversed}";
}
