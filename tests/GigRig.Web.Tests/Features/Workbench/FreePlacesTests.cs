using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using Xunit;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class FreePlacesTests
{
    private static readonly Rig Left = A.Rig().Placing("left", 0, 0);

    [Fact]
    public void Beside_what_stands_with_room_for_its_plugs()
    {
        var newcomer = A.Device("new").Sized(50, 100).WithAudioJacks();
        var problem = A.Draft(A.Board(300, 100)).With(A.Device("left").Sized(100, 100), newcomer).Problem();

        // The usual audio plug stands 15 mm out.
        Assert.Equal(new Placement(newcomer.Id, new(115.Mm, 0.Mm)), FreePlaces.First(problem, Left, newcomer));
    }

    [Fact]
    public void Turned_where_it_fits_no_other_way()
    {
        var newcomer = A.Device("new").Sized(100, 60).Turning(Turn.None, Turn.Quarter);
        var problem = A.Draft(A.Board(160, 100)).With(A.Device("left").Sized(100, 100), newcomer).Problem();

        Assert.Equal(new Placement(newcomer.Id, new(100.Mm, 0.Mm), Turn.Quarter), FreePlaces.First(problem, Left, newcomer));
    }

    [Fact]
    public void Where_the_rails_bear_it()
    {
        var newcomer = A.Device("new").Sized(50, 80);
        var problem = A.Draft(A.Board(300, 200).Railed(20, 40).Railed(90, 110)).With(A.Device("left").Sized(100, 200), newcomer).Problem();

        // Both rails bear 10 mm of it from 20 mm to 30 mm from the front.
        Assert.Equal(new Placement(newcomer.Id, new(100.Mm, 20.Mm)), FreePlaces.First(problem, Left, newcomer));
    }

    [Fact]
    public void Nowhere_on_a_full_board()
    {
        var newcomer = A.Device("new").Sized(50, 80);
        var problem = A.Draft(A.Board(149, 100)).With(A.Device("left").Sized(100, 100), newcomer).Problem();

        Assert.Null(FreePlaces.First(problem, Left, newcomer));
    }
}
