// What is shown becomes what is to be shown: only what differs is touched, so that little is laid out anew.
const oneBecomes = (shown, wanted) => {
  if (shown.nodeName !== wanted.nodeName) {
    shown.replaceWith(wanted);
  } else if (shown.nodeType !== Node.ELEMENT_NODE) { // a text
    if (shown.data !== wanted.data) shown.data = wanted.data;
  } else {
    for (const { name } of [...shown.attributes]) if (!wanted.hasAttribute(name)) shown.removeAttribute(name);
    for (const { name, value } of wanted.attributes) if (shown.getAttribute(name) !== value) shown.setAttribute(name, value);
    become(shown, wanted.childNodes);
  }
};

// The children of an element become these nodes.
export const become = (element, nodes) => {
  const wanted = [...nodes];
  while (element.childNodes.length > wanted.length) element.lastChild.remove();
  wanted.forEach((node, place) => {
    const shown = element.childNodes[place];
    if (shown) oneBecomes(shown, node);
    else element.append(node);
  });
};
