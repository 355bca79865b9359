/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, faultList, list } from "./dom.js";
import { ask, put } from "./state.js";
import { goTo } from "./question.js";

/* What would make it stand and what to find out. It takes many runs, so the core is asked for it slice by slice,
 * each so short that a finger is answered meanwhile; another sheet breaks it off. */

const SLICE_MS = 12;
const ONE_RUN = 1;   /* as far as the core goes at least: the dearest run tells how long a finger may wait */
let seeking = 0;     /* the search in hand */
let advice = null;   /* as far as it has come */
let watchers = [];   /* who is told of each slice, until all is found */

function whenIdle(act) {
  if (typeof requestIdleCallback === "function") requestIdleCallback(act, { timeout: 100 });
  else setTimeout(act, 10);
}

/* Run after run: what one takes says nothing of the next. */
function slice() {
  const until = performance.now() + SLICE_MS;
  do advice = ask({ do: "advice", price: ONE_RUN });
  while (advice.ok && !advice.done && performance.now() < until);
}

function tellFound() {
  for (const watcher of watchers) watcher(advice);
  if (advice.done || !advice.ok) watchers = [];
}

function goOn(mine) {
  if (mine !== seeking) return;
  slice();
  tellFound();
  if (advice.ok && !advice.done) whenIdle(() => goOn(mine));
}

/* Tell the watcher at once what is known already, and of each slice more. */
export function seek(watcher) {
  if (advice) watcher(advice);
  if (advice && (advice.done || !advice.ok)) return;
  if (!watchers.includes(watcher)) watchers.push(watcher);
  if (watchers.length > 1 || advice) return;
  seeking += 1;
  const mine = seeking;
  whenIdle(() => goOn(mine));
}

/* The wall is another one. */
export function forgetAdvice() {
  seeking += 1;
  advice = null;
  watchers = [];
}

/* When all is found; never where another sheet comes first. */
export function advised(act) {
  seek((found) => { if (found.done || !found.ok) act(); });
}

/* --- what would make it stand --- */

function remedy(found) {
  return make("li", {}, button(found.words, () => put(found.items, "remedy"), { class: "wide" }));
}

const TRYING = "Still trying.";

/* Of another wall nothing is left to tap. */
export function outdate(place, reply) {
  if (place.dataset.sheet === undefined || place.dataset.sheet === reply.sheet) return;
  delete place.dataset.sheet;
  fill(place, make("p", { role: "status" }, TRYING));
}

/* What was found is added below what stands there: nothing moves under a finger. */
export function standing(place, found, reply, head) {
  if (!found.ok) return fill(place, faultList(found));
  head.textContent = found.title;
  const old = place.querySelector(".choices");
  const ul = old && place.dataset.sheet === reply.sheet ? old : make("ul", { class: "choices" });
  if (ul !== old) {
    fill(place, make("p", { role: "status" }), ul);
    place.dataset.sheet = reply.sheet;
  }
  ul.append(...found.remedies.slice(ul.children.length).map(remedy));
  const words = !found.done ? TRYING : found.none || "Tap one, and the wall is changed; Undo takes it back.";
  const told = place.querySelector("[role=status]");
  if (told.textContent !== words) told.textContent = words;
  return undefined;
}

/* --- what to find out --- */

function finding(entry) {
  return make("li", {}, entry.question ? make("b", {}, `${entry.question} `) : "", entry.words,
    button("Answer it", () => goTo(entry.item), { class: "below", "aria-label": `Answer: ${entry.question || entry.item}` }));
}

export function findings(place, found, reply) {
  if (!found.ok) return fill(place, faultList(found));
  if (!found.asked || (place.dataset.sheet === reply.sheet && place.childElementCount > 0)) return undefined;
  place.dataset.sheet = reply.sheet;
  const asked = new Set(found.find_out.map((entry) => entry.item));
  const more = reply.assumed.filter((entry) => !asked.has(entry.item));
  if (reply.assumed.length === 0) return fill(place, make("p", {}, reply.assumed_none));
  return fill(place, make("ul", { class: "plain" }, found.find_out.map(finding), more.map(finding)),
    found.costs.length > 0 ? make("h3", {}, found.costs_title) : "",
    found.costs.length > 0 ? list(found.costs.map((cost) => cost.words)) : "");
}
