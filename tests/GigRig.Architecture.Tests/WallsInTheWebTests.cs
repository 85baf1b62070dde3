using System.Text.RegularExpressions;
using NetArchTest.Rules;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Inside the web part: features stand side by side, and what strangers see is fenced off.</summary>
public sealed partial class WallsInTheWebTests
{
    private const string Features = "GigRig.Web.Features.";

    public static TheoryData<string> FeatureNames { get; } = new(
        OurAssemblies.Web.GetTypes()
            .Select(type => type.Namespace ?? "")
            .Where(name => name.StartsWith(Features, StringComparison.Ordinal))
            .Select(name => name[Features.Length..].Split('.')[0])
            .Distinct()
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(FeatureNames))]
    public void A_feature_never_reaches_into_another(string feature)
    {
        var others = FeatureNames.Select(row => Features + row.Data).Where(name => name != Features + feature).ToArray();

        ShouldNotKnow(Features + feature, others);
    }

    // Hosting puts the parts together and so knows them all.
    [Fact]
    public void What_features_share_knows_no_feature()
    {
        var shared = OurAssemblies.Web.GetTypes()
            .Select(type => type.Namespace?.Split('.') ?? [])
            .Where(name => name is ["GigRig", "Web", not ("Features" or "Hosting"), ..])
            .Select(name => string.Join('.', name.Take(3)))
            .Distinct()
            .ToList();

        Assert.Contains("GigRig.Web.Drawing", shared);
        foreach (var home in shared)
            ShouldNotKnow(home, [.. FeatureNames.Select(row => Features + row.Data)]);
    }

    [Fact]
    public void The_shared_pages_never_see_the_planner_or_a_store() =>
        ShouldNotKnow(
            Features + "Share",
            ["GigRig.Planning", .. OurAssemblies.Data.GetTypes().Where(type => type.IsPublic && type.Name.EndsWith("Store", StringComparison.Ordinal)).Select(type => type.FullName!)]);

    [Fact]
    public void One_adapter_for_each_diagram_alone_names_the_diagram_library() =>
        Assert.Equal(
            ["src/GigRig.Web/Drawing/ChainDiagramAdapter.cs"],
            SourceFile.Code("src").Where(file => file.FindInCode(DiagramLibrary()).Any()).Select(file => file.Path));

    private static void ShouldNotKnow(string home, string[] strangers)
    {
        if (strangers.Length == 0)
            return;
        var knowing = Types.InAssembly(OurAssemblies.Web).That().ResideInNamespace(home).And().HaveDependencyOnAny(strangers).GetTypes();
        Offenders.None(knowing.Select(type => $"{type.FullName} knows one of {string.Join(", ", strangers)}"));
    }

    // The style sheets and the script of the package are linked by the page frame under its package name.
    [GeneratedRegex(@"(?<!Z\.)\bBlazor\.Diagrams\b")]
    private static partial Regex DiagramLibrary();
}
