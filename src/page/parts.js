/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, faultList, picture, labelled, list, byId } from "./dom.js";
import { ask, take } from "./state.js";
import { cures, plainList } from "./plain.js";
import { showAnswer, showSection } from "./answer.js";
import { goTo, isAsked } from "./question.js";
import { advised, seek, forgetAdvice, outdate, standing, findings } from "./advice.js";
import { papers } from "./files.js";

/* What stands below the question, part by part. A part is filled when it is opened, and again when the sheet
 * changes while it is open. */

/* --- what an order lacks --- */

/* Where a question asks for it, there; else on the spot. */
function lacks(reply) {
  const asked = reply.faults.find((fault) => fault.slug === "missing-item" && isAsked(fault.item));
  if (!asked) return cures(reply);
  return [make("p", {}, asked.told), button("Answer it", () => goTo(asked.item))];
}

/* --- drawings --- */

const ZOOMS = [100, 150, 200, 300];
const PHONE_MM = 95, DESK_MM = 180;

/* As wide as the window: letters are of one size whatever a drawing is scaled to. */
function drawing(view, title) {
  const drawn = ask({ do: "draw", view, width_mm: matchMedia("(min-width: 44rem)").matches ? DESK_MM : PHONE_MM });
  if (!drawn.ok) return make("div", {}, make("h3", {}, title), lacks(drawn));
  const image = picture(drawn);
  const frame = make("div", { class: "frame", tabindex: 0, role: "group", "aria-label": `${title}, to be scrolled` }, image);
  let at = 0;
  const zoom = (by) => () => {
    at = Math.min(ZOOMS.length - 1, Math.max(0, at + by));
    image.style.width = `${ZOOMS[at]}%`;
  };
  return make("div", {}, make("h3", {}, title), make("div", { class: "row" },
    button("Larger", zoom(1), { "aria-label": `${title}: larger` }),
    button("Smaller", zoom(-1), { "aria-label": `${title}: smaller` })), frame);
}

function drawings() {
  return [drawing("section", "Section"), drawing("elevation", "From in front"), drawing("plan", "From above")];
}

/* --- order, pegs --- */

/* Ticks are of a line's words, and gone when they change. */
const TICKED = "lowwall.ticked";
function ticked() {
  try {
    return new Set(JSON.parse(localStorage.getItem(TICKED) || "[]"));
  } catch (none) {
    return new Set();
  }
}

function keepTick(key, on) {
  const all = ticked();
  if (on) all.add(key);
  else all.delete(key);
  try {
    localStorage.setItem(TICKED, JSON.stringify([...all]));
  } catch (refused) { /* no storage: the tick lasts as long as the page */ }
}

function tickLine(key, words) {
  const box = make("input", { type: "checkbox", onchange: (event) => keepTick(key, event.target.checked) });
  box.checked = ticked().has(key);
  return make("li", {}, make("label", { class: "tick" }, box, make("span", {}, words)));
}

function orderLine(line) {
  const key = `${line.name} ${line.quantity}`;
  return tickLine(key, [make("b", {}, `${line.quantity} `), line.name, line.mass ? ` (${line.mass})` : "",
    line.note ? make("span", { class: "hint" }, line.note) : ""]);
}

function whole(title, text) {
  return make("details", {}, make("summary", {}, title), make("pre", { tabindex: 0 }, text));
}

function order() {
  const reply = ask({ do: "order" });
  if (!reply.ok) return lacks(reply);
  return [make("ul", { class: "ticks" }, reply.lines.map(orderLine)), list(reply.notes),
    whole("The whole order, with cuts", reply.text)];
}

function pegs() {
  const reply = ask({ do: "pegs" });
  if (!reply.ok) return lacks(reply);
  const work = reply.work.map((step) => tickLine(step.words, step.stop ? [make("b", {}, `${step.stop}: `), step.words] : step.words));
  return [make("h3", {}, "Pegs"), list(reply.pegs.map((peg) => `${peg.peg}: ${peg.words}`)),
    make("h3", {}, "Levels"), list(reply.levels.map((level) => `${level.level}: ${level.words}`)),
    make("h3", {}, "Order of work"), make("ul", { class: "ticks" }, work), list(reply.notes),
    whole("Everything, with check distances", reply.text)];
}

/* --- cautions, numbers --- */

function cautions(reply) {
  return [list(reply.cautions), make("h3", {}, "Not checked"), list(reply.unchecked), make("p", {}, reply.certifies_nothing)];
}

function why(reply) {
  const words = reply.reasons.map((r) => make("li", {}, make("b", {}, `${r.asked}: `), r.words,
    r.rests ? ` ${r.rests}` : ""));
  return [make("p", {}, reply.headline), make("p", {}, reply.looks), make("ul", {}, words)];
}

function checkRow(row) {
  return make("tr", { class: row.counts && !row.holds ? "short" : "" }, make("th", { scope: "row" }, row.words,
    make("span", { class: "hint" }, `${row.case}: ${row.outcome}`)), make("td", {}, row.has), make("td", {}, row.needs),
  make("td", {}, row.likely));
}

