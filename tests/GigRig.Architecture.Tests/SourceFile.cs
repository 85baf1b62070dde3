using System.Text.RegularExpressions;

namespace GigRig.Architecture.Tests;

/// <summary>A file we wrote, read line by line.</summary>
internal sealed record SourceFile(string Path, string[] Lines)
{
    /// <summary>C# and Razor below a folder, without migrations, which a tool writes.</summary>
    public static IEnumerable<SourceFile> Code(string folder) =>
        Repository.Files(folder)
            .Where(path => System.IO.Path.GetExtension(path) is ".cs" or ".razor" && !path.Contains("/Migrations/", StringComparison.Ordinal))
            .Select(Read);

    public static SourceFile Read(string path) => new(Repository.Relative(path), File.ReadAllLines(path));

    /// <summary>Where the pattern occurs, as <c>path:line: text</c>.</summary>
    public IEnumerable<string> Find(Regex pattern) =>
        Lines.Select((text, index) => (text, number: index + 1))
            .Where(line => pattern.IsMatch(line.text))
            .Select(line => $"{Path}:{line.number}: {line.text.Trim()}");

    /// <summary>As <see cref="Find"/>, leaving comments out.</summary>
    public IEnumerable<string> FindInCode(Regex pattern) =>
        (this with { Lines = [.. Lines.Select(line => line.TrimStart().StartsWith("//", StringComparison.Ordinal) ? "" : line)] }).Find(pattern);
}
