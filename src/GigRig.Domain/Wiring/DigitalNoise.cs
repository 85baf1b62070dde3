using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring;

/// <summary>Digital devices and drives on one return: clock noise travels along it, and a drive makes it loud. Common practice; advice, never a rule.</summary>
/// <param name="Outlets">Those of the return that are in use.</param>
/// <param name="Guessed">Those of <paramref name="Digital"/> of which nobody said so.</param>
public sealed record DigitalNoise(ValueList<string> Outlets, ValueList<GearId> Digital, ValueList<GearId> Drives, ValueList<GearId> Guessed)
{
    /// <summary>Milliamps from which a device of a role below is taken for digital where its owner does not say. Simple analogue boxes draw less; from memory, a guess.</summary>
    public const int GuessedFromDraw = 50;

    private static readonly Role[] OftenDigital = [new("delay"), new("reverb"), new("looper"), new("pitch")];

    private static readonly Role Drive = new("drive");

    /// <summary>One for each return that carries both kinds, in the supply's order.</summary>
    public static ValueList<DigitalNoise> Of(RigProblem problem, Rig rig) => SupplyLoad.Of(problem, rig).Outlets
        .GroupBy(load => problem.Supply!.IsIsolated(load.Outlets[0]) ? ("", load.Outlets[0].Id) : (load.Outlets[0].Group!, ""))
        .Select(loads => OnOneReturn(problem, loads))
        .Where(noise => noise is { Digital.Count: > 0, Drives.Count: > 0 })
        .ToValueList();

    /// <summary>As its owner says; else a guess from what it does and draws.</summary>
    public static bool IsDigital(Device device) =>
        device.Power is { } need && (need.Digital ?? (need.Current.Value >= GuessedFromDraw && OftenDigital.Any(role => Does(device, role))));

    private static DigitalNoise OnOneReturn(RigProblem problem, IEnumerable<OutletLoad> loads)
    {
        var all = loads.ToList();
        var devices = all.SelectMany(load => load.Devices).Distinct().Select(problem.FindDevice).OfType<Device>().ToList();
        var digital = devices.Where(IsDigital).ToList();
        return new(
            all.SelectMany(load => load.Outlets).Select(outlet => outlet.Id).ToValueList(),
            digital.Select(device => device.Id).ToValueList(),
            devices.Except(digital).Where(device => Does(device, Drive)).Select(device => device.Id).ToValueList(),
            digital.Where(device => device.Power!.Digital is null).Select(device => device.Id).ToValueList());
    }

    private static bool Does(Device device, Role role) => device.Functions.Any(function => function.Role.Meets(role));
}
