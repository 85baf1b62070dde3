using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Building;

public static class DeviceBuilding
{
    public static Device Sized(this Device device, int width, int depth, int height = 50) =>
        device with { Size = new(width.Mm, depth.Mm, height.Mm) };

    public static Device Weighing(this Device device, int grams) => device with { Mass = grams.G };

    public static Device Turning(this Device device, params Turn[] turns) => device with { Turns = [.. turns] };

    /// <summary>Adds functions, each in a section of its own.</summary>
    public static Device Doing(this Device device, params string[] roles) =>
        device with { Functions = [.. device.Functions, .. roles.Select(role => new RoleFunction(new(role)))] };

    /// <summary>Adds one function.</summary>
    public static Device Rated(this Device device, string role, int rating, string? section = null) =>
        device with { Functions = [.. device.Functions, new(new(role), rating, section)] };

    /// <summary>Adds functions that exclude each other.</summary>
    public static Device DoingOneOf(this Device device, string section, params string[] roles) =>
        device with { Functions = [.. device.Functions, .. roles.Select(role => new RoleFunction(new(role), Section: section))] };

    /// <summary>9 V DC, centre negative, unless changed.</summary>
    public static Device Drawing(this Device device, int milliamps, Polarity polarity = Polarity.Negative, CurrentType type = CurrentType.Dc) =>
        device with { Power = new(9.V, 9.V, milliamps.MilliA, type, polarity) };

    public static Device AtVolts(this Device device, int min, int max) =>
        device with { Power = device.Power! with { Min = min.V, Max = max.V } };

    public static Device OnBatteryToo(this Device device) => device with { Power = device.Power! with { Battery = true } };

    public static Device WithJack(this Device device, JackUse use, Side side, int at) =>
        device with { Jacks = [.. device.Jacks, new(use, side, at.Mm)] };

    /// <summary>Input on the right, output on the left, both at half depth, as on most boxes.</summary>
    public static Device WithAudioJacks(this Device device) =>
        device.WithJack(JackUse.In, Side.Right, device.Size.Depth.Value / 2).WithJack(JackUse.Out, Side.Left, device.Size.Depth.Value / 2);

    public static Device WithSwitch(this Device device, int x, int y) =>
        device with { Switches = [.. device.Switches, new(x.Mm, y.Mm)] };
}
