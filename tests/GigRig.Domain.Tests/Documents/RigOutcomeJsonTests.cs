using System.Text.Json.Nodes;
using GigRig.Domain.Documents;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Documents;

public sealed class RigOutcomeJsonTests
{
    private static readonly RigProblem Problem = A.Draft()
        .Through(A.Amp().WithChannels("clean", "drive"))
        .FedBy(A.Supply(A.Outlet("1"), A.Outlet("2")).Mounted(SupplyMount.Top, 100, 50, 30))
        .With(A.Device("echo").Doing("delay").Drawing(150).Turning(Turn.Quarter), A.Device("fuzz").Doing("drive.fuzz").Drawing(5).OnBatteryToo(), A.Device("bare"))
        .With(A.OffBoard("clip").Doing("tuner"))
        .Needing("tuner", "drive").Wanting("delay", 20).Wanting("reverb", 7)
        .Playing("lead", "drive", "delay").WantingSound("wash", 3, "reverb")
        .Problem();

    private static readonly Rig Rig = A.Rig()
        .Placing("echo", 10, 20, Turn.Quarter).Placing("fuzz", 200, 0).Placing("bare", 400, 0).PlacingSupply(0, 200, Turn.Quarter)
        .FeedingParallel("echo", 9, "1", "2").OnBattery("fuzz").Bringing("clip");

    [Fact]
    public void A_proposal_says_what_stands_where_is_fed_how_and_covers_what()
    {
        var json = Write(new PlanOutcome.Proposed(Best(), true, 27, [], [], TimeSpan.FromMilliseconds(1234.5)));

        AssertJson("""{"format":"rig-outcome/1","status":"proposed","proven":true,"bound":27,"elapsedMs":1234}""", json, "format", "status", "proven", "bound", "elapsedMs");
        AssertJson("""
            [
              {"id":"echo","x":10,"y":20,"turn":90,"outlets":["1","2"],"volts":9,"join":"parallel","settings":[9,9],"covers":["delay"]},
              {"id":"fuzz","x":200,"y":0,"turn":0,"outlets":[],"covers":["drive"]},
              {"id":"bare","x":400,"y":0,"turn":0,"covers":[]},
              {"id":"amp","covers":[]},
              {"id":"clip","covers":["tuner"]}
            ]
            """, json["chosen"]!);
        AssertJson("""{"x":0,"y":200,"turn":90}""", json["supply"]!);
        AssertJson("""{"front":["echo","fuzz","bare"],"loop":[]}""", json["chain"]!);
        AssertJson("""[{"role":"reverb","weight":7},{"sound":"wash","weight":3}]""", json["uncovered"]!);
        var score = Scorer.Score(Problem, Rig);
        AssertJson($$"""{"wants":20,"rating":9,"devices":3,"mass":{{score.Mass.Value}},"leads":{{score.Leads.Value}},"reach":{{score.Reach}},"fronts":{{score.Fronts}}}""", json["score"]!);
    }

    [Fact]
    public void Alternatives_and_repairs_come_with_their_scores()
    {
        var repair = new Repair("more-outlets", "One more outlet would add reverb.", Best().Score, Problem.Draft);
        var json = Write(new PlanOutcome.Proposed(Best(), false, 30, [Best()], [repair], TimeSpan.Zero));

        AssertJson(json["chosen"]!.ToJsonString(), json["alternatives"]![0]!["chosen"]!);
        AssertJson("""{"kind":"more-outlets","sentence":"One more outlet would add reverb."}""", json["repairs"]![0]!, "kind", "sentence");
        AssertJson(json["score"]!.ToJsonString(), json["repairs"]![0]!["score"]!);
    }

    [Fact]
    public void Impossible_comes_with_its_reason() => AssertJson(
        """{"format":"rig-outcome/1","status":"impossible","proven":false,"conflict":[{"rule":"inside-board","culprits":["echo"],"sentence":"Too wide."}],"elapsedMs":5}""",
        Write(new PlanOutcome.Impossible([new("inside-board", [new("echo")], "Too wide.")], [], TimeSpan.FromMilliseconds(5))));

    [Fact]
    public void Undecided_comes_with_its_bound() => AssertJson(
        """{"format":"rig-outcome/1","status":"undecided","proven":false,"bound":30,"elapsedMs":10000}""",
        Write(new PlanOutcome.Undecided(30, TimeSpan.FromSeconds(10))));

    [Fact]
    public void A_reversing_lead_is_said()
    {
        var problem = A.Draft().FedBy(A.Outlet("1")).With(A.Device("fuzz").Drawing(5, Polarity.Positive)).OwningAdapters(reverse: 1).Problem();
        var rig = A.Rig().Placing("fuzz", 0, 0).Feeding("fuzz", "1", reversed: true);
        var proposal = new Proposal(rig, Scorer.Score(problem, rig), Coverage.Of(problem, rig));

        var json = JsonNode.Parse(RigOutcomeJson.Write(new PlanOutcome.Proposed(proposal, true, 0, [], [], TimeSpan.Zero), problem))!;

        AssertJson("""{"id":"fuzz","x":0,"y":0,"turn":0,"outlets":["1"],"volts":9,"settings":[9],"reversed":true,"covers":[]}""", json["chosen"]![0]!);
    }

    private static Proposal Best() => new(Rig, Scorer.Score(Problem, Rig), Coverage.Of(Problem, Rig));

    private static JsonNode Write(PlanOutcome outcome) => JsonNode.Parse(RigOutcomeJson.Write(outcome, Problem))!;

    /// <summary>Compares whole, or the named members only.</summary>
    private static void AssertJson(string expected, JsonNode actual, params string[] members)
    {
        var compared = members.Length == 0 ? actual : new JsonObject(members.Select(name => KeyValuePair.Create(name, actual[name]?.DeepClone())));
        Assert.Equal(JsonNode.Parse(expected)!.ToJsonString(), compared.ToJsonString());
    }
}
