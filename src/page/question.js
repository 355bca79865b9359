/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, byId, faultList, labelled, freshId } from "./dom.js";
import { state, ask, put, take } from "./state.js";
import { opener } from "./files.js";

/* The questions one by one. Which there are, which comes next, what an answer puts on the sheet and what not
 * knowing counts as: all that the core says. */

const ANEW = ["kept", "opened", "started", "wiped"];
const NONE = "-"; /* no question has this key */

const SEEN_MS = 250; /* nobody has seen a question sooner: the second of two taps answers nothing */

let shownKey = "";   /* the question that stands there now */
let shownAt = 0;     /* since when */
let chosenKey = "";  /* one that was gone to; "": the next that is open; NONE: where a part ends */
let chosenPart = "first"; /* the part whose questions are asked one after the other */
let asking = null;   /* all of them, as the core gave them for this sheet */

function load() {
  const reply = ask({ do: "questions" });
  asking = reply.ok ? reply.asking : null;
  return reply;
}

function find(key) {
  return asking && asking.questions.find((question) => question.key === key);
}

/* Those that this wall has, in their order. */
function walk() {
  return asking.questions.filter((question) => question.state !== "not-needed");
}

function openOf(part) {
  return walk().filter((question) => question.part === part && question.state === "open");
}

/* The open one of its part after this one. */
function following(question) {
  const open = openOf(question.part), all = walk();
  const at = all.indexOf(question);
  return open.find((one) => all.indexOf(one) > at);
}

function show(key) {
  chosenKey = key;
  chosenPart = (find(key) || { part: chosenPart }).part;
  showQuestion("asked");
}

function showPart(part) {
  chosenKey = "";
  chosenPart = part;
  showQuestion("asked");
}

/* --- an answer --- */

function give(question, answer, told) {
  if (performance.now() - shownAt < SEEN_MS) return undefined;
  const reply = ask({ do: "answer", key: question.key, answer });
  if (!reply.ok) return fill(told, faultList(reply));
  chosenKey = reply.sheet === state.sheet ? (following(question) || question).key : "";
  return take(reply.sheet, "answer");
}

function takeBack(question) {
  const reply = ask({ do: "take-back", key: question.key });
  if (reply.ok) take(reply.sheet, "asked");
}

function choicePicture(question, index) {
  const drawn = ask({ do: "picture", key: question.key, choice: index, width_mm: 40 });
  if (!drawn.ok) return "";
  return make("img", { src: `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawn.svg)}`, alt: "", class: "small" });
}

function choiceButton(question, choice, index, told) {
  const inside = [choice.picture ? choicePicture(question, index) : "", make("span", {}, choice.words)];
  return make("li", {}, make("button", { type: "button", class: "wide pick", "data-choice": choice.key, "aria-pressed": String(choice.chosen === "yes"),
    onclick: () => give(question, choice.key, told) }, inside));
}

function choices(question, told) {
  return make("ul", { class: "choices" }, question.choices.map((choice, i) => choiceButton(question, choice, i, told)));
}

function several(question, told) {
  const boxes = question.choices.map((choice) => {
    const box = make("input", { type: "checkbox", value: choice.key });
    box.checked = choice.chosen === "yes";
    return box;
  });
  const done = () => {
    const ticked = boxes.map((box, i) => (box.checked ? String(i + 1) : "")).filter(Boolean);
    give(question, ticked.length > 0 ? ticked.join(" ") : "none", told);
  };
  const lines = question.choices.map((choice, i) =>
    make("li", {}, make("label", { class: "tick" }, boxes[i], make("span", {}, choice.words))));
  return [make("ul", { class: "ticks open" }, lines), button("These, and no others", done, { class: "main" })];
}

function placesOf() {
  const id = freshId();
  return make("datalist", { id }, asking.places.map((place) => make("option", { value: place.place })));
}

function measureField(measure, kind) {
  const shown = measure.unit && measure.answer.endsWith(` ${measure.unit}`)
    ? measure.answer.slice(0, -measure.unit.length - 1) : measure.answer;
  const places = measure.item === "place" ? placesOf() : "";
  const input = make("input", { type: "text", autocomplete: "off", autocapitalize: "off", value: shown,
    inputmode: kind === "measure" && asking.units !== "us" ? "decimal" : "text", list: places ? places.id : undefined });
  const words = measure.label || measure.item;
  const label = words[0].toUpperCase() + words.slice(1);
  return { input, field: [labelled(measure.unit ? `${label} [${measure.unit}]` : label, input), places] };
}

/* What is left blank is not known. */
function measures(question, told) {
  const fields = question.measures.map((measure) => measureField(measure, question.kind));
  const act = (event) => {
    event.preventDefault();
    const typed = fields.map((field) => field.input.value.trim());
    give(question, typed.map((text) => text || "not known").join("; "), told);
  };
  return make("form", { onsubmit: act }, fields.map((field) => field.field), make("button", { class: "main" }, "That is it"));
}

