/* SPDX-License-Identifier: GPL-3.0-or-later */
import { make, button, fill, faultList, labelled } from "./dom.js";
import { state, ask, take, wipe, rowsOf } from "./state.js";

/* The sheet as a file, there and back; the pre-check on paper; nothing kept on the device. */

function nameOf(ending) {
  const checked = ask({ do: "check" });
  const mark = checked.ok ? checked.mark.replace(/[^A-Za-z0-9-]+/g, "-").replace(/^-+|-+$/g, "") : "";
  return `wall${mark ? `-${mark}` : ""}${ending}`;
}

function save(name, text, type) {
  const link = make("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

function fileOf(name, text, type) {
  return new File([text], name, { type });
}

function canShare(file) {
  return typeof navigator.canShare === "function" && navigator.canShare({ files: [file] });
}

/* A sharing that was broken off is no fault; one that the device refuses leaves a file in its place. */
function share(file) {
  navigator.share({ files: [file], title: file.name }).catch((refused) => {
    if (refused.name !== "AbortError") save(file.name, file, file.type);
  });
}

/* No sheet of one wall is nearly as large; a photo or a film is, and would be read for minutes. */
const LARGEST = 1e6;

async function read(file) {
  if (file.size > LARGEST) return { ok: false, faults: [], text: "It is too large for a sheet." };
  const reply = state.ask({ do: "sheet", sheet: await file.text() });
  return reply.ok && rowsOf(reply.sheet).length === 0
    ? { ok: false, faults: [], text: "There is nothing on it." } : reply;
}

async function open(file, told) {
  const reply = await read(file);
  if (reply.ok) return take(reply.sheet, "opened");
  return fill(told, make("p", {}, `${file.name} was not opened.`), faultList(reply));
}

export function opener() {
  const told = make("div", { role: "alert" });
  const input = make("input", { type: "file", accept: ".csv,.txt,text/csv,text/plain" });
  input.addEventListener("change", () => { if (input.files[0]) open(input.files[0], told); });
  return make("div", {}, labelled("Open a sheet that was saved", input), told);
}

export function unkept() {
  return state.sheet ? "Nothing is kept on this device: save the sheet before you close the page."
    : "Nothing is kept on this device.";
}

/* In a frame of its own, which is printed instead of this page. */
function precheck(place) {
  const made = ask({ do: "precheck" });
  if (!made.ok) return fill(place, faultList(made));
  const frame = make("iframe", { title: "The pre-check", class: "paper" });
  frame.srcdoc = made.html;
  const file = fileOf(nameOf("-pre-check.html"), made.html, "text/html");
  return fill(place, make("div", { class: "row" }, button("Print it", () => frame.contentWindow.print()),
    button("Save it", () => save(file.name, made.html, "text/html")),
    canShare(file) ? button("Share it", () => share(file)) : ""), frame);
}

function shareSheet() {
  const file = fileOf(nameOf(".csv"), state.sheet, "text/csv");
  return canShare(file) ? button("Share the sheet", () => share(file)) : "";
}

function shareOrder() {
  const order = ask({ do: "order" });
  const file = order.ok ? fileOf(nameOf("-order.txt"), order.text, "text/plain") : null;
  if (!file) return "";
  return [button("Save the order", () => save(file.name, order.text, "text/plain")),
    canShare(file) ? button("Share the order", () => share(file)) : ""];
}

function wiper() {
  const sure = make("div");
  const sureAsked = () => fill(sure, make("p", {}, "The sheet here and what is kept on this device go for good."),
    make("div", { class: "row" }, button("Yes, wipe it", wipe), button("No", () => fill(sure))));
  return [make("h3", {}, "This device"), make("p", {}, state.stored
    ? "The sheet is kept on this device, and nowhere else, until you wipe it."
    : unkept()), button("Wipe it", sureAsked), sure];
}

export function papers() {
  const place = make("div");
  if (!state.sheet) return [opener(), wiper()];
  return [make("div", { class: "row" }, button("Save the sheet", () => save(nameOf(".csv"), state.sheet, "text/csv")),
    shareSheet(), shareOrder(), button("The pre-check for the council", () => precheck(place))), place, opener(), wiper()];
}
