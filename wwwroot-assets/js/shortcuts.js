// Keys that work on every page. The list of them is in the page; this reads it from there. A refused storage only means that the switch is forgotten.
(() => {
  const dialog = document.getElementById("gr-shortcuts");
  const box = dialog.querySelector("[data-shortcuts-on]");
  const name = "gigrig-keys";
  const patienceMs = 1500;
  let first = null;

  try {
    box.checked = localStorage.getItem(name) !== "off";
  } catch {
    box.checked = true;
  }
  box.addEventListener("change", () => {
    try {
      localStorage.setItem(name, box.checked ? "on" : "off");
    } catch {
      // Works until the page is left.
    }
  });

  document.addEventListener("click", ({ target }) => {
    if (target.closest?.("[data-shortcuts-open]")) dialog.showModal();
  });

  document.addEventListener("keydown", (event) => {
    if (!box.checked || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target.closest?.("input, textarea, select, [contenteditable]") || document.querySelector("dialog[open], .mud-dialog")) return;
    if (event.key === "?") {
      event.preventDefault();
      dialog.showModal();
      return;
    }
    if (first && event.timeStamp - first.at < patienceMs) {
      const row = dialog.querySelector(`[data-keys="${CSS.escape(first.key)} ${CSS.escape(event.key)}"]`);
      first = null;
      if (row) Blazor.navigateTo(row.dataset.url);
      return;
    }
    first = event.key === "g" ? { key: event.key, at: event.timeStamp } : null;
  });
})();
