namespace GigRig.Planning.Searching;

/// <summary>Tables of the bounds that say most, at the node being looked at. Of each group of bounds a set keeps one.</summary>
internal sealed class Rooms(Room[][] groups)
{
    private readonly Room[] all = [.. groups.SelectMany(room => room)];

    /// <summary>The most that the needs after this step can bring, once this thing is taken too; -1 for none.</summary>
    public long Most(int s, int thing)
    {
        var least = long.MaxValue;
        foreach (var group in groups)
        {
            var most = BoundTable.Never;
            foreach (var room in group)
                most = Math.Max(most, room.Most(s, thing));
            least = Math.Min(least, most);
        }

        return least;
    }

    /// <summary>What the things taken were charged at this step is not still to come.</summary>
    public void Enter(int s, List<int> taken)
    {
        foreach (var room in all)
            room.Enter(s, taken);
    }

    public void Leave(int s, List<int> taken)
    {
        foreach (var room in all)
            room.Leave(s, taken);
    }

    public void Take(int thing, int s, int sign)
    {
        foreach (var room in all)
            room.Take(thing, s, sign);
    }
}
