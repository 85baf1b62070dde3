namespace GigRig.Planning.Fitting;

/// <summary>Things as they lie along a strip: where each can start, and how far right of the start of one another must start that comes after it.</summary>
internal sealed class StripThings
{
    private readonly Stance[] stances;

    public StripThings(Surface surface, Stance[] stances, Following following)
    {
        this.stances = stances;
        Width = surface.Width;
        Widths = [.. stances.Select(s => s.Pose.Width)];
        Depths = [.. stances.Select(s => s.Pose.Depth)];
        Left = new int[stances.Length];
        Right = new int[stances.Length];
        Farthest = [.. Widths];
        Distance = new int[stances.Length, stances.Length];
        for (var i = 0; i < stances.Length; i++)
        {
            (Left[i], Right[i], _, _) = Stance.Reach(stances[i].Pose, surface);
            for (var j = 0; j < stances.Length; j++)
            {
                Distance[i, j] = i == j ? 0 : following.Least(stances[i], stances[j]);
                Farthest[i] = Math.Max(Farthest[i], Distance[i, j]);
            }
        }

        LikeBefore = [.. stances.Select((s, i) => Array.FindLastIndex(stances, Math.Max(0, i - 1), i, other => ReferenceEquals(other, s)))];
        if (surface.KeepOuts.Length == 0 && stances.Length > 0 && stances.All(s => s.Pose.Pieces.Length == 1 && s.Pose.Spot is null))
            Halve();
    }

    public int Count => stances.Length;

    /// <summary>Of the strip.</summary>
    public int Width { get; }

    public int[] Widths { get; }

    public int[] Depths { get; }

    /// <summary>The least start of each thing.</summary>
    public int[] Left { get; }

    /// <summary>The greatest start of each thing.</summary>
    public int[] Right { get; }

    /// <summary>From the start of the first to the start of the second, where that starts no farther left.</summary>
    public int[,] Distance { get; }

    /// <summary>For each thing how far right of its start it may keep anything else.</summary>
    public int[] Farthest { get; }

    /// <summary>For each thing the last one before it that is alike; -1 where there is none.</summary>
    public int[] LikeBefore { get; }

    /// <summary>Where nothing tells left from right, the largest thing has its middle in the left half: if not so, then mirrored. Of alike ones that is the first, which stands farthest left.</summary>
    private void Halve()
    {
        var largest = stances.MaxBy(s => s.Pose.Width * s.Pose.Depth);
        var first = Array.FindIndex(stances, s => ReferenceEquals(s, largest));
        Right[first] = Math.Min(Right[first], (Width - Widths[first]) / 2);
    }
}
