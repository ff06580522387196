package org.adumbrate.linework.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.read.PdfSketch;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What some programs write and every viewer shows, though no line is meant by it. */
class PdfOddityTest {
    @TempDir
    Path folder;

    @Test
    void aCompressedStreamOfNoBytes() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            COSStream empty = sketch.document().getDocument().createCOSStream();
            try (OutputStream out = empty.createRawOutputStream()) {
                out.flush();
            }
            empty.setItem(COSName.FILTER, COSName.FLATE_DECODE);
            sketch.draws("0 0 m 9 9 l S");
            COSBase drawn = sketch.page().getCOSObject().getDictionaryObject(COSName.CONTENTS);
            COSArray both = new COSArray();
            both.add(empty);
            both.add(drawn);
            sketch.page().getCOSObject().setItem(COSName.CONTENTS, both);
            assertThat(sketch.read(folder).strokes()).hasSize(1);
        }
    }

    @Test
    void aMarkWhoseTagIsNoName() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            sketch.draws("123 /oc1 BDC 0 0 m 9 9 l S EMC");
            assertThat(sketch.read(folder).strokes()).hasSize(1);
        }
    }

    @Test
    void aFileForTheOwnersOfCertificates() throws IOException {
        String head = "%PDF-1.6\n1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n"
                + "2 0 obj\n<< /Type /Pages /Kids [] /Count 0 >>\nendobj\n"
                + "3 0 obj\n<< /Filter /Adobe.PubSec /SubFilter /adbe.pkcs7.s5 /V 4 /Length 128"
                + " /CF << /DefaultCryptFilter << /CFM /AESV2 /Recipients [<00>] >> >>"
                + " /StmF /DefaultCryptFilter /StrF /DefaultCryptFilter >>\nendobj\n";
        StringBuilder table = new StringBuilder("xref\n0 4\n0000000000 65535 f \n");
        for (int k = 1; k < 4; k++) {
            table.append(String.format("%010d 00000 n \n", head.indexOf(k + " 0 obj")));
        }
        String tail = "trailer\n<< /Size 4 /Root 1 0 R /Encrypt 3 0 R /ID [<00> <00>] >>\nstartxref\n" + head.length()
                + "\n%%EOF\n";
        Path file = Files.writeString(folder.resolve("lines.pdf"), head + table + tail, StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> LineSheets.read(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is encrypted and needs a certificate; export it without encryption");
    }
}
