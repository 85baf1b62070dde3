namespace GigRig.Domain.Units;

/// <summary>What lengths are read and typed in. Kept are whole millimetres always.</summary>
public enum LengthUnit
{
    Millimetres,
    Inches,
}
