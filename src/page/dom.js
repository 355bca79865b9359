/* SPDX-License-Identifier: GPL-3.0-or-later */

/* Elements made in one line. Text goes in as text only: nothing that a sheet says becomes markup. */

export function make(name, attributes, ...inside) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes || {})) {
    if (key.startsWith("on")) element.addEventListener(key.slice(2), value);
    else if (value === true) element.setAttribute(key, "");
    else if (value !== false && value !== undefined) element.setAttribute(key, value);
  }
  element.append(...inside.flat(Infinity).filter((part) => part !== undefined && part !== null && part !== ""));
  return element;
}

export function button(words, act, attributes) {
  return make("button", { type: "button", onclick: act, ...attributes }, words);
}

export function fill(element, ...inside) {
  element.replaceChildren(...inside.flat(Infinity).filter((part) => part !== undefined && part !== null && part !== ""));
}

export function byId(id) {
  return document.getElementById(id);
}

let made = 0;
export function freshId() {
  made += 1;
  return `made-${made}`;
}

/* A label above its control; what explains it is read with it. */
export function labelled(words, control, hint) {
  control.id = control.id || freshId();
  const told = hint ? make("span", { class: "hint", id: `${control.id}-hint` }, hint) : "";
  if (hint) control.setAttribute("aria-describedby", `${control.id}-hint`);
  return make("div", { class: "field" }, make("label", { for: control.id }, words), control, told);
}

export function list(texts) {
  return make("ul", {}, texts.map((text) => make("li", {}, text)));
}

/* A drawing as a picture: what it shows is told to those who listen. */
export function picture(drawn) {
  const source = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawn.svg)}`;
  return make("img", { src: source, alt: [drawn.title, drawn.description].filter(Boolean).join(". ") });
}

/* The faults of a request, each with its cure. */
export function faultList(reply) {
  const lines = reply.faults.map((fault) =>
    make("li", {}, fault.item ? make("b", {}, `${fault.item}: `) : "", fault.told));
  return lines.length > 0 ? make("ul", { class: "faults" }, lines) : make("p", { class: "faults" }, reply.text);
}
