package org.adumbrate.sheetfile;

import java.util.Optional;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.SheetSize;

/**
 * Where a pass is stated to lie, written as {@code sheet} or as {@code [left, top, width, height]} in mm.
 *
 * @param stated the rectangle; empty for the whole sheet
 */
public record PassFrame(Optional<Frame> stated) {
    /** The rectangle on a sheet of the given size. */
    public Frame on(SheetSize size) {
        return stated.orElseGet(size::frame);
    }
}
