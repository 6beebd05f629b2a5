// Shapes of the engine as SVG, one to one.
import { write } from "../page/words.js";

const SVG = "http://www.w3.org/2000/svg";

const make = (name, attributes) => {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
};

const TAGS = { note: "text", area: "polygon", path: "polyline", strokes: "path", rungs: "path" };

const placed = ({ kind, role, points, anchor, xs, top, bottom }) => {
  if (kind === "rungs") return { class: `shape-${role}`, d: xs.map((x) => `M${x},${top}V${bottom}`).join("") };
  if (kind === "note") {
    const [[x, y]] = points;
    return { class: `shape-note shape-${role}`, x, y, "text-anchor": anchor };
  }
  if (kind === "strokes") return { class: `shape-${role}`, d: points.map(([x, y], k) => `${k % 2 ? "L" : "M"}${x},${y}`).join("") };
  return { class: `shape-${role}`, points: points.map((point) => point.join(",")).join(" ") };
};

const set = (element, attributes) => {
  for (const [key, value] of Object.entries(attributes)) {
    if (element.getAttribute(key) !== String(value)) element.setAttribute(key, value);
  }
};

const spread = (shape) => (shape.kind === "notes"
  ? shape.xs.map((x, k) => ({ kind: "note", role: shape.role, points: [[x, shape.y]], text: shape.texts[k], anchor: "middle" }))
  : shape);

// A drawing follows each key press: what is there already is moved, not made anew.
const drawInto = (figure, { name, title, width, height, shapes: given, told }) => {
  const shapes = given.flatMap(spread);
  const [svg, caption] = figure.children;
  figure.dataset.figure = name;
  set(svg, { viewBox: `0 0 ${width} ${height}`, "aria-label": told });
  while (svg.children.length > shapes.length) svg.lastElementChild.remove();
  shapes.forEach((shape, place) => {
    let element = svg.children[place];
    if (element?.localName !== TAGS[shape.kind]) {
      const made = make(TAGS[shape.kind], {});
      if (element) element.replaceWith(made);
      else svg.append(made);
      element = made;
    }
    set(element, placed(shape));
    write(element, shape.text ?? "");
  });
  write(caption, title);
};

const empty = () => {
  const figure = document.createElement("figure");
  figure.className = "figure";
  const caption = document.createElement("figcaption");
  caption.className = "figure-told";
  figure.append(make("svg", { class: "figure-drawing", role: "img" }), caption);
  return figure;
};

export const drawFirst = (place, figure) => drawInto(place.children[0] ?? place.appendChild(empty()), figure);

export const draw = (place, figures) => {
  while (place.children.length > figures.length) place.lastElementChild.remove();
  figures.forEach((one, at) => drawInto(place.children[at] ?? place.appendChild(empty()), one));
};

// The rule a large figure stands on: what is before it, and its own piece in its part's hatching.
export const ruled = ([from, to], part) => {
  const svg = make("svg", { class: "line-rule", "aria-hidden": "true" });
  svg.append(
    make("rect", { class: "shape-before", y: 11, width: `${from}%`, height: 4 }),
    make("rect", { class: `shape-${part}`, x: `${from}%`, y: 5, width: `${to - from}%`, height: 16 }),
    make("line", { class: "shape-end", x1: `${to}%`, x2: `${to}%`, y1: 0, y2: 26 }),
  );
  return svg;
};
