package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.adumbrate.fault.Refusal;

/** Does a few independent things at once. */
public final class InParallel {
    private InParallel() {}

    /**
     * Runs all tasks, each in a thread of its own unless the calling thread comes to it first, and gives their results in order; the first
     * failure is thrown. Tasks that take no time are so done without waiting for any thread.
     */
    public static <T> List<T> all(List<Callable<T>> tasks) throws IOException {
        List<SideTask<T>> begun = new ArrayList<>();
        for (int k = 0; k < tasks.size(); k++) {
            begun.add(k == 0 ? SideTask.own(tasks.get(k)) : SideTask.begin("in parallel " + k, tasks.get(k)));
        }
        List<T> results = new ArrayList<>();
        try {
            for (SideTask<T> task : begun) {
                results.add(task.result());
            }
        } catch (Refusal refused) {
            throw new IOException(refused);
        } finally {
            begun.forEach(SideTask::stop);
        }
        return results;
    }
}
