using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Roles in a few words: <c>tuner</c>, <c>overdrive, boost</c>, <c>echo + reverb</c>; by title, key or what else players call them.</summary>
public static class RolesText
{
    public static bool TryParse(string? text, RoleChoices roles, out ValueList<RoleFunction> functions, out string error)
    {
        functions = [];
        var found = new List<RoleFunction>();
        foreach (var word in Parts(text, roles))
        {
            if (Find(word, roles) is not { } role)
            {
                var near = roles.Search(word).Take(3).Select(roles.TitleOf).ToList();
                error = $"\"{word}\" is no role that is known here. " + (near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "Type one of the list, such as drive, delay or tuner; a role of your own is added on the thing's own page.");
                return false;
            }

            if (!found.Exists(function => function.Role == role))
                found.Add(new(role));
        }

        functions = found.ToValueList();
        error = "";
        return true;
    }

    // A title of an owner's own may hold a comma itself.
    private static IEnumerable<string> Parts(string? text, RoleChoices roles)
    {
        var typed = (text ?? "").Trim();
        return Find(typed, roles) is not null ? [typed] : typed.Split([',', '+', ';', '/', '&', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    // The exact title or key first: "Drive" must not become what merely mentions it.
    private static Role? Find(string word, RoleChoices roles)
    {
        if (word.Length == 0)
            return null;
        var all = roles.Search("").ToList();
        if (all.Where(role => Same(role.Key, word) || Same(roles.TitleOf(role), word)).ToList() is [var exact, ..])
            return exact;
        // Of several that are called so, the narrowest: it meets a need for the wider one too, and not the other way round.
        if (all.Where(role => RoleCatalogue.Find(role) is { } entry && entry.Synonyms.Any(synonym => Same(synonym, word))).OrderByDescending(role => role.Key.Count(c => c == '.')).ToList() is [var called, ..])
            return called;
        return roles.Search(word).ToList() is [var only] ? only : null;
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
