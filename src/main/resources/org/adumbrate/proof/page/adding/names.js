/** A name that nothing in a section has yet: the stem, or the stem with a number. */
export function freeName(sheet, holder, stem) {
  const taken = new Set(sheet.names(holder));
  let name = stem;
  for (let k = 2; taken.has(name); k += 1) name = `${stem}-${k}`;
  return name;
}
