// Fingers don't wait for the app. What is typed before it has answered is held, and played in order into the line that then is open.
window.gigrigQuick = (() => {
  let here = false; // The cursor was last seen in a line.
  let waiting = true; // For the page to come alive, for Enter, or for the entries of another kind.
  let sent = null; // The line whose Enter has no answer yet.
  let held = [];
  let at = null; // Where the cursor is, or will be once what is held was played; none before the page is alive.

  const rowOf = (element) => element.closest?.(".gr-quickrow");
  const entriesOf = (row) => [...row.querySelectorAll("input[data-field]")];
  const lock = (row, locked) => entriesOf(row).forEach((entry) => (entry.readOnly = locked));
  const write = (text) => {
    if (!at.dataset.field) return;
    at.value = text;
    at.dispatchEvent(new Event("change", { bubbles: true }));
  };

  // A spreadsheet's cells and rows, or a scanner's, are lines like any typed ones.
  const type = (text) =>
    text.split(/(\t|\r?\n)/).forEach((part) => {
      const last = held.at(-1);
      if (part === "\t") held.push({ key: "Tab" });
      else if (/\n/.test(part)) press("Enter");
      else if (last?.text) last.text += part;
      else if (part) held.push({ text: part });
    });
  const press = (key, back) => {
    const last = held.at(-1);
    if (key === "Backspace" && last?.text) last.text = last.text.slice(0, -1);
    // Pressed twice by impatience.
    else if (key !== "Enter" || (last ? last.key !== "Enter" : !sent)) held.push({ key, back });
  };

  const act = ({ text, key, back, to, kind }) => {
    const row = rowOf(at);
    const kinds = [...row.querySelectorAll("[type=radio]")];
    const stops = [row.querySelector("input:checked"), ...entriesOf(row), row.querySelector("[type=submit]")];
    if (to) at = to.isConnected ? to : (stops.find((stop) => stop.dataset.field === to.dataset.field) ?? at);
    else if (text) write(at.value + text);
    else if (key === "Backspace") write(at.value.slice(0, -1));
    else if (key === "Tab") at = stops[stops.indexOf(at) + (back ? -1 : 1)] ?? at;
    else if (key === "Enter") row.requestSubmit();
    else if (kind || at.type === "radio") {
      at = kinds.find((other) => other.value === kind) ?? kinds.at((kinds.indexOf(at) + (/Left|Up/.test(key) ? -1 : 1)) % kinds.length);
      at.click();
    }
  };
  const play = () => {
    if (!at?.isConnected) at = open();
    if (!at) return false;
    // A kind picked meanwhile has an answer of its own.
    waiting = rowOf(at).dataset.kind !== rowOf(at).querySelector("input:checked").value;
    while (held.length && !waiting) act(held.shift());
    if (here && !waiting) at.focus();
    return false;
  };
  const rows = () => [...document.querySelectorAll(".gr-quickrow")];
  const open = () => rows().map((row) => entriesOf(row)[0]).at(-1);

  document.addEventListener("focusin", ({ target }) => {
    here = !!rowOf(target);
    if (!here) return;
    if (!waiting) at = target;
    else if (rowOf(target) !== sent) held.push({ to: target });
    if (!at) lock(rowOf(target), true);
  });
  document.addEventListener(
    "change",
    ({ target }) => {
      if (target.type !== "radio" || !rowOf(target)) return;
      if (waiting) held.push({ kind: target.value });
      else [at, waiting] = [target, true];
    },
    true,
  );
  document.addEventListener(
    "submit",
    (event) => {
      if (!rowOf(event.target)) return;
      here = true;
      if (waiting) {
        event.preventDefault();
        event.stopImmediatePropagation();
        press("Enter");
        return;
      }
      waiting = true;
      sent = event.target;
      lock(sent, true);
    },
    true,
  );
  document.addEventListener(
    "keydown",
    (event) => {
      const command = event.metaKey || ((event.ctrlKey || event.altKey) && !event.getModifierState("AltGraph"));
      if (!here || !waiting || command || event.isComposing) return;
      if (event.key.length === 1) type(event.key);
      else if (/^(Backspace|Tab|Enter|Arrow.*)$/.test(event.key)) press(event.key, event.shiftKey);
      else return;
      event.preventDefault();
    },
    true,
  );
  // The component library answers a click into an entry by putting the cursor there, a round trip later; it is there already, or further on by then.
  document.addEventListener("click", (event) => event.target.matches(".gr-quickrow input[data-field]") && event.stopImmediatePropagation(), true);
  document.addEventListener(
    "paste",
    (event) => {
      const text = event.clipboardData.getData("text");
      if (!here || !(waiting || /[\t\n]/.test(text.trim()))) return;
      event.preventDefault();
      type(text);
      if (!waiting) play();
    },
    true,
  );

  // Each true where a line has to be opened for what is being typed already.
  return {
    // The page is alive, or the line that was sent off is added: on with the open one.
    next: () => {
      sent = null;
      at = open();
      rows().forEach((row) => lock(row, false));
      return play();
    },
    // The entries of a line, or the lines, are others now.
    changed: () => {
      return !sent && play();
    },
    // The line that was sent off has faults.
    refused: () => {
      if (!sent) return false;
      lock(sent, false);
      if (held.some((part) => part.text)) return true;
      const row = sent;
      [sent, held, waiting] = [null, [], false];
      if (here) row.querySelector("[aria-invalid=true]")?.focus();
      return false;
    },
  };
})();
