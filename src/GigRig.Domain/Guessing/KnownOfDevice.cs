using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Guessing;

/// <summary>The little that is known of a device. The rest is filled in with what is usual, and marked.</summary>
public sealed record KnownOfDevice(string Name)
{
    public ValueList<RoleFunction> Functions { get; init; }

    /// <summary>The word it goes by; counts where <see cref="Width"/> or <see cref="Depth"/> is missing.</summary>
    public EnclosureShape? Shape { get; init; }

    public Millimetres? Width { get; init; }

    public Millimetres? Depth { get; init; }

    public Millimetres? Height { get; init; }

    public Grams? Mass { get; init; }

    /// <summary>Known to need no power at all.</summary>
    public bool Passive { get; init; }

    public Milliamps? Draw { get; init; }

    public Millivolts? Volts { get; init; }

    /// <summary>A whole device and what of it was guessed. Whether its values are within their limits is not looked at.</summary>
    public (Device Device, ValueList<Guess> Guesses) Fill(GearId id)
    {
        var measured = Width is not null && Depth is not null;
        var (width, depth) = measured ? (Width!.Value, Depth!.Value) : ((Shape ?? EnclosureShape.Usual).Size.Width, (Shape ?? EnclosureShape.Usual).Size.Depth);
        var like = measured ? EnclosureShape.NearestTo(width, depth) : Shape ?? EnclosureShape.Usual;
        PowerNeed? power = Passive ? null : new(Volts ?? 9.V, Volts ?? 9.V, Draw ?? UsualDraw.Of(Functions));
        var jacks = EnclosureShape.JacksOf(width, depth).Where(jack => power is not null || jack.Use != JackUse.Power).ToValueList();
        var switches = EnclosureShape.SwitchesOf(width, depth, like.SwitchCount);
        var device = new Device(id, Name, new(width, depth, Height ?? like.Size.Height), Mass ?? like.Mass, [Turn.None], power, jacks, Bypass.True, switches, Functions);
        return (device, GuessList.Of(
            (Guess.Size, !measured),
            (Guess.Height, Height is null),
            (Guess.Mass, Mass is null),
            (Guess.Jacks, true),
            (Guess.Switches, switches.Count > 0),
            (Guess.Voltage, !Passive && Volts is null),
            (Guess.Draw, !Passive && Draw is null)));
    }
}
