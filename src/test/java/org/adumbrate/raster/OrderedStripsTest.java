package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OrderedStripsTest {
    @Test
    void stripsAreTakenInOrderHoweverManyThreads() throws IOException {
        for (int threads = 1; threads <= 5; threads++) {
            List<Integer> taken = new ArrayList<>();
            AtomicInteger ahead = new AtomicInteger();
            int limit = OrderedStrips.window(threads);
            OrderedStrips.<String, Integer>run(
                    200,
                    threads,
                    () -> "",
                    (own, strip) -> {
                        ahead.accumulateAndGet(strip - taken.size(), Math::max);
                        return strip * strip;
                    },
                    (strip, square) -> {
                        assertThat(square).isEqualTo(strip * strip);
                        taken.add(strip);
                    });
            assertThat(taken).isEqualTo(IntStream.range(0, 200).boxed().toList());
            assertThat(ahead.get()).isLessThanOrEqualTo(limit);
        }
    }

    @Test
    void theFirstFailureEndsTheWork() {
        assertThatThrownBy(() -> OrderedStrips.<String, Integer>run(
                        1000,
                        3,
                        () -> "",
                        (own, strip) -> {
                            if (strip == 7) {
                                throw new IOException("strip seven");
                            }
                            return strip;
                        },
                        (strip, result) -> {}))
                .isInstanceOf(IOException.class)
                .hasMessage("strip seven");
    }

    @Test
    void aFailureToTakeEndsTheWork() {
        assertThatThrownBy(() -> OrderedStrips.<String, Integer>run(
                        1000, 3, () -> "", (own, strip) -> strip, (strip, result) -> {
                            throw new IOException("disk full");
                        }))
                .isInstanceOf(IOException.class)
                .hasMessage("disk full");
    }
}
