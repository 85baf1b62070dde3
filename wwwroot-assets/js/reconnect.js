// Never reloads on its own: a reload would throw away what was typed.
(() => {
  const modal = document.getElementById("components-reconnect-modal");
  const show = (state) => {
    modal.dataset.state = state;
    if (!modal.open) modal.showModal();
  };

  modal.addEventListener("components-reconnect-state-changed", ({ detail: { state } }) => {
    if (state === "hide") modal.close();
    else if (state === "show" || state === "retrying") show("trying");
    else if (state === "failed") show("failed");
    else if (state === "rejected" || state === "resume-failed") show("restarted");
    else if (state === "paused") resume();
  });

  modal.addEventListener("click", ({ target }) => {
    const asked = target.dataset?.reconnect;
    if (asked === "retry") retry();
    else if (asked === "reload") location.reload();
    else if (asked === "close") modal.close();
  });

  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && modal.open && modal.dataset.state === "failed") retry();
  });

  async function retry() {
    show("trying");
    try {
      if (await Blazor.reconnect()) modal.close();
      else await resume();
    } catch {
      show("failed");
    }
  }

  async function resume() {
    try {
      if (await Blazor.resumeCircuit()) modal.close();
      else show("restarted");
    } catch {
      show("restarted");
    }
  }
})();
