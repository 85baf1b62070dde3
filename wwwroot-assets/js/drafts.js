// What is typed and not saved yet. A browser that refuses storage simply keeps nothing.
window.gigrigDrafts = (() => {
  const prefix = "gigrig-draft:";
  const attempt = (action) => {
    try {
      return action();
    } catch {
      return null;
    }
  };

  // Each tab has a name, held as a lock while it is open. A tab that was duplicated finds its name taken and picks another.
  const lockOf = (tab) => `gigrig-tab:${tab}`;
  const openTabs = async () => ((await navigator.locks?.query())?.held ?? []).map((lock) => lock.name);
  const named = (async () => {
    const kept = attempt(() => sessionStorage.getItem("gigrig-tab"));
    const tab = kept && !(await openTabs()).includes(lockOf(kept)) ? kept : Date.now().toString(36) + Math.random().toString(36).slice(2, 8);
    attempt(() => sessionStorage.setItem("gigrig-tab", tab));
    navigator.locks?.request(lockOf(tab), () => new Promise(() => {}));
    return tab;
  })();

  return {
    keep: (key, text) => attempt(() => localStorage.setItem(prefix + key, text)),
    find: (key) => attempt(() => localStorage.getItem(prefix + key)),
    drop: (key) => attempt(() => localStorage.removeItem(prefix + key)),

    // What is too large to keep for good, for as long as this tab is open; nothing is kept of an empty text.
    keepInTab: (key, text) => attempt(() => (text ? sessionStorage.setItem(prefix + key, text) : sessionStorage.removeItem(prefix + key))),
    findInTab: (key) => attempt(() => sessionStorage.getItem(prefix + key)),

    // The key for this tab alone, where several may work on one thing. What a tab that is gone has left under its own key comes along.
    async ownKey(thing) {
      const own = `${thing}@${await named}`;
      if (attempt(() => localStorage.getItem(prefix + own))) return own;
      const open = await openTabs();
      const orphan = attempt(() => Object.keys(localStorage).find((key) => key.startsWith(`${prefix}${thing}@`) && !open.includes(lockOf(key.split("@").at(-1)))));
      if (orphan)
        attempt(() => {
          localStorage.setItem(prefix + own, localStorage.getItem(orphan));
          localStorage.removeItem(orphan);
        });
      return own;
    },
  };
})();
