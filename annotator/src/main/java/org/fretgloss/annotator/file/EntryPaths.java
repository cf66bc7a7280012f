package org.fretgloss.annotator.file;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;

/** The paths of an archive's entries. */
final class EntryPaths {

    private EntryPaths() {}

    /** Refuses a path that leads out of the archive. */
    static void requireInside(String path) throws ScoreException {
        boolean rooted = path.startsWith("/") || path.startsWith("\\") || path.matches("[A-Za-z]:.*");
        if (rooted || Arrays.asList(path.split("[/\\\\]")).contains("..")) {
            throw new ScoreException("the archive names a file outside itself, '" + path + "'; export the score again");
        }
    }

    /** The place of the entry of that path. Many archives spell names in UTF-8 without saying so. */
    static OptionalInt indexOf(String path, List<ZipArchiveEntry> entries) {
        String wanted = path.startsWith("./") ? path.substring(2) : path;
        return IntStream.range(0, entries.size())
                .filter(i -> entries.get(i).getName().equals(wanted)
                        || new String(entries.get(i).getRawName(), StandardCharsets.UTF_8).equals(wanted))
                .findFirst();
    }
}
