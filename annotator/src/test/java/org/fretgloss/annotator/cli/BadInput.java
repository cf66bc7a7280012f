package org.fretgloss.annotator.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files that are no scores, or scores that mean harm. */
final class BadInput {

    private BadInput() {}

    static byte[] deep(int levels) {
        return text("<?xml version=\"1.0\"?><score-partwise>" + "<a>".repeat(levels) + "</a>".repeat(levels)
                + "</score-partwise>");
    }

    /** Each entity ten times the one before. */
    static byte[] entityBomb() {
        StringBuilder subset = new StringBuilder("<!ENTITY a \"aaaaaaaaaa\">");
        for (char c = 'b'; c <= 'l'; c++) {
            subset.append("<!ENTITY ").append(c).append(" \"");
            subset.append(("&" + (char) (c - 1) + ";").repeat(10)).append("\">");
        }
        return text("<?xml version=\"1.0\"?><!DOCTYPE score-partwise [" + subset
                + "]><score-partwise><work><work-title>&l;</work-title></work></score-partwise>");
    }

    static byte[] externalEntity() {
        return text("<?xml version=\"1.0\"?><!DOCTYPE score-partwise [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>"
                + "<score-partwise><work><work-title>&x;</work-title></work></score-partwise>");
    }

    static byte[] withoutNotes() {
        return text("<?xml version=\"1.0\"?><score-partwise><part-list><score-part id=\"P1\"><part-name>Guitar"
                + "</part-name></score-part></part-list><part id=\"P1\"><measure number=\"1\"/></part>"
                + "</score-partwise>");
    }

    static byte[] archiveNaming(String path) throws IOException {
        return archive(Map.of(
                "META-INF/container.xml",
                text("<?xml version=\"1.0\"?><container><rootfiles><rootfile full-path=\"" + path
                        + "\"/></rootfiles></container>")));
    }

    static byte[] archiveWithoutScore() throws IOException {
        return archive(Map.of("readme.txt", text("nothing here")));
    }

    static byte[] zipBomb() throws IOException {
        byte[] blank = new byte[100_000_000];
        java.util.Arrays.fill(blank, (byte) ' ');
        return archive(Map.of(
                "META-INF/container.xml",
                text("<?xml version=\"1.0\"?><container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles>"
                        + "</container>"),
                "score.xml",
                blank));
    }

    static byte[] archive(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
