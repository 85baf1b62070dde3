namespace GigRig.Web.Shared.Forms;

/// <summary>What is wrong with one field of a form.</summary>
/// <param name="Field">Path within the thing that is edited, such as <c>power/current</c> or <c>jacks/2/at</c>; the same as in its document.</param>
/// <param name="Sentence">Names the value and the limit and says what to do.</param>
public sealed record FieldError(string Field, string Sentence);

/// <summary>
/// What is wrong with a form right now. A field's error shows once the field was touched, or all of them once saving was tried: an empty new
/// form is not a wall of red.
/// </summary>
public sealed class FieldErrors
{
    private readonly HashSet<string> touched = new(StringComparer.Ordinal);
    private Dictionary<string, string> sentences = new(StringComparer.Ordinal);
    private bool showAll;

    public bool None => sentences.Count == 0;

    /// <summary>Those that show, in the order they were found.</summary>
    public IEnumerable<FieldError> Shown => sentences.Where(pair => Shows(pair.Key)).Select(pair => new FieldError(pair.Key, pair.Value));

    /// <summary>The error to show at a field; null where there is none, or not yet.</summary>
    public string? At(string field) => Shows(field) ? sentences.GetValueOrDefault(field) : null;

    public void Touch(string field) => touched.Add(field);

    public void ShowAll() => showAll = true;

    /// <summary>Replaces all. Only the first error of a field is kept: the next one often follows from it.</summary>
    public void Set(IEnumerable<FieldError> errors)
    {
        sentences = new(StringComparer.Ordinal);
        foreach (var error in errors)
            sentences.TryAdd(error.Field, error.Sentence);
    }

    private bool Shows(string field) => showAll || touched.Contains(field);
}
