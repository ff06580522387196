package org.adumbrate.sheetfile.edit;

/** One change of a sheet file. Key paths are as in {@code passes.shadow.opacity} and {@code figures[3].foot}. */
public sealed interface Edit permits Edit.Set, Edit.Add, Edit.Remove, Edit.Rename, Edit.Move {
    /** The key path of what it changes. */
    String key();

    /**
     * Another value. What is missing on the way to the key is written too.
     *
     * @param value as one would write it in the file, without the quotes that YAML needs: {@code 0.35 mm}, {@code #0a64c8},
     *     {@code [212, 188]}, {@code { file: depth.png }}. A number without a unit takes the unit that stands there; within
     *     a list or a mapping it is in the first unit of its key, as in the file
     */
    record Set(String key, String value) implements Edit {}

    /**
     * An item at the end of a list or, where the key ends in an index, before that item; or the keys of a mapping that are not
     * there yet.
     *
     * @param value as for {@link Set}
     */
    record Add(String key, String value) implements Edit {}

    /** Without a key, or without an item of a list. */
    record Remove(String key) implements Edit {}

    /**
     * Another name for a key; what refers to a pen, veil, floor or region by its name follows.
     *
     * @param name the new name
     */
    record Rename(String key, String name) implements Edit {}

    /**
     * Another place among the items of a list or the keys of a mapping, with the comment at the end of its lines; comments above
     * stay where they are.
     *
     * @param index the new place, counted from 0
     */
    record Move(String key, int index) implements Edit {}
}
