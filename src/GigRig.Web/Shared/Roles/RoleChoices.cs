using System.Text;
using GigRig.Data;
using GigRig.Domain.Gear;

namespace GigRig.Web.Shared.Roles;

/// <summary>The roles that can be picked: the built-in ones and the owner's own, found by title, key or what else players call them.</summary>
public sealed class RoleChoices(IEnumerable<OwnRole> own)
{
    private readonly List<OwnRole> own = [.. own];
    private readonly List<OwnRole> invented = [];

    /// <summary>Own roles made on this page and not stored yet.</summary>
    public IReadOnlyList<OwnRole> Invented => invented;

    public string TitleOf(Role role) => own.Find(mine => mine.Role == role)?.Title ?? RoleCatalogue.TitleOf(role);

    public IEnumerable<Role> Search(string? text)
    {
        var wanted = (text ?? "").Trim();
        var all = RoleCatalogue.All.Select(entry => entry.Role).Concat(own.Select(mine => mine.Role)).Distinct();
        return wanted.Length == 0 ? all : all.Where(role => Terms(role).Any(term => term.Contains(wanted, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>The key a new role with this title would get; null where the title has no letter or digit, or is a role already.</summary>
    public Role? KeyFor(string? title)
    {
        var key = new StringBuilder();
        foreach (var letter in (title ?? "").Trim().ToLowerInvariant().Normalize(NormalizationForm.FormD))
        {
            if (letter is (>= 'a' and <= 'z') or (>= '0' and <= '9'))
                key.Append(letter);
            else if (letter is ' ' or '-' or '_' && key.Length > 0 && key[^1] != '-')
                key.Append('-');
        }

        var made = key.ToString().Trim('-');
        var taken = Search("").Any(role => role.Key == made || TitleOf(role).Equals(title?.Trim(), StringComparison.OrdinalIgnoreCase));
        return Role.IsWellFormed(made) && !taken ? new Role(made) : null;
    }

    /// <summary>Makes a role of the owner's own. It is stored together with the thing that uses it.</summary>
    public Role Invent(string title)
    {
        var role = KeyFor(title) ?? throw new ArgumentException($"\"{title}\" can't be a new role: it is one already, or has neither letter nor digit.", nameof(title));
        var made = new OwnRole(role, title.Trim());
        own.Add(made);
        invented.Add(made);
        return role;
    }

    public void Stored(OwnRole role) => invented.Remove(role);

    private IEnumerable<string> Terms(Role role) =>
        [role.Key, TitleOf(role), .. RoleCatalogue.Find(role) is { } entry ? entry.Synonyms : []];
}