function checkTable(reply) {
  const heads = ["Check", "Has", "Needs", "Likely"].map((head) => make("th", { scope: "col" }, head));
  const whys = [...new Set(reply.checks.map((row) => row.why).filter(Boolean))];
  return [make("div", { class: "scroll", tabindex: 0, role: "group", "aria-label": "The checks, to be scrolled" }, make("table", {}, make("caption", {}, reply.checks_title), make("thead", {}, make("tr", {}, heads)),
    make("tbody", {}, reply.checks.map(checkRow)))), whys.length > 0 ? list(whys) : "", make("p", { class: "hint" }, reply.legend)];
}

function numbers(reply) {
  const place = make("div");
  const show = (request) => {
    const text = ask(request);
    fill(place, text.ok ? make("pre", { tabindex: 0 }, text.text) : faultList(text));
  };
  return [checkTable(reply), make("div", { class: "row" },
    button("The report in full", () => advised(() => show({ do: "report", as: "text" }))),
    button("The working", () => show({ do: "working" }))), place];
}

/* --- sliders --- */

/* The two numbers of each check beside each other, longest where there is most to spare. */
function bars(reply) {
  return make("ul", { class: "bars" }, reply.checks.filter((row) => row.ratio !== null).map((row) => make("li", {},
    make("span", {}, row.told),
    make("span", { class: "bar", "aria-hidden": "true" }, make("i", { style: `width:${Math.min(row.ratio, 2) * 50}%` })))));
}

function slider(handle, place) {
  const range = make("input", { type: "range", min: 0, max: handle.steps.length - 1, step: 1, value: handle.at });
  const value = () => handle.steps[Number(range.value)].m;
  const words = () => handle.steps[Number(range.value)].words;
  const told = make("output", {}, words());
  range.setAttribute("aria-valuetext", words());
  let last = { ok: false };
  range.addEventListener("input", () => {
    const move = { [handle.handle]: value() };
    told.textContent = words();
    range.setAttribute("aria-valuetext", words());
    const reply = showAnswer(move);
    fill(place, reply.ok ? bars(reply) : faultList(reply));
    if (reply.ok) showSection(move);
    last = reply;
  });
  range.addEventListener("change", () => { if (last.ok) take(last.sheet, "slider"); });
  return make("div", {}, labelled(handle.words, range), told);
}

function sliders(reply) {
  const place = make("div");
  fill(place, bars(reply));
  if (reply.handles.length === 0) return [make("p", {}, reply.handles_none)];
  return [reply.handles.map((handle) => slider(handle, place)), place];
}

/* --- the parts, in their order --- */

const PARTS = [
  { id: "stand", title: "What would make it stand", told: (reply) => reply.advice_title, advice: standing },
  { id: "find", title: "What to find out", advice: findings },
  { id: "try", title: "Try another height, depth, water", show: sliders, keeps: "slider" },
  { id: "drawings", title: "Drawings", show: drawings },
  { id: "order", title: "What to order", show: order },
  { id: "pegs", title: "Pegs, levels, order of work", show: pegs },
  { id: "mind", title: "Mind", show: cautions },
  { id: "why", title: "Why", show: why },
  { id: "numbers", title: "Numbers", show: numbers },
  { id: "list", title: "The sheet, item by item", show: plainList, always: true },
  { id: "papers", title: "Save, open, share, print", show: papers, always: true }];

let reply = { ok: false };

function place(part) {
  return byId(`part-${part.id}`);
}

function isOpen(part) {
  return place(part).parentElement.open;
}

function headOf(part) {
  return place(part).parentElement.querySelector("summary h2");
}

function fillPart(part) {
  if (!reply.ok && !part.always) return fill(place(part), make("p", {}, "There is nothing to say here before there is an answer."));
  if (part.advice) return seek(showAdvice);
  return fill(place(part), part.show(reply));
}

/* What has been found so far, into the open parts that it belongs to. */
function showAdvice(advice) {
  for (const part of PARTS.filter((one) => one.advice && isOpen(one))) part.advice(place(part), advice, reply, headOf(part));
}

/* Open parts anew, one after the other; a moment later what takes many runs. */
let later = 0;
export function refill(newReply, from) {
  reply = newReply;
  forgetAdvice();
  clearTimeout(later);
  for (const part of PARTS.filter((one) => one.told)) {
    headOf(part).textContent = reply.ok ? part.told(reply) : part.title;
    outdate(place(part), reply);
  }
  const open = PARTS.filter(isOpen);
  if (open.some((part) => part.advice)) later = setTimeout(() => fillPart(open.find((part) => part.advice)), 250);
  return open.filter((part) => !part.advice && !(part.keeps && part.keeps === from)).map((part) => () => fillPart(part));
}

export function layParts() {
  fill(byId("parts"), PARTS.map((part) => {
    const inside = make("div", { class: "inside", id: `part-${part.id}` });
    const opened = (event) => { if (event.target.open) fillPart(part); };
    return make("details", { class: "part", id: part.id, ontoggle: opened },
      make("summary", {}, make("h2", {}, part.title)), inside);
  }));
}
