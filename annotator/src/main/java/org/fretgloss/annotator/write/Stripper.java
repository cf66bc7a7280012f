package org.fretgloss.annotator.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fretgloss.annotator.file.Header;
import org.fretgloss.annotator.file.LyricSite;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.file.Splice;
import org.fretgloss.annotator.file.Splicer;

/**
 * Takes our lines out of a score: our lyrics, our field, and the white space before each. From a file as we wrote it
 * this gives the original back, character by character; a file that another program saved again keeps that program's
 * layout.
 */
public final class Stripper {

    private Stripper() {}

    /**
     * Strips a score's text.
     *
     * @throws ScoreException if the text is no MusicXML score
     */
    public static Stripped strip(String text) throws ScoreException {
        return strip(ScoreScan.of(text));
    }

    /** Strips a text that was scanned already. */
    public static Stripped strip(ScoreScan scan) {
        List<LyricSite> lyrics = scan.ours();
        Optional<FieldContent> content = scan.header().fields().stream()
                .map(Header.Field::text)
                .map(FieldContent::parse)
                .findFirst()
                .flatMap(first -> first);
        List<Splice> splices = new ArrayList<>();
        lyrics.forEach(lyric -> splices.add(withBlankBefore(scan.text(), lyric.start(), lyric.end())));
        splices.addAll(FieldStripper.splices(scan, content));
        return new Stripped(Splicer.apply(scan.text(), splices), lyrics.size(), edits(scan, content));
    }

    private static Stripped.Edits edits(ScoreScan scan, Optional<FieldContent> content) {
        if (!scan.isAnnotated()) {
            return Stripped.Edits.NONE;
        }
        String digest = TextDigest.ofLyrics(scan.ours());
        return content.map(field -> field.digest().equals(digest) ? Stripped.Edits.NONE : Stripped.Edits.SOME)
                .orElse(Stripped.Edits.UNKNOWN);
    }

    static Splice withBlankBefore(String text, int start, int end) {
        return Splice.remove(Spacing.startOfBlank(text, start), end);
    }
}
