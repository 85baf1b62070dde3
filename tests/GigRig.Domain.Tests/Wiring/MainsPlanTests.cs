using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

public sealed class MainsPlanTests
{
    /// <summary>Touring advice of a supply maker (common practice): look for 100–240 V on the label; some supplies are made for one voltage only.</summary>
    [Theory]
    [InlineData(100, 240, 230, MainsVoltage.Right)]
    [InlineData(100, 240, 100, MainsVoltage.Right)]
    [InlineData(120, null, 230, MainsVoltage.TooHigh)]
    [InlineData(230, null, 120, MainsVoltage.TooLow)]
    [InlineData(220, 240, 230, MainsVoltage.Right)]
    [InlineData(null, null, 230, MainsVoltage.NotKnown)]
    [InlineData(100, 240, null, MainsVoltage.NotKnown)]
    public void The_voltage_of_the_venue_is_held_against_the_label(int? least, int? most, int? venue, MainsVoltage verdict) =>
        Assert.Equal(verdict, Line(new(least, most), new(venue)).Voltage);

    /// <summary>A margin of ours, a tenth either way.</summary>
    [Theory]
    [InlineData(207, MainsVoltage.Right)]
    [InlineData(206, MainsVoltage.TooLow)]
    [InlineData(253, MainsVoltage.Right)]
    [InlineData(254, MainsVoltage.TooHigh)]
    public void A_tenth_more_or_less_is_still_right(int venue, MainsVoltage verdict) => Assert.Equal(verdict, Line(new(230), new(venue)).Voltage);

    [Theory]
    [InlineData(MainsPlug.F, MainsPlug.F, MainsFit.Fits)]
    [InlineData(MainsPlug.F, MainsPlug.G, MainsFit.NeedsAdapter)]
    [InlineData(MainsPlug.C, MainsPlug.F, MainsFit.Fits)]
    [InlineData(MainsPlug.F, MainsPlug.C, MainsFit.NeedsAdapter)]
    [InlineData(MainsPlug.A, MainsPlug.B, MainsFit.Fits)]
    [InlineData(MainsPlug.B, MainsPlug.A, MainsFit.NeedsAdapter)]
    [InlineData(null, MainsPlug.G, MainsFit.NotKnown)]
    [InlineData(MainsPlug.G, null, MainsFit.NotKnown)]
    public void The_plug_is_held_against_the_sockets(MainsPlug? plug, MainsPlug? socket, MainsFit verdict) =>
        Assert.Equal(verdict, Line(new(Plug: plug), new(Socket: socket)).Fit);

    [Fact]
    public void Supply_and_amp_each_take_a_socket_and_their_watts_add_up()
    {
        var supply = A.Supply(A.Outlet("1")) with { Mains = new(Watts: 25) };

        Assert.Equal(85, MainsPlan.Of(A.Draft().FedBy(supply).Through(A.Amp() with { Mains = new(Watts: 60) }).Problem()).Watts);
        Assert.Null(MainsPlan.Of(A.Draft().FedBy(supply).Through(A.Amp()).Problem()).Watts);
        Assert.Equal(2, MainsPlan.Of(A.Draft().FedBy(supply).Through(A.Amp()).Problem()).Lines.Count);
    }

    [Fact]
    public void Nothing_with_a_plug_takes_no_socket() => Assert.Empty(MainsPlan.Of(A.Draft().Problem()).Lines);

    private static MainsLine Line(MainsInput input, VenueMains venue) =>
        Assert.Single(MainsPlan.Of((A.Draft().FedBy(A.Supply(A.Outlet("1")) with { Mains = input }) with { Event = A.Event() with { Venue = venue } }).Problem()).Lines);
}
