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
    const note = make("text", { class: `shape-${role}`, x, y, "text-anchor": anchor });
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
  const svg = make("svg", { viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": told });
  svg.append(...shapes.map(shape));
  const caption = document.createElement("figcaption");
  caption.textContent = title;
  figure.append(svg, caption);
  return figure;
};
