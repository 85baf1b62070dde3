using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using Xunit;

namespace GigRig.Domain.Tests.Events;

/// <summary>What each night asks for is common practice, no source.</summary>
public sealed class ReadyEventTypesTests
{
    [Fact]
    public void Each_passes_the_checks_of_a_problem() =>
        Assert.All(ReadyEventTypes.All, type => Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(A.Draft() with { Event = type })));

    [Fact]
    public void Each_names_built_in_roles_alone() =>
        Assert.All(
            ReadyEventTypes.All.SelectMany(type => type.Needs.Select(need => need.Role).Concat(type.Sounds.SelectMany(sound => sound.Roles))),
            role => Assert.NotNull(RoleCatalogue.Find(role)));

    [Fact]
    public void A_must_sound_asks_only_for_roles_that_are_must_needs() =>
        Assert.All(ReadyEventTypes.All, type => Assert.All(
            type.Sounds.Where(sound => sound.Level == NeedLevel.Must).SelectMany(sound => sound.Roles),
            role => Assert.Contains(type.Needs, need => need.Level == NeedLevel.Must && role.Meets(need.Role))));
}
