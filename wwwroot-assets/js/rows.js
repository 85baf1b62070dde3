// The rows of a form. One that was asked for has the cursor; where one is taken away the cursor goes to its neighbour, not to the top of the page.
(() => {
  const patienceMs = 3000;
  const rowsOf = (card) => [...card.querySelectorAll(".gr-row")];
  const enter = (row) => row.querySelector("input, textarea, select, button")?.focus();

  document.addEventListener("click", ({ target }) => {
    const button = target.closest?.(".gr-fieldcard button");
    if (!button) return;
    const card = button.closest(".gr-fieldcard");
    const gone = button.closest(".gr-row");
    const before = rowsOf(card);
    const adder = gone && [...card.querySelectorAll("button")].findLast((other) => !other.closest(".gr-row"));
    const watch = new MutationObserver(() => {
      const come = rowsOf(card).find((row) => !before.includes(row));
      if (come) enter(come);
      else if (gone && !gone.isConnected) {
        const at = before.indexOf(gone);
        const neighbour = [before[at + 1], before[at - 1]].find((row) => row?.isConnected);
        if (neighbour) enter(neighbour);
        else adder?.focus();
      } else return;
      watch.disconnect();
    });
    watch.observe(card, { childList: true, subtree: true });
    setTimeout(() => watch.disconnect(), patienceMs);
  });
})();
