using Xunit;

namespace GigRig.Architecture.Tests;

/// <summary>What a part shows to the others is as little as they need.</summary>
public sealed class OpenDoorsTests
{
    [Fact]
    public void The_planner_has_one_door() =>
        Assert.Equal(
            ["GigRig.Planning.PlanMemory", "GigRig.Planning.PlannerOptions", "GigRig.Planning.RigPlanner"],
            OurAssemblies.Planning.GetExportedTypes().Select(type => type.FullName!).Order(StringComparer.Ordinal));

    [Fact]
    public void The_tables_are_nobodys_business_but_the_stores() =>
        Offenders.None(
            OurAssemblies.Data.GetExportedTypes()
                .Where(type => type.Namespace is "GigRig.Data.Rows" or "GigRig.Data.Configurations" or "GigRig.Data.Start")
                .Select(type => type.FullName));
}
