// Dragging and nudging happen here, in the browser's own time; the app hears once where a thing was put down. While one is dragged the app is asked now and
// then which rules it would break there; nothing waits for the answer. A thing is a group that stands by its `transform`: what is written here while it is
// held, the app's next drawing writes over.
const svgSpace = "http://www.w3.org/2000/svg";
const snapPixels = 7;
const dragPixels = 4;
const restMs = 250;
const askMs = 100;
const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const [body, plug, ground] = [0, 1, 2];

export function attach(svg, app) {
  const bench = svg.closest(".bench");
  const guides = svg.querySelector(".bench-guides");
  const readout = bench.querySelector(".bench-readout");
  const ending = new AbortController();
  let held = null;
  let nudged = null;

  const things = () => [...svg.querySelectorAll("[data-thing]")];
  const thingOf = (event) => event.target.closest?.("[data-thing]");
  const isStill = (thing) => svg.dataset.still === "true" || thing.dataset.locked === "true";
  const placeOf = (thing) => thing.getAttribute("transform").match(/-?[\d.]+/g).map(Number);
  const settledPlaceOf = (thing) => [Number(thing.dataset.x), Number(thing.dataset.y)];
  const place = (thing, x, y) => thing.setAttribute("transform", `translate(${x} ${y})`);
  const pointOf = (event) => new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const on = (target, name, action, options) => target.addEventListener(name, action, { ...options, signal: ending.signal });

  async function tell(what, ...told) {
    try {
      await app.invokeMethodAsync(what, ...told);
      return true;
    } catch {
      return false;
    }
  }

  // What is seen where it was put down must not be lost, though the connection may be: it is written down until the app has heard of it, and told again
  // when the connection or the page comes back.
  const unheardKey = `gigrig-unheard:${location.pathname}`;
  const unheard = () => JSON.parse(sessionStorage.getItem(unheardKey) ?? "{}");
  const keepUnheard = (moves) => (Object.keys(moves).length > 0 ? sessionStorage.setItem(unheardKey, JSON.stringify(moves)) : sessionStorage.removeItem(unheardKey));

  async function tellPlace(id, x, y) {
    keepUnheard({ ...unheard(), [id]: [x, y] });
    if (!(await tell("PutDown", id, x, y))) return;
    const { [id]: [heardX, heardY] = [x, y], ...others } = unheard();
    if (heardX === x && heardY === y) keepUnheard(others);
    const thing = svg.querySelector(`[data-thing="${CSS.escape(id)}"]`);
    if (thing && held?.thing !== thing && nudged?.thing !== thing && !(id in unheard())) place(thing, ...settledPlaceOf(thing));
  }

  const putDown = (thing) => tellPlace(thing.dataset.thing, ...placeOf(thing));
  const tellUnheard = () => Object.entries(unheard()).forEach(([id, [x, y]]) => tellPlace(id, x, y));

  function showPlace(thing, x, y) {
    const fromFront = Number(svg.dataset.depth) - y - Number(thing.dataset.deep);
    const [across, deep] = [x, fromFront].map((length) => (svg.dataset.inches === "true" ? (length / 25.4).toFixed(2) : length));
    readout.firstElementChild.textContent = `${across}, ${deep} ${svg.dataset.inches === "true" ? "in" : "mm"}`;
  }

  // One question at a time and ten a second at most, always about where the thing is by then.
  async function askFaults(drag) {
    if (drag.asking) return;
    drag.asking = true;
    while (held === drag) {
      const [x, y] = placeOf(drag.thing);
      if (x === drag.askedX && y === drag.askedY) break;
      [drag.askedX, drag.askedY] = [x, y];
      const faults = await app.invokeMethodAsync("FaultsAt", drag.thing.dataset.thing, x, y).catch(() => []);
      if (held !== drag) break;
      showFaults(drag.thing, faults);
      await new Promise((rested) => setTimeout(rested, askMs));
    }
    drag.asking = false;
  }

  function showFaults(thing, faults) {
    thing.classList.toggle("bench-warned", faults.length > 0);
    readout.lastElementChild.textContent = faults.join(" ");
  }

  function letGo() {
    held = null;
    guides.replaceChildren();
    for (const part of readout.children) part.textContent = "";
    svg.classList.remove("bench-dragging");
    for (const thing of things()) thing.classList.remove("bench-held", "bench-warned");
  }

  // Within the picture, so that nothing is dropped where it cannot be picked up again.
  function within(thing, x, y) {
    const view = svg.viewBox.baseVal;
    const [wide, deep] = [Number(thing.dataset.wide), Number(thing.dataset.deep)];
    const between = (low, value, high) => Math.max(Math.ceil(low), Math.min(value, Math.floor(high)));
    return [between(view.x, x, view.x + view.width - wide), between(view.y, y, view.y + view.height - deep)];
  }

  function drag(event) {
    const at = pointOf(event);
    let [x, y] = within(held.thing, Math.round(held.x + at.x - held.from.x), Math.round(held.y + at.y - held.from.y));
    guides.replaceChildren();
    if (!event.altKey) {
      const [x0, y0] = settledPlaceOf(held.thing);
      const reach = snapPixels / svg.getScreenCTM().a;
      const sideways = nearest(held.edges, held.thing.dataset.thing, false, x - x0, y - y0, reach);
      x += sideways?.off ?? 0;
      const lengthways = nearest(held.edges, held.thing.dataset.thing, true, y - y0, x - x0, reach);
      y += lengthways?.off ?? 0;
      for (const meeting of [sideways, lengthways]) if (meeting) guides.append(guideAt(meeting));
    }
    place(held.thing, x, y);
    showPlace(held.thing, x, y);
    askFaults(held);
  }

  function cancel() {
    const { thing, x, y } = held;
    letGo();
    place(thing, x, y);
  }

  on(svg, "pointerdown", (event) => {
    const thing = thingOf(event);
    if (!thing || held || event.button !== 0 || svg.dataset.still === "true") return;
    flush();
    event.preventDefault();
    thing.focus({ preventScroll: true });
    const [x, y] = placeOf(thing);
    held = { thing, x, y, from: pointOf(event), px: event.clientX, py: event.clientY, pointer: event.pointerId, moved: false, edges: JSON.parse(svg.dataset.edges) };
    svg.setPointerCapture(event.pointerId);
  });

  on(svg, "pointermove", (event) => {
    if (!held || event.pointerId !== held.pointer) return;
    if (!held.moved) {
      if (Math.hypot(event.clientX - held.px, event.clientY - held.py) < dragPixels) return;
      if (isStill(held.thing)) {
        tell("Refuse", held.thing.dataset.thing);
        letGo();
        return;
      }
      held.moved = true;
      svg.classList.add("bench-dragging");
      held.thing.classList.add("bench-held");
    }
    drag(event);
  });

  on(svg, "pointerup", (event) => {
    if (!held || event.pointerId !== held.pointer) return;
    const { thing, moved } = held;
    letGo();
    if (moved) putDown(thing);
  });

  on(svg, "pointercancel", () => held && cancel());
  on(window, "keydown", (event) => {
    if (event.key !== "Escape" || !held) return;
    event.preventDefault();
    cancel();
  });

  // A burst of presses is one move.
  function nudge(thing, [stepX, stepY], far) {
    if (nudged && nudged.thing !== thing) flush();
    clearTimeout(nudged?.timer);
    const [x, y] = placeOf(thing);
    place(thing, x + stepX * far, y + stepY * far);
    nudged = { thing, timer: setTimeout(flush, restMs) };
  }

  function flush() {
    if (!nudged) return;
    clearTimeout(nudged.timer);
    const { thing } = nudged;
    nudged = null;
    if (thing.isConnected) putDown(thing);
  }

  function step(thing, by) {
    const all = things();
    const to = by === "first" ? 0 : by === "last" ? all.length - 1 : (all.indexOf(thing) + by + all.length) % all.length;
    all[to].focus();
  }

  async function act(what, thing) {
    flush();
    await tell(what, thing.dataset.thing);
    if (!thing.isConnected) svg.querySelector('[data-thing][tabindex="0"]')?.focus();
  }

  on(svg, "keydown", (event) => {
    const thing = thingOf(event);
    if (!thing || held || event.ctrlKey || event.metaKey || event.altKey) return;
    const actions = {
      r: () => act("Turn", thing), l: () => act("ToggleLock", thing), Delete: () => act("Remove", thing), Backspace: () => act("Remove", thing),
      PageDown: () => step(thing, 1), PageUp: () => step(thing, -1), Home: () => step(thing, "first"), End: () => step(thing, "last"),
    };
    const action = event.key in arrows
      ? () => (isStill(thing) ? tell("Refuse", thing.dataset.thing) : nudge(thing, arrows[event.key], event.shiftKey ? 10 : 1))
      : actions[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (!action) return;
    event.preventDefault();
    action();
  });

  on(svg, "focusout", flush);

  // Wherever on the page the hands are, but for a field, which undoes its own typing, and a dialog.
  on(document, "keydown", (event) => {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || event.altKey || held || !["z", "y"].includes(key) || event.target.closest("input, textarea, select, dialog, .mud-dialog")) return;
    event.preventDefault();
    flush();
    tell(key === "y" || event.shiftKey ? "Redo" : "Undo");
  });

  on(document, "components-reconnect-state-changed", ({ detail }) => detail.state === "hide" && tellUnheard(), { capture: true });
  tellUnheard();

  // A button that is gone takes the focus with it: what was brought to the board catches it, else the box that Tab leads to. Only whoever works by keys
  // needs to see it there; under a finger the page stays where it is.
  let byKeys = false;
  on(document, "keydown", () => (byKeys = true), { capture: true });
  on(document, "pointerdown", () => (byKeys = false), { capture: true });
  const catchFocus = (id) => {
    if (document.activeElement && document.activeElement !== document.body) return;
    const thing = svg.querySelector(id ? `[data-thing="${CSS.escape(id)}"]` : '[data-thing][tabindex="0"]');
    thing?.focus({ preventScroll: !byKeys });
  };

  svg.dataset.ready = "true";
  return { catchFocus, dispose: () => ending.abort() };
}

// The nearest meeting of an edge of the thing with another edge: opposite edges that lie beside each other touch, like edges of bodies and ground line up.
function nearest(edges, id, across, along, aside, reach) {
  let best = null;
  for (const own of edges)
    if (own.id === id && own.across === across)
      for (const other of edges)
        if (other.id !== id && other.across === across && meets(own, other, aside)) {
          const off = other.at - (own.at + along);
          if (Math.abs(off) <= reach && (!best || Math.abs(off) < Math.abs(best.off))) best = { off, across, at: other.at, from: Math.min(other.from, own.from + aside), to: Math.max(other.to, own.to + aside) };
        }
  return best;
}

function meets(own, other, aside) {
  if (own.far === other.far) return own.of === body && other.of !== plug;
  return other.of !== ground && other.from < own.to + aside && own.from + aside < other.to;
}

function guideAt({ across, at, from, to }) {
  const line = document.createElementNS(svgSpace, "line");
  const ends = across ? { x1: from, x2: to, y1: at, y2: at } : { x1: at, x2: at, y1: from, y2: to };
  for (const [name, value] of Object.entries(ends)) line.setAttribute(name, value);
  return line;
}
