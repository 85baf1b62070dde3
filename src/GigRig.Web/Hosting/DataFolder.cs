namespace GigRig.Web.Hosting;

/// <summary>Where the library is kept: <c>GIGRIG_DATA</c>, or <c>gigrig</c> in the user's own data folder.</summary>
internal static class DataFolder
{
    public const string Key = "GIGRIG_DATA";

    public static string Of(IConfiguration configuration)
    {
        if (configuration[Key] is { Length: > 0 } chosen)
            return Path.GetFullPath(chosen);
        return OwnFolder() is { Length: > 0 } own
            ? Path.Combine(own, "gigrig")
            : throw new StartRefusedException($"Not started: this user has no data folder of its own. Set {Key} to a folder that may be written to.");
    }

    private static string OwnFolder()
    {
        try
        {
            return Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A home that is named and may not be made: users of services often have one.
            return "";
        }
    }
}
