package org.adumbrate.output;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.fault.Refusal;

/**
 * The files that a command reads and writes, and the one rule about them: no file that is written may be one that is read,
 * that must be left alone, or that is written as something else, under whatever name, link or case of letters. Held against
 * a command before it begins, so that nothing is written if any of them clash or cannot be written.
 */
public final class FileClaims {
    /** What a command does with a file. */
    private enum Use {
        READ,
        SPARED,
        WRITTEN
    }

    private record Claim(Path file, String as, Use use, FileIdentity identity) {}

    /**
     * A file that may not be written.
     *
     * @param file as it was named
     * @param as what it would be written as
     * @param other what it is already, as that was named
     * @param otherAs what that is read or written as
     * @param otherRead true if that is read
     * @param within true if it would have to be a folder, in which the other lies
     */
    public record Clash(Path file, String as, Path other, String otherAs, boolean otherRead, boolean within) {
        @Override
        public String toString() {
            String what = file + (as.isEmpty() ? "" : " (" + as + ")") + ": ";
            String named = other.equals(file) ? "" : ", " + other + ",";
            if (within) {
                return what + other + (otherAs.isEmpty() ? "" : " (" + otherAs + ")")
                        + " would lie in it as in a folder; give one of them another name";
            }
            return otherRead
                    ? what + "is one of the inputs" + named + " and would be written over; give the output another name"
                    : what + "is also written as " + otherAs + (named.isEmpty() ? "" : named.replaceFirst(",$", ""))
                            + "; give one of them another name";
        }
    }

    private final List<Claim> claims = new ArrayList<>();

    /** A file that is read. */
    public FileClaims reads(Path file) {
        return reads(file, "");
    }

    /**
     * A file that is read.
     *
     * @param as what it is read as, such as a key of the sheet file
     */
    public FileClaims reads(Path file, String as) {
        return add(file, as, Use.READ);
    }

    /** Files that are read. */
    public FileClaims reads(Iterable<Path> files) {
        files.forEach(this::reads);
        return this;
    }

    /**
     * A file that is written.
     *
     * @param as what it is written as, such as {@code --json}
     */
    public FileClaims writes(Path file, String as) {
        return add(file, as, Use.WRITTEN);
    }

    /**
     * A file that another run writes, and that this one must leave alone.
     *
     * @param as what it is then written as
     */
    public FileClaims spares(Path file, String as) {
        return add(file, as, Use.SPARED);
    }

    private FileClaims add(Path file, String as, Use use) {
        claims.add(new Claim(file, as, use, FileIdentity.of(file)));
        return this;
    }

    /** What clashes, for each file that is written at most once, in the order in which they were claimed. */
    public List<Clash> clashes() {
        List<Clash> clashes = new ArrayList<>();
        for (int k = 0; k < claims.size(); k++) {
            if (claims.get(k).use() == Use.WRITTEN) {
                clash(k).ifPresent(clashes::add);
            }
        }
        return clashes;
    }

    /** Of two that are written the later one clashes; one that is read or spared counts wherever it stands. */
    private Optional<Clash> clash(int k) {
        Claim written = claims.get(k);
        for (Use use : Use.values()) {
            for (int i = 0; i < claims.size(); i++) {
                Claim other = claims.get(i);
                if (i == k || other.use() != use) {
                    continue;
                }
                boolean counts = use != Use.WRITTEN || i < k;
                boolean within = written.identity().isFolderOf(other.identity());
                if (within || (counts && written.identity().isSame(other.identity()))) {
                    return Optional.of(
                            new Clash(written.file(), written.as(), other.file(), other.as(), use == Use.READ, within));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Holds the rule, and looks whether every file that is written can be; nothing is written by that.
     *
     * @throws Refusal if files clash; names all of them, one a line
     * @throws OutputFault if files cannot be written; names all of them, one obstacle a line
     */
    public void check() throws Refusal, OutputFault {
        List<Clash> clashes = clashes();
        if (!clashes.isEmpty()) {
            throw new Refusal(String.join(
                    "\n", clashes.stream().map(Clash::toString).distinct().toList()));
        }
        Obstacle.refuse(claims.stream()
                .filter(claim -> claim.use() == Use.WRITTEN)
                .map(Claim::file)
                .toList());
    }
}
