namespace GigRig.TestKit.Judging;

/// <summary>What the naive checker finds wrong.</summary>
/// <param name="Rule">The id of the rule that should find it as well.</param>
public sealed record Fault(string Rule, string What);
