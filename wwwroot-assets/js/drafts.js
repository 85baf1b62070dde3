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
  return {
    keep: (key, text) => attempt(() => localStorage.setItem(prefix + key, text)),
    find: (key) => attempt(() => localStorage.getItem(prefix + key)),
    drop: (key) => attempt(() => localStorage.removeItem(prefix + key)),
  };
})();
