using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;

namespace GigRig.Web.Features.Gear.Care;

/// <summary>Which things do the same: the same roles, and for devices nearly the same size. One of them could stay home, or be sold.</summary>
public sealed class AlikeThings
{
    /// <summary>How far two footprints may differ each way, in millimetres. A rule of thumb of ours: less than the smallest box is wide.</summary>
    private const int Near = 15;

    private readonly Dictionary<Guid, List<GearRow>> alike = [];

    public AlikeThings(IEnumerable<GearRow> rows)
    {
        foreach (var same in rows.Where(row => row.Functions.Count > 0).GroupBy(row => (row.Kind.Word, Roles: string.Join('+', RolesOf(row)))))
        {
            var group = same.ToList();
            foreach (var row in group)
            {
                var others = group.Where(other => other.Id != row.Id && AreNear(row, other)).ToList();
                if (others.Count > 0)
                    alike[row.Id] = others;
            }
        }
    }

    /// <summary>Those that do the same as this one; empty where nothing does.</summary>
    public IReadOnlyList<GearRow> To(GearRow row) => alike.GetValueOrDefault(row.Id) ?? [];

    private static IEnumerable<string> RolesOf(GearRow row) => row.Functions.Select(function => function.Role.Key).Distinct().Order(StringComparer.Ordinal);

    private static bool AreNear(GearRow one, GearRow other) =>
        (one.Thing, other.Thing) is not (Device a, Device b) || AreNear(a.Size, b.Size) || AreNear(a.Size.Turned(Turn.Quarter), b.Size);

    private static bool AreNear(BodySize a, BodySize b) => Math.Abs(a.Width.Value - b.Width.Value) <= Near && Math.Abs(a.Depth.Value - b.Depth.Value) <= Near;
}
