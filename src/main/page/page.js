/** An element of the page by its id. */
export const byId = (id) => document.getElementById(id);

/**
 * Builds an element. Children are nodes or text; text is always text, never markup.
 * @param {string} tag
 * @param {object} [traits] attributes; `on…` names listen, `class` and `text` mean what they say
 * @param {...(Node|string)} children
 */
export function element(tag, traits = {}, ...children) {
  return dressed(document.createElement(tag), traits, children);
}

/** Builds an element of a drawing. */
export function drawn(tag, traits = {}, ...children) {
  return dressed(document.createElementNS("http://www.w3.org/2000/svg", tag), traits, children);
}

function dressed(node, traits, children) {
  for (const [name, value] of Object.entries(traits)) {
    if (name === "text") {
      node.textContent = value;
    } else if (name.startsWith("on")) {
      node.addEventListener(name.slice(2), value);
    } else if (value !== false && value !== undefined) {
      node.setAttribute(name, value === true ? "" : value);
    }
  }
  node.append(...children);
  return node;
}

/** Sets text only where it differs: an unchanged text costs nothing. */
export function say(node, text) {
  if (node.textContent !== text) {
    node.textContent = text;
  }
}

/** A button with words. */
export function button(words, title, press, traits = {}) {
  return element("button", { type: "button", title, onclick: press, text: words, ...traits });
}

/** `1 frame`, `12 frames`. */
export function count(number, thing) {
  return number + " " + thing + (number === 1 ? "" : "s");
}

/**
 * A row of which one is chosen, for mouse and arrow keys.
 * @param {HTMLElement} group holds the choices
 * @param {{value: string, words: string, title?: string}[]} choices
 * @param {(value: string) => void} chosen told of each choice
 * @returns {(value: string) => void} shows which one is chosen
 */
export function choice(group, choices, chosen) {
  const buttons = choices.map(({ value, words, title }) =>
    element("button", {
      type: "button",
      role: "radio",
      title,
      text: words,
      "data-value": value,
      onclick: () => chosen(value),
    }));
  group.replaceChildren(...buttons);
  group.addEventListener("keydown", (event) => {
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    const at = buttons.indexOf(document.activeElement);
    if (step && at >= 0) {
      const next = buttons[(at + step + buttons.length) % buttons.length];
      next.focus();
      chosen(next.dataset.value);
      event.preventDefault();
      event.stopPropagation();
    }
  });
  return (value) => {
    for (const each of buttons) {
      const is = each.dataset.value === value;
      each.setAttribute("aria-checked", String(is));
      each.tabIndex = is ? 0 : -1;
    }
  };
}

/** Things a browser keeps for the viewer; where it refuses, as some do for files, nothing is kept. */
export const kept = {
  get(key) {
    try {
      return window.localStorage.getItem(key);
    } catch (refused) {
      return null;
    }
  },
  /** Whether it was kept. */
  set(key, value) {
    try {
      window.localStorage.setItem(key, value);
      return true;
    } catch (refused) {
      return false;
    }
  },
};

/** Tells a screen reader, once. */
export function announce(words) {
  byId("said").textContent = words;
}
