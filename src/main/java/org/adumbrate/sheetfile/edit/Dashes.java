package org.adumbrate.sheetfile.edit;

import org.adumbrate.sheetfile.yaml.TextPart;

/** Where the dashes of a block list stand. */
record Dashes(Lines lines, TextPart list) {
    int at(int index) {
        return index == 0
                ? list.content()
                : lines.skip(list.items().get(index - 1).to());
    }
}
