using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Sheets;

/// <summary>The name of any thing of a problem.</summary>
internal static class ThingNames
{
    extension(RigProblem problem)
    {
        /// <summary>The id itself where nothing has it, so that a sheet of a damaged rig can still be read.</summary>
        public string NameOf(GearId id) =>
            problem.FindDevice(id)?.Name
            ?? problem.FindOffBoard(id)?.Name
            ?? (problem.Amp is { } amp && amp.Id == id ? amp.Name : null)
            ?? (problem.Supply is { } supply && supply.Id == id ? supply.Name : null)
            ?? (problem.Board.Id == id ? problem.Board.Name : id.Value);
    }
}
