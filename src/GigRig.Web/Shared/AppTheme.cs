using MudBlazor;

namespace GigRig.Web.Shared;

/// <summary>
/// Shape and type for MudBlazor. Colours come from <c>css/tokens.css</c>, where each token holds its light and its dark value, so that the
/// browser picks and nothing repaints when the page becomes interactive.
/// </summary>
internal static class AppTheme
{
    // The palette only feeds MudBlazor's translucent hover tints, which are computed from a triple; these mid-tones suit both colour schemes.
    private static readonly PaletteLight Tints = new()
    {
        Primary = "#2f8f86",
        Secondary = "#8a6d3b",
        Tertiary = "#6c6fb5",
        Info = "#3f82b5",
        Success = "#4b8f4b",
        Warning = "#b57f1c",
        Error = "#c0504a",
        Dark = "#70767c",
    };

    private static readonly string[] SystemFonts = ["system-ui", "-apple-system", "Segoe UI", "Roboto", "Noto Sans", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = Tints,
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "8px", AppbarHeight = "60px" },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = SystemFonts, FontSize = "1rem", LineHeight = "1.5", LetterSpacing = "normal" },
            H1 = new H1Typography { FontSize = "1.75rem", FontWeight = "650", LineHeight = "1.25", LetterSpacing = "-0.01em" },
            H2 = new H2Typography { FontSize = "1.25rem", FontWeight = "600", LineHeight = "1.3", LetterSpacing = "normal" },
            H3 = new H3Typography { FontSize = "1.05rem", FontWeight = "600", LineHeight = "1.35", LetterSpacing = "normal" },
            Body1 = new Body1Typography { FontSize = "1rem", LineHeight = "1.5", LetterSpacing = "normal" },
            Body2 = new Body2Typography { FontSize = "0.9rem", LineHeight = "1.45", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontSize = "0.95rem", FontWeight = "600", TextTransform = "none", LetterSpacing = "normal" },
        },
    };
}
