using CsCheck;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Units;

public sealed class PhraseTests
{
    /// <summary>Lengths and areas as published: an inch is 25.4 mm, a square inch 645.16 mm², both exactly (NIST SP 811, appendix B).</summary>
    [Fact]
    public void Lengths_and_areas_are_told_in_the_unit_of_the_reader_and_nothing_else_is_touched()
    {
        Millimetres? lid = 127.Mm;
        Phrase inner = $"at {254.Mm:bare}, {508.Mm}";
        Phrase phrase = $"Echo 12 mm stands {inner}, under {lid}, 3.5 of {new SquareMillimetres(64_516)}, {1500.G}.";

        Assert.Equal("Echo 12 mm stands at 254, 508 mm, under 127 mm, 3.5 of 64516 mm², 1500 g.", phrase.In(LengthUnit.Millimetres));
        Assert.Equal("Echo 12 mm stands at 10, 20 in, under 5 in, 3.5 of 100 in², 1500 g.", phrase.In(LengthUnit.Inches));
        Assert.Equal(phrase.In(LengthUnit.Millimetres), phrase.ToString());
    }

    [Fact]
    public void What_says_the_same_is_the_same()
    {
        Phrase one = $"{1.Mm} wide", same = $"{1.Mm} wide", other = $"{2.Mm} wide";
        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(one, other);
        Assert.True(one == same && one != other);
        Assert.Equal<Phrase>("plain", $"plain");
    }

    /// <summary>So no sentence says that 18.1 in do not fit into 18.1 in.</summary>
    [Fact]
    public void Two_different_lengths_are_told_apart_in_either_unit() =>
        (from length in Gen.Int[-10_000, 10_000] from more in Gen.Int[1, 3] select (length, more)).Sample((length, more) =>
        {
            Phrase one = $"{length.Mm}", other = $"{(length + more).Mm}";
            Assert.NotEqual(one.In(LengthUnit.Millimetres), other.In(LengthUnit.Millimetres));
            Assert.NotEqual(one.In(LengthUnit.Inches), other.In(LengthUnit.Inches));
        });
}
