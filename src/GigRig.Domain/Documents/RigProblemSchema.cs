using System.ComponentModel;
using System.Reflection;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents;

/// <summary>The JSON Schema (draft 2020-12) of <c>rig-problem/1</c>, made from the same records that read it.</summary>
public static class RigProblemSchema
{
    private static readonly JsonSchemaExporterOptions Exporting = new()
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = Describe,
    };

    public static string Text { get; } = Make();

    private static string Make()
    {
        var schema = DocumentJson.Indented.GetJsonSchemaAsNode(typeof(RigProblemDocument), Exporting).AsObject();
        schema["properties"]!["format"] = new JsonObject { ["const"] = RigProblemDocument.FormatWord };
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", RigProblemDocument.FormatWord);
        return schema.ToJsonString(DocumentJson.Indented);
    }

    private static JsonNode Describe(JsonSchemaExporterContext context, JsonNode node)
    {
        if (node is not JsonObject schema)
            return node;
        if (schema.ContainsKey("properties"))
            schema["additionalProperties"] = false;
        var property = context.PropertyInfo?.AttributeProvider;
        if ((Of<DescriptionAttribute>(property) ?? context.TypeInfo.Type.GetCustomAttribute<DescriptionAttribute>()) is { } words)
            schema["description"] = words.Description;
        if (property is not null && Of<WithinAttribute>(property) is { } within)
            Bound(schema, within);
        if (property is not null && Of<VoltsAttribute>(property) is not null)
            BoundVolts(schema["items"] as JsonObject ?? schema);
        if (property is not null && Of<RoleKeyAttribute>(property) is not null)
            BoundRole(schema["items"] as JsonObject ?? schema);
        if (property is not null && Of<RightAngleAttribute>(property) is not null)
            (schema["items"] as JsonObject ?? schema)["enum"] = new JsonArray(0, 90, 180, 270);
        return schema;
    }

    private static void Bound(JsonObject schema, WithinAttribute within)
    {
        var (least, most) = schema.ContainsKey("items") ? ("minItems", "maxItems") : IsText(schema) ? ("minLength", "maxLength") : ("minimum", "maximum");
        schema[least] = within.Least;
        schema[most] = within.Most;
    }

    private static void BoundVolts(JsonObject schema)
    {
        schema["minimum"] = Bounds.LeastMillivolts / 1000m;
        schema["maximum"] = Bounds.MostMillivolts / 1000m;
        schema["multipleOf"] = 0.001m;
    }

    private static void BoundRole(JsonObject schema)
    {
        schema["pattern"] = @"^[a-z0-9-]+(\.[a-z0-9-]+)*$";
        schema["maxLength"] = Role.MaxLength;
    }

    private static bool IsText(JsonObject schema) => schema["type"]?.ToJsonString().Contains("string", StringComparison.Ordinal) == true;

    private static TAttribute? Of<TAttribute>(ICustomAttributeProvider? provider)
        where TAttribute : Attribute => provider?.GetCustomAttributes(typeof(TAttribute), inherit: false).OfType<TAttribute>().FirstOrDefault();
}
