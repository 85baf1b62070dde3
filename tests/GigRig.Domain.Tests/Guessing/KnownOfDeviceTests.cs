using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Guessing;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Guessing;

public sealed class KnownOfDeviceTests
{
    [Fact]
    public void Of_a_name_alone_everything_else_is_guessed()
    {
        var (device, guesses) = new KnownOfDevice("Meadow").Fill(new("m"));

        Assert.Equal("Meadow", device.Name);
        Assert.Equal(EnclosureShape.Usual.Size, device.Size);
        Assert.Equal([Guess.Size, Guess.Height, Guess.Mass, Guess.Jacks, Guess.Switches, Guess.Voltage, Guess.Draw], guesses);
    }

    [Fact]
    public void What_is_known_is_kept_and_not_marked()
    {
        var (device, guesses) = new KnownOfDevice("Meadow") { Width = 61.Mm, Depth = 111.Mm, Height = 48.Mm, Mass = 320.G, Draw = 9.MilliA, Volts = 18.V }.Fill(new("m"));

        Assert.Equal((61.Mm, 111.Mm, 48.Mm), (device.Size.Width, device.Size.Depth, device.Size.Height));
        Assert.Equal(new PowerNeed(18.V, 18.V, 9.MilliA), device.Power);
        Assert.Equal([Guess.Jacks, Guess.Switches], guesses);
    }

    [Fact]
    public void A_passive_one_has_no_power_jack_and_nothing_about_power_is_guessed()
    {
        var (device, guesses) = new KnownOfDevice("Glide") { Shape = EnclosureShape.Find("rocker"), Passive = true }.Fill(new("g"));

        Assert.Null(device.Power);
        Assert.DoesNotContain(device.Jacks, jack => jack.Use == JackUse.Power);
        Assert.DoesNotContain(guesses, guess => guess is Guess.Draw or Guess.Voltage or Guess.Switches);
    }

    /// <summary>Common practice, no source: a drive up to 10 mA, a tuner about 30, a gate about 35, a delay up to 65, a looper about 170; an outlet of 100 mA for what is not known.</summary>
    [Theory]
    [InlineData(10, "drive.high")]
    [InlineData(30, "tuner")]
    [InlineData(35, "gate")]
    [InlineData(65, "delay")]
    [InlineData(170, "looper", "delay")]
    [InlineData(100, "bird-song")]
    [InlineData(100)]
    public void A_draw_is_guessed_from_what_it_does(int milliamps, params string[] roles) =>
        Assert.Equal(milliamps.MilliA, UsualDraw.Of(roles.Select(role => new RoleFunction(new(role)))));

    /// <summary>Footprints of a published list: compact boxes 2.7 × 4.65 in to 2.87 × 5 in; the measured small die-cast one 111.5 × 59.5 mm.</summary>
    [Fact]
    public void Shapes_lie_within_the_published_footprints()
    {
        var compact = EnclosureShape.Find("compact")!;
        Assert.InRange(compact.Size.Width.Value, 69, 73);
        Assert.InRange(compact.Size.Depth.Value, 118, 127);
        Assert.Equal((60.Mm, 112.Mm), (EnclosureShape.Find("Small")!.Size.Width, EnclosureShape.Find("Small")!.Size.Depth));
    }

    [Fact]
    public void Whatever_is_known_the_whole_passes_the_checks() =>
        (from width in Gen.Int[1, 3000].OrNothing()
         from depth in Gen.Int[1, 3000].OrNothing()
         from draw in Gen.Int[0, 20_000].OrNothing()
         from shape in Gen.OneOf<EnclosureShape?>([.. EnclosureShape.All, null])
         from passive in Gen.Bool
         select new KnownOfDevice("Any") { Width = width?.Mm, Depth = depth?.Mm, Draw = draw?.MilliA, Shape = shape, Passive = passive })
        .Sample(known => RigProblem.Create(A.Draft().With(known.Fill(new("any")).Device)) is ProblemCheck.Accepted);

    [Fact]
    public void Boards_and_supplies_are_filled_in_so_that_they_pass_too()
    {
        var (board, boardGuesses) = new KnownOfBoard("Plank", 600.Mm, 300.Mm).Fill(new("board"));
        var (supply, supplyGuesses) = new KnownOfSupply("Brick", [A.Outlet("1"), A.Outlet("2")]).Fill(new("supply"));

        Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(A.Draft(board).FedBy(supply)));
        Assert.Equal(3600.G, board.Mass);
        Assert.Equal([Guess.Mass, Guess.Surface, Guess.Overhang], boardGuesses);
        Assert.Equal((SupplyMount.Off, null), (supply.Mount, supply.Size));
        Assert.Equal([Guess.Mass, Guess.Mount, Guess.Returns], supplyGuesses);
    }
}
