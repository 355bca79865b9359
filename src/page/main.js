/* SPDX-License-Identifier: GPL-3.0-or-later */
import { gunzip } from "./inflate.js";
import { askerOf, bytesOf } from "./core.js";
import { byId, make, fill } from "./dom.js";
import { state, watch, restore, inTurn } from "./state.js";
import { showAnswer, showSection, keepClear } from "./answer.js";
import { unkept } from "./files.js";
import { showQuestion } from "./question.js";
import { layParts, refill } from "./parts.js";

/* What happens in which order: the answer at once, then the question and the drawing, then the parts. */

function changed(from) {
  const begun = performance.now();
  const reply = showAnswer();
  document.documentElement.dataset.verdictMs = Math.round(performance.now() - begun);
  const parts = refill(reply, from);
  fill(byId("unkept"), state.sheet && !state.stored ? unkept() : "");
  inTurn([() => showQuestion(from), () => showSection(), ...parts, settled]);
}

/* For whoever watches: all that belongs to an answer stands there. */
function settled() {
  document.documentElement.dataset.settled = String(Number(document.documentElement.dataset.settled || 0) + 1);
}

/* The first answer of all reads the tables and finds everything new: better before anybody waits for it. */
function warm() {
  const begun = state.ask({ do: "start", kind: "bed" });
  state.ask({ do: "check", sheet: begun.sheet });
}

/* Where the page is hosted it is kept for days without signal; a page from a file needs nothing. */
function install() {
  if (!location.protocol.startsWith("http")) return;
  document.head.append(make("link", { rel: "manifest", href: "lowwall.webmanifest" }));
  if (navigator.serviceWorker) navigator.serviceWorker.register("lowwall-worker.js").catch(() => {});
}

function start() {
  try {
    state.ask = askerOf(new WebAssembly.Module(gunzip(bytesOf(byId("core").textContent))));
  } catch (refused) {
    fill(byId("lines"), make("p", { class: "faults" }, `This browser cannot run the page: ${refused.message}.`));
    return;
  }
  byId("core").textContent = "";
  layParts();
  keepClear();
  watch(changed);
  restore();
  changed("kept");
  install();
  setTimeout(warm, 50);
}

start();
