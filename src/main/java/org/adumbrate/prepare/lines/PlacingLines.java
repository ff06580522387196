package org.adumbrate.prepare.lines;

import java.util.List;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.registration.LinePattern;

/**
 * The lines that passes are placed by.
 *
 * @param content by what they are known
 * @param pattern makes them ready for it, when that is needed
 */
public record PlacingLines(List<Object> content, Run.Work<LinePattern> pattern) {}
