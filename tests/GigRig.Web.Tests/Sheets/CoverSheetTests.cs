using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class CoverSheetTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Rated("delay", 4).Rated("reverb", 2), A.Device("spare").Rated("pitch", 5).Rated("boost", 3))
        .Through(A.Amp().WithChannels("clean", "drive.high"))
        .Needing("drive").Wanting("delay", 20).Wanting("tuner")
        .Playing("Solo", "drive", "delay").WantingSound("Glass", 5, "clean", "drive")
        .Problem();

    private static readonly Rig Rig = A.Rig().Placing("echo", 0, 0).Placing("spare", 200, 0);

    [Fact]
    public void Each_need_says_how_much_it_matters_and_who_does_it() =>
        Assert.Equal(
            [("Drive", "must", "amp", 3), ("Delay", "want, weight 20", "echo", 4), ("Tuner", "want, weight 10", "", 0)],
            CoverSheet.Of(Problem, Rig).Roles.Select(line => (line.Role, line.Level, line.ThingName, line.Rating)));

    [Fact]
    public void A_sound_says_who_plays_each_part_at_that_moment()
    {
        var solo = CoverSheet.Of(Problem, Rig).Sounds[0];

        Assert.Equal(("Solo", "must", "Drive + Delay"), (solo.Name, solo.Level, solo.RoleWords));
        Assert.Equal([("Drive", "amp"), ("Delay", "echo")], solo.Parts.Select(part => (part.Role, part.ThingName)));
    }

    [Fact]
    public void Who_does_two_roles_of_a_sound_is_named_once()
    {
        var wash = (Problem.Draft with { Event = A.Draft().Playing("Wash", "clean", "delay", "reverb").Event }).Problem();

        Assert.Equal("amp (Clean sound), echo (Delay + Reverb)", CoverSheet.Of(wash, Rig).Sounds[0].Players);
    }

    [Fact]
    public void A_role_of_the_owners_own_goes_by_its_title()
    {
        var problem = A.Draft().With(A.Device("box").Doing("bird-song")).Needing("bird-song").Playing("Dawn", "bird-song").Problem().Draft with { Roles = [new(new("bird-song"), "Bird song")] };

        var sheet = CoverSheet.Of(problem.Problem(), A.Rig().Placing("box", 0, 0));

        Assert.Equal("Bird song", sheet.Roles[0].Role);
        Assert.Equal(("Bird song", "Bird song"), (sheet.Sounds[0].RoleWords, sheet.Sounds[0].Parts[0].Role));
    }

    [Fact]
    public void A_sound_that_needs_two_channels_at_once_has_no_parts() => Assert.Empty(CoverSheet.Of(Problem, Rig).Sounds[1].Parts);

    [Fact]
    public void A_thing_that_does_nothing_asked_for_says_what_it_does_best() =>
        Assert.Equal("Pitch", CoverSheet.RolesOf(Problem, Coverage.Of(Problem, Rig), new("spare"), Problem.FindDevice(new("spare"))!.Functions));
}
