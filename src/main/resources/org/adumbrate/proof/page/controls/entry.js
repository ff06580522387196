import { el } from "../dom.js";

/**
 * A line to type in, right where something stands.
 * @param {HTMLElement} anchor what is typed over
 * @param {string} text what the line begins with
 * @param {{label: string, isFresh?: boolean, hint?: string, done: (text: string) => void, left?: () => void}} how
 */
export function typeOver(anchor, text, { label, isFresh = false, hint = "", done, left = () => {} }) {
  const box = anchor.getBoundingClientRect();
  const style = getComputedStyle(anchor);
  const line = el("input.entry", { type: "text", "aria-label": label, placeholder: hint, spellcheck: "false", autocomplete: "off" });
  line.value = text;
  Object.assign(line.style, { left: `${box.left - 4}px`, top: `${box.top - 2}px`, minWidth: `${Math.max(48, box.width + 8)}px`, font: style.font });
  const width = () => { line.style.width = `${Math.min(window.innerWidth - box.left - 12, Math.max(48, (line.value.length || hint.length) * parseFloat(style.fontSize) * 0.56 + 16))}px`; };
  width();
  let isOpen = true;
  const close = (isDone) => {
    if (!isOpen) return;
    isOpen = false;
    const typed = line.value.trim();
    line.remove();
    left();
    const again = document.querySelector(`[data-key="${CSS.escape(anchor.dataset.key ?? "")}"]`) ?? anchor;
    again.focus?.({ preventScroll: true });
    if (isDone && typed) done(typed);
  };
  line.addEventListener("input", width);
  line.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key === "Enter") close(true);
    else if (event.key === "Escape") close(false);
    else return;
    event.preventDefault();
  });
  line.addEventListener("blur", () => close(true));
  document.getElementById("lists").append(line);
  line.focus();
  if (isFresh) line.setSelectionRange(text.length, text.length);
  else line.select();
}
