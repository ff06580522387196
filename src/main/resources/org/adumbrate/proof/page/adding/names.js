/** A name that nothing in a section has yet: the stem, or the stem with a number. */
export function freeName(sheet, holder, stem) {
  const taken = new Set(sheet.names(holder));
  let name = stem;
  for (let k = 2; taken.has(name); k += 1) name = `${stem}-${k}`;
  return name;
}

/** The edit that adds something under a name of its own. */
export function entry(sheet, holder, name, value) {
  return sheet.names(holder).length > 0 ? { do: "add", key: holder, value: `{ ${name}: ${value} }` } : { do: "set", key: `${holder}.${name}`, value };
}
