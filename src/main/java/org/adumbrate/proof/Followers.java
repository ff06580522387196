package org.adumbrate.proof;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.proof.http.Events;
import org.adumbrate.proof.text.TextState;

/**
 * What follows a change, in a thread of its own: pages hear of the new state once they have their picture, of where things lie when nothing
 * changes for a moment, and of the findings when nothing does for a while, so that no picture waits for them.
 */
final class Followers {
    private static final System.Logger LOG = System.getLogger(Followers.class.getName());

    /** Between a change and the look where things lie: a hand that steps a value makes ten changes a second. */
    private static final long SCENE_MS = 80;

    /** Between the last change or try and the findings. */
    private static final long FINDINGS_MS = 300;

    /** After a picture went out, a page is busy for about as long as this with showing it. */
    private static final long SHOWING_MS = 40;

    /** No page waits longer than this for what the text has become. */
    private static final long LATEST_MS = 250;

    private final Events events;
    private final Pressing pressing;
    private final BlockingQueue<TextState> changes = new LinkedBlockingQueue<>();
    private HeldSheet sheet;
    private HeadStart lines;
    private Thread thread;
    private volatile boolean ended;
    private final Map<String, Events.Event> latest = new ConcurrentHashMap<>();
    private Function<TextState, Map<String, Object>> told;
    private Looks looks;

    /** What is looked at. */
    interface Looks {
        /** Where things lie. */
        Map<String, Object> scene(Edition edition, long version) throws IOException, Refusal;

        /** What is to be said. */
        Map<String, Object> findings(Edition edition, long version) throws IOException, Refusal;
    }

    private interface Look {
        Map<String, Object> of(Edition edition) throws IOException, Refusal;
    }

    Followers(Events events, Pressing pressing) {
        this.events = events;
        this.pressing = pressing;
    }

    /** Hears of a new state; it takes no time. */
    void follow(TextState state) {
        changes.add(state);
    }

    /**
     * Begins to tell of a sheet.
     *
     * @param ahead reads its lines, which a page is shown first
     */
    void begin(HeldSheet open, HeadStart ahead, Function<TextState, Map<String, Object>> state, Looks look) {
        sheet = open;
        lines = ahead;
        told = state;
        looks = look;
        thread = new Thread(this::goOn, "what follows a change");
        thread.setDaemon(true);
        thread.start();
    }

    /** Tells nothing more. */
    void end() {
        ended = true;
        thread.interrupt();
    }

    private void goOn() {
        try {
            TextState state = sheet.text().state();
            lines.await();
            while (!ended) {
                TextState next = afterwards(state);
                if (next == null) {
                    next = changes.take();
                }
                pressing.await(SHOWING_MS, LATEST_MS);
                state = tell(next);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Tells of a state. Of the page's own that have been followed by others already nothing is said. */
    private TextState tell(TextState first) {
        TextState state = first;
        for (TextState next = changes.poll(); next != null; next = changes.poll()) {
            if (state.by() == TextState.By.OTHER) {
                events.send("state", told.apply(state));
            }
            state = next;
        }
        events.send("state", told.apply(state));
        return state;
    }

    /** Looks at a state; what changes meanwhile comes first, and is given back. */
    private TextState afterwards(TextState state) throws InterruptedException {
        TextState next = changes.poll(SCENE_MS, TimeUnit.MILLISECONDS);
        if (next != null) {
            return next;
        }
        look("scene", state, edition -> looks.scene(edition, state.version()));
        while (sheet.quietMs() < FINDINGS_MS) {
            next = changes.poll(FINDINGS_MS, TimeUnit.MILLISECONDS);
            if (next != null) {
                return next;
            }
        }
        look("findings", state, edition -> looks.findings(edition, state.version()));
        return null;
    }

    /** What was last found out, for pages that come later. */
    List<Events.Event> latest() {
        return List.copyOf(latest.values());
    }

    private void send(String name, Map<String, Object> data) {
        latest.put(name, new Events.Event(name, data));
        events.send(name, data);
    }

    private void look(String name, TextState state, Look look) {
        if (!changes.isEmpty() || ended) {
            return;
        }
        try {
            send(name, look.of(sheet.looked()));
        } catch (Superseded newer) {
            LOG.log(Level.DEBUG, "a newer change came before the {0}", name);
        } catch (IOException | Refusal trouble) {
            send(
                    name,
                    name.equals("scene")
                            ? Json.object("version", state.version(), "things", List.of(), "floors", List.of())
                            : Json.object(
                                    "version", state.version(),
                                    "findings", List.of(),
                                    "troubles", Troubles.of(trouble)));
        } catch (RuntimeException defect) {
            // the page lives on without it, and the next change gives another chance
            LOG.log(Level.ERROR, "a defect in the program", defect);
        }
    }
}
