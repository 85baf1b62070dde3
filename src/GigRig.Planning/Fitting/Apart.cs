namespace GigRig.Planning.Fitting;

/// <summary>Two pieces of different things, and how far apart the corners are when they lie left, right, in front and behind.</summary>
internal readonly record struct Apart(int One, int Other, int LeftOf, int RightOf, int InFront, int Behind, long Weight)
{
    public Edge Edge(int way) => way switch
    {
        0 => new(true, One, Other, LeftOf),
        1 => new(true, Other, One, RightOf),
        2 => new(false, One, Other, InFront),
        _ => new(false, Other, One, Behind),
    };

    public bool Allows(Windows node, int way) => way switch
    {
        0 => node.Left[One] + LeftOf <= node.Right[Other],
        1 => node.Left[Other] + RightOf <= node.Right[One],
        2 => node.Front[One] + InFront <= node.Rear[Other],
        _ => node.Front[Other] + Behind <= node.Rear[One],
    };

    public bool OverlapsAt(Windows node) =>
        node.Left[One] + LeftOf > node.Left[Other]
        && node.Left[Other] + RightOf > node.Left[One]
        && node.Front[One] + InFront > node.Front[Other]
        && node.Front[Other] + Behind > node.Front[One];

    /// <summary>-1: apart for good; else in how many ways they can come apart, and one of them.</summary>
    public int Look(Windows node, out int way)
    {
        way = -1;
        if (node.Right[One] + LeftOf <= node.Left[Other] || node.Right[Other] + RightOf <= node.Left[One]
            || node.Rear[One] + InFront <= node.Front[Other] || node.Rear[Other] + Behind <= node.Front[One])
            return -1;
        var ways = 0;
        for (var w = 0; w < 4; w++)
        {
            if (!Allows(node, w))
                continue;
            ways++;
            way = w;
        }

        return ways;
    }
}
