package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.adumbrate.delivery.kept.KeptFolder;
import org.adumbrate.editing.SheetFileEdits;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.output.FileClaims;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.proof.ProofServer;
import org.adumbrate.proof.ProofServer.Decided;
import org.adumbrate.report.SheetReport;
import org.adumbrate.start.Start;
import org.adumbrate.start.StartResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds a sheet open in a browser. */
@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Hold a sheet open in a browser: see it as it will be built, point at it, change it.",
            "Every change is written into the sheet file at once and can be undone. A folder",
            "without a sheet file gets one first, as start writes it. The page is served to this",
            "machine alone, and only to whoever has its address. Ends with Ctrl-C."
        },
        footer = {
            "",
            "More: adumbrate help proof",
            "",
            "Examples:",
            "  adumbrate proof passes/kiln-yard/kiln-yard.sheet.yaml",
            "  adumbrate proof passes/kiln-yard --port 8080 --no-open"
        })
final class ProofCommand implements Callable<Integer> {
    private static final String SUFFIX = ".sheet.yaml";

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            index = "0",
            paramLabel = "FILE.sheet.yaml|FOLDER",
            description = "The sheet file, or a folder of the model's exports.")
    private Path subject;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Serve at this port of the machine, 1 to 65535, instead of any that is free.")
    private Integer port;

    @Option(names = "--no-open", description = "Print the address and open no browser.")
    private boolean noOpen;

    /** The sheet file, and what was decided if it was written just now. */
    private record Subject(Path file, List<Decided> decided) {}

    @Override
    public Integer call() throws IOException, Refusal {
        if (port != null && (port < 1 || port > 65_535)) {
            throw new ParameterException(spec.commandLine(), "--port must be 1 to 65535");
        }
        Subject sheet = Files.isDirectory(subject) ? inFolder() : new Subject(subject, List.of());
        HeadStart lines = HeadStart.of(sheet.file(), KeptFolder.memoryBesideOutputs());
        if (common.writesJson()) { // else nothing is written that could lie on what the sheet file names
            common.guard(claims(sheet.file()));
        }
        ProofServer server = ProofServer.begin(lines, port == null ? 0 : port, SheetReport::new, sheet.decided());
        EndOfProcess end = EndOfProcess.closing(server);
        try {
            tell(server);
            if (!noOpen && !Browser.open(server.addressOnce())) {
                common.say("no browser could be opened; open the address in one");
            }
            new CountDownLatch(1).await();
            return ExitCode.DONE;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return ExitCode.DONE;
        } finally {
            end.close();
        }
    }

    /** The address first: whoever drives the page by a script waits for that line. */
    private void tell(ProofServer server) throws IOException {
        common.writeJson(Json.object("url", server.address()));
        if (common.printsText()) {
            common.out().println(server.address());
        }
        common.out().flush();
        common.say("the sheet is open at this address, to this machine alone; Ctrl-C ends it");
    }

    /** The one sheet file of a folder, or the first one, which is written now. */
    private Subject inFolder() throws IOException, Refusal {
        List<Path> there;
        try (Stream<Path> files = Files.list(subject)) {
            there = files.filter(file -> file.getFileName().toString().endsWith(SUFFIX))
                    .sorted()
                    .toList();
        }
        if (there.size() > 1) {
            List<String> names =
                    there.stream().map(file -> file.getFileName().toString()).toList();
            throw new Refusal(
                    subject + ": holds several sheet files (" + String.join(", ", names) + "); name one of them");
        }
        if (there.size() == 1) {
            return new Subject(there.get(0), List.of());
        }
        Path file = Start.usual(subject);
        common.guard(Start.claims(subject, file));
        StartResult result = Start.run(subject, file);
        common.say(file + ": written; there was no sheet file");
        return new Subject(
                file,
                Stream.concat(result.decided().stream(), result.open().stream())
                        .map(one -> new Decided(one.what(), one.choice() + ": " + one.reason()))
                        .toList());
    }

    /** What the file for JSON must not be; a sheet file that is no YAML yet names nothing. */
    private static FileClaims claims(Path file) {
        try {
            return SheetFileEdits.of(file).claims();
        } catch (IOException unread) {
            return new FileClaims().reads(file);
        }
    }
}
