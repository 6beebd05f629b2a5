// A QR code as one SVG path; four quiet modules around it, as the standard asks. On paper level M at least.
import { correction, generate } from "../../vendor/lean-qr/index.js";

const SVG = "http://www.w3.org/2000/svg";
const QUIET = 4;
const MODULE = matchMedia("(pointer: coarse)").matches ? 5.5 : 3.8; // px, a millimetre at 160 and at 96 px to the inch: what is smaller is not read
const WIDEST = 576; // px, of the sheet

const generated = /** @type {(text: string, more: object) => any} */ (/** @type {unknown} */ (generate));
const runs = (code) => {
  let path = "";
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) {
      if (!code.get(x, y)) continue;
      const start = x;
      while (code.get(x + 1, y)) x += 1;
      path += `M${start} ${y}h${x + 1 - start}v1H${start}z`;
    }
  }
  return path;
};

// null: more text than one code can hold, or than this screen can show with modules of a millimetre
export const drawCode = (text, told, paper = false) => {
  const across = Math.min(window.innerWidth, WIDEST) / MODULE;
  let code;
  try {
    code = generated(text, paper ? { minCorrectionLevel: correction.M } : { maxVersion: Math.floor((across - 17) / 4 - QUIET / 2) });
  } catch {
    return null;
  }
  const side = code.size + 2 * QUIET;
  const svg = document.createElementNS(SVG, "svg");
  const ground = document.createElementNS(SVG, "rect");
  const ink = document.createElementNS(SVG, "path");
  for (const [key, value] of Object.entries({
    class: "code", viewBox: `${-QUIET} ${-QUIET} ${side} ${side}`, role: "img", "aria-label": told, "shape-rendering": "crispEdges",
  })) svg.setAttribute(key, value);
  for (const [key, value] of Object.entries({ class: "code-ground", x: -QUIET, y: -QUIET, width: side, height: side })) ground.setAttribute(key, value);
  ink.setAttribute("class", "code-ink");
  ink.setAttribute("d", runs(code));
  if (!paper) svg.style.minInlineSize = `${side * MODULE}px`;
  svg.append(ground, ink);
  return svg;
};
