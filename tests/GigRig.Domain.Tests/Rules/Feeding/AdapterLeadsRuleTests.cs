using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class AdapterLeadsRuleTests
{
    private static readonly Device[] Boxes = [A.Device("a").Drawing(10).AtVolts(9, 18), A.Device("b").Drawing(10), A.Device("c").Drawing(10), A.Device("fuzz").Drawing(5, Polarity.Positive)];

    public static TheoryData<string, string> Uses => new()
    {
        { "reverse", "The hook-up takes 1 polarity-reversing lead; none is owned." },
        { "parallel", "The hook-up takes 2 parallel leads; 1 is owned." },
        { "series", "The hook-up takes 1 series lead; none is owned." },
        { "splitter", "The hook-up takes 2 splitter leads; 1 is owned." },
    };

    [Theory]
    [MemberData(nameof(Uses))]
    public void Passes_with_just_enough_and_fails_with_one_less(string kind, string sentence)
    {
        var (rig, needed) = Using(kind);
        Judge.Passes(RuleIds.AdapterLeads, Owning(kind, needed), rig);
        Judge.Fails(RuleIds.AdapterLeads, Owning(kind, needed - 1), rig, "", "1 lead", sentence);
    }

    [Fact]
    public void Separate_outlets_take_no_adapters() =>
        Judge.Passes(RuleIds.AdapterLeads, Owning("none", 0), A.Rig().Feeding("a", "1").Feeding("b", "2"));

    private static (Rig Rig, int Needed) Using(string kind) => kind switch
    {
        "reverse" => (A.Rig().Feeding("fuzz", "1", reversed: true), 1),
        "parallel" => (A.Rig().FeedingParallel("a", 9, "1", "2", "3"), 2),
        "series" => (A.Rig().FeedingSeries("a", 9, "1", "2"), 1),
        _ => (A.Rig().Feeding("a", "1").Feeding("b", "1").Feeding("c", "1"), 2),
    };

    private static RigProblem Owning(string kind, int count) => A.Draft().With(Boxes).FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"))
        .OwningAdapters(kind == "reverse" ? count : 0, kind == "parallel" ? count : 0, kind == "series" ? count : 0, kind == "splitter" ? count : 0)
        .Problem();
}
