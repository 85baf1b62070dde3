using Bunit;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.Gear.Care;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Care;

public sealed class SavedFiltersTests : PageTest
{
    private SavedFilters Filters => new(JSInterop.JSRuntime);

    [Theory]
    [InlineData("nonsense")]
    [InlineData("null")]
    [InlineData("[null]")]
    [InlineData("""[{"Name":"","Query":"q=a"}]""")]
    [InlineData("""{"Name":"x"}""")]
    public async Task What_another_hand_put_there_is_passed_over(string kept)
    {
        JSInterop.Setup<string?>("gigrigDrafts.find", _ => true).SetResult(kept);

        Assert.Empty(await Filters.AllAsync());
    }

    [Fact]
    public async Task A_filter_under_the_same_name_is_replaced_and_the_oldest_makes_room()
    {
        var many = string.Join(',', Enumerable.Range(1, SavedFilters.Most).Select(i => $$"""{"Name":"F{{i}}","Query":"q={{i}}"}"""));
        JSInterop.Setup<string?>("gigrigDrafts.find", _ => true).SetResult($"[{many}]");

        Assert.Equal(["q=x"], (await Filters.KeepAsync("f3", "q=x")).Where(filter => filter.Name == "f3").Select(filter => filter.Query));
        var full = await Filters.KeepAsync("New", "q=y");
        Assert.Equal((SavedFilters.Most, "F2"), (full.Count, full[0].Name));
    }

    [Fact]
    public void A_filter_is_the_address_of_the_narrowed_list_whatever_is_in_it()
    {
        var filter = new GearFilter("fuzz & wah", Tag: "on tour", Care: CareFilter.Alike);

        Assert.Equal("q=fuzz%20%26%20wah&tag=on%20tour&care=Alike", filter.Query);
        Assert.Equal("", new GearFilter().Query);
    }
}
