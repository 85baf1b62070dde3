using GigRig.Data.Owners;
using GigRig.Data.Start;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Microsoft.Data.Sqlite;

namespace GigRig.Data.Tests.Owners;

/// <summary>One of everything the local owner may have.</summary>
internal sealed record Belongings(
    Stored<OwnedGear<Device>> Device,
    Stored<OwnedGear<Device>> DeletedDevice,
    Stored<EventType> Event,
    Stored<OwnRole> Role,
    Stored<SavedRig> Rig,
    ShareLink Link)
{
    public static async Task<Belongings> PutAsync(LibraryOnDisk library, CancellationToken cancel)
    {
        var device = await library.Gear.AddAsync(A.Device("echo"), new(), cancel);
        var deleted = await library.Gear.AddAsync(A.Device("fuzz"), new(), cancel);
        await library.Gear.DeleteAsync(deleted.Id, deleted.Version, cancel);
        await library.Photos.PutAsync(device.Id, new(new byte[] { 1, 2, 3 }, "image/jpeg"), cancel);
        await library.Gear.AddAsync(A.Board(), new(), cancel);
        await library.Gear.AddAsync(A.Supply(A.Outlet("1")), new(), cancel);
        await library.Gear.AddAsync(A.Amp(), new(), cancel);
        await library.Gear.AddAsync(A.OffBoard("clip"), new(), cancel);
        await library.Gear.AddAsync(A.Lead(), new(), cancel);
        await library.Gear.AddAsync(A.Instrument(), new(), cancel);
        await library.Gear.SaveAdaptersAsync(new(Guid.Empty, 0, new(Reverse: 2)), cancel);
        var night = await library.Events.AddAsync(A.Event(), cancel);
        var role = await library.Roles.AddAsync(new(new("bird-song"), "Bird song"), cancel);
        var rig = await library.Rigs.AddAsync("Jam", "", A.Draft().Problem(), A.Rig(), cancel);
        await library.Links.CreateAsync(rig.Id, new("band"), cancel);
        return new(device, deleted, night, role, rig, (await library.Links.ForRigAsync(rig.Id, cancel)).Single());
    }

    /// <summary>Every row of the local owner, column by column, read past all our code.</summary>
    public static List<string> Rows(LibraryOnDisk library) => Rows(library.Folder);

    public static List<string> Rows(DataFolder folder)
    {
        using var connection = new SqliteConnection(folder.ReadOnlyConnectionString);
        connection.Open();
        using var tables = connection.CreateCommand();
        tables.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_\\_EF%' ESCAPE '\\' ORDER BY name";
        using var names = tables.ExecuteReader();
        List<string> rows = [];
        while (names.Read())
            rows.AddRange(Rows(connection, names.GetString(0)));
        return rows;
    }

    private static List<string> Rows(SqliteConnection connection, string table)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT * FROM \"{table}\" WHERE \"OwnerId\" = $owner";
        command.Parameters.AddWithValue("$owner", OwnerContext.Local.OwnerId);
        using var reader = command.ExecuteReader();
        List<string> rows = [];
        while (reader.Read())
            rows.Add($"{table}: {string.Join(", ", Enumerable.Range(0, reader.FieldCount).Select(column => $"{reader.GetName(column)}={reader.GetValue(column)}"))}");
        return rows;
    }
}
