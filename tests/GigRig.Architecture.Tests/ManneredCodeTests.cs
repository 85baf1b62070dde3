using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Habits of the house that a scan can see.</summary>
public sealed partial class ManneredCodeTests
{
    private const int MostLines = 250;
    private const int UsualLines = 150;

    [Fact]
    public void No_folder_is_a_drawer_for_anything()
    {
        string[] drawers = ["Common", "Helpers", "Helper", "Core", "Utils", "Utilities", "Managers", "Misc"];

        Offenders.None(
            Repository.Files("src").Concat(Repository.Files("tests"))
                .Select(Repository.Relative)
                .Where(path => path.Split('/').SkipLast(1).Any(folder => drawers.Contains(folder, StringComparer.OrdinalIgnoreCase))));
    }

    [Fact]
    public void No_file_is_longer_than_a_reader_can_hold() =>
        Offenders.None(SourceFile.Code("src").Concat(SourceFile.Code("tests")).Where(file => file.Lines.Length > MostLines).Select(file => $"{file.Path}: {file.Lines.Length} lines"));

    [Fact]
    public void Nine_files_in_ten_are_short()
    {
        var lengths = SourceFile.Code("src").Select(file => file.Lines.Length).Order().ToList();

        Assert.InRange(lengths[lengths.Count * 9 / 10], 1, UsualLines);
    }

    [Fact]
    public void Nobody_reads_the_clock_of_the_machine() =>
        Offenders.None(SourceFile.Code("src").SelectMany(file => file.FindInCode(Clock())));

    [Fact]
    public void Nobody_draws_unseeded_numbers() =>
        Offenders.None(SourceFile.Code("src").SelectMany(file => file.FindInCode(Chance())));

    [Fact]
    public void The_domain_neither_waits_nor_measures_nor_touches_the_disk() =>
        Offenders.None(SourceFile.Code("src/GigRig.Domain").SelectMany(file => file.FindInCode(Outside())));

    [Fact]
    public void No_method_runs_away_without_being_awaited() =>
        Offenders.None(
            from type in OurAssemblies.All.SelectMany(assembly => assembly.GetTypes())
            from method in type.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where method.ReturnType == typeof(void) && method.GetCustomAttribute<AsyncStateMachineAttribute>() is not null
            select $"{type.FullName}.{method.Name}");

    [GeneratedRegex(@"\bDateTime(Offset)?\.(Now|UtcNow|Today)\b")]
    private static partial Regex Clock();

    [GeneratedRegex(@"\bnew Random\(\)|\bRandom\.Shared\b")]
    private static partial Regex Chance();

    [GeneratedRegex(@"\b(TimeProvider|Stopwatch|Environment|File|Directory|Thread|Guid\.NewGuid|Random|HttpClient)\b(?!\w)[.(]|\bTask\.(Run|Delay)\b|\bConsole\.")]
    private static partial Regex Outside();
}
