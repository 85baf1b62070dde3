using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class FunctionsCheckTests
{
    [Theory]
    [InlineData("Drive")]
    [InlineData("drive..high")]
    [InlineData("")]
    public void A_role_that_is_not_well_formed_is_refused(string key) => Complain.AboutDevice(
        device => device.Doing(key),
        "/devices/0/functions/0/role", key, "1 to 60 of a-z, 0-9, - and dots between parts",
        $"\"{key}\", a role of function 1 of device Echo, is not well formed; use lower-case letters, digits, - and dots between parts, at most 60.");

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void A_rating_goes_from_one_to_five(int rating) => Complain.AboutDevice(
        device => device.Doing("tuner").Rated("delay", rating),
        "/devices/0/functions/1/rating", $"{rating}", "1 to 5", $"The rating of function 2 of device Echo is {rating}; give 1 to 5.");

    [Fact]
    public void A_section_of_no_name_is_refused() => Complain.AboutDevice(
        device => device.Rated("delay", 3, ""),
        "/devices/0/functions/0/section", "nothing", "1 to 100 characters", "The section of function 1 of device Echo is empty; give 1 to 100 characters.");

    [Fact]
    public void The_functions_of_amp_and_off_board_things_are_checked_alike()
    {
        Complain.About(
            Complain.Fine.Through(A.Amp().WithChannels("CLEAN")),
            "/amp/functions/0/role", "CLEAN", "1 to 60 of a-z, 0-9, - and dots between parts",
            "\"CLEAN\", a role of function 1 of amp amp, is not well formed; use lower-case letters, digits, - and dots between parts, at most 60.");
        Assert.Equal("/offBoard/0/functions/0/role", Assert.Single(Complain.All(A.Draft().With(A.OffBoard("clip").Doing("Tuner")))).Path);
    }
}
