package org.adumbrate.sheetfile;

import java.nio.file.Path;

/**
 * A vector line sheet.
 *
 * @param file PDF or SVG
 * @param fit how its page is laid on a sheet of another size
 */
@Written(orFirstAlone = true, shared = true)
public record LineFile(
        @Key("The vector file, PDF or SVG.") Path file,

        @Key(value = "How its page is laid on a sheet of another size.", byDefault = "scale")
        Fit fit) {}
