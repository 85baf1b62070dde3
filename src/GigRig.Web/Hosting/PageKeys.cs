using Microsoft.AspNetCore.DataProtection;

namespace GigRig.Web.Hosting;

/// <summary>The keys that open pages and cookies are sealed with. Without them no page can be shown, so a start makes sure of them.</summary>
internal static class PageKeys
{
    /// <summary>Keys outlive a restart, so that open pages and cookies do too.</summary>
    public static IServiceCollection AddPageKeys(this IServiceCollection services, string dataFolder)
    {
        services.AddDataProtection().SetApplicationName("GigRig").PersistKeysToFileSystem(new DirectoryInfo(Folder(dataFolder)));
        return services;
    }

    public static string Folder(string dataFolder) => Path.Combine(dataFolder, "keys");

    /// <exception cref="StartRefusedException">They can't be read, or none can be made.</exception>
    public static void Require(IDataProtectionProvider keys, string dataFolder)
    {
        try
        {
            keys.CreateProtector("start").Protect([1]);
        }
        // A damaged file, a full disk and missing rights each come in a type of their own.
        catch (Exception fault)
        {
            throw new StartRefusedException(
                $"Not started: the keys of open pages in {Folder(dataFolder)} can't be read or made: {fault.GetBaseException().Message} "
                + "Check the free space and the rights there. That folder may be emptied; it costs a reload of open pages.",
                fault);
        }
    }
}
