// Cookies, because the server reads them: its first response already has the chosen colours and units.
window.gigrigDisplay = {
  chooseTheme(choice) {
    document.documentElement.dataset.theme = choice;
    this.remember("gigrig-theme", choice, choice === "system");
  },
  chooseUnit(choice) {
    this.remember("gigrig-unit", choice, choice === "millimetres");
  },
  download(url) {
    Object.assign(document.createElement("a"), { href: url, download: "" }).click();
  },
  toFirstFault() {
    document.querySelector('main [aria-invalid="true"]')?.focus();
  },
  knows(name) {
    return document.cookie.split("; ").some((part) => part.startsWith(`${name}=`));
  },
  theme() {
    return document.documentElement.dataset.theme ?? "system";
  },
  remember(name, value, isDefault) {
    document.cookie = `${name}=${value}; path=/; max-age=${isDefault ? 0 : 60 * 60 * 24 * 365}; samesite=lax`;
  },
};
