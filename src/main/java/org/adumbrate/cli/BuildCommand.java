package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import org.adumbrate.delivery.BuildPlan;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.SheetBuild;
import org.adumbrate.delivery.SheetClaims;
import org.adumbrate.delivery.Watch;
import org.adumbrate.delivery.kept.KeptFolder;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Frame;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.report.SheetReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Builds what a sheet file asks for. */
@Command(
        name = "build",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Build everything that a sheet file lists under deliver.",
        footer = {
            "",
            "Examples:",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml --only preview --dpi 150",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml --only preview --window 270,180,60,45 --dpi 300",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml --dry-run",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml --anew",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml --watch"
        })
final class BuildCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE.sheet.yaml", description = "The sheet file.")
    private Path file;

    @Option(
            names = "--only",
            split = ",",
            paramLabel = "NAME",
            description =
                    "Deliver only this item, such as underlay, drawing, preview or report; may be given several times.")
    private Set<String> only = new LinkedHashSet<>();

    @Option(
            names = "--dpi",
            paramLabel = "N",
            description = "Pixels per inch, 36 to 2400, instead of the sheet file's.")
    private Double dpi;

    @Option(
            names = "--window",
            paramLabel = "X,Y,W,H",
            converter = Converters.Window.class,
            description = {
                "Deliver only this part of the preview or the flat picture: mm from the sheet's top left corner, then width"
                        + " and height. It is written beside the whole as NAME-window, at --dpi or the item's own resolution."
            })
    private Frame window;

    @Option(names = "--dry-run", description = "Tell what would be read and written, and write nothing.")
    private boolean dryRun;

    @Option(
            names = "--watch",
            description = {
                "Build again whenever the sheet file or a file that it names changes, until Ctrl-C. Only what depends on"
                        + " the change is made anew."
            })
    private boolean watch;

    @Option(
            names = "--anew",
            description = {
                "Make everything anew. Else what earlier builds made of the same inputs is taken from the folder"
                        + " .adumbrate-kept beside the outputs, which may be deleted at any time."
            })
    private boolean anew;

    @Override
    public Integer call() throws IOException, Refusal {
        if (dpi != null && !(dpi >= 36 && dpi <= 2400)) {
            throw new ParameterException(spec.commandLine(), "--dpi must be 36 to 2400");
        }
        if (window != null && only.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--window needs --only preview or --only flat, of which it is a part");
        }
        Optional<Frame> part = Optional.ofNullable(window);
        OptionalDouble resolution = dpi == null ? OptionalDouble.empty() : OptionalDouble.of(dpi);
        if (!watch) {
            common.guard(SheetClaims.building(file, only, window != null));
        }
        if (dryRun) {
            BuildPlan plan = BuildPlan.of(file, only, resolution, part);
            common.tell(plan);
            common.writeJson(Results.of(plan));
            return ExitCode.DONE;
        }
        if (watch) {
            new WatchLoop(
                            common,
                            new Watch(file),
                            anew ? Memory.inMemory() : KeptFolder.memoryBesideOutputs(),
                            run -> {
                                common.guard(SheetClaims.building(file, only, window != null));
                                return SheetBuild.run(
                                        file, only, resolution, part, common.progress(), run, SheetReport::new);
                            })
                    .run();
            return ExitCode.DONE;
        }
        try (Memory memory = anew ? Memory.none() : KeptFolder.memoryBesideOutputs()) {
            once(part, resolution, memory);
        }
        return ExitCode.DONE;
    }

    private void once(Optional<Frame> part, OptionalDouble resolution, Memory memory) throws IOException, Refusal {
        long begin = System.nanoTime();
        BuildResult result = SheetBuild.run(file, only, resolution, part, common.progress(), memory, SheetReport::new);
        double seconds = (System.nanoTime() - begin) / 1e9;
        common.tell(result);
        if (Reused.anything(result.stages())) {
            common.say(Reused.told(seconds, result.stages()));
        }
        common.writeJson(Results.of(result));
    }
}
