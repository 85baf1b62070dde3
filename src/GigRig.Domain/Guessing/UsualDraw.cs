using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>
/// What a device of a role usually draws. Common practice, no source: a plain drive up to 10 mA, a tuner about 30, a gate about 35, a delay up to 65, a
/// looper about 170. For all others 100 mA, which a small outlet gives; a digital one may ask for 80 to 500 mA.
/// </summary>
public static class UsualDraw
{
    private static readonly (Role Role, Milliamps Draw)[] Known =
    [
        (new("tuner"), 30.MilliA),
        (new("drive"), 10.MilliA),
        (new("boost"), 10.MilliA),
        (new("gate"), 35.MilliA),
        (new("delay"), 65.MilliA),
        (new("looper"), 170.MilliA),
    ];

    private static Milliamps Otherwise { get; } = 100.MilliA;

    /// <summary>The most that any of its functions usually asks for.</summary>
    public static Milliamps Of(IEnumerable<RoleFunction> functions) =>
        functions.Select(function => Of(function.Role)).DefaultIfEmpty(Otherwise).Max();

    private static Milliamps Of(Role role) =>
        Known.Where(known => role.Meets(known.Role)).Select(known => known.Draw).DefaultIfEmpty(Otherwise).First();
}
