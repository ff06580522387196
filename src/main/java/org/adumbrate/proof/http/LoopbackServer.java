package org.adumbrate.proof.http;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.adumbrate.fault.OutputFault;

/** Serves on the loopback interface of this machine alone (RFC 1122, 3.2.1.3). */
public final class LoopbackServer implements AutoCloseable {
    static {
        // read once, when the server's class loads: without it each small answer waits 40 ms for the one before to be
        // received
        System.setProperty("sun.net.httpserver.nodelay", "true");
        // seconds: who sends half a request and waits does not hold a thread
        if (System.getProperty("sun.net.httpserver.maxReqTime") == null) {
            System.setProperty("sun.net.httpserver.maxReqTime", "30");
        }
    }

    private static final String LOOPBACK = "127.0.0.1";
    private static final byte[] LOOPBACK_BYTES = {127, 0, 0, 1};

    /** Each page that is open holds one, and a browser asks for six things at a time. */
    private static final int MOST_THREADS = 64;

    private final HttpServer server;
    private final ExecutorService threads;
    private final Events events;
    private final Secret token = Secret.random();
    private final Door door;

    private LoopbackServer(HttpServer server, ExecutorService threads, Events events) {
        this.door = new Door(token, server.getAddress().getPort());
        this.server = server;
        this.events = events;
        this.threads = threads;
    }

    private static ExecutorService threads() {
        ThreadPoolExecutor threads = new ThreadPoolExecutor(
                MOST_THREADS, MOST_THREADS, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), LoopbackServer::thread);
        threads.allowCoreThreadTimeOut(true);
        return threads;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "answering");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Begins to serve.
     *
     * @param port to listen at; 0 for any that is free
     * @param routes what there is
     * @param events what pages that listen at {@code /events} hear
     * @throws OutputFault if the port is taken
     */
    public static LoopbackServer begin(int port, Routes routes, Events events) throws IOException {
        HttpServer server = HttpServer.create();
        try {
            server.bind(new InetSocketAddress(InetAddress.getByAddress(LOOPBACK_BYTES), port), 0);
        } catch (BindException taken) {
            throw new OutputFault(
                    "port " + port, "is taken by another program", "give another with --port, or none at all");
        }
        ExecutorService threads = threads();
        LoopbackServer loopback = new LoopbackServer(server, threads, events);
        server.setExecutor(threads);
        server.createContext("/", new Reception(loopback.door, routes, events));
        server.start();
        return loopback;
    }

    /** Where it listens. */
    public int port() {
        return server.getAddress().getPort();
    }

    /** The address that lets in whoever knows it. */
    public String address() {
        return "http://" + LOOPBACK + ":" + port() + "/?token=" + token.text();
    }

    /** Another one, which lets in a single time. */
    public String addressOnce() {
        return "http://" + LOOPBACK + ":" + port() + "/?token=" + door.once().text();
    }

    /** Tells all who listen that it ends, and ends. */
    @Override
    public void close() {
        events.end();
        server.stop(0);
        threads.shutdownNow();
    }
}
