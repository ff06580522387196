package org.adumbrate.sheetfile.complaint;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A sheet file that cannot be followed; carries everything that is wrong with it, in the order of the text. */
public final class SheetFileFault extends IOException {
    private static final long serialVersionUID = 1L;

    /** Nobody reads more, and a file that is not meant to be one has tens of thousands. */
    private static final int MOST_TOLD = 100;

    private static final Comparator<Complaint> BY_PLACE =
            Comparator.comparingInt(Complaint::line).thenComparingInt(Complaint::column);

    private final transient List<Complaint> complaints;

    /** @param complaints at least one, in any order */
    public SheetFileFault(List<Complaint> complaints) {
        super(told(sorted(complaints)));
        this.complaints = sorted(complaints);
    }

    private static String told(List<Complaint> sorted) {
        String first = sorted.stream().limit(MOST_TOLD).map(Complaint::toString).collect(Collectors.joining("\n"));
        return sorted.size() <= MOST_TOLD
                ? first
                : first + "\n" + sorted.get(0).file() + ": and " + (sorted.size() - MOST_TOLD)
                        + " more; mend these first";
    }

    /** Two ways to the same value, by an alias, give the same complaint; once is enough. */
    private static List<Complaint> sorted(List<Complaint> complaints) {
        return complaints.stream().distinct().sorted(BY_PLACE).toList();
    }

    /** All complaints, sorted by place; the message has one line for each of the first hundred. */
    public List<Complaint> complaints() {
        return complaints;
    }
}
