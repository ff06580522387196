package org.adumbrate.sheetfile.reading;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.Nearest;
import org.adumbrate.sheetfile.complaint.Place;

/**
 * A sheet file as read: what was asked, and where each value stands in the text.
 *
 * @param file the file, as it was named to the program
 * @param sheet what was asked, with every default filled in and every path resolved
 * @param places where each value stands, by key path
 */
public record SheetFile(Path file, Sheet sheet, Map<String, Place> places) {
    /** Copies the map. */
    public SheetFile {
        places = Map.copyOf(places);
    }

    /**
     * Where a value stands: the value itself where it begins on the line of its key, otherwise the key. A value that was
     * left out stands where the mapping does that could hold it.
     *
     * @param keyPath the keys on the way, such as {@code passes.shadow.opacity} or {@code figures[2].foot}
     */
    public Place place(String keyPath) {
        Place place = places.get(keyPath);
        if (place != null || keyPath.isEmpty()) {
            return place == null ? Place.START : place;
        }
        return place(keyPath.substring(0, Math.max(0, Math.max(keyPath.lastIndexOf('.'), keyPath.lastIndexOf('[')))));
    }

    /**
     * A complaint about a value that reads well but cannot be followed.
     *
     * @param keyPath as for {@link #place}
     * @param text what was found, what was expected; one line
     */
    public Complaint complaint(String keyPath, String text) {
        Place place = place(keyPath);
        return new Complaint(file, place.line(), place.column(), text);
    }

    /**
     * A complaint about a name that nothing has, with the nearest name that there is.
     *
     * @param keyPath as for {@link #place}
     * @param kind what has such names, such as {@code outline}
     * @param name the name
     * @param known the names there are
     */
    public Complaint unknown(String keyPath, String kind, String name, Collection<String> known) {
        return complaint(keyPath, Nearest.unknown(kind, name, known));
    }
}
