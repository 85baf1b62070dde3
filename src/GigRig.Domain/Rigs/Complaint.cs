namespace GigRig.Domain.Rigs;

/// <summary>Something in what was given that cannot be worked with.</summary>
/// <param name="Path">JSON Pointer (RFC 6901) into the <c>rig-problem/1</c> document, such as <c>/devices/3/width</c>.</param>
/// <param name="Value">What was given, as text.</param>
/// <param name="Limit">What is allowed.</param>
/// <param name="Message">One sentence that names the thing, the value and the limit, and says what to do.</param>
public sealed record Complaint(string Path, string Value, string Limit, string Message)
{
    /// <summary>The same ones, for a refusal.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    internal static ValueList<Complaint> AtLeastOne(ValueList<Complaint> complaints) =>
        complaints.Count > 0 ? complaints : throw new ArgumentException("A refusal needs at least one complaint.", nameof(complaints));
}
