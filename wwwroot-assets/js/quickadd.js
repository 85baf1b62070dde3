// What is typed between Enter and the app's answer belongs to the next line, whose entries are not on the page yet: it is held and put there.
window.gigrigQuick = (() => {
  let held = null;
  document.addEventListener("submit", ({ target }) => {
    if (target.matches(".gr-quickrow")) held ??= [""];
  });
  document.addEventListener(
    "keydown",
    (press) => {
      const elsewhere = press.target !== document.body && !press.target.closest(".gr-quickrow");
      if (!held || elsewhere || press.ctrlKey || press.altKey || press.metaKey) return;
      if (press.key.length === 1) held.push(held.pop() + press.key);
      else if (press.key === "Backspace") held.push(held.pop().slice(0, -1));
      else if (press.key === "Tab" && !press.shiftKey) held.push("");
      else if (press.key !== "Enter") return;
      press.preventDefault();
    },
    true,
  );
  const write = (entry, text) => {
    entry?.focus();
    if (!entry || !text) return;
    entry.value = text;
    entry.dispatchEvent(new Event("change", { bubbles: true }));
  };

  return {
    // The line was added and this is the next one.
    next: (line) => {
      const entries = line.querySelectorAll("input[data-field]");
      (held ?? [""]).forEach((text, place) => write(entries[place], text));
      held = null;
    },
    // The line has faults: to the first of them.
    mend: (line) => {
      held = null;
      line.querySelector("[aria-invalid=true]")?.focus();
    },
  };
})();
