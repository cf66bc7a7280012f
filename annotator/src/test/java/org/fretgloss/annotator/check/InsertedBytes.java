package org.fretgloss.annotator.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Holds an annotated file against its original, byte by byte and knowing nothing of how the tool decodes, encodes or
 * strips. In an archive one entry may differ, and that one only by elements of ours.
 */
final class InsertedBytes {

    private InsertedBytes() {}

    /**
     * Makes sure that nothing was done but to insert elements of ours.
     *
     * @throws AssertionError if anything else differs
     */
    static void check(String name, byte[] original, byte[] annotated) {
        if (original[0] != 'P' || original[1] != 'K') {
            checkText(name, original, annotated);
            return;
        }
        Map<String, byte[]> before = entries(original);
        Map<String, byte[]> after = entries(annotated);
        assertThat(List.copyOf(after.keySet())).as(name).isEqualTo(List.copyOf(before.keySet()));
        List<String> changed = before.keySet().stream()
                .filter(entry -> !Arrays.equals(before.get(entry), after.get(entry)))
                .toList();
        assertThat(changed).as(name).hasSizeLessThanOrEqualTo(1);
        changed.forEach(
                entry -> checkText(name, before.getOrDefault(entry, original), after.getOrDefault(entry, annotated)));
    }

    private static void checkText(String name, byte[] original, byte[] annotated) {
        Charset units = units(original);
        try {
            InsertedElements.between(letters(original, units), letters(annotated, units));
        } catch (AssertionError e) {
            throw new AssertionError(name + ": " + e.getMessage(), e);
        }
    }

    private static String letters(byte[] bytes, Charset units) {
        String letters = new String(bytes, units);
        assertThat(letters.getBytes(units)).isEqualTo(bytes);
        return letters;
    }

    /** A letter for each byte, whatever it means; or for two, where markup takes two. */
    private static Charset units(byte[] score) {
        int first = ((score[0] & 0xff) << 8) | (score[1] & 0xff);
        return switch (first) {
            case 0xfffe, '<' << 8 -> StandardCharsets.UTF_16LE;
            case 0xfeff, '<' -> StandardCharsets.UTF_16BE;
            default -> StandardCharsets.ISO_8859_1;
        };
    }

    private static Map<String, byte[]> entries(byte[] archive) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return entries;
    }
}
