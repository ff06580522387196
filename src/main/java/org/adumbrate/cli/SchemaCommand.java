package org.adumbrate.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.adumbrate.fault.Refusal;
import org.adumbrate.output.FileClaims;
import org.adumbrate.sheetfile.schema.SheetSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints the schema of the sheet file. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Print the JSON Schema of the sheet file, from which editors complete and check it.",
        footer = {"", "Example:", "  adumbrate schema > sheet.schema.json"})
final class SchemaCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Override
    public Integer call() throws IOException, Refusal {
        common.guard(new FileClaims());
        if (!common.asksForJson()) {
            common.out().print(SheetSchema.text());
            common.out().flush();
        }
        common.writeJsonText(SheetSchema.text().stripTrailing());
        return ExitCode.DONE;
    }
}
