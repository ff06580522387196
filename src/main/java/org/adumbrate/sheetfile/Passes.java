package org.adumbrate.sheetfile;

import java.util.Optional;

/**
 * The rasters that lie under the lines.
 *
 * @param shadow the sun-shadow render
 * @param occlusion the ambient-occlusion render
 * @param figureShadow a render of the figures' shadows made elsewhere
 * @param depth the depth render; read, not printed
 */
public record Passes(
        @Key("The sun-shadow render.") Optional<PrintedPass> shadow,

        @Key(value = "The ambient-occlusion render.", innerDefault = "opacity: 45")
        Optional<PrintedPass> occlusion,

        @Key("A render of the figures' shadows, where they are not to be computed.")
        Optional<PrintedPass> figureShadow,

        @Key("The depth render; it is read, not printed.") Optional<DepthPass> depth) {}
