package org.fretgloss.annotator.cli;

import java.util.Arrays;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.names.Nearest;
import org.fretgloss.pitch.PitchClass;
import org.fretgloss.pitch.UnknownNameException;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Severity;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Option values in musicians' words, read into music. */
final class Converters {

    private Converters() {}

    /** "A minor pentatonic". */
    static final class OfHome implements ITypeConverter<HomeScale> {
        @Override
        public HomeScale convert(String value) {
            return explained(() -> HomeScale.parse(value));
        }
    }

    /** "A7 | D7 | A7 | %". */
    static final class OfChords implements ITypeConverter<Progression> {
        @Override
        public Progression convert(String value) {
            return explained(() -> Progression.parse(value));
        }
    }

    /** "twelve-bar A": a form's name and a key. */
    static final class OfForm implements ITypeConverter<Progression> {
        @Override
        public Progression convert(String value) {
            String[] words = value.trim().split("\\s+", -1);
            if (words.length != 2) {
                throw new TypeConversionException(
                        "write a form's name and its key as one value, such as \"twelve-bar A\"");
            }
            return explained(() -> Progression.form(words[0], key(words[1])));
        }
    }

    private static PitchClass key(String name) {
        try {
            return PitchClass.parse(name);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("'" + name + "' is no key: write a note name such as A or F♯", e);
        }
    }

    /** "box". */
    static final class OfLine implements ITypeConverter<Line> {

        @Override
        public Line convert(String value) {
            return explained(() -> Line.named(value.trim())
                    .orElseThrow(() -> new UnknownNameException(
                            "a line",
                            value,
                            Arrays.stream(Line.values()).map(Line::toString).toList())));
        }
    }

    /** "warning". */
    static final class OfSeverity implements ITypeConverter<Severity> {
        @Override
        public Severity convert(String value) {
            return explained(() -> Severity.named(value.trim())
                    .orElseThrow(() -> new UnknownNameException(
                            "a severity",
                            value,
                            Arrays.stream(Severity.values())
                                    .map(Severity::toString)
                                    .toList())));
        }
    }

    /** A reading of an option's value. */
    private interface Reading<T> {
        T read();
    }

    private static <T> T explained(Reading<T> reading) {
        try {
            return reading.read();
        } catch (UnknownNameException e) {
            throw new TypeConversionException(e.getMessage() + "; " + Nearest.hint(e.given(), e.known()));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
