using GigRig.Domain.Gear;
using GigRig.Domain.Guessing;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Guessing;

/// <summary>Patch leads go up to 90 cm and have angled plugs, long ones start at 3 m and have straight ones: common practice, no source.</summary>
public sealed class KnownOfLeadTests
{
    [Theory]
    [InlineData("Short", 150, LeadKind.Patch, PlugShape.Angled)]
    [InlineData("Short", 900, LeadKind.Patch, PlugShape.Angled)]
    [InlineData("Long", 3000, LeadKind.Instrument, PlugShape.Straight)]
    [InlineData("Patch to the far board", 3000, LeadKind.Patch, PlugShape.Angled)]
    [InlineData("Loop pair", 3000, LeadKind.Loop, PlugShape.Straight)]
    [InlineData("Loop or patch", 150, LeadKind.Patch, PlugShape.Angled)]
    [InlineData("Powerful", 3000, LeadKind.Instrument, PlugShape.Straight)]
    public void Its_name_says_what_it_is_for_or_else_its_length(string name, int length, LeadKind kind, PlugShape plug)
    {
        var (lead, guesses) = new KnownOfLead(name, length.Mm).Fill(new("l"));

        Assert.Equal(new(new("l"), name, kind, length.Mm, plug, plug, 1), lead);
        Assert.Equal([Guess.LeadKind, Guess.Plugs], guesses);
    }

    [Fact]
    public void What_is_known_is_kept_and_not_marked()
    {
        var (lead, guesses) = new KnownOfLead("Short", 150.Mm) { Kind = LeadKind.Loop, Plugs = (PlugShape.Slim, PlugShape.Straight), Count = 3 }.Fill(new("l"));

        Assert.Equal(new(new("l"), "Short", LeadKind.Loop, 150.Mm, PlugShape.Slim, PlugShape.Straight, 3), lead);
        Assert.Empty(guesses);
    }
}
