package org.adumbrate.proof;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.adumbrate.delivery.ClosingReport;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.proof.http.Answer;
import org.adumbrate.proof.http.Events;
import org.adumbrate.proof.http.LoopbackServer;
import org.adumbrate.proof.http.PageFiles;
import org.adumbrate.proof.http.Routes;
import org.adumbrate.proof.http.Webjars;
import org.adumbrate.proof.picture.PictureDesk;
import org.adumbrate.proof.text.StateJson;
import org.adumbrate.proof.text.TextState;

/** Serves one sheet to the pages of one person, until it is closed. */
public final class ProofServer implements AutoCloseable {
    /**
     * What was decided when a sheet file was written for a folder.
     *
     * @param key the key path that it is about
     * @param text what was chosen, and why
     */
    public record Decided(String key, String text) {}

    private final LoopbackServer server;
    private final List<Runnable> endings;

    /** @param endings what is ended once no page is served any more, in order */
    private ProofServer(LoopbackServer server, List<Runnable> endings) {
        this.server = server;
        this.endings = endings;
    }

    /**
     * Begins to serve.
     *
     * @param lines of a sheet file, which need not read well; its memory is closed with the server
     * @param port to listen at; 0 for any that is free
     * @param report makes the report of a delivery
     * @param decided what to say beside the text
     * @throws IOException if there is no such file, or the port is taken
     */
    public static ProofServer begin(HeadStart lines, int port, ClosingReport.Maker report, List<Decided> decided)
            throws IOException {
        Path file = lines.file();
        Memory memory = lines.memory();
        Events events = new Events();
        Pressing pressing = new Pressing();
        Followers followers = new Followers(events, pressing);
        HeldSheet sheet = new HeldSheet(file, memory, followers::follow);
        DeliveryDesk desk = new DeliveryDesk(file, memory, report, events);
        PictureRoutes pictures = new PictureRoutes(sheet, new PictureDesk(), pressing);
        StateTeller teller = new StateTeller(decided);
        SceneRoutes scenes = new SceneRoutes(sheet);
        Routes routes = new Routes();
        new PageFiles(ProofServer.class, Webjars.TEXT_PANE).at(routes);
        routes.get("/state", ask -> Answer.json(teller.of(sheet.text().state())));
        new TextRoutes(sheet, pictures, pressing).at(routes);
        pictures.at(routes);
        scenes.at(routes);
        new DeliveryRoutes(sheet, desk).at(routes);
        events.welcome(() -> welcome(teller.of(sheet.text().state()), followers));
        LoopbackServer server = LoopbackServer.begin(port, routes, events);
        followers.begin(sheet, lines, teller::of, new Looks(scenes));
        Lookout lookout = new Lookout(sheet, file);
        lookout.begin();
        return new ProofServer(server, List.of(lookout::end, desk::end, followers::end, sheet::end, memory::close));
    }

    /** What the page hears of a state. */
    private record StateTeller(List<Decided> decided) {
        Map<String, Object> of(TextState state) {
            Map<String, Object> told = StateJson.of(state);
            told.put(
                    "decided",
                    decided.stream()
                            .map(one -> Json.object("key", one.key(), "text", one.text()))
                            .toList());
            return told;
        }
    }

    private record Looks(SceneRoutes scenes) implements Followers.Looks {
        @Override
        public Map<String, Object> scene(Edition edition, long version) throws IOException, Refusal {
            return scenes.json(edition, version);
        }

        @Override
        public Map<String, Object> findings(Edition edition, long version) throws IOException, Refusal {
            return FindingsJson.of(edition, version);
        }
    }

    private static List<Events.Event> welcome(Map<String, Object> state, Followers followers) {
        List<Events.Event> first = new ArrayList<>();
        first.add(new Events.Event("state", state));
        first.addAll(followers.latest());
        return first;
    }

    /** The address that lets in whoever knows it. */
    public String address() {
        return server.address();
    }

    /** An address that lets in a single time, to be given to a browser where others can read it. */
    public String addressOnce() {
        return server.addressOnce();
    }

    /** Tells all pages that it ends, stops what is going on, a delivery too, and ends. */
    @Override
    public void close() {
        server.close();
        endings.forEach(Runnable::run);
    }
}
