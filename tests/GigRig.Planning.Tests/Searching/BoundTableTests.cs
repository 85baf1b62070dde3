using CsCheck;
using GigRig.Planning.Searching;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Searching;

public sealed class BoundTableTests
{
    private static readonly Gen<BoundTable.Charge> AnyCharge =
        Gen.Select(Gen.Long[-5, 20], Gen.Int[0, 6], Gen.Int[0, 1], (gain, room, outlets) => new BoundTable.Charge(gain, room, outlets, 0));

    [Fact]
    public void It_is_the_most_that_trying_every_choice_brings() =>
        Gen.Select(GenMany.Each(4, _ => Gen.Select(Gen.Long[0, 5], AnyCharge.Array[0, 3])), Gen.Int[0, 12], Gen.Int[0, 3], Gen.Int[0, 4]).Sample((steps, room, outlets, from) =>
        {
            var table = new BoundTable([.. steps], 12, 3);

            Assert.Equal(Most([.. steps.Skip(from)], room, outlets), table.MostFrom(from, room, outlets));
        });

    [Fact]
    public void Without_room_there_is_nothing() => Assert.Equal(BoundTable.Never, new BoundTable([(0, [])], 3, 0).MostFrom(0, -1, 0));

    private static long Most((long Stay, BoundTable.Charge[] Choices)[] steps, int room, int outlets) => steps.Length == 0
        ? 0
        : steps[0].Choices.Where(c => c.Room <= room && c.Outlets <= outlets)
            .Select(c => c.Gain + Most(steps[1..], room - c.Room, outlets - c.Outlets))
            .Append(steps[0].Stay + Most(steps[1..], room, outlets)).Max();
}
