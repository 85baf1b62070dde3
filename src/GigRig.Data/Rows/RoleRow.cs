using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

internal sealed class RoleRow : ThingRow<OwnRole>
{
    public string Key { get; set; } = "";

    public string Name { get; set; } = "";

    public override string Title => $"role \"{Key}\"";

    public override void Set(OwnRole item) => (Key, Name) = (item.Role.Key, item.Title);

    public override OwnRole ToItem() => new(new Role(Key), Name);
}
