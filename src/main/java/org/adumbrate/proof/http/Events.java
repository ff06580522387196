package org.adumbrate.proof.http;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.adumbrate.json.Json;

/** What open pages hear: server-sent events (HTML Living Standard, 9.2). Who comes later is first given what holds now. */
public final class Events {
    /**
     * One event.
     *
     * @param name its kind
     * @param data becomes JSON
     */
    public record Event(String name, Object data) {
        private byte[] bytes() {
            return ("event: " + name + "\ndata: " + Json.text(data) + "\n\n").getBytes(StandardCharsets.UTF_8);
        }
    }

    /** Who lags so far behind is let go; a browser comes back by itself and hears what holds then. */
    private static final int MOST_WAITING = 500;

    /** More pages than anybody has open; each holds a thread. */
    private static final int MOST_LISTENERS = 24;

    /** Without a word now and then nobody notices that a page is gone. */
    private static final long BREATH_SECONDS = 10;

    private static final byte[] BREATH = ":\n\n".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = {};

    private final List<BlockingQueue<byte[]>> listeners = new CopyOnWriteArrayList<>();
    private volatile Supplier<List<Event>> welcome = List::of;
    private volatile CountDownLatch leaving = new CountDownLatch(0);
    private volatile boolean ended;

    /** Settles what a page hears first. */
    public void welcome(Supplier<List<Event>> first) {
        welcome = first;
    }

    /** Tells all pages. */
    public void send(String name, Object data) {
        if (!listeners.isEmpty()) {
            byte[] bytes = new Event(name, data).bytes();
            listeners.forEach(listener -> give(listener, bytes));
        }
    }

    private static void give(BlockingQueue<byte[]> listener, byte[] bytes) {
        if (!listener.offer(bytes)) {
            listener.clear();
            listener.offer(END);
        }
    }

    /** Tells a page until it is gone or all ends. */
    void tell(HttpExchange exchange) throws IOException {
        BlockingQueue<byte[]> mine = new ArrayBlockingQueue<>(MOST_WAITING);
        listeners.add(mine);
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        try (OutputStream out = exchange.getResponseBody()) {
            for (Event event : welcome.get()) {
                out.write(event.bytes());
            }
            out.flush();
            while (!ended || !mine.isEmpty()) {
                byte[] bytes = mine.poll(BREATH_SECONDS, TimeUnit.SECONDS);
                if (bytes != null && bytes.length == 0) {
                    return;
                }
                out.write(bytes == null ? BREATH : bytes);
                out.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            listeners.remove(mine);
            leaving.countDown();
        }
    }

    /** Whether there is room for one page more. */
    boolean hasRoom() {
        return !ended && listeners.size() < MOST_LISTENERS;
    }

    /** Tells all pages that it ends, and waits a moment until they have heard. */
    void end() {
        leaving = new CountDownLatch(listeners.size());
        byte[] bytes = new Event("ended", Json.object()).bytes();
        listeners.forEach(listener -> {
            give(listener, bytes);
            give(listener, END);
        });
        ended = true;
        try {
            boolean heard = leaving.await(1, TimeUnit.SECONDS);
            System.getLogger(Events.class.getName())
                    .log(System.Logger.Level.DEBUG, "all pages heard the end: " + heard);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
