/** Elements made in code: text is always text, never markup. */

const SVG = "http://www.w3.org/2000/svg";

/**
 * An element.
 * @param {string} name such as "p", or "p.quiet.small" with classes
 * @param {object} [attributes] on* are listeners; null and false are left out
 * @param {...(Node|string)} inner what stands in it
 */
export function el(name, attributes = {}, ...inner) {
  return filled(document, name, attributes, inner);
}

/** As `el`, in the drawing's own vocabulary of shapes. */
export function shape(name, attributes = {}, ...inner) {
  return filled(SVG, name, attributes, inner);
}

function filled(space, name, attributes, inner) {
  const [tag, ...classes] = name.split(".");
  const made = space === SVG ? document.createElementNS(SVG, tag) : document.createElement(tag);
  if (classes.length) made.setAttribute("class", classes.join(" "));
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else if (value != null && value !== false) made.setAttribute(key, value === true ? "" : value);
  }
  made.append(...inner.filter((each) => each != null));
  return made;
}

/** A word that does something: a button that looks like text. */
export function word(text, does, attributes = {}) {
  return el("button.word", { type: "button", onclick: does, ...attributes }, text);
}

/** Runs at most once a frame, with the newest arguments. */
export function eachFrame(does) {
  let waiting = null;
  return (...given) => {
    if (!waiting) requestAnimationFrame(() => { const last = waiting; waiting = null; does(...last); });
    waiting = given;
  };
}

/** Runs at most every so many milliseconds, the last call always. */
export function calmly(pause, does) {
  let timer = 0;
  let last = null;
  let since = -Infinity;
  const run = () => { timer = 0; since = performance.now(); does(...last); };
  return (...given) => {
    last = given;
    if (!timer) timer = setTimeout(run, Math.max(0, since + pause - performance.now()));
  };
}
