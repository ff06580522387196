package org.adumbrate.sheetfile.schema;

import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.form.Forms;
import org.adumbrate.sheetfile.form.SchemaJson;

/** The sheet file as a JSON Schema, so that editors complete and check it while it is written. */
public final class SheetSchema {
    private SheetSchema() {}

    /**
     * The schema, draft 2020-12, made of the records that the reader fills. It cannot say whether files exist, whether a
     * number with its unit written out is in range, or whether two keys agree; the reader checks these.
     */
    public static String text() {
        Map<String, Object> schema = SchemaJson.object(
                "$schema", "https://json-schema.org/draft/2020-12/schema",
                "title", "Adumbrate sheet file",
                "description", "One sheet: the exports it is made from, how it is drawn, and the files to make.");
        Map<String, Object> shared = new TreeMap<>();
        schema.putAll(Forms.of(Sheet.class).schema(shared));
        schema.put("$defs", shared);
        return SchemaJson.text(schema) + "\n";
    }
}
