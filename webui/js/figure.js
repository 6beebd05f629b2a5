// Shapes of the engine as SVG, one to one.
const SVG = "http://www.w3.org/2000/svg";

const make = (name, attributes) => {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
};

const shape = ({ kind, role, points, text, anchor }) => {
  if (kind === "note") {
    const [[x, y]] = points;
    const note = make("text", { class: `shape-note shape-${role}`, x, y, "text-anchor": anchor });
    note.textContent = text;
    return note;
  }
  return make(kind === "area" ? "polygon" : "polyline",
    { class: `shape-${role}`, points: points.map((point) => point.join(",")).join(" ") });
};

export const drawn = ({ name, title, width, height, shapes, told }) => {
  const figure = document.createElement("figure");
  figure.className = "figure";
  figure.dataset.figure = name;
  const svg = make("svg", { class: "figure-drawing", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": told });
  svg.append(...shapes.map(shape));
  const caption = document.createElement("figcaption");
  caption.className = "figure-told";
  caption.textContent = title;
  figure.append(svg, caption);
  return figure;
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
