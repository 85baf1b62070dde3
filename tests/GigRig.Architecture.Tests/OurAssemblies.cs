using System.Reflection;
using GigRig.Domain.Rigs;

namespace GigRig.Architecture.Tests;

/// <summary>The four assemblies of the product.</summary>
internal static class OurAssemblies
{
    public static Assembly Domain { get; } = typeof(RigProblem).Assembly;

    public static Assembly Planning { get; } = Assembly.Load("GigRig.Planning");

    public static Assembly Data { get; } = Assembly.Load("GigRig.Data");

    public static Assembly Web { get; } = typeof(Program).Assembly;

    public static IReadOnlyList<Assembly> All { get; } = [Domain, Planning, Data, Web];

    /// <summary>What it was compiled against, without the framework's own assemblies.</summary>
    public static IEnumerable<string> PackagesAndProjectsOf(Assembly assembly) =>
        assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(name => !name.StartsWith("System.", StringComparison.Ordinal) && name is not ("System" or "netstandard" or "mscorlib"))
            .Order(StringComparer.Ordinal);
}
