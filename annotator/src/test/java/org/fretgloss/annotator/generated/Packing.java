package org.fretgloss.annotator.generated;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.fretgloss.annotator.file.Archives;

/**
 * One of the ways in which a score's text becomes a file.
 *
 * @param declared the encoding that the file says it has; empty where it says none
 * @param charset the encoding that it has
 * @param marked whether a byte order mark stands in front
 * @param archive how it is compressed
 */
public record Packing(String declared, Charset charset, boolean marked, Archive archive) {

    /** Plain, or an archive of some kind. */
    public enum Archive {
        PLAIN,
        STORED,
        FAST,
        USUAL,
        TIGHT,
        SEVERAL_ROOT_FILES,
        WITHOUT_CONTAINER
    }

    /** The same text in another container. */
    Packing in(Archive other) {
        return new Packing(declared, charset, marked, other);
    }

    private record Spelling(String declared, String charset, boolean marked) {}

    private static final List<Archive> ARCHIVES = List.of(Archive.values());

    private static final List<Spelling> SPELLINGS = List.of(
            new Spelling("UTF-8", "UTF-8", false),
            new Spelling("", "UTF-8", false),
            new Spelling("UTF-8", "UTF-8", true),
            new Spelling("UTF-16", "UTF-16LE", true),
            new Spelling("UTF-16", "UTF-16LE", false),
            new Spelling("UTF-16", "UTF-16BE", true),
            new Spelling("", "UTF-16BE", false),
            new Spelling("ISO-8859-1", "ISO-8859-1", false),
            new Spelling("windows-1252", "windows-1252", false),
            new Spelling("US-ASCII", "US-ASCII", false),
            new Spelling("UTF-8", "ISO-8859-1", false),
            new Spelling("ISO-8859-1", "UTF-8", false),
            new Spelling("UTF-16", "UTF-8", false));

    /** The packing of a seed; neighbouring seeds go through all encodings, then through all archives. */
    public static Packing of(long seed) {
        Spelling spelling = SPELLINGS.get((int) (seed % SPELLINGS.size()));
        Archive archive = ARCHIVES.get((int) (seed / SPELLINGS.size() % ARCHIVES.size()));
        return new Packing(spelling.declared(), Charset.forName(spelling.charset()), spelling.marked(), archive);
    }

    /** The file. Letters that the encoding lacks are replaced by others. */
    public byte[] pack(String text, long seed) {
        String declaration = declared.isEmpty() ? "" : " encoding=\"" + declared + "\"";
        String held = text.replaceFirst("^<\\?xml [^>]*\\?>", "<?xml version=\"1.0\"" + declaration + "?>");
        if (!charset.newEncoder().canEncode("\uD834\uDD1E")) {
            held = held.replace("\uD834\uDD1E", "e").replace("&#119070;", "e");
        }
        if (!charset.newEncoder().canEncode("\u00E9")) {
            held = held.replace("\u00E9", "e");
        }
        byte[] score = ((marked ? "\uFEFF" : "") + held).getBytes(charset);
        return archive == Archive.PLAIN ? score : zipped(score, new SplittableRandom(seed));
    }

    private byte[] zipped(byte[] score, RandomGenerator random) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        if (random.nextBoolean()) {
            entries.put("mimetype", Archives.utf8("application/vnd.recordare.musicxml"));
        }
        switch (archive) {
            case WITHOUT_CONTAINER -> {
                // The score's name alone tells it.
            }
            case SEVERAL_ROOT_FILES -> {
                entries.put(Archives.CONTAINER, Archives.utf8(Archives.container("s\u00E9.xml", "other.xml")));
                entries.put("other.xml", Archives.utf8("<score-partwise/>"));
            }
            default -> entries.put(Archives.CONTAINER, Archives.utf8(Archives.container("s\u00E9.xml")));
        }
        entries.put("s\u00E9.xml", score);
        if (random.nextBoolean()) {
            entries.put("pictures/cover.png", new byte[] {1, 2, 3, 4, 5});
        }
        try {
            return archive == Archive.STORED ? Archives.zip(entries, true) : deflated(entries);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] deflated(Map<String, byte[]> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(
                    archive == Archive.FAST
                            ? Deflater.BEST_SPEED
                            : archive == Archive.TIGHT ? Deflater.BEST_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                ZipEntry header = new ZipEntry(entry.getKey());
                header.setTime(Archives.TIME);
                zip.putNextEntry(header);
                zip.write(entry.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
