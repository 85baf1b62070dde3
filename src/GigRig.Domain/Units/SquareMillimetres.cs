namespace GigRig.Domain.Units;

/// <summary>An area, whole square millimetres. Only for telling: rules reckon with plain numbers.</summary>
public readonly record struct SquareMillimetres(long Value)
{
    public override string ToString() => $"{Value} mm²";
}
