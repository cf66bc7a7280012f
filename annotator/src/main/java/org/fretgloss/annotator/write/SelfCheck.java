package org.fretgloss.annotator.write;

import java.util.Arrays;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.file.TextPlace;

/**
 * The last look before a score is written: the output, stripped, must be the input. What fails here is a mistake of
 * this program, and the file is refused rather than damaged.
 */
public final class SelfCheck {

    private SelfCheck() {}

    /**
     * Checks an output against its input, byte by byte, in a compressed score the other entries too.
     *
     * @param source the input
     * @param plain the input's text without anything of ours
     * @param output the bytes about to be written
     * @throws SelfCheckException if the output, stripped, is not the input
     */
    public static void verify(ScoreFile source, String plain, byte[] output) {
        ScoreFile written;
        try {
            written = ScoreFile.of(source.name(), output);
        } catch (ScoreException e) {
            throw new SelfCheckException("the output cannot be read back: " + e.getMessage(), e);
        }
        verify(plain, written.text());
        if (!Arrays.equals(source.withText(plain), written.withText(plain))) {
            throw new SelfCheckException("the output differs from the input outside the score's text");
        }
    }

    /**
     * Checks an annotated text against the text without anything of ours.
     *
     * @throws SelfCheckException if the annotated text, stripped, is another
     */
    public static void verify(String plain, String annotated) {
        String stripped;
        try {
            stripped = Stripper.strip(annotated).text();
        } catch (ScoreException e) {
            throw new SelfCheckException("the output cannot be read back: " + e.getMessage(), e);
        }
        if (!stripped.equals(plain)) {
            int difference = Arrays.mismatch(stripped.toCharArray(), plain.toCharArray());
            throw new SelfCheckException("without our lines the output differs from the input from "
                    + TextPlace.at(plain, Math.min(difference, plain.length())) + " of the score on");
        }
    }
}
