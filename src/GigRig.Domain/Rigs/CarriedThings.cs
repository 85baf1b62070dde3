using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rigs;

/// <summary>What comes along in a rig. Ids that the problem does not know are passed over; the rules name them.</summary>
public static class CarriedThings
{
    extension(RigProblem problem)
    {
        /// <summary>The devices on the board, each once, in the problem's order.</summary>
        public IEnumerable<Device> DevicesOn(Rig rig)
        {
            var placed = rig.Placements.Select(placement => placement.Id).ToHashSet();
            return problem.Devices.Where(device => placed.Contains(device.Id));
        }

        /// <summary>The off-board things that come along, each once, in the problem's order.</summary>
        public IEnumerable<OffBoardItem> OffBoardIn(Rig rig)
        {
            var chosen = rig.OffBoard.ToHashSet();
            return problem.OffBoard.Where(item => chosen.Contains(item.Id));
        }

        /// <summary>Every thing that can cover a role: devices on the board, then the amp, then off-board things.</summary>
        public IEnumerable<(GearId Thing, RoleFunction Function)> FunctionsIn(Rig rig)
        {
            foreach (var device in problem.DevicesOn(rig))
                foreach (var function in device.Functions)
                    yield return (device.Id, function);
            if (problem.Amp is { } amp)
                foreach (var function in amp.Functions)
                    yield return (amp.Id, function);
            foreach (var item in problem.OffBoardIn(rig))
                foreach (var function in item.Functions)
                    yield return (item.Id, function);
        }

        /// <summary>All that is carried: board, supply and amp where given, devices on the board, chosen off-board things.</summary>
        public Grams MassCarried(Rig rig) =>
            problem.Board.Mass
            + (problem.Supply?.Mass ?? Grams.Zero)
            + (problem.Amp?.Mass ?? Grams.Zero)
            + problem.DevicesOn(rig).Aggregate(Grams.Zero, (sum, device) => sum + device.Mass)
            + problem.OffBoardIn(rig).Aggregate(Grams.Zero, (sum, item) => sum + item.Mass);
    }
}
