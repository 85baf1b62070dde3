using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class PinsTests
{
    [Fact]
    public async Task A_pinned_amp_comes_along_as_it_does_anyway() =>
        await Ask.Best(A.Draft().Through(A.Amp()).Pinning("amp"));
}
