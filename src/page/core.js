/* SPDX-License-Identifier: GPL-3.0-or-later */

/* The module, and the one way of asking it. All that is said of a wall, and every number, comes from there. */

const encoder = new TextEncoder();
const decoder = new TextDecoder();

function instantiate(module) {
  const made = new WebAssembly.Instance(module, {}).exports;
  made._initialize();
  return made;
}

/* What ask() gives: the reply to one request. A module that stopped is begun anew; the sheet is kept here. */
export function askerOf(module) {
  let core = instantiate(module);
  return (request) => {
    const bytes = encoder.encode(JSON.stringify(request));
    try {
      const room = core.room(bytes.length);
      if (room === 0) throw new Error("no room");
      new Uint8Array(core.memory.buffer).set(bytes, room);
      const at = core.answer(bytes.length);
      if (at === 0) throw new Error("no answer");
      return JSON.parse(decoder.decode(new Uint8Array(core.memory.buffer, at, core.length())));
    } catch (stopped) {
      core = instantiate(module);
      return { ok: false, why: "stopped", text: `The calculation stopped: ${stopped.message}.`, faults: [] };
    }
  };
}

export function bytesOf(base64) {
  const text = atob(base64.trim());
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}
