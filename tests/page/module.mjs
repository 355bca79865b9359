// SPDX-License-Identifier: GPL-3.0-or-later
// The module of a page against the native build.   node module.mjs PAGE.html CORE.wasm < requests and answers
// Each number agrees to 1e-9 of itself. The sines of two C libraries differ in their last digit, and a search for
// the worst plane then stops elsewhere by the root of that, some 1e-8: what is measured at that place agrees to
// 1e-7, and is less than two numbers in a thousand. How many circles a search tried is nobody's result.
// Each text is the same; the numbers printed in it agree to the last digit printed. Prints "PASSED FAILED".
import { readFileSync } from "node:fs";

const here = new URL("../../src/page/", import.meta.url);
const load = (name) => import(`data:text/javascript,${encodeURIComponent(readFileSync(new URL(name, here), "utf8"))}`);
const { gunzip } = await load("inflate.js");
const { askerOf, bytesOf } = await load("core.js");

let passed = 0, failed = 0;
function expect(well, words) {
  if (well) passed += 1;
  else {
    failed += 1;
    if (failed < 30) console.error(`module.mjs: ${words}`);
  }
}

const [, , pagePath, corePath] = process.argv;
const page = readFileSync(pagePath, "utf8");
const packed = bytesOf(page.match(/id="core">\s*([A-Za-z0-9+/=]+)/)[1]);
const bytes = gunzip(packed);
expect(Buffer.compare(Buffer.from(bytes), readFileSync(corePath)) === 0, "unpacked, the page's module is another");
for (let cut = 20; cut < packed.length; cut += 50021) {
  let threw = false;
  try { gunzip(packed.subarray(0, cut)); } catch (broken) { threw = true; }
  expect(threw, `a module cut at ${cut} was unpacked`);
}
const module = new WebAssembly.Module(bytes);
expect(WebAssembly.Module.imports(module).length === 0, "the module asks its host for something");
const ask = askerOf(module);

const apart = (a, b) => Math.abs(a - b) / Math.max(1, Math.abs(a), Math.abs(b));
const NUMBER = /-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/g;

// One unit of the last digit that either prints.
function digitsAgree(a, b) {
  const decimals = Math.max((a.split(".")[1] || "").length, (b.split(".")[1] || "").length);
  return Math.abs(Number(a) - Number(b)) <= 1.000001 * 10 ** -decimals;
}

function sameText(native, other) {
  if (native === other) return true;
  if (native.replace(NUMBER, "#") !== other.replace(NUMBER, "#")) return false;
  const mine = native.match(NUMBER), theirs = other.match(NUMBER);
  return mine.every((number, i) => number === theirs[i] || digitsAgree(number, theirs[i]));
}

let numbers = 0, atSearch = 0;
function sameNumber(a, b) {
  numbers += 1;
  if (apart(a, b) <= 1e-9) return true;
  atSearch += 1;
  return apart(a, b) <= 1e-7;
}

function compare(native, other, path) {
  if (typeof native === "number") {
    if (path.endsWith("circles")) return "";
    if (typeof other !== "number" || !sameNumber(native, other)) return `${path}: ${native}, the module ${other}`;
  } else if (typeof native === "string") {
    if (typeof other !== "string") return `${path}: no text`;
    if (!sameText(native, other)) return `${path}: "${native.slice(0, 200)}", the module "${other.slice(0, 200)}"`;
  } else if (native === null || typeof native === "boolean") {
    if (native !== other) return `${path}: ${native}, the module ${other}`;
  } else {
    if (other === null || typeof other !== "object") return `${path}: missing`;
    if (typeof native.key === "string" && native.key.endsWith("circles")) return "";
    const keys = Object.keys(native);
    if (keys.join() !== Object.keys(other).join()) return `${path}: other keys`;
    for (const key of keys) {
      const wrong = compare(native[key], other[key], `${path}.${key}`);
      if (wrong) return wrong;
    }
  }
  return "";
}

// What is JSON inside a text is compared by its numbers.
function opened(reply, request) {
  return request.as === "json" && reply.ok ? { ...reply, text: JSON.parse(reply.text) } : reply;
}

const lines = readFileSync(0, "utf8").trimEnd().split("\n");
for (let i = 0; i + 1 < lines.length; i += 2) {
  const request = JSON.parse(lines[i]);
  const native = opened(JSON.parse(lines[i + 1]), request), other = opened(ask(request), request);
  const wrong = compare(native, other, request.do);
  expect(!wrong, `request ${i / 2}: ${wrong}`);
  if (request.do === "precheck" && native.ok) {
    const rows = (reply) => reply.html.match(/(?:[0-9a-f]{8} ){3}[0-9a-f]{8}/g) ?? [];
    const hash = rows(native);
    expect(hash.length === 2 && hash.join() === rows(other).join(), "the hash of a pre-check is another");
  }
}
expect(numbers > 300000, "too few numbers were compared");
expect(atSearch < numbers / 500, `${atSearch} of ${numbers} numbers are apart by more than 1e-9`);
console.error(`module.mjs: ${lines.length / 2} requests, ${numbers} numbers, ${atSearch} apart by more than 1e-9`);
console.log(`${passed} ${failed}`);
process.exit(failed > 0 ? 1 : 0);
