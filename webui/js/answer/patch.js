// What is shown becomes what is to be shown: only what differs is touched, so that little is laid out anew.
const alike = (shown, wanted) => shown.length === wanted.length
  && wanted.every((node, place) => node.nodeName === shown[place].nodeName);

const patchOne = (shown, wanted) => {
  if (shown.nodeType !== Node.ELEMENT_NODE) { // a text
    if (shown.data !== wanted.data) shown.data = wanted.data;
    return;
  }
  for (const { name } of [...shown.attributes]) if (!wanted.hasAttribute(name)) shown.removeAttribute(name);
  for (const { name, value } of wanted.attributes) if (shown.getAttribute(name) !== value) shown.setAttribute(name, value);
  patch(shown, wanted.childNodes);
};

// The children of an element become these nodes; where they are others in kind or number, these take their place: one
// that is made into another would be seen to jump.
export const patch = (element, nodes) => {
  const wanted = [...nodes];
  if (!alike(element.childNodes, wanted)) element.replaceChildren(...wanted);
  else wanted.forEach((node, place) => patchOne(element.childNodes[place], node));
};
