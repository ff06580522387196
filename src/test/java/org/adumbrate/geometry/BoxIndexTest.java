package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoxIndexTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 16, 17, 255, 257, 3000})
    void findsWhatALookAtEveryBoxFinds(int count) {
        Random random = new Random(count);
        List<Extent> boxes = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double reach = k % 10 == 0 ? 100 : 3;
            double x = random.nextInt(100);
            double y = random.nextInt(100);
            boxes.add(new Extent(x, y, x + reach * random.nextDouble(), y + (k % 7 == 0 ? 0 : reach)));
        }
        BoxIndex index = BoxIndex.of(boxes);
        for (int k = 0; k < 200; k++) {
            Extent asked = new Extent(random.nextInt(100) - 10, random.nextInt(100) - 10, random.nextInt(20) + 95, 105);
            int[] expected = IntStream.range(0, count)
                    .filter(box -> touch(boxes.get(box), asked))
                    .toArray();
            assertThat(index.touching(asked.left(), asked.top(), asked.right(), asked.bottom()))
                    .isEqualTo(expected);
        }
    }

    private static boolean touch(Extent a, Extent b) {
        return a.left() < b.right() && a.right() > b.left() && a.top() < b.bottom() && a.bottom() > b.top();
    }
}
