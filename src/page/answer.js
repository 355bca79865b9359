/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, byId, faultList, picture } from "./dom.js";
import { state, ask, undo } from "./state.js";

/* The answer on top: three lines, the gravest first; below it why. It is read aloud when it changes. */

let shown = "";

function line(answer) {
  return make("p", { class: `line grave-${answer.gravity}` }, make("span", { class: "asked" }, answer.asked), " ",
    make("strong", {}, answer.words));
}

function lines(reply) {
  if (reply.ok) return [reply.faulty ? make("p", { class: "faults" }, reply.faulty) : "", reply.answers.map(line)];
  const wrong = reply.faults.some((fault) => fault.slug !== "missing-item" && fault.slug !== "empty");
  return [make("p", { class: "line" }, reply.lead), wrong ? faultList(reply) : ""];
}

function tools() {
  fill(byId("answer-tools"), state.earlier.length > 0 ? button("Undo", undo, { class: "small" }) : "");
}

/* gives the reply, for whoever shows more of it */
export function showAnswer(move) {
  const reply = ask({ do: "check", move });
  const key = JSON.stringify(reply.ok ? [reply.faulty, reply.answers] : [reply.lead, reply.faults]);
  byId("answer").dataset.tone = reply.ok ? reply.tone : "none";
  if (key !== shown) fill(byId("lines"), lines(reply));
  shown = key;
  tools();
  return reply;
}

/* What is gone to stands below the answer; one that takes half of the window goes away with the rest. */
export function keepClear() {
  const answer = byId("answer");
  const measure = () => {
    const long = answer.offsetHeight > innerHeight / 2;
    answer.classList.toggle("long", long);
    document.documentElement.style.setProperty("--answer", long ? "0px" : `${answer.offsetHeight}px`);
  };
  new ResizeObserver(measure).observe(answer);
}

/* The section under the question, to the width that there is. */
export function showSection(move) {
  const figure = byId("section");
  const drawn = state.sheet ? ask({ do: "draw", view: "section", width_mm: 95, move }) : { ok: false };
  figure.hidden = !drawn.ok;
  if (drawn.ok) fill(figure, picture(drawn));
}
