package org.fretgloss.rule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Something a rule found: where, what it is called in the score, and why.
 *
 * <p>Made with {@link #at}: {@code Finding.at(note).text("full 4→5").explain("...").build()}.
 *
 * @param note the note it begins on
 * @param lastNote the note it ends on; the same note for a single one
 * @param text the short text for the score, with ♭ ♯ →; none where the rule writes nothing for this one
 * @param explanation a sentence or two for the teacher
 * @param confidence how sure the rule is, 0 to 1
 * @param absorbs findings whose texts this one makes superfluous
 * @param doubt for a finding of proof-reading its severity and suggestion; none for a mark
 * @param values the particulars, by name, in the order given; whole numbers, fractions, strings, booleans and lists of
 *     strings
 */
public record Finding(
        Note note,
        Note lastNote,
        Optional<String> text,
        String explanation,
        double confidence,
        List<Absorbed> absorbs,
        Optional<Doubt> doubt,
        Map<String, Object> values) {

    /**
     * A finding of another rule, told by its rule and the note it begins on.
     *
     * @param rule the other rule's id
     * @param note the note the other finding begins on
     */
    public record Absorbed(String rule, Note note) {}

    public Finding {
        absorbs = List.copyOf(absorbs);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        if (!(confidence >= 0 && confidence <= 1)) {
            throw new IllegalArgumentException("confidence is 0 to 1, not " + confidence);
        }
    }

    public static Builder at(Note note) {
        return new Builder(note);
    }

    /** Collects a finding's parts; the explanation must be given. */
    public static final class Builder {

        private final Note note;
        private Note lastNote;
        private Optional<String> text = Optional.empty();
        private Optional<String> explanation = Optional.empty();
        private double confidence = 1;
        private final List<Absorbed> absorbs = new java.util.ArrayList<>();
        private Optional<Doubt> doubt = Optional.empty();
        private final Map<String, Object> values = new LinkedHashMap<>();

        private Builder(Note note) {
            this.note = note;
            this.lastNote = note;
        }

        public Builder to(Note last) {
            this.lastNote = last;
            return this;
        }

        public Builder text(String shortText) {
            this.text = Optional.of(shortText);
            return this;
        }

        /** Takes the text away: the finding stays in the data and is not written. */
        public Builder unwritten() {
            this.text = Optional.empty();
            return this;
        }

        public Builder explain(String sentence) {
            this.explanation = Optional.of(sentence);
            return this;
        }

        public Builder confidence(double zeroToOne) {
            this.confidence = zeroToOne;
            return this;
        }

        public Builder absorbing(String rule, Note beginsOn) {
            absorbs.add(new Absorbed(rule, beginsOn));
            return this;
        }

        /** Makes it a doubt; its line shows "?". */
        public Builder doubt(Severity severity) {
            this.doubt = Optional.of(new Doubt(severity, Optional.empty()));
            return text("?");
        }

        /** Makes it a doubt with what was probably meant; its line shows "? 2/8" where that is another place. */
        public Builder doubt(Severity severity, Suggestion meant) {
            this.doubt = Optional.of(new Doubt(severity, Optional.of(meant)));
            return text(meant.at().map(at -> "? " + at).orElse("?"));
        }

        public Builder value(String name, int number) {
            return put(name, number);
        }

        public Builder value(String name, double number) {
            return put(name, number);
        }

        public Builder value(String name, boolean flag) {
            return put(name, flag);
        }

        public Builder value(String name, Fraction exact) {
            return put(name, exact);
        }

        public Builder value(String name, String word) {
            return put(name, word);
        }

        public Builder value(String name, Degree degree) {
            return put(name, degree.toString());
        }

        public Builder value(String name, Pitch pitch) {
            return put(name, pitch.toString());
        }

        public Builder value(String name, List<String> words) {
            return put(name, List.copyOf(words));
        }

        public Builder value(String name, OptionalInt number) {
            number.ifPresent(present -> put(name, present));
            return this;
        }

        private Builder put(String name, Object value) {
            values.put(name, value);
            return this;
        }

        /**
         * The finding.
         *
         * @throws IllegalStateException if the explanation is missing
         */
        public Finding build() {
            return new Finding(
                    note,
                    lastNote,
                    text,
                    explanation.orElseThrow(() -> new IllegalStateException("a finding is explained")),
                    confidence,
                    absorbs,
                    doubt,
                    values);
        }
    }
}
