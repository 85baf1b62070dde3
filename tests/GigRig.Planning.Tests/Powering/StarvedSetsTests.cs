using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning.Powering;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Powering;

public sealed class StarvedSetsTests
{
    /// <summary>The draws of the same devices vary from one question to the next, as headroom and another choice make them.</summary>
    [Fact]
    public void What_is_remembered_makes_no_answer_wrong() =>
        Gen.Select(GenContest.Hungry, Gen.Int[-30, 30].Array[6], Gen.Int[0, 31].Array[6]).Sample((draft, more, sets) =>
        {
            var known = new StarvedSets();
            for (var ask = 0; ask < more.Length; ask++)
            {
                var problem = (draft with { Devices = draft.Devices.Select((d, i) => Drawing(d, more[(ask + i) % more.Length])).ToValueList() }).Problem();
                Device[] devices = [.. problem.Devices.Where((d, i) => d.Power is not null && (sets[ask] >> i & 1) == 1)];
                var hunger = new Hunger(problem, known);

                var answer = hunger.Search.Feed([.. devices.Select(d => hunger.Of(d)!)], Ask.Patiently);

                var every = new EveryHookUp(problem);
                Assert.Equal(every.Find(devices.Select(d => d.Id)) is not null, answer is PowerAnswer.Fed);
                if (answer is PowerAnswer.Starved starved)
                    Assert.Null(every.Find(starved.Consumers.Select(c => devices[c].Id)));
            }
        }, iter: 600);

    [Fact]
    public void At_least_as_hungry_ones_fail_for_the_known_reason()
    {
        var (known, problem) = (new StarvedSets(), Three(60, 60, 60));
        var hunger = new Hunger(problem);
        known.Add("supply", Consumers(hunger, problem));

        Assert.Equal([0, 1, 2], known.Among("supply", Consumers(hunger, Three(60, 80, 60))));
        Assert.Null(known.Among("supply", Consumers(hunger, Three(60, 80, 59))));
        Assert.Null(known.Among("supply", Consumers(hunger, problem)[1..]));
        Assert.Null(known.Among("another supply", Consumers(hunger, problem)));
    }

    [Fact]
    public void It_stays_small()
    {
        var (known, problem) = (new StarvedSets(), Three(60, 60, 60));
        var consumers = Consumers(new Hunger(problem), problem);

        for (var i = 0; i < 3 * StarvedSets.MostASupply * StarvedSets.MostSupplies; i++)
            known.Add($"supply {i % (2 * StarvedSets.MostSupplies)}", consumers);

        Assert.InRange(known.Count, 1, StarvedSets.MostASupply * StarvedSets.MostSupplies);
    }

    private static Device Drawing(Device device, int more) =>
        device.Power is { } need ? device with { Power = need with { Current = Math.Max(1, need.Current.Value + more).MilliA } } : device;

    private static RigProblem Three(params int[] draws) =>
        A.Draft().With([.. draws.Select((draw, i) => A.Device($"box{i}").Drawing(draw))]).FedBy(A.Outlet("1"), A.Outlet("2")).Problem();

    private static Consumer[] Consumers(Hunger hunger, RigProblem problem) => [.. problem.Devices.Select(d => hunger.Of(d)!)];
}
