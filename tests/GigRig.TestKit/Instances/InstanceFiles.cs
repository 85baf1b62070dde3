using System.Text.Json;

namespace GigRig.TestKit.Instances;

/// <summary>The files of <c>tests/instances</c>, carried inside this assembly.</summary>
internal static class InstanceFiles
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow };

    public static IReadOnlyList<T> Read<T>(string name)
    {
        using var stream = typeof(InstanceFiles).Assembly.GetManifestResourceStream($"instances/{name}")
            ?? throw new FileNotFoundException($"No tests/instances/{name} in the test kit.");
        return JsonSerializer.Deserialize<List<T>>(stream, Options)!;
    }
}
