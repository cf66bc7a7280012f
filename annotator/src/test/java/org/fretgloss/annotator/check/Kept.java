package org.fretgloss.annotator.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.write.MusicXmlSchema;

/**
 * What must hold of every score that is annotated: stripping gives its bytes back, annotating twice is annotating once,
 * elements of ours are inserted and no other byte is touched, and a valid score stays valid.
 *
 * @param hasLines whether it got any lines
 * @param isValid whether it is valid MusicXML 4.0, before and after
 */
public record Kept(boolean hasLines, boolean isValid) {

    /**
     * Annotates a score and looks at what became of it.
     *
     * @param name what the score is called where something does not hold
     * @throws ScoreException if it is refused
     * @throws AssertionError if something does not hold
     */
    public static Kept check(Fretgloss fretgloss, String name, byte[] bytes) throws ScoreException {
        return check(fretgloss, name, bytes, Request.PLAIN);
    }

    /** The same for what the user may ask of the score. */
    public static Kept check(Fretgloss fretgloss, String name, byte[] bytes, Request request) throws ScoreException {
        ScoreFile original = ScoreFile.of(name, bytes);
        Annotated once = fretgloss.annotate(original, request);
        ScoreFile written = ScoreFile.of(name, once.bytes());

        assertThat(once.failures()).as(name).isEmpty();
        assertThat(Fretgloss.strip(written).bytes())
                .as(name + ", annotated and stripped")
                .isEqualTo(bytes);
        assertThat(fretgloss.annotate(written, request).bytes())
                .as(name + ", annotated twice")
                .isEqualTo(once.bytes());
        InsertedBytes.check(name, bytes, once.bytes());
        boolean valid = MusicXmlSchema.complaint(original.text()).isEmpty();
        if (valid) {
            assertThat(MusicXmlSchema.complaint(written.text()))
                    .as(name + ", which was valid")
                    .isEmpty();
        }
        return new Kept(written.text().length() > original.text().length(), valid);
    }
}
