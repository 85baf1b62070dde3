namespace GigRig.Planning.Fitting;

/// <summary>The least and most x and y of each corner.</summary>
internal sealed class Windows(int count)
{
    public int[] Left { get; private init; } = new int[count];

    public int[] Right { get; private init; } = new int[count];

    public int[] Front { get; private init; } = new int[count];

    public int[] Rear { get; private init; } = new int[count];

    public Windows Copy() => new(0) { Left = [.. Left], Right = [.. Right], Front = [.. Front], Rear = [.. Rear] };
}
