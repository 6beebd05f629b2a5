// A QR code as one SVG path. Level M at least; four quiet modules around it, as the standard asks.
import { correction, generate } from "../../vendor/lean-qr/index.js";

const SVG = "http://www.w3.org/2000/svg";
const QUIET = 4;

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

// null: more text than one code can hold
export const drawCode = (text, told) => {
  let code;
  try {
    code = generated(text, { minCorrectionLevel: correction.M });
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
  svg.append(ground, ink);
  return svg;
};
