using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

public sealed class DigitalNoiseTests
{
    /// <summary>A row of the verdicts a power check should give, computed from common practice: 200 mA feed 5, 30, 55 and 65 mA, and the sharing is worth a warning.</summary>
    [Fact]
    public void Digital_and_drive_share_a_return_that_fits_and_is_worth_a_warning()
    {
        var problem = A.Draft()
            .With(Box("fuzz", 5, "drive.fuzz"), Box("tuner", 30, "tuner"), Box("echo", 55, "delay"), Box("hall", 65, "reverb"))
            .FedBy(A.Outlet("1").Giving(200).Sharing("s"), A.Outlet("2").Sharing("s")).OwningAdapters(splitter: 3).Problem();
        var rig = problem.Devices.Aggregate(A.Rig(), (rig, device) => rig.Placing(device.Id.Value, 100 * rig.Placements.Count, 0).Feeding(device.Id.Value, "1"));

        Assert.Empty(RuleBook.Check(problem, rig));
        Assert.Equal(new DigitalNoise(["1"], [new("echo"), new("hall")], [new("fuzz")], [new("echo"), new("hall")]), Assert.Single(DigitalNoise.Of(problem, rig)));
    }

    [Fact]
    public void Two_outlets_of_one_group_are_one_return()
    {
        var problem = Two(A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s"));

        Assert.Equal(["1", "2"], Assert.Single(DigitalNoise.Of(problem, OnBoth)).Outlets);
    }

    [Fact]
    public void It_is_told_in_one_sentence_with_what_was_guessed_until_it_is_silenced()
    {
        var problem = Two(A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s"));

        var heard = Assert.Single(ChainAdvice.Of(problem, OnBoth), heard => heard.Advice.Id == AdviceIds.DigitalNoise);
        Assert.Equal(
            "echo (digital) and fuzz share a return at outlets 1, 2. Clock noise can whine through a drive that way; if it does, give one of them an isolated outlet."
            + " That echo is digital is a guess from role and draw; it can be said on the page of the device.",
            heard.Advice.Sentence);
        Assert.Null(heard.Silenced);
        Assert.NotNull(Assert.Single(
            ChainAdvice.Of(problem, OnBoth with { Silenced = [new(AdviceIds.DigitalNoise, heard.Advice.Culprits, "I hear none")] }),
            again => again.Advice.Id == AdviceIds.DigitalNoise).Silenced);
    }

    [Fact]
    public void Isolated_outlets_are_two_returns() => Assert.Empty(DigitalNoise.Of(Two(A.Outlet("1"), A.Outlet("2")), OnBoth));

    [Fact]
    public void Two_groups_are_two_returns() => Assert.Empty(DigitalNoise.Of(
        Two(A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("t"), A.Outlet("3").Sharing("s"), A.Outlet("4").Sharing("t")), OnBoth));

    [Theory]
    [InlineData("delay", 49, null, false)]
    [InlineData("delay", 50, null, true)]
    [InlineData("looper", 170, null, true)]
    [InlineData("boost", 300, null, false)]
    [InlineData("delay", 300, false, false)]
    [InlineData("boost", 5, true, true)]
    public void What_the_owner_says_counts_before_what_is_guessed(string role, int draw, bool? said, bool digital)
    {
        var device = Box("box", draw, role);

        Assert.Equal(digital, DigitalNoise.IsDigital(device with { Power = device.Power! with { Digital = said } }));
    }

    [Fact]
    public void A_digital_drive_is_no_company_for_itself()
    {
        var modeller = Box("modeller", 300, "drive.high");
        var problem = A.Draft().With(modeller with { Power = modeller.Power! with { Digital = true } }).FedBy(A.Outlet("1").Giving(500)).Problem();

        Assert.Empty(DigitalNoise.Of(problem, A.Rig().Feeding("modeller", "1")));
    }

    private static Rig OnBoth => A.Rig().Feeding("echo", "1").Feeding("fuzz", "2");

    private static RigProblem Two(params Outlet[] outlets) => A.Draft().With(Box("echo", 60, "delay"), Box("fuzz", 5, "drive.fuzz")).FedBy(outlets).Problem();

    private static Device Box(string id, int draw, string role) => A.Device(id).Sized(60, 100).Drawing(draw).Doing(role);
}
