import { el } from "../dom.js";

/**
 * A short list to choose from, under what it is for. Arrow keys, Home, End and first letters go through it; Enter
 * chooses, Escape leaves all as it is.
 * @param {HTMLElement} anchor
 * @param {{name: string, inner?: Node, does: () => void}[]} items
 * @param {{label: string, current?: string, close?: () => void}} how
 */
export function choose(anchor, items, { label, current, close = () => {} }) {
  document.querySelector("#lists .list")?.control.leave();
  const list = el("ul.list", { role: "listbox", tabindex: 0, "aria-label": label });
  const options = items.map((item, k) => el("li", { role: "option", id: `choice-${k}`, "aria-label": item.name, onclick: () => pick(k), onpointermove: () => at(k) }, item.inner ?? item.name));
  list.append(...options);
  let chosen = Math.max(0, items.findIndex((item) => item.name === current));
  let isOpen = true;

  function at(k) {
    chosen = (k + items.length) % items.length;
    options.forEach((option, i) => option.setAttribute("aria-selected", String(i === chosen)));
    list.setAttribute("aria-activedescendant", `choice-${chosen}`);
    const option = options[chosen];
    if (option.offsetTop < list.scrollTop) list.scrollTop = option.offsetTop;
    else if (option.offsetTop + option.offsetHeight > list.scrollTop + list.clientHeight) list.scrollTop = option.offsetTop + option.offsetHeight - list.clientHeight;
  }

  function leave() {
    if (!isOpen) return;
    isOpen = false;
    list.remove();
    close();
  }

  function pick(k) {
    leave();
    back(anchor);
    items[k].does();
  }

  list.control = { leave };
  list.addEventListener("blur", leave);
  list.addEventListener("pointerdown", (event) => event.preventDefault());
  list.addEventListener("keydown", (event) => {
    const ways = { ArrowDown: 1, ArrowUp: -1, ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (ways) at(chosen + ways);
    else if (event.key === "Home") at(0);
    else if (event.key === "End") at(items.length - 1);
    else if (event.key === "Enter" || event.key === " ") pick(chosen);
    else if (event.key === "Escape" || event.key === "Tab") { leave(); back(anchor); }
    else if (event.key.length === 1) {
      const next = items.findIndex((item, k) => k > chosen && item.name.startsWith(event.key));
      at(next >= 0 ? next : Math.max(0, items.findIndex((item) => item.name.startsWith(event.key))));
    } else return;
    event.preventDefault();
    event.stopPropagation();
  });
  document.getElementById("lists").append(list);
  place(list, anchor.getBoundingClientRect());
  at(chosen);
  list.focus({ preventScroll: true });
}

function back(anchor) {
  const again = anchor.isConnected ? anchor : document.querySelector(`[data-key="${CSS.escape(anchor.dataset.key ?? "")}"]`);
  again?.focus?.({ preventScroll: true });
}

function place(list, box) {
  const below = window.innerHeight - box.bottom - 12;
  const isAbove = below < Math.min(260, list.scrollHeight) && box.top > below;
  list.style.maxHeight = `${Math.min(420, Math.max(120, isAbove ? box.top - 12 : below))}px`;
  list.style.left = `${Math.max(8, Math.min(box.left - 10, window.innerWidth - list.offsetWidth - 8))}px`;
  list.style.top = `${Math.max(8, isAbove ? box.top - 4 - list.offsetHeight : box.bottom + 4)}px`;
}
