using GigRig.Domain.Gear;
using GigRig.Domain.Guessing;

namespace GigRig.Domain.Tests.Guessing;

public sealed class KnownOfInstrumentTests
{
    [Theory]
    [InlineData("Red one", "Electric guitar", InstrumentFamily.Guitar)]
    [InlineData("Fretless bass", "Bass", InstrumentFamily.Bass)]
    [InlineData("Bass guitar", "Bass", InstrumentFamily.Bass)]
    [InlineData("Basswood body", "Electric guitar", InstrumentFamily.Guitar)]
    [InlineData("Stage piano", "Keys", InstrumentFamily.Keyboard)]
    public void Its_name_says_what_it_is_wired_like(string name, string kind, InstrumentFamily family)
    {
        var (instrument, guesses) = new KnownOfInstrument(name).Fill(new("i"));

        Assert.Equal(new(new("i"), name, kind, family), instrument);
        Assert.Equal([Guess.Family], guesses);
    }

    [Fact]
    public void A_kind_that_was_said_is_kept_and_not_marked()
    {
        var (instrument, guesses) = new KnownOfInstrument("Red one") { Kind = "five-string bass", Active = true }.Fill(new("i"));

        Assert.Equal(new(new("i"), "Red one", "five-string bass", InstrumentFamily.Bass) { Pickup = new(Active: true) }, instrument);
        Assert.Empty(guesses);
    }
}
