// The cookie lets the server paint the chosen colours in its first response.
window.gigrigTheme = {
  choose(choice) {
    document.documentElement.dataset.theme = choice;
    const keep = choice === "system" ? 0 : 60 * 60 * 24 * 365;
    document.cookie = `gigrig-theme=${choice}; path=/; max-age=${keep}; samesite=lax`;
  },
};
