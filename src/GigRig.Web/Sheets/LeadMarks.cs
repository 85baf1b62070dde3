namespace GigRig.Web.Sheets;

/// <summary>The letters of the leads on the board, the same in the drawing and in the list: a, b, … z, aa, ab, …</summary>
internal static class LeadMarks
{
    private const int Letters = 26;

    public static string Of(int index) => (index < Letters ? "" : Of((index / Letters) - 1)) + (char)('a' + (index % Letters));
}
