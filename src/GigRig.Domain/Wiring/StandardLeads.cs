using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>
/// The lengths leads are sold in. Common practice: patch leads of 15, 30 and 90 cm, long leads of 3, 4.5, 6 and 9 m; the steps of 10, 20, 45 and 60 cm are from memory.
/// </summary>
public static class StandardLeads
{
    public static ValueList<Millimetres> Patch { get; } = [100.Mm, 150.Mm, 200.Mm, 300.Mm, 450.Mm, 600.Mm, 900.Mm];

    public static ValueList<Millimetres> Long { get; } = [3000.Mm, 4500.Mm, 6000.Mm, 9000.Mm];

    /// <summary>The shortest that reaches; null where none does, and one must be made.</summary>
    public static Millimetres? For(HopKind kind, Millimetres needed) =>
        (kind == HopKind.Patch ? Patch : Long).Where(length => length >= needed).Select(length => (Millimetres?)length).FirstOrDefault();
}
