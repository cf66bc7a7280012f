package org.fretgloss.annotator.file;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;

/** The paths of an archive's entries. */
final class EntryPaths {

    private EntryPaths() {}

    /**
     * Refuses a path that leads out of the archive, where a container says that the score lies. An entry of such a name
     * that nobody asks for does no harm: it is never unpacked, and its bytes are carried over as they are.
     */
    static void requireInside(String path) throws ScoreException {
        if (leadsOutside(path)) {
            throw new ScoreException("the archive names a file outside itself, '" + path + "'; export the score again");
        }
    }

    /** Refuses a score's name that two entries bear: some programs take the first of them, others the last. */
    static void requireOneOf(String path, List<ZipArchiveEntry> entries) throws ScoreException {
        if (entries.stream().filter(entry -> nameOf(entry).equals(path)).count() > 1) {
            throw new ScoreException("the archive holds two files of the name '" + path
                    + "', and programs differ in which they take; export the score again");
        }
    }

    /** The first entry whose name leads out of the archive. */
    static Optional<String> firstOutside(List<ZipArchiveEntry> entries) {
        return entries.stream()
                .map(EntryPaths::nameOf)
                .filter(EntryPaths::leadsOutside)
                .findFirst();
    }

    private static boolean leadsOutside(String path) {
        boolean rooted = path.startsWith("/") || path.startsWith("\\") || path.matches("[A-Za-z]:.*");
        return rooted || Arrays.asList(path.split("[/\\\\]")).contains("..");
    }

    /** The place of the entry of that path. Many archives spell names in UTF-8 without saying so. */
    static OptionalInt indexOf(String path, List<ZipArchiveEntry> entries) {
        String wanted = path.startsWith("./") ? path.substring(2) : path;
        return IntStream.range(0, entries.size())
                .filter(i -> entries.get(i).getName().equals(wanted)
                        || nameOf(entries.get(i)).equals(wanted))
                .findFirst();
    }

    /** The place of the one entry that can be a score by its name; none where there are several or none. */
    static OptionalInt onlyScore(List<ZipArchiveEntry> entries) {
        int[] scores = IntStream.range(0, entries.size())
                .filter(i -> isNamedAsScore(nameOf(entries.get(i))))
                .toArray();
        return scores.length == 1 ? OptionalInt.of(scores[0]) : OptionalInt.empty();
    }

    /** What programs and operating systems put beside a score lies in folders of theirs, or is hidden. */
    private static boolean isNamedAsScore(String path) {
        String file = path.substring(path.lastIndexOf('/') + 1);
        return file.toLowerCase(Locale.ROOT).matches("[^.].*\\.(musicxml|xml)")
                && !path.startsWith("META-INF/")
                && !path.startsWith("__MACOSX/");
    }

    /** The entry's name, spelled in UTF-8 as in nearly all archives, whether they say so or not. */
    static String nameOf(ZipArchiveEntry entry) {
        return new String(entry.getRawName(), StandardCharsets.UTF_8);
    }
}
