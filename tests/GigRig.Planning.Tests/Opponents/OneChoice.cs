using GigRig.Domain.Gear;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>A set of things within the limits, and what it brings wherever it stands and however it is fed.</summary>
/// <param name="Missing">How many musts, needs and sounds, it does not meet.</param>
internal sealed record OneChoice(IReadOnlyList<Device> Devices, IReadOnlyList<OffBoardItem> OffBoard, int Missing, long Wants, int Rating, int Mass)
{
    public HashSet<GearId> Things => [.. Devices.Select(d => d.Id), .. OffBoard.Select(i => i.Id)];

    public NaiveScore Score => new(Wants, Rating, Devices.Count, Mass);

    /// <summary>Smaller is better.</summary>
    public (int, long, int, int, int) Order => (Missing, -Wants, -Rating, Devices.Count, Mass);
}
