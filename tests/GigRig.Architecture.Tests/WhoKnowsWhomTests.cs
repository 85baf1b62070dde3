using System.Reflection;
using System.Xml.Linq;
using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>Which part may know which. Read from what the compiler recorded and from what the project files ask for.</summary>
public sealed class WhoKnowsWhomTests
{
    [Fact]
    public void Domain_knows_nothing_but_the_framework() =>
        Offenders.None(OurAssemblies.PackagesAndProjectsOf(OurAssemblies.Domain));

    [Fact]
    public void Domain_asks_for_no_package_and_no_project() => Offenders.None(AskedForBy("GigRig.Domain"));

    [Fact]
    public void Planning_knows_the_domain_and_the_solver_alone() =>
        ShouldKnowOnly(OurAssemblies.Planning, "GigRig.Domain", "Google.OrTools", "Google.Protobuf");

    [Fact]
    public void Data_knows_the_domain_and_the_database_alone() =>
        ShouldKnowOnly(OurAssemblies.Data, "GigRig.Domain", "Microsoft.EntityFrameworkCore", "Microsoft.Data.Sqlite", "SQLitePCLRaw", "Microsoft.Extensions.");

    [Theory]
    [InlineData("GigRig.Domain")]
    [InlineData("GigRig.Data")]
    [InlineData("GigRig.Web")]
    public void Only_planning_knows_the_solver(string project)
    {
        var known = OurAssemblies.PackagesAndProjectsOf(Assembly.Load(project)).Concat(AskedForBy(project));

        Offenders.None(known.Where(name => name.StartsWith("Google.", StringComparison.Ordinal)));
    }

    [Fact]
    public void Only_the_web_part_knows_all_of_ours() =>
        Assert.Equal(
            ["GigRig.Data", "GigRig.Domain", "GigRig.Planning"],
            AskedForBy("GigRig.Web").Where(name => name.StartsWith("GigRig.", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

    private static void ShouldKnowOnly(Assembly assembly, params string[] allowed) =>
        Offenders.None(OurAssemblies.PackagesAndProjectsOf(assembly).Where(name => !allowed.Any(start => name.StartsWith(start, StringComparison.Ordinal))));

    private static IEnumerable<string> AskedForBy(string project) =>
        XDocument.Load(Repository.PathOf($"src/{project}/{project}.csproj"))
            .Descendants()
            .Where(element => element.Name.LocalName is "PackageReference" or "ProjectReference")
            .Select(element => Path.GetFileName((string)element.Attribute("Include")!).Replace(".csproj", "", StringComparison.Ordinal));
}
