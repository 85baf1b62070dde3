using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Fails with every offender on a line of its own; an assertion on a collection would cut them short.</summary>
internal static class Offenders
{
    public static void None(IEnumerable<string?> found)
    {
        var offenders = found.ToList();
        Assert.True(offenders.Count == 0, $"{offenders.Count} found:{Environment.NewLine}{string.Join(Environment.NewLine, offenders)}");
    }
}
