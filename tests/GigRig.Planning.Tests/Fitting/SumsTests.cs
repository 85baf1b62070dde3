using CsCheck;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Tests.Fitting;

public sealed class SumsTests
{
    [Fact]
    public void It_knows_the_greatest_sum_that_trying_every_part_of_them_gives() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[1, 90].Array[0, 8]).SelectMany((most, lengths) => Gen.Int[0, most].Select(length => (most, lengths, length))).Sample(asked =>
        {
            var sums = new Sums(asked.most);
            sums.Clear();
            foreach (var length in asked.lengths)
                sums.Add(length);

            var all = Enumerable.Range(0, 1 << asked.lengths.Length).Select(part => asked.lengths.Where((_, i) => (part >> i & 1) == 1).Sum());

            Assert.Equal(all.Where(sum => sum <= asked.length).Max(), sums.UpTo(asked.length));
        });

    [Fact]
    public void Once_cleared_it_knows_nothing_but_zero()
    {
        var sums = new Sums(70);
        sums.Add(7);
        sums.Clear();

        Assert.Equal(0, sums.UpTo(70));
    }
}
