using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>One place and turn of one thing that breaks no rule as long as nothing else is there.</summary>
/// <param name="Taken">The square millimetres under its body and its plugs.</param>
/// <param name="Switches">Where its foot switches are on the board.</param>
internal sealed record OneStanding(Placement Placement, Cells Taken, (int X, int Y)[] Switches);
