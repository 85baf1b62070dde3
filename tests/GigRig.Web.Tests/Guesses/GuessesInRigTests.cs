using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Guessing;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Guesses;
using Xunit;

namespace GigRig.Web.Tests.Guesses;

/// <summary>A guess is turned out the other way, and the rule book says whether the rig would stand it.</summary>
public sealed class GuessesInRigTests
{
    private static readonly Device Meadow = new KnownOfDevice("meadow") { Shape = EnclosureShape.Usual, Functions = [new(new("drive"))] }.Fill(new("meadow")).Device;

    [Fact]
    public void Where_there_is_room_another_size_would_still_do()
    {
        var found = Assert.Single(Find(A.Draft().With(Meadow), A.Rig().Placing("meadow", 100, 20), ("meadow", Guess.Size)));

        Assert.False(found.Breaks);
        Assert.Contains("73 × 129 mm", found.Sentence);
        Assert.Contains("would still do", found.Sentence);
    }

    [Fact]
    public void Sizes_are_said_in_the_unit_the_owner_reads()
    {
        var draft = A.Draft(A.Board() with { ClearanceOver = 100.Mm }).With(Meadow);
        var guesses = new Dictionary<GearId, ValueList<Guess>> { [new("meadow")] = [Guess.Size, Guess.Height] };

        var found = new GuessesInRig(LeadPlan.Of(draft.Problem(), A.Rig().Placing("meadow", 100, 20)), guesses, LengthUnit.Inches).Find();

        // 73, 129 and 100 mm at 25.4 mm an inch (NIST SP 811, appendix B).
        Assert.Contains("2.87 × 5.08 in", found[0].Sentence);
        Assert.Contains("the lid leaves 3.94 in", found[1].Sentence);
        Assert.All(found, guess => Assert.DoesNotContain("mm", guess.Sentence));
    }

    [Fact]
    public void A_neighbour_two_millimetres_away_is_named_with_what_is_lacking()
    {
        // 70 mm wide at 100, with a box at 172: at 73 mm they would overlap by 1 mm.
        var rig = A.Rig().Placing("meadow", 100, 20).Placing("wall", 172, 20);

        var found = Assert.Single(Find(A.Draft().With(Meadow with { Jacks = [] }, A.Device("wall").Sized(100, 100)), rig, ("meadow", Guess.Size)));

        Assert.True(found.Breaks);
        Assert.Contains("wall", found.Sentence);
        Assert.Contains("1 mm", found.Sentence);
    }

    [Fact]
    public void Plugs_at_the_rear_may_hit_what_stands_behind()
    {
        // The guessed power plug (13 mm) just fits in front of the box behind; audio plugs (15 mm) at the rear do not.
        var rig = A.Rig().Placing("meadow", 100, 20).Placing("wall", 90, 20 + 122 + 13);

        var found = Assert.Single(Find(A.Draft(A.Board(600, 400)).With(Meadow, A.Device("wall").Sized(100, 100)), rig, ("meadow", Guess.Jacks)));

        Assert.True(found.Breaks);
        Assert.Contains("2 mm", found.Sentence);
    }

    [Fact]
    public void A_draw_says_what_its_outlet_has_to_spare()
    {
        var draft = A.Draft().With(Meadow).FedBy(A.Outlet("3").Giving(100));

        var found = Assert.Single(Find(draft, A.Rig().Placing("meadow", 100, 20).Feeding("meadow", "3"), ("meadow", Guess.Draw)));

        // A drive is taken as 10 mA.
        Assert.Contains("90 mA more before outlet 3", found.Sentence);
    }

    [Fact]
    public void One_return_for_all_outlets_is_tried_on_a_centre_positive_box()
    {
        var draft = A.Draft().With(A.Device("echo").Drawing(10, Polarity.Positive), A.Device("hall").Drawing(10)).FedBy(A.Outlet("1").Positive(), A.Outlet("2"));
        var rig = A.Rig().Placing("echo", 0, 0).Placing("hall", 200, 0).Feeding("echo", "1").Feeding("hall", "2");

        Assert.True(Assert.Single(Find(draft, rig, ("supply", Guess.Returns))).Breaks);
        Assert.False(Assert.Single(Find(A.Draft().With(A.Device("hall").Drawing(10)).FedBy(A.Outlet("2")), A.Rig().Placing("hall", 0, 0).Feeding("hall", "2"), ("supply", Guess.Returns))).Breaks);
    }

    [Fact]
    public void Leads_are_spoken_of_where_the_rig_is_wired_with_them()
    {
        var patch = new Lead(new("patch"), "Patch", LeadKind.Patch, 900.Mm, PlugShape.Angled, PlugShape.Angled, 4);
        var spare = patch with { Id = new("spare"), Name = "Spare", Length = 10.Mm };
        var draft = A.Draft().With(Meadow, A.Device("wall").Sized(70, 122).WithAudioJacks()) with { Leads = [patch, spare] };
        var rig = A.Rig().Placing("meadow", 100, 20).Placing("wall", 220, 20).Chained("meadow wall");

        var found = Assert.Single(Find(draft, rig, ("patch", Guess.Plugs), ("spare", Guess.Plugs)));

        Assert.Equal("Patch", found.Name);
        Assert.Contains("angled at both ends", found.Sentence);
    }

    [Fact]
    public void An_amp_without_a_loop_is_spoken_of_where_that_was_guessed()
    {
        var draft = A.Draft().With(A.Device("hall")).Through(A.Amp());

        Assert.Contains("everything is in front of it", Assert.Single(Find(draft, A.Rig().Placing("hall", 0, 0), ("amp", Guess.Loop))).Sentence);
        Assert.Empty(Find(draft, A.Rig().Placing("hall", 0, 0), ("amp", Guess.Mass)));
    }

    [Fact]
    public void What_cannot_matter_is_left_out() =>
        Assert.Empty(Find(A.Draft().With(Meadow), A.Rig().Placing("meadow", 100, 20), ("meadow", Guess.Height), ("meadow", Guess.Mass), ("meadow", Guess.Switches), ("board", Guess.Overhang)));

    [Fact]
    public void What_would_break_the_rig_comes_first()
    {
        var draft = A.Draft().With(Meadow, A.Device("wall").Sized(100, 100)).FedBy(A.Outlet("3").Giving(100));
        var rig = A.Rig().Placing("meadow", 100, 20).Placing("wall", 172 + 15, 20).Feeding("meadow", "3");

        Assert.Equal([Guess.Size, Guess.Draw], Find(draft, rig, ("meadow", Guess.Draw), ("meadow", Guess.Size)).Select(found => found.Guess));
    }

    [Fact]
    public void Things_that_stay_home_are_not_spoken_of() => Assert.Empty(Find(A.Draft().With(Meadow), A.Rig(), ("meadow", Guess.Size)));

    private static ValueList<RigGuess> Find(RigProblemDraft draft, Rig rig, params (string Id, Guess Guess)[] guesses) => new GuessesInRig(
        LeadPlan.Of(draft.Problem(), rig), guesses.GroupBy(guess => guess.Id).ToDictionary(own => new GearId(own.Key), own => own.Select(guess => guess.Guess).ToValueList()), LengthUnit.Millimetres).Find();
}
