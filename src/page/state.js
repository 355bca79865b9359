/* SPDX-License-Identifier: GPL-3.0-or-later */

/* The sheet is all that the page keeps: in hand, before each change, and in the device's own storage. */

const STORED = "lowwall.sheet";
const EARLIER_MOST = 100;

export const state = { ask: null, sheet: "", earlier: [], watchers: [], stored: false };

export function watch(watcher) {
  state.watchers.push(watcher);
}

/* Steps one after the other, with room for a finger between; those of another turn take their place. */
let turn = 0;
export function inTurn(steps) {
  turn += 1;
  const mine = turn;
  const go = () => {
    if (mine !== turn || steps.length === 0) return;
    steps.shift()();
    setTimeout(go);
  };
  setTimeout(go);
}

export function ask(request) {
  return state.ask({ sheet: state.sheet, ...request });
}

function tell(from) {
  keep();
  for (const watcher of state.watchers) watcher(from);
}

/* Take another sheet; `from` says what brought it. */
export function take(sheet, from) {
  if (sheet === state.sheet) return tell(from);
  state.earlier.push(state.sheet);
  if (state.earlier.length > EARLIER_MOST) state.earlier.shift();
  state.sheet = sheet;
  tell(from);
}

export function undo() {
  if (state.earlier.length === 0) return;
  state.sheet = state.earlier.pop();
  tell("undo");
}

/* A page from a file may have no storage: it works all the same, for as long as it is open. An earlier wall that
 * stayed there would come back as if it were the last one. */
function keep() {
  state.stored = false;
  try {
    localStorage.removeItem(STORED);
    if (state.sheet) localStorage.setItem(STORED, state.sheet);
    state.stored = state.sheet !== "";
  } catch (refused) { /* nothing is kept, and that is said */ }
}

/* What was kept when the page was last open. */
export function restore() {
  try {
    state.sheet = localStorage.getItem(STORED) || "";
  } catch (refused) { /* there is none */ }
  state.stored = state.sheet !== "";
}

/* Pages from files may share one storage: only what is ours goes. */
export function wipe() {
  try {
    Object.keys(localStorage).filter((key) => key.startsWith("lowwall.")).forEach((key) => localStorage.removeItem(key));
  } catch (refused) { /* there was none */ }
  state.sheet = "";
  state.earlier = [];
  state.stored = false;
  for (const watcher of state.watchers) watcher("wiped");
}

/* Set items, as they are typed: `block depth=500 mm`. gives the reply */
export function put(items, from) {
  const reply = ask({ do: "sheet", set: items });
  if (reply.ok) take(reply.sheet, from);
  return reply;
}

/* The rows of a sheet that the core wrote: a comma between cells, a quoted cell where one has a comma. */
export function rowsOf(sheet) {
  const rows = [];
  let cell = "", row = [], quoted = false;
  for (let i = 0; i < sheet.length; i++) {
    const c = sheet[i];
    if (quoted && c === '"' && sheet[i + 1] === '"') { cell += c; i++; }
    else if (c === '"') quoted = !quoted;
    else if (!quoted && c === ",") { row.push(cell); cell = ""; }
    else if (!quoted && c === "\n") { row.push(cell); rows.push(row); row = []; cell = ""; }
    else if (c !== "\r") cell += c;
  }
  return rows.slice(1).filter((r) => r[0] !== "");
}
