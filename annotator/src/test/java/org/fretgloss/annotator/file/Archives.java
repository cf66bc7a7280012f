package org.fretgloss.annotator.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Compressed scores for tests, made by the JDK's own zip writer. */
public final class Archives {

    public static final String CONTAINER = "META-INF/container.xml";

    /** When all entries were made, so that the same content gives the same bytes. */
    public static final long TIME = 1_000_000_000_000L;

    private Archives() {}

    /** A compressed score as the MusicXML reference describes it, with a picture besides. */
    public static byte[] mxl(String score, boolean stored) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("mimetype", utf8("application/vnd.recordare.musicxml"));
        entries.put(CONTAINER, utf8(container("song.musicxml")));
        entries.put("song.musicxml", utf8(score));
        entries.put("cover.png", new byte[] {1, 2, 3, 4, 5});
        return zip(entries, stored);
    }

    /** A container that names root files in order, none with a media type. */
    public static String container(String... paths) {
        StringBuilder rootFiles = new StringBuilder();
        for (String path : paths) {
            rootFiles.append("<rootfile full-path=\"").append(path).append("\"/>");
        }
        return "<?xml version=\"1.0\"?><container><rootfiles>" + rootFiles + "</rootfiles></container>";
    }

    public static byte[] zip(Map<String, byte[]> entries, boolean stored) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(entryOf(entry.getKey(), entry.getValue(), stored));
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static ZipEntry entryOf(String name, byte[] content, boolean stored) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(TIME);
        if (stored) {
            CRC32 crc = new CRC32();
            crc.update(content);
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(content.length);
            entry.setCrc(crc.getValue());
        }
        return entry;
    }

    public static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
