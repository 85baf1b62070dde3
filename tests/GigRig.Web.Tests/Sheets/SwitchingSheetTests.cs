using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class SwitchingSheetTests
{
    private static readonly RigProblemDraft Draft = A.Draft()
        .With(A.Device("both").Doing("delay", "reverb"), A.Device("push").Doing("boost"))
        .Through(A.Amp().WithChannels("clean", "drive.high") with { Footswitch = true })
        .Playing("Ballad", "clean", "reverb")
        .Playing("Solo", "drive.high", "boost", "delay")
        .Playing("Swell", "boost")
        .Playing("Again", "drive.high", "boost")
        .WantingSound("Never", 5, "looper");

    private static readonly Rig Rig = A.Rig().Placing("push", 0, 0).Placing("both", 200, 0).Chained("push both");

    [Fact]
    public void What_is_on_is_told_sound_by_sound_the_board_in_the_order_of_the_drawing_and_the_amp_last()
    {
        var sheet = SwitchingSheet.Of(Draft.Problem(), Rig);

        Assert.Equal(["Ballad", "Solo", "Swell", "Again"], sheet.Sounds);
        Assert.Equal(
            ["1 push: , Boost, Boost, Boost", "2 both: Reverb, Delay, , ", "amp: Clean sound, High gain drive, , High gain drive"],
            sheet.Lines.Select(line => $"{line.Title}: {string.Join(", ", line.On)}"));
    }

    [Fact]
    public void From_sound_to_sound_only_what_changes_is_pressed_and_an_amp_stays_on_its_channel_until_asked_for_another() =>
        Assert.Equal(
            ["Ballad → Solo: 1 push on (Boost); 2 both to Delay; amp to High gain drive", "Solo → Swell: 2 both off", "Swell → Again: "],
            SwitchingSheet.Of(Draft.Problem(), Rig).Changes.Select(change => $"{change.From} → {change.To}: {string.Join("; ", change.Steps)}"));

    [Fact]
    public void An_amp_without_a_foot_switch_is_set_by_hand()
    {
        var problem = (Draft with { Amp = Draft.Amp! with { Footswitch = false } }).Problem();

        Assert.Equal("amp to High gain drive, by hand", SwitchingSheet.Of(problem, Rig).Changes[0].Steps.Last());
    }

    [Fact]
    public void Without_sounds_there_is_nothing_to_switch() =>
        Assert.Empty(SwitchingSheet.Of(A.Draft().With(A.Device("push")).Problem(), A.Rig().Placing("push", 0, 0)).Lines);
}
