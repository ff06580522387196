import { Annotation, StateEffect, StateField } from "@codemirror/state";

/** What the program says of the values in the text. */
export const told = StateEffect.define();

/** Something around the text changed that it shows: what is selected, findings. */
export const around = StateEffect.define();

/** The text has the caret, or has it no more. */
export const caret = StateEffect.define();

/** Marks changes that come from the program and are not typed. */
export const fromProgram = Annotation.define();

/** The written values, their places following what is typed; one that is typed in is left out until the program has read it. */
export const values = StateField.define({
  create: () => [],
  update(known, transaction) {
    let next = known;
    if (transaction.docChanged) {
      next = known.flatMap((value) => {
        let isTouched = false;
        transaction.changes.iterChanges((from, to) => { if (from < value.to && to > value.from) isTouched = true; }, true);
        if (isTouched && !transaction.annotation(fromProgram)) return [];
        const from = transaction.changes.mapPos(value.from, 1);
        const to = transaction.changes.mapPos(value.to, -1);
        return to >= from ? [{ ...value, from, to }] : [];
      });
    }
    for (const effect of transaction.effects) if (effect.is(told)) next = effect.value;
    return next;
  },
});

/** True while the caret is in the text. */
export const hasCaret = StateField.define({
  create: () => false,
  update(was, transaction) {
    return transaction.effects.reduce((now, effect) => (effect.is(caret) ? effect.value : now), was);
  },
});
