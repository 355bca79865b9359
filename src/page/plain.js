/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, labelled, faultList } from "./dom.js";
import { state, ask, put, rowsOf } from "./state.js";

/* The sheet as a plain list of its items, each to be changed by hand. */

let known = null;
function items() {
  if (!known) known = state.ask({ do: "items" }).items;
  return known;
}

/* "soil 1 name" is the item "soil # name". */
function itemOf(name) {
  return items().find((item) => item.name === name || (item.repeats > 0 && item.name === name.replace(/\d+/, "#")));
}

function controlOf(item, value) {
  if (!item || !item.words) return make("input", { type: "text", value, autocomplete: "off", autocapitalize: "off" });
  return make("select", {}, item.words.map((word) => make("option", { value: word, selected: word === value }, word)));
}

/* A form for one item. What is typed goes to the core as it stands, and comes back with its faults. */
function form(name, value, does) {
  const item = itemOf(name);
  const control = controlOf(item, value);
  const told = make("div", { role: "alert" });
  const act = (event) => {
    event.preventDefault();
    const reply = put([`${name}=${control.value}`], "list");
    fill(told, reply.ok ? "" : faultList(reply));
  };
  return make("form", { class: "item", onsubmit: act }, labelled(name, control, item ? item.means : ""),
    make("div", { class: "row" }, make("button", {}, does), does === "Change"
      ? button("Take off", () => put([`${name}=unknown`], "list"), { "aria-label": `Take ${name} off the sheet` }) : ""), told);
}

/* What a list of faults asks for, to be put in on the spot. */
export function cures(reply) {
  const missing = reply.faults.filter((fault) => fault.item && fault.slug === "missing-item");
  return [faultList(reply), missing.map((fault) => form(fault.item, "", "Put in"))];
}

function adder() {
  const names = items().map((item) => make("option", { value: item.name.replace("#", "1") }, item.name));
  const choose = make("select", {}, names);
  const place = make("div");
  const show = () => fill(place, form(choose.value, "", "Put in"));
  choose.addEventListener("change", show);
  show();
  return [labelled("Another item", choose, "# is a number from 1"), place];
}

export function plainList() {
  const clean = ask({ do: "sheet" });
  if (!clean.ok) return [faultList(clean), rawSheet()];
  const rows = rowsOf(clean.sheet).map(([name, value, unit]) => form(name, unit ? `${value} ${unit}` : value, "Change"));
  return [rows, make("h3", {}, "Add"), adder()];
}

/* A sheet that cannot be read is mended as the text that it is. */
function rawSheet() {
  const text = make("textarea", { rows: 16, spellcheck: "false" });
  text.value = state.sheet;
  const told = make("div", { role: "alert" });
  const act = () => {
    const reply = state.ask({ do: "sheet", sheet: text.value });
    fill(told, reply.ok ? "" : faultList(reply));
    if (reply.ok) put([], "list");
  };
  return make("div", {}, labelled("The sheet as it stands", text), button("Read it again", act), told);
}
