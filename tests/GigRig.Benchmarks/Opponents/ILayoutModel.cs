using GigRig.Domain.Rigs;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>The part of a model that stands things on the board.</summary>
internal interface ILayoutModel
{
    /// <summary>Where everything present stands.</summary>
    IEnumerable<Placement> Read(CpSolver solved);
}

/// <summary>The part of a model that feeds what is taken.</summary>
internal interface IHookUpModel
{
    /// <summary>One feed for each device taken that needs power.</summary>
    IEnumerable<Feed> Read(CpSolver solved);
}
