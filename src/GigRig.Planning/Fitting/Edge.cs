namespace GigRig.Planning.Fitting;

/// <summary>The corner of <paramref name="To"/> lies at least this much farther along.</summary>
internal readonly record struct Edge(bool IsAlong, int From, int To, int Least)
{
    /// <summary>Less than this much farther along.</summary>
    public Edge Negated() => new(IsAlong, To, From, 1 - Least);

    public bool Narrow(Windows node, ref bool changed)
    {
        var (least, most) = IsAlong ? (node.Left, node.Right) : (node.Front, node.Rear);
        if (least[From] + Least > least[To])
        {
            least[To] = least[From] + Least;
            changed = true;
        }

        if (most[To] - Least < most[From])
        {
            most[From] = most[To] - Least;
            changed = true;
        }

        return least[To] <= most[To] && least[From] <= most[From];
    }
}
