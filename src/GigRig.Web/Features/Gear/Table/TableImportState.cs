using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear.Table;

/// <summary>A table on its way in: looked at first, put in as a whole on the owner's word, and taken out as a whole again.</summary>
public sealed class TableImportState(GearStore gear, GearBatchStore batch, RoleStore roles)
{
    private RoleChoices known = new([]);
    private HashSet<(string Kind, string Name)> names = [];
    private ValueList<GearAt> added;

    /// <summary>Null while there is nothing to look at.</summary>
    public TableText? Table { get; private set; }

    public IReadOnlyList<TableColumn> Columns { get; private set; } = [];

    public IReadOnlyList<TableEntry> Entries { get; private set; } = [];

    public bool HasHeading { get; private set; }

    /// <summary>How bare numbers are meant in columns whose heading names no unit.</summary>
    public LineUnits Units { get; private set; } = new(LengthUnit.Millimetres);

    /// <summary>Rows of things that are in the library by kind and name already stay out.</summary>
    public bool SkipKnown { get; set; } = true;

    /// <summary>Rows with a fault stay out, instead of keeping all out.</summary>
    public bool SkipFaulty { get; set; }

    /// <summary>Why there is nothing to look at; empty otherwise.</summary>
    public string Fault { get; private set; } = "";

    /// <summary>What was put in last, in words; empty where nothing was, or it was taken out.</summary>
    public string Done { get; private set; } = "";

    public int Faulty => Entries.Count(entry => entry.Gear is null);

    public int Known => Entries.Count(entry => entry is { Gear: not null, IsKnown: true });

    /// <summary>What the import would add.</summary>
    public IEnumerable<NewGear> ToAdd => Entries.Where(entry => !(SkipKnown && entry.IsKnown)).Select(entry => entry.Gear).OfType<NewGear>();

    public bool CanImport => Table is not null && (Faulty == 0 || SkipFaulty) && ToAdd.Any();

    public async Task LookAtAsync(Stream bytes, LengthUnit unit, CancellationToken cancel = default)
    {
        Clear();
        try
        {
            if (await TableBytes.ReadAsync(bytes, cancel) is { } read)
                await LookAtAsync(TableBytes.Decode(read), unit, cancel);
            else
                TooLarge();
        }
        catch (IOException fault)
        {
            // The browser stopped sending, or the file is larger than it may send.
            Fault = $"It could not be read. {fault.Message}";
        }
    }

    public async Task LookAtAsync(string text, LengthUnit unit, CancellationToken cancel = default)
    {
        Clear();
        Table = TableText.Read(text, out var fault);
        Fault = fault;
        if (Table is null)
            return;
        known = new((await roles.AllAsync(cancel)).Select(stored => stored.Item));
        await NoteNamesAsync(cancel);
        Units = Units with { Length = unit };
        var found = Table.Rows[0].Cells.Select(TableColumn.Of).ToList();
        HasHeading = found.Exists(column => column.Field == LineField.Name) || found.Count(column => column.Field is not null) > 1;
        Columns = HasHeading ? WithoutDoubles(found) : Unheaded(Table.Columns);
        Read();
    }

    public void TooLarge()
    {
        Clear();
        Fault = $"It is larger than {TableBytes.Most / 1_000_000} MB. Give it in parts.";
    }

    public void TakeHeading(bool hasHeading)
    {
        HasHeading = hasHeading;
        Columns = hasHeading ? WithoutDoubles([.. Table!.Rows[0].Cells.Select(TableColumn.Of)]) : Unheaded(Table!.Columns);
        Read();
    }

    /// <summary>A field has one column at most; the one it had before is left out.</summary>
    public void Map(int column, LineField? field)
    {
        Columns = [.. Columns.Select((other, index) => index == column ? other with { Field = field } : other.Field == field ? other with { Field = null } : other)];
        Read();
    }

    public void Mean(LineUnits units)
    {
        Units = units;
        Read();
    }

    /// <summary>Corrects a cell here, without going back to the table it came from.</summary>
    public void Correct(TableEntry entry, int column, string text)
    {
        var cells = entry.Row.Cells.ToArray();
        cells[column] = text.Trim();
        Table = Table! with { Rows = [.. Table.Rows.Select(row => ReferenceEquals(row, entry.Row) ? row with { Cells = cells } : row)] };
        Read();
    }

    /// <summary>Puts all in, or nothing.</summary>
    public async Task ImportAsync()
    {
        if (!CanImport)
            return;
        var things = ToAdd.ToList();
        added = await batch.AddAsync(things.Select(thing => (thing.Thing, thing.Ownership)));
        Clear();
        Done = $"Added {things.Count} {(things.Count == 1 ? "thing" : "things")}.";
    }

    /// <summary>Takes out again what was put in last.</summary>
    /// <exception cref="StaleVersionException">One of them was changed since; all stay in.</exception>
    public async Task UndoAsync()
    {
        await batch.DeleteAsync(added);
        (Done, added) = ("", []);
    }

    public void Clear() => (Table, Columns, Entries, Fault, Done) = (null, [], [], "", "");

    private void Read()
    {
        var reader = new GearLineReader(known, Units);
        Entries = [.. Table!.Rows.Skip(HasHeading ? 1 : 0).Select(row => Read(row, reader))];
    }

    private TableEntry Read(TableRow row, GearLineReader reader)
    {
        var cells = Columns.Zip(row.Cells).Where(pair => pair.First.Field is not null).ToDictionary(pair => pair.First.Field!.Value, pair => pair.First.Complete(pair.Second));
        var (thing, faults) = reader.Read(new(cells));
        return new(row, thing, faults, thing is not null && names.Contains((thing.Kind.Word, thing.Name.ToUpperInvariant())));
    }

    private async Task NoteNamesAsync(CancellationToken cancel)
    {
        var library = await gear.AllAsync(cancel);
        names =
        [
            .. library.Devices.Select(thing => Key<Device>(thing.Item.Thing.Name)), .. library.Boards.Select(thing => Key<Board>(thing.Item.Thing.Name)),
            .. library.Supplies.Select(thing => Key<Supply>(thing.Item.Thing.Name)), .. library.OffBoard.Select(thing => Key<OffBoardItem>(thing.Item.Thing.Name)),
            .. library.Leads.Select(thing => Key<Lead>(thing.Item.Thing.Name)), .. library.Instruments.Select(thing => Key<Instrument>(thing.Item.Thing.Name)),
        ];

        static (string, string) Key<T>(string name) => (GearKind.Of<T>().Word, name.ToUpperInvariant());
    }

    // As quick add asks for them.
    private static IReadOnlyList<TableColumn> Unheaded(int columns)
    {
        LineField[] usual = [LineField.Name, LineField.Size, LineField.Roles, LineField.Draw];
        return [.. Enumerable.Range(0, columns).Select(index => new TableColumn($"Column {index + 1}", index < usual.Length ? usual[index] : null, ""))];
    }

    private static IReadOnlyList<TableColumn> WithoutDoubles(IReadOnlyList<TableColumn> columns) =>
        [.. columns.Select((column, index) => columns.Take(index).Any(earlier => earlier.Field == column.Field) ? column with { Field = null } : column)];
}
