namespace GigRig.Architecture.Tests;

/// <summary>The source tree these tests were built from.</summary>
internal static class Repository
{
    private static readonly string[] NotOurs = ["bin", "obj", ".git", "TestResults", "wwwroot", "node_modules"];

    public static string Root { get; } = FindRoot();

    public static string PathOf(string relative) => Path.Combine(Root, relative);

    public static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    /// <summary>Every file we wrote below a folder, without what is built or fetched.</summary>
    public static IEnumerable<string> Files(string folder, string pattern = "*") =>
        Directory.EnumerateFiles(PathOf(folder), pattern, SearchOption.AllDirectories)
            .Where(path => !Relative(path).Split('/').Any(NotOurs.Contains))
            .Order(StringComparer.Ordinal);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "GigRig.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException($"No GigRig.sln above {AppContext.BaseDirectory}.");
    }
}
