package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.adumbrate.editing.LineDiff;
import org.adumbrate.editing.SheetFileEdits;
import org.adumbrate.fault.Refusal;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes one value of a sheet file. */
@Command(
        name = "edit",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Change one value of a sheet file and leave every other byte: comments,",
            "order, quotes, line ends. A number without a unit keeps the unit that",
            "stands there. What would not read well is refused, and nothing changes.",
            "Edits are kept beside the outputs, so that they can be undone."
        },
        footer = {
            "",
            "KEY is a path such as passes.shadow.opacity, pens.building.width or",
            "figures[3].foot; items are counted from 0. More: adumbrate help editing",
            "",
            "Examples:",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml \\",
            "    passes.shadow.opacity 70",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml \\",
            "    pens.building.width 0.35 mm --dry-run",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml \\",
            "    figures[3].foot 370 221.5",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml figures \\",
            "    --add \"{ outline: seated, foot: [240, 226], floor: studio }\"",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml figures[0] --remove",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml \\",
            "    floors.terrace --rename deck",
            "  adumbrate edit passes/kiln-yard/kiln-yard.sheet.yaml --undo"
        })
final class EditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE.sheet.yaml", description = "The sheet file.")
    private Path file;

    @Parameters(index = "1", arity = "0..1", paramLabel = "KEY", description = "The key path of what changes.")
    private String key;

    @Parameters(
            index = "2..*",
            arity = "0..*",
            paramLabel = "VALUE",
            description = "The new value; of a point, both numbers.")
    private List<String> values;

    @Option(names = "--add", paramLabel = "VALUE", description = "Add an item to the list, or keys to the mapping.")
    private String add;

    @Option(names = "--remove", description = "Remove the key or the item.")
    private boolean remove;

    @Option(names = "--rename", paramLabel = "NAME", description = "Rename the key, and what refers to it.")
    private String rename;

    @Option(
            names = "--move",
            paramLabel = "PLACE",
            description = "Move the item or the key to a place among its like, counted from 0.")
    private Integer move;

    @Option(names = "--undo", description = "Take back the last edit.")
    private boolean undo;

    @Option(names = "--redo", description = "Make the last edit again that was taken back.")
    private boolean redo;

    @Option(names = "--dry-run", description = "Print the change as a unified diff, and write nothing.")
    private boolean dryRun;

    @Override
    public Integer call() throws IOException, Refusal {
        List<String> words = values == null ? List.of() : values;
        checkUsage(words);
        SheetFileEdits edits = SheetFileEdits.of(file);
        common.guard(edits.claims());
        EditResult result =
                undo ? edits.undo(dryRun) : redo ? edits.redo(dryRun) : edits.edit(List.of(edit(edits, words)), dryRun);
        common.writeJson(EditResults.of(file, result, dryRun));
        if (result instanceof EditResult.Refused refused) {
            List<Complaint> reasons = refused.reasons();
            String more = reasons.size() == 1 ? "" : " (and " + (reasons.size() - 1) + " more)";
            common.complain(reasons.get(0) + more);
            return ExitCode.REFUSED;
        }
        tell((EditResult.Edited) result, edits);
        return ExitCode.DONE;
    }

    private Edit edit(SheetFileEdits edits, List<String> words) {
        if (add != null) {
            return new Edit.Add(key, add);
        }
        if (remove) {
            return new Edit.Remove(key);
        }
        if (rename != null) {
            return new Edit.Rename(key, rename);
        }
        return move != null
                ? new Edit.Move(key, move)
                : new Edit.Set(key, edits.text().value(key, words));
    }

    private void checkUsage(List<String> words) {
        List<String> asked = new ArrayList<>();
        ask(asked, add != null, "--add");
        ask(asked, remove, "--remove");
        ask(asked, rename != null, "--rename");
        ask(asked, move != null, "--move");
        ask(asked, undo, "--undo");
        ask(asked, redo, "--redo");
        Optional<String> unknown = words.stream()
                .filter(word -> word.matches("--?[A-Za-z].*"))
                .findFirst()
                .or(() -> Optional.ofNullable(key).filter(word -> word.startsWith("-")));
        if (unknown.isPresent()) {
            throw new ParameterException(spec.commandLine(), "unknown option: '" + unknown.get() + "'");
        }
        if (asked.size() + (words.isEmpty() ? 0 : 1) > 1) {
            String first = words.isEmpty() ? asked.get(1) : "a value";
            throw new ParameterException(
                    spec.commandLine(), asked.get(0) + " and " + first + " do not go together; give one of them");
        }
        boolean isBack = undo || redo;
        if (isBack && key != null) {
            throw new ParameterException(spec.commandLine(), asked.get(0) + " takes no key; it is of the last edit");
        }
        if (!isBack && key == null) {
            throw new ParameterException(
                    spec.commandLine(), "name a key and a value, such as passes.shadow.opacity 70");
        }
        if (asked.isEmpty() && words.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "'" + key + "' needs a value, or --add, --remove, --rename or --move");
        }
    }

    private static void ask(List<String> asked, boolean isAsked, String option) {
        if (isAsked) {
            asked.add(option);
        }
    }

    private void tell(EditResult.Edited edited, SheetFileEdits edits) {
        if (!common.printsForPeople()) {
            return;
        }
        if (dryRun) {
            LineDiff.of(file.toString(), edits.text().text(), edited.text().text(), edited.spans())
                    .forEach(common.out()::println);
            return;
        }
        String word = undo ? "undone: " : redo ? "made again: " : "";
        for (EditResult.Change change : edited.changes()) {
            common.out().println(EditResults.line(file, word, change));
        }
    }
}
