namespace GigRig.Web.Shared.Help;

/// <summary>Where on the page of words a word stands.</summary>
public static class WordAnchor
{
    /// <summary><c>word-hook-up</c> for <c>hook-up</c>, <c>word-off-board-item</c> for <c>off-board item</c>.</summary>
    public static string Of(string word) => "word-" + word.Trim().ToLowerInvariant().Replace(' ', '-');
}
