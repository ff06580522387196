package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A reading in metres: floors in order and with names, each with its lines and its strays.
 *
 * @param reading the reading
 * @param sigma how far ends of lines are drawn off, in mm, as a standard deviation
 * @param heightM how tall a height line is, in metres
 */
record Telling(Reading reading, double sigma, double heightM) {
    /** Tells the reading of these lines. */
    FittedHeights of(Uprights lines) {
        Map<Level, List<HeightLine>> on = new HashMap<>();
        List<HeightLine> strays = lines.strays(reading.standings());
        for (Standing standing : reading.standings()) {
            on.computeIfAbsent(reading.level(standing), level -> new ArrayList<>())
                    .add(standing.line());
        }
        Pencil told = fromTheLowest(on);
        List<FittedFloor> floors = new ArrayList<>();
        int unnamed = 0;
        for (int k = 0; k < told.levels().size(); k++) {
            int place = k;
            Level level = told.levels().get(k);
            String name = level.isNamed() ? level.name() : "floor-" + ++unnamed;
            List<HeightLine> off =
                    strays.stream().filter(line -> told.nearest(line) == place).toList();
            floors.add(floor(name, level, on.getOrDefault(level, List.of()), off));
        }
        double error = reading.horizonErrorMm(sigma);
        return new FittedHeights(heightM, told.horizon(), error, floors);
    }

    /** The stated floors and those with lines, the lowest, over which the eye is highest, first. */
    private Pencil fromTheLowest(Map<Level, List<HeightLine>> on) {
        Pencil pencil = reading.pencil();
        List<Level> levels = pencil.levels().stream()
                .filter(level -> level.isNamed() || on.containsKey(level))
                .sorted(Comparator.comparingDouble(pencil::ratio).reversed())
                .toList();
        return new Pencil(pencil.horizon(), pencil.rises(), levels);
    }

    private FittedFloor floor(String name, Level level, List<HeightLine> here, List<HeightLine> off) {
        Pencil pencil = reading.pencil();
        double squares = 0;
        for (HeightLine line : here) {
            squares += Math.pow(pencil.residual(line, level), 2);
        }
        double rms = here.isEmpty() ? 0 : Math.sqrt(squares / here.size());
        double error = sigma * Math.sqrt(reading.fit().riseVariances().get(level.group()));
        return new FittedFloor(name, heightM * pencil.ratio(level), heightM * error, here, rms, off);
    }
}
