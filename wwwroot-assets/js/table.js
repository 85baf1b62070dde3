// What was pasted goes to the app as a stream: a message of the page's connection would be too small for it, and so for a draft kept by the app.
// It stays in this tab until it was added or discarded; a browser that refuses storage, or finds it too large, simply keeps nothing.
window.gigrigTable = (() => {
  const key = "gear/table";
  const keep = (area) => gigrigDrafts.keepInTab(key, area.value);

  return {
    read: (area) => new TextEncoder().encode(area.value),
    clear: (area) => {
      area.value = "";
      keep(area);
    },

    // From now on keeps what stands in the area. True where something kept earlier was brought back into it.
    watch: (area) => {
      area.addEventListener("input", () => keep(area));
      const kept = area.value ? null : gigrigDrafts.findInTab(key);
      if (kept) area.value = kept;
      else keep(area);
      return Boolean(kept);
    },
  };
})();
