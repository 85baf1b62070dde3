namespace GigRig.Data;

/// <summary>Reading a stored rig where a page stays a page though it can't be read.</summary>
public static class RigReading
{
    /// <summary>What is being read, and an empty fault; or nothing, and why it can't be read.</summary>
    public static async Task<(T? Found, string Fault)> OrFaultAsync<T>(this Task<T?> reading)
        where T : class
    {
        try
        {
            return (await reading, "");
        }
        catch (UnreadableRigException unreadable)
        {
            return (null, unreadable.Message);
        }
    }
}
