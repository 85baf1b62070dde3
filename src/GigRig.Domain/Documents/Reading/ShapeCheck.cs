using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Reading;

/// <summary>
/// Holds a JSON text against the shape of a document record and complains about every difference, where the serializer would stop at the first.
/// What passes can be deserialized.
/// </summary>
internal sealed class ShapeCheck(CheckList list)
{
    /// <summary>False once something is missing or of the wrong kind. Unknown and doubled members leave the rest readable.</summary>
    public bool Readable { get; private set; } = true;

    public void Check(JsonElement element, Type type, string pointer, bool volts = false)
    {
        var info = DocumentJson.Compact.GetTypeInfo(Nullable.GetUnderlyingType(type) ?? type);
        if (info.Kind == JsonTypeInfoKind.Object)
            CheckMembers(element, info, pointer);
        else if (info.Kind == JsonTypeInfoKind.Enumerable)
            CheckItems(element, info.ElementType!, pointer, volts);
        else if (ValueKind.Of(info.Type, volts) is var kind && !kind.Accepts(element))
            Refuse(element, pointer, kind.Wanted, kind.Hint(element));
    }

    private void CheckItems(JsonElement element, Type itemType, string pointer, bool volts)
    {
        if (element.ValueKind != JsonValueKind.Array)
        {
            Refuse(element, pointer, "a list");
            return;
        }

        foreach (var (index, item) in element.EnumerateArray().Index())
            Check(item, itemType, pointer.Item(index), volts);
    }

    private void CheckMembers(JsonElement element, JsonTypeInfo info, string pointer)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Refuse(element, pointer, "an object");
            return;
        }

        var known = info.Properties.ToDictionary(property => property.Name, StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            var name = member.SafeName();
            if (!known.TryGetValue(name, out var property))
                Unknown(name, known.Keys, pointer);
            else if (!seen.Add(name))
                list.Add(pointer.Member(name), member.Value.Shown(), "one", $"{pointer.Member(name)} is given twice. Keep one.");
            else if (member.Value.ValueKind != JsonValueKind.Null || !property.IsSetNullable)
                Check(member.Value, property.PropertyType, pointer.Member(name), property.Has<VoltsAttribute>());
        }

        foreach (var missing in info.Properties.Where(property => property.IsRequired && !seen.Contains(property.Name)))
        {
            Readable = false;
            list.Add(pointer.Member(missing.Name), "nothing", "required", $"{pointer.Member(missing.Name)} is missing. Add it.");
        }
    }

    private void Unknown(string name, IEnumerable<string> known, string pointer)
    {
        var advice = NearestName.Of(name, known) is { } nearest ? $"Did you mean \"{nearest}\"?" : "Remove it.";
        list.Add(pointer.Member(name), name.Shortened(), string.Join(", ", known), $"{pointer.Member(name.Shortened())} is not a member of this document. {advice}");
    }

    private void Refuse(JsonElement element, string pointer, string wanted, string hint = "")
    {
        Readable = false;
        var place = pointer.Length == 0 ? "The document" : pointer;
        list.Add(pointer, element.Shown(), wanted, $"{place} is {element.Shown()}; give {wanted}.{hint}");
    }
}
