package org.adumbrate.linework.region;

import static org.adumbrate.linework.region.Drawn.PAGE;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions.Closed;

/**
 * Plans of any shape: some cells of a crooked grid are cut, all others are open. So there are several regions, with many corners of
 * all kinds, rooms, a beam within a room at least, and ground that runs off the sheet. Only the lines between cut and open are drawn, in
 * pieces.
 */
class BrokenPlanPropertyTest {
    private static final int COLUMNS = 16;
    private static final int ROWS = 12;
    private static final double CELL_MM = 12.5;

    @Property(tries = 80, seed = "4")
    void aPlanComesBackWithAllItsRoomsAndBeams(
            @ForAll long seed,
            @ForAll @IntRange(min = 15, max = 85) int cutPercent,
            @ForAll @DoubleRange(min = 0.03, max = 0.95) double gapMm) {
        Random random = new Random(seed);
        Plan plan = new Plan(random, cutPercent);
        List<VectorPath<SheetPoint>> pieces = plan.pieces(gapMm, random);
        Collections.shuffle(pieces, random);
        Region<SheetPoint> whole = plan.region();
        Closed closed = ClosedRegions.of(pieces, PAGE, gapMm + 0.05);
        int parts = whole.pieces().size();
        int rooms = whole.outline().runs() - parts;
        Statistics.label("regions").collect(parts > 3 ? "many" : "few");
        Statistics.label("rooms").collect(rooms > 1 ? "several" : "one");
        Statistics.label("regions").coverage(c -> c.check("many").percentage(p -> p > 30));
        Statistics.label("rooms").coverage(c -> c.check("several").percentage(p -> p > 30));
        assertThat(Drawn.overlap(closed.region(), whole))
                .as("share of the area")
                .isGreaterThan(0.999);
        assertThat(closed.region().pieces()).hasSize(parts);
        assertThat(closed.region().outline().runs()).isEqualTo(parts + rooms);
        assertThat(closed.looseEnds()).isEmpty();
    }

    private static final class Plan {
        private final boolean[][] cut = new boolean[COLUMNS][ROWS];
        private final SheetPoint[][] corners = new SheetPoint[COLUMNS + 1][ROWS + 1];

        Plan(Random random, int cutPercent) {
            for (int i = 0; i <= COLUMNS; i++) {
                for (int j = 0; j <= ROWS; j++) {
                    corners[i][j] = new SheetPoint(place(i, COLUMNS, random), place(j, ROWS, random));
                }
            }
            // what lies along the sheet's top is open
            for (int i = 0; i < COLUMNS; i++) {
                for (int j = 1; j < ROWS; j++) {
                    cut[i][j] = random.nextInt(100) < cutPercent;
                }
            }
            putBeam(random.nextInt(COLUMNS - 4), 1 + random.nextInt(ROWS - 5));
            while (fillBesideCorners()) {
                // what was filled may meet something else at a corner
            }
        }

        /** Corners on the sheet's edge stay there; others move by up to a fifth of a cell either way. */
        private static double place(int k, int last, Random random) {
            boolean atEdge = k == 0 || k == last;
            return CELL_MM * (k + (atEdge ? 0 : 0.4 * random.nextDouble() - 0.2));
        }

        /** A room of three cells each way, walls around it, and a beam in its middle. */
        private void putBeam(int left, int top) {
            for (int i = 0; i < 5; i++) {
                for (int j = 0; j < 5; j++) {
                    boolean isWall = i == 0 || j == 0 || i == 4 || j == 4;
                    cut[left + i][top + j] = isWall || (i == 2 && j == 2);
                }
            }
        }

        /** Cells that meet at a corner only could be one region or two: a cell beside the corner joins them. */
        private boolean fillBesideCorners() {
            boolean filled = false;
            for (int i = 1; i < COLUMNS; i++) {
                for (int j = 2; j < ROWS; j++) {
                    boolean falling = cut[i - 1][j - 1] && cut[i][j] && !cut[i][j - 1] && !cut[i - 1][j];
                    boolean rising = cut[i][j - 1] && cut[i - 1][j] && !cut[i - 1][j - 1] && !cut[i][j];
                    cut[i][j] |= rising;
                    cut[i - 1][j] |= falling;
                    filled |= rising || falling;
                }
            }
            return filled;
        }

        private boolean isCut(int i, int j) {
            return i >= 0 && j >= 0 && i < COLUMNS && j < ROWS && cut[i][j];
        }

        List<VectorPath<SheetPoint>> pieces(double gapMm, Random random) {
            List<VectorPath<SheetPoint>> pieces = new ArrayList<>();
            for (int i = 0; i < COLUMNS; i++) {
                for (int j = 0; j < ROWS; j++) {
                    if (i > 0 && isCut(i - 1, j) != isCut(i, j)) {
                        Broken.breakUp(corners[i][j], corners[i][j + 1], gapMm, random, pieces);
                    }
                    if (j > 0 && isCut(i, j - 1) != isCut(i, j)) {
                        Broken.breakUp(corners[i][j], corners[i + 1][j], gapMm, random, pieces);
                    }
                }
            }
            return pieces;
        }

        Region<SheetPoint> region() {
            List<List<SheetPoint>> cells = new ArrayList<>();
            for (int i = 0; i < COLUMNS; i++) {
                for (int j = 0; j < ROWS; j++) {
                    if (cut[i][j]) {
                        cells.add(List.of(corners[i][j], corners[i + 1][j], corners[i + 1][j + 1], corners[i][j + 1]));
                    }
                }
            }
            return Region.of(Space.SHEET, cells);
        }
    }
}
