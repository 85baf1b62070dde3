namespace GigRig.Domain.Documents;

/// <summary>The least and the most a whole number, the length of a text or the count of a list may be, for the JSON Schema. <c>RigProblem.Create</c> enforces the same constants.</summary>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
internal sealed class WithinAttribute(int least, int most) : Attribute
{
    public int Least => least;

    public int Most => most;
}

/// <summary>Volts with at most three decimals.</summary>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Parameter)]
internal sealed class VoltsAttribute : Attribute;

/// <summary>A role's key, or a list of them.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class RoleKeyAttribute : Attribute;

/// <summary>A turn, or a list of them.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class RightAngleAttribute : Attribute;
