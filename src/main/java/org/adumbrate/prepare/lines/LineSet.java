package org.adumbrate.prepare.lines;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.util.HexFormat;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.prepare.memory.Digests;

/**
 * Lines on the sheet, known by their content: what is made of them is made again only when they are others.
 *
 * @param paths the lines
 * @param content a digest of every coordinate, in order
 */
public record LineSet(List<VectorPath<SheetPoint>> paths, String content) {
    static final LineSet NONE = of(List.of());

    public LineSet {
        paths = List.copyOf(paths);
    }

    static LineSet of(List<VectorPath<SheetPoint>> paths) {
        DigestOutputStream digest = new DigestOutputStream(OutputStream.nullOutputStream(), Digests.sha256());
        try (DataOutputStream out = new DataOutputStream(new java.io.BufferedOutputStream(digest, 1 << 15))) {
            for (VectorPath<SheetPoint> path : paths) {
                path.writeTo(out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("nothing is written anywhere", e);
        }
        return new LineSet(
                paths, HexFormat.of().formatHex(digest.getMessageDigest().digest()));
    }

    /** How many lines. */
    public int size() {
        return paths.size();
    }

    boolean isEmpty() {
        return paths.isEmpty();
    }
}
