using System.Diagnostics;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>The counting behind <c>tests/run.sh</c>, on reports made for it: a test run must not be able to look green by accident.</summary>
public sealed class TallyTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("gigrig-tally-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Clean_suites_are_added_up_and_succeed()
    {
        Report("One", exit: 0, passed: 3);
        Report("Two", exit: 0, passed: 2);

        Tally("One", "Two").ShouldEnd("5 passed, 0 failed", exit: 0);
    }

    [Fact]
    public void A_failing_test_fails_the_run()
    {
        Report("One", exit: 0, passed: 3);
        Report("Two", exit: 1, passed: 2, failed: 1);

        Tally("One", "Two").ShouldEnd("5 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void Skipped_tests_are_named_and_do_not_fail()
    {
        Report("One", exit: 0, passed: 1, skipped: 2);

        Tally("One").ShouldEnd("1 passed, 0 failed, 2 skipped", exit: 0);
    }

    [Fact]
    public void A_suite_that_leaves_no_report_is_a_failure()
    {
        File.WriteAllText(Path.Combine(folder.FullName, "One.exit"), "134");

        Tally("One").ShouldEnd("0 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void A_suite_that_never_started_is_a_failure()
    {
        Report("One", exit: 0, passed: 3);

        Tally("One", "Two").ShouldEnd("3 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void A_report_cut_short_is_a_failure()
    {
        Report("One", exit: 139, passed: 3);
        var path = Path.Combine(folder.FullName, "One.xml");
        File.WriteAllText(path, File.ReadAllText(path)[..^40]);

        Tally("One").ShouldEnd("0 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void A_suite_without_a_single_test_is_a_failure()
    {
        Report("One", exit: 0, passed: 0);

        Tally("One").ShouldEnd("0 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void A_crash_after_a_clean_report_is_a_failure()
    {
        Report("One", exit: 134, passed: 3);

        Tally("One").ShouldEnd("3 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void An_error_outside_the_tests_is_a_failure()
    {
        Report("One", exit: 1, passed: 3, errors: 1);

        Tally("One").ShouldEnd("3 passed, 1 failed", exit: 1);
    }

    [Fact]
    public void A_run_of_nothing_is_a_failure() => Tally().ShouldEnd("0 passed, 1 failed", exit: 1);

    private void Report(string name, int exit, int passed, int failed = 0, int skipped = 0, int errors = 0)
    {
        var tests = string.Concat(
            Enumerable.Repeat("""<test id="1" name="A &gt; b" result="Pass" time="0" />""", passed)
                .Concat(Enumerable.Repeat("""<test id="2" name="C" result="Fail" time="0"><failure>result="Pass"</failure></test>""", failed))
                .Concat(Enumerable.Repeat("""<test id="3" name="D" result="Skip" time="0" />""", skipped)));
        File.WriteAllText(
            Path.Combine(folder.FullName, name + ".xml"),
            $"""<assemblies><assembly name="{name}.dll" errors="{errors}" failed="{failed}" passed="{passed}" skipped="{skipped}"><collection name="c" passed="{passed}">{tests}</collection></assembly></assemblies>""");
        File.WriteAllText(Path.Combine(folder.FullName, name + ".exit"), $"{exit}\n");
    }

    private Outcome Tally(params string[] suites)
    {
        using var process = Process.Start(new ProcessStartInfo("bash", [Repository.PathOf("tests/tally.sh"), folder.FullName, .. suites])
        {
            RedirectStandardOutput = true,
        })!;
        var lines = process.StandardOutput.ReadToEnd().TrimEnd('\n').Split('\n');
        process.WaitForExit();
        return new(lines[^1], process.ExitCode);
    }

    private sealed record Outcome(string ClosingLine, int Exit)
    {
        public void ShouldEnd(string closingLine, int exit) => Assert.Equal(new(closingLine, exit), this);
    }
}
