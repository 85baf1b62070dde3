using GigRig.Web.Features.Gear.Quick;

namespace GigRig.Web.Features.Gear.Table;

/// <summary>What one row of a table would become.</summary>
/// <param name="Gear">Null where a cell will not do.</param>
/// <param name="IsKnown">Whether something of that kind and name is in the library already.</param>
public sealed record TableEntry(TableRow Row, NewGear? Gear, IReadOnlyList<LineFault> Faults, bool IsKnown)
{
    /// <summary>What is wrong with the cell of this field; null where nothing is.</summary>
    public string? FaultAt(LineField? field) => Faults.FirstOrDefault(fault => fault.Field == field)?.Sentence;
}
