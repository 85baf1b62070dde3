using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Guessing;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear.Forms;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>What is wrong with one cell of a line.</summary>
public sealed record LineFault(LineField Field, string Sentence);

/// <summary>How bare numbers are meant where a line names no unit.</summary>
/// <param name="GramsInAMass">Grams that a bare mass counts: 1 for grams, 1000 for kilograms.</param>
public sealed record LineUnits(LengthUnit Length, decimal GramsInAMass = 1);

/// <summary>Makes a whole thing out of one line; what the line does not say is filled in with what is usual, and marked as guessed.</summary>
public sealed class GearLineReader(RoleChoices roles, LineUnits units)
{
    private readonly List<LineFault> faults = [];

    /// <summary>Null where something is wrong, with at least one fault; the first of each cell, as the next one often follows from it.</summary>
    public (NewGear? Gear, IReadOnlyList<LineFault> Faults) Read(GearLine line)
    {
        faults.Clear();
        var kind = Kind(line);
        var name = line[LineField.Name];
        if (name.Length == 0)
            Fault(LineField.Name, "The name is empty. Type one.");
        var ownership = Ownership(line);
        var (thing, guesses, complaints) = kind.Word switch
        {
            "board" => Board(line, name),
            "supply" => Supply(line, name),
            "amp" => Amp(line, name),
            "off-board" => OffBoard(line, name),
            "lead" => Lead(line, name),
            "instrument" => Instrument(line, name),
            _ => Device(line, name),
        };
        if (kind.Word != "lead" && line[LineField.Count] is { Length: > 0 } count and not "1")
            Fault(LineField.Count, $"\"{count}\": leads alone are counted. Give every other thing a line of its own.");
        if (faults.Count == 0)
            faults.AddRange(complaints().Select(complaint => new LineFault(FieldOf(complaint.Path), complaint.Message)));
        return faults.Count > 0 ? (null, [.. faults.DistinctBy(fault => fault.Field)]) : (new(kind, name, thing, ownership with { Guesses = guesses }), []);
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Device(GearLine line, string name)
    {
        var known = new KnownOfDevice(name) { Functions = Roles(line), Mass = Mass(line) };
        known = Sized(known, line);
        var draw = line[LineField.Draw];
        if (draw is "0" or "-" || draw.Equals("none", StringComparison.OrdinalIgnoreCase) || draw.Equals("passive", StringComparison.OrdinalIgnoreCase))
            known = known with { Passive = true };
        else
            known = known with { Draw = CurrentText.Read(draw, sentence => Fault(LineField.Draw, sentence)), Volts = Volts(line) };
        var (device, guesses) = known.Fill(new("this"));
        return (device, guesses, () => ThingCheck.Of(device));
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Board(GearLine line, string name)
    {
        var (width, depth, _) = Footprint(line);
        if ((width is null || depth is null) && faults.Count == 0)
            Fault(LineField.Size, "A board needs its size. Type width × depth, such as 60 x 30 cm.");
        var (board, guesses) = new KnownOfBoard(name, width ?? 1.Mm, depth ?? 1.Mm) { Mass = Mass(line) }.Fill(new("this"));
        return (board, guesses, () => ThingCheck.Of(board));
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Supply(GearLine line, string name)
    {
        if (!OutletsText.TryParse(line[LineField.Outlets], out var outlets, out var error))
            Fault(LineField.Outlets, error);
        var (width, depth, height) = Footprint(line);
        BodySize? size = width is { } w && depth is { } d ? new(w, d, height ?? 40.Mm) : null;
        var (supply, guesses) = new KnownOfSupply(name, outlets) { Size = size, Mass = Mass(line) }.Fill(new("this"));
        if (size is not null && height is null)
            guesses = guesses.Append(Guess.Height).Order().ToValueList();
        return (supply, guesses, () => ThingCheck.Of(supply));
    }

    /// <summary>What an amp does, its channels do, one at a time.</summary>
    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Amp(GearLine line, string name)
    {
        var mass = Mass(line);
        var amp = new Amp(new("this"), name, mass ?? 15_000.G, Roles(line).Select(function => function with { Section = "channel" }).ToValueList());
        return (amp, mass is null ? [Guess.Mass, Guess.Loop] : [Guess.Loop], () => ThingCheck.Of(amp));
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) OffBoard(GearLine line, string name)
    {
        var mass = Mass(line);
        var item = new OffBoardItem(new("this"), name, mass ?? 50.G, Roles(line));
        return (item, mass is null ? [Guess.Mass] : [], () => ThingCheck.Of(item));
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Lead(GearLine line, string name)
    {
        // A table may have its length under the heading that is a depth for other things.
        var field = line[LineField.Size].Length == 0 && line[LineField.Depth].Length > 0 ? LineField.Depth : LineField.Size;
        if (!LeadText.TryParse(line[field], units.Length, out var count, out var length, out var error))
            Fault(field, error);
        if (line[LineField.Count] is { Length: > 0 } counted && !LeadText.TryCount(counted, out count, out error))
            Fault(LineField.Count, error);
        var known = new KnownOfLead(name, length) { Kind = KnownOfLead.NamedIn(line[LineField.Kind]), Plugs = LeadText.Plugs(line[LineField.Plugs], sentence => Fault(LineField.Plugs, sentence)), Count = count };
        var (lead, guesses) = known.Fill(new("this"));
        return (lead, guesses, () => ThingCheck.Of(lead));
    }

    private (object, ValueList<Guess>, Func<IEnumerable<Complaint>>) Instrument(GearLine line, string name)
    {
        var kind = line[LineField.Kind];
        var known = new KnownOfInstrument(name) { Kind = KnownOfInstrument.NamedIn(kind) is null ? null : kind, Active = PickupText.Read(line[LineField.Pickup], sentence => Fault(LineField.Pickup, sentence)) };
        var (instrument, guesses) = known.Fill(new("this"));
        return (instrument, guesses, () => ThingCheck.Of(instrument));
    }

    private KnownOfDevice Sized(KnownOfDevice known, GearLine line)
    {
        if (EnclosureShape.Find(line[LineField.Size]) is { } shape)
            return known with { Shape = shape, Height = Length(line, LineField.Height) };
        var (width, depth, height) = Footprint(line);
        return known with { Width = width, Depth = depth, Height = height };
    }

    private (Millimetres? Width, Millimetres? Depth, Millimetres? Height) Footprint(GearLine line)
    {
        var (width, depth, height) = (Length(line, LineField.Width), Length(line, LineField.Depth), Length(line, LineField.Height));
        if (line[LineField.Size] is not { Length: > 0 } size)
            return (width, depth, height);
        if (FootprintText.TryParse(size, units.Length, out var across, out var back, out var up, out var error))
            return (across, back, up ?? height);
        Fault(LineField.Size, line[LineField.Kind] is "board" or "supply" ? error : $"\"{size}\" is neither a size nor a usual one. Type width × depth, such as 70 x 122 mm, or one of {string.Join(", ", EnclosureShape.All.Select(shape => shape.Word.ToLowerInvariant()))}.");
        return (null, null, null);
    }

    private Ownership Ownership(GearLine line)
    {
        var (ownership, wrong) = OwnershipText.Read(line);
        faults.AddRange(wrong);
        return ownership;
    }

    private GearKind Kind(GearLine line)
    {
        var word = line[LineField.Kind];
        if (word.Length == 0)
            return line[LineField.Outlets].Length > 0 ? GearKind.Of<Supply>() : GearKind.Of<Device>();
        if (KindText.Find(word) is { } known)
            return known;
        Fault(LineField.Kind, $"\"{word}\" is not a kind of gear. Give one of {string.Join(", ", GearKind.All.Select(kind => kind.One.ToLowerInvariant()))}.");
        return GearKind.Of<Device>();
    }

    private ValueList<RoleFunction> Roles(GearLine line)
    {
        if (!RolesText.TryParse(line[LineField.Roles], roles, out var functions, out var error))
            Fault(LineField.Roles, error);
        return functions;
    }

    private Millimetres? Length(GearLine line, LineField field)
    {
        if (line[field] is not { Length: > 0 } text)
            return null;
        if (LengthText.TryParse(text, units.Length, out var length, out var error))
            return length;
        Fault(field, error);
        return null;
    }

    private Grams? Mass(GearLine line)
    {
        if (line[LineField.Mass] is not { Length: > 0 } text)
            return null;
        if (MassText.TryParse(text, units.GramsInAMass, out var mass, out var error))
            return mass;
        Fault(LineField.Mass, error);
        return null;
    }

    private Millivolts? Volts(GearLine line)
    {
        if (line[LineField.Volts] is not { Length: > 0 } text)
            return null;
        var read = new Shared.Forms.EntryReader(units.Length);
        var volts = read.Volts("volts", "The voltage", text);
        foreach (var error in read.Errors)
            Fault(LineField.Volts, error.Sentence);
        return volts;
    }

    private void Fault(LineField field, string sentence) => faults.Add(new(field, sentence));

    private static LineField FieldOf(string path) => path.Split('/') switch
    {
        var parts when parts.Contains("outlets") => LineField.Outlets,
        var parts when parts.Contains("functions") => LineField.Roles,
        [.., "current"] => LineField.Draw,
        [.., "min" or "max"] => LineField.Volts,
        [.., "width" or "depth" or "length"] => LineField.Size,
        [.., "height"] => LineField.Height,
        [.., "mass"] => LineField.Mass,
        _ => LineField.Name,
    };
}
