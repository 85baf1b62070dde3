using MudBlazor;

namespace GigRig.Web.Shared;

/// <summary>Says what was done and offers to take it back.</summary>
internal static class UndoSnackbar
{
    private const int Milliseconds = 10_000;

    /// <param name="undo">Runs on the page's own thread; the page refreshes itself.</param>
    public static void OfferUndo(this ISnackbar snackbar, string done, Func<Task> undo) =>
        snackbar.Add(done, Severity.Normal, options =>
        {
            options.Action = "Undo";
            options.ActionColor = Color.Primary;
            options.ActionVariant = Variant.Outlined;
            options.VisibleStateDuration = Milliseconds;
            options.CloseAfterNavigation = false;
            options.OnClick = _ => undo();
        });
}
