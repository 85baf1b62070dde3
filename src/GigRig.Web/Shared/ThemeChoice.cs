namespace GigRig.Web.Shared;

/// <summary>Which colours are shown.</summary>
public enum ThemeChoice
{
    /// <summary>What the computer or phone is set to.</summary>
    System,
    Light,
    Dark,
}

/// <summary>Remembers the choice in the browser, where the very first response can already read it: no flash of the other colours.</summary>
internal static class ThemeCookie
{
    /// <summary>The same name stands in <c>js/display.js</c>, which writes it.</summary>
    public const string Name = "gigrig-theme";

    public static ThemeChoice Read(IRequestCookieCollection cookies) =>
        Enum.TryParse<ThemeChoice>(cookies[Name], ignoreCase: true, out var choice) && Enum.IsDefined(choice) ? choice : ThemeChoice.System;
}
