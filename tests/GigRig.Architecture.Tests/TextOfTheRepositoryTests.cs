using System.Text.RegularExpressions;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>What stands in the repository stands on its own: it points at nothing that a reader of it does not have.</summary>
public sealed partial class TextOfTheRepositoryTests
{
    private static readonly string[] Binary = [".png", ".woff2", ".woff", ".ttf", ".ico", ".db", ".pdf"];

    private static readonly IReadOnlyList<SourceFile> Texts = [.. Repository.Files("").Where(path => !Binary.Contains(Path.GetExtension(path))).Select(SourceFile.Read)];

    [Fact]
    public void No_text_names_a_folder_of_one_machine() =>
        Offenders.None(Texts.SelectMany(file => file.Find(MachinePath())));

    [Fact]
    public void Every_document_that_is_named_exists()
    {
        var names = Texts.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);

        Offenders.None(
            from file in Texts
            from line in file.Lines
            from Match match in DocumentName().Matches(line)
            let named = match.Value
            where !names.Any(name => ("/" + name).EndsWith("/" + named.TrimStart('.', '/'), StringComparison.Ordinal))
            select $"{file.Path}: {named}");
    }

    [Fact]
    public void Every_link_in_a_document_leads_somewhere() =>
        Offenders.None(
            from file in Texts.Where(file => file.Path.EndsWith(".md", StringComparison.Ordinal))
            from line in file.Lines
            from Match match in Link().Matches(line)
            let target = Path.Combine(Repository.Root, Path.GetDirectoryName(file.Path)!, match.Groups[1].Value)
            where !File.Exists(target) && !Directory.Exists(target)
            select $"{file.Path}: {match.Groups[1].Value}");

    [Fact]
    public void The_index_lists_every_document()
    {
        var index = File.ReadAllText(Repository.PathOf("docs/README.md"));

        Offenders.None(
            Directory.EnumerateFiles(Repository.PathOf("docs"), "*.md").Select(path => Path.GetFileName(path))
                .Where(name => name != "README.md" && !index.Contains($"]({name})", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_decision_has_a_number_of_its_own() =>
        Offenders.None(
            Repository.Files("docs/decisions", "*.md").Select(path => Path.GetFileName(path))
                .GroupBy(name => name[..4])
                .Where(same => same.Count() > 1 || !same.Key.All(char.IsAsciiDigit))
                .Select(same => string.Join(", ", same)));

    [GeneratedRegex(@"(?<![\w.~}])/(work|home|root|Users|mnt|tmp)/\w")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"[\w./-]+\.md\b")]
    private static partial Regex DocumentName();

    /// <summary>The target of a Markdown link or picture within the repository, without its anchor.</summary>
    [GeneratedRegex(@"\]\((?!https?:|#|mailto:)([^)#\s]+)")]
    private static partial Regex Link();
}
