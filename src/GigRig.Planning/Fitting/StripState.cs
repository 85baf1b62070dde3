namespace GigRig.Planning.Fitting;

/// <summary>A strip filled up to a point: how far right each open thing must start at least, and how much depth is free beyond.</summary>
internal sealed class StripState(int from, int[] reach, (int From, int Free)[] room)
{
    /// <summary>Whether from this state on all can be done that can be done with so much room, from there on and with these starts.</summary>
    public bool IsNoWorseThan(int otherFrom, int[] otherReach, StripRoom otherRoom)
    {
        if (from > otherFrom)
            return false;
        for (var i = 0; i < reach.Length; i++)
        {
            if (reach[i] > otherReach[i])
                return false;
        }

        return otherRoom.IsNoMoreThan(room, otherFrom);
    }
}