/* --- one question --- */

function handTest(question) {
  if (question.hand_test.length === 0) return "";
  return make("details", {}, make("summary", {}, "How to find out"),
    make("ol", {}, question.hand_test.map((step) => make("li", {}, step.step))));
}

/* Of some there is nothing to count instead: those may be left for later. */
function notKnown(question, told) {
  const id = freshId();
  if (!question.not_known) return "";
  return make("div", { class: "row" }, button("I don't know", () => give(question, "not known", told),
    { "aria-describedby": id, "aria-pressed": String(question.state === "not-known") }), make("p", { id, class: "hint" }, question.not_known));
}

function steps(question) {
  const all = walk(), at = all.findIndex((one) => one.key === question.key);
  const open = following(question);
  return make("div", { class: "row" },
    at > 0 ? button("Back", () => show(all[at - 1].key)) : "",
    button(question.state === "open" ? "Later" : "Go on", () => show(open ? open.key : NONE)),
    question.state === "answered" || question.state === "not-known"
      ? button("Take the answer back", () => takeBack(question)) : "");
}

function askOne(question) {
  const told = make("div", { role: "alert" });
  const body = question.kind === "choice" ? choices(question, told)
    : question.kind === "several" ? several(question, told) : measures(question, told);
  return [make("p", { class: "hint" }, [asking.progress, asking.part_titles[question.part]].filter(Boolean).join(". ")),
    make("h2", { id: "question-head", tabindex: -1 }, question.words), make("p", {}, question.why), body, told,
    notKnown(question, told), handTest(question), steps(question)];
}

/* Nothing more of this part: the others may follow, and may be left. */
function end() {
  const others = Object.keys(asking.part_titles).filter((part) => openOf(part).length > 0);
  return [make("h2", { id: "question-head", tabindex: -1 }, asking.end), make("p", {}, asking.progress),
    make("div", { class: "row" }, others.map((part) =>
      button(`${asking.part_titles[part] || "The questions"} (${openOf(part).length})`, () => showPart(part))))];
}

/* --- all of them, and where else to begin --- */

function everyQuestion() {
  const words = { open: "open", answered: "answered", "not-known": "not known" };
  return make("details", {}, make("summary", {}, "All questions"), make("ul", { class: "choices" }, walk().map((question) =>
    make("li", {}, button(`${question.words} (${words[question.state]})`, () => show(question.key), { class: "wide" })))));
}

function begin(kind) {
  const begun = state.ask({ do: "start", kind });
  const reply = begun.ok ? state.ask({ do: "sheet", sheet: begun.sheet, set: [`units=${asking.units}`] }) : begun;
  if (reply.ok) take(reply.sheet, "started");
}

function starts() {
  return make("details", {}, make("summary", {}, "Open a sheet, or begin with a made-up wall"), opener(),
    make("p", {}, "Or begin with a wall that is made up, and put in your own measures:"),
    make("div", { class: "row" }, button("A raised bed", () => begin("bed")),
      button("A wall that holds up ground", () => begin("ground")), button("A solid wall", () => begin("section"))));
}

function units() {
  const us = asking.units === "us";
  const choose = make("select", {}, make("option", { value: "metric", selected: !us }, "Metres and kilograms"),
    make("option", { value: "us", selected: us }, "Feet and pounds"));
  choose.addEventListener("change", () => put([`units=${choose.value}`], "units"));
  return labelled("Units", choose);
}

function questionOf(item) {
  return asking && walk().find((one) => one.items.some((named) => named.item === item));
}

export function isAsked(item) {
  return Boolean(questionOf(item));
}

/* The place where an item is answered. */
export function goTo(item) {
  const question = questionOf(item);
  if (question) return show(question.key);
  const part = byId("list");
  part.open = true;
  const label = [...part.querySelectorAll("label")].find((one) => one.textContent === item);
  return label ? byId(label.htmlFor).focus() : part.querySelector("summary").focus();
}

/* Whoever answered is led on; a page that was only loaded leaves the focus where it is. */
export function showQuestion(from) {
  if (ANEW.includes(from)) {
    chosenKey = "";
    chosenPart = "first";
  }
  const place = byId("question"), reply = load();
  place.hidden = false;
  if (!asking) return fill(place, make("h2", { id: "question-head", tabindex: -1 }, "The questions"), faultList(reply));
  const question = chosenKey === NONE ? undefined : find(chosenKey) || openOf(chosenPart)[0];
  fill(place, question ? askOne(question) : end(), asking.answered === 0 ? starts() : "", everyQuestion(), units());
  const key = question ? question.key : "";
  place.dataset.key = key;
  place.dataset.part = question ? question.part : "";
  if (key !== shownKey) shownAt = performance.now();
  if ((from === "answer" || from === "asked") && key !== shownKey) byId("question-head").focus();
  shownKey = key;
  return undefined;
}
