using System.Text.Json;
using GigRig.Domain.Events;
using GigRig.Web.Features.Events;
using Xunit;

namespace GigRig.Web.Tests.Features.Events;

public sealed class EventTypeFormTests
{
    public static TheoryData<string> ReadyOnes { get; } = new(ReadyEventTypes.All.Select(type => type.Name));

    [Theory]
    [MemberData(nameof(ReadyOnes))]
    public void An_event_type_shown_and_read_again_is_the_same(string name)
    {
        var type = ReadyEventTypes.All.Single(ready => ready.Name == name);

        Assert.Equal(type, Showing(type).Read());
    }

    [Fact]
    public void The_weight_of_a_must_does_not_count_and_is_not_asked_for()
    {
        var form = new EventTypeForm { Name = "Night", Needs = [new() { Role = "delay", Level = NeedLevel.Must, Weight = null }] };

        Assert.Equal([new Need(new("delay"))], form.Read()!.Needs);
    }

    [Fact]
    public void A_want_without_a_weight_says_so()
    {
        var form = new EventTypeForm { Name = "Night", Needs = [new() { Role = "delay", Level = NeedLevel.Want, Weight = null }] };
        form.Changed("needs/0/weight");

        Assert.Equal("Weight is empty. Type a whole number.", form.Errors.At("needs/0/weight"));
    }

    [Fact]
    public void A_line_without_a_role_and_a_sound_without_any_say_so()
    {
        var form = new EventTypeForm { Name = "Night", Needs = [new()], Sounds = [new() { Name = "Solo" }] };
        form.Errors.ShowAll();

        Assert.Null(form.Read());

        Assert.Contains("No role is picked", form.Errors.At("needs/0/role"));
        Assert.Contains("No role is picked", form.Errors.At("sounds/0/roles"));
    }

    [Fact]
    public void A_weight_beyond_its_limits_is_refused_with_the_limit()
    {
        var form = new EventTypeForm { Name = "Night", Needs = [new() { Role = "delay", Level = NeedLevel.Want, Weight = 0 }] };
        form.Changed("needs/0/weight");

        Assert.Contains("1", form.Errors.At("needs/0/weight"));
    }

    [Fact]
    public void A_limit_in_kilograms_is_kept_in_grams()
    {
        var form = Showing(ReadyEventTypes.JamNight);
        form.Mass = "22,5";

        Assert.Equal(22_500, form.Read()!.Limits.Mass?.Value);
    }

    [Fact]
    public void What_is_typed_survives_being_put_aside_as_text()
    {
        var form = Showing(ReadyEventTypes.WeddingFunction);
        form.Mass = "half typ";

        var back = JsonSerializer.Deserialize<EventTypeForm>(JsonSerializer.Serialize(form))!;

        Assert.Equal(JsonSerializer.Serialize(form), JsonSerializer.Serialize(back));
    }

    private static EventTypeForm Showing(EventType type)
    {
        var form = new EventTypeForm();
        form.Show(type);
        return form;
    }
}
