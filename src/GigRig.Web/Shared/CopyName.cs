namespace GigRig.Web.Shared;

/// <summary>What a copy is called.</summary>
public static class CopyName
{
    private const int Longest = 200;

    /// <summary><c>Jam (copy)</c>, or the first of <c>Jam (copy 2)</c> … that is not taken; the name itself where there is no room for more.</summary>
    public static string Of(string name, Func<string, bool> isTaken)
    {
        var copy = $"{name} (copy)";
        for (var number = 2; isTaken(copy); number++)
            copy = $"{name} (copy {number})";
        return copy.Length <= Longest ? copy : name;
    }
}
