package org.fretgloss.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/**
 * Letters the phrases of a solo. A phrase that repeats or varies an earlier one keeps its letter with a prime: transposed
 * by semitones or by steps of the home scale, shifted in the bar, or ornamented.
 *
 * <p>A phrase answers the one before it where both are about as long, it takes up the other's rhythm or varies it, and it
 * lands on a degree that rests more. Such a call hangs in the air, and its answer brings it home. What answers is not
 * itself a call.
 */
public final class PhraseNames {

    /** Fewer notes than these are a variant only where they come again as they were, octaves apart. */
    private static final int FEWEST = 3;

    /** Along the scale fewer notes are no pattern: any three in a row would be alike. */
    private static final int FEWEST_ALONG_SCALE = 5;

    /** What likeness along the scale counts for: steps have fewer ways to differ than semitones. */
    private static final double ALONG_SCALE = 0.8;

    /** A phrase that came so many letters ago is forgotten. */
    private static final int MEMORY = 26;

    /** How much of the call's rhythm its answer takes up: nearly all, since any two lines in eighths share most. */
    private static final double TAKEN_UP = 0.95;

    /** An answer is at most this much longer or shorter than its call. */
    private static final Fraction LENGTHS_APART = Fraction.of(3, 2);

    private static final int LETTERS = 26;

    private final Analysis analysis;
    private final double alike;

    /** The first phrase of each letter that is remembered. */
    private final Map<String, Phrase> firsts = new LinkedHashMap<>();

    private int lettersUsed;

    private PhraseNames(Analysis analysis, double alike) {
        this.analysis = analysis;
        this.alike = alike;
    }

    /**
     * Names every phrase, in order.
     *
     * @param alike which share of their notes two phrases have in common, at least, where one is a variant of the other
     */
    public static List<PhraseName> of(Analysis analysis, double alike) {
        return new PhraseNames(analysis, alike).names();
    }

    private List<PhraseName> names() {
        List<PhraseName> names = new ArrayList<>();
        for (int i = 0; i < analysis.phrases().size(); i++) {
            Phrase phrase = analysis.phrases().get(i);
            Optional<String> variantOf = likest(phrase);
            String letter = variantOf.orElseGet(() -> newLetter(phrase));
            Optional<String> answers = Optional.empty();
            if (i > 0
                    && names.get(i - 1).answers().isEmpty()
                    && answers(analysis.phrases().get(i - 1), phrase)) {
                answers = Optional.of(names.get(i - 1).letter());
            }
            names.add(new PhraseName(letter, variantOf.isPresent(), answers));
        }
        return names;
    }

    private String newLetter(Phrase phrase) {
        String letter = letter(lettersUsed++);
        firsts.put(letter, phrase);
        if (firsts.size() > MEMORY) {
            firsts.remove(firsts.keySet().iterator().next());
        }
        return letter;
    }

    /** A to Z, then AA to ZZ and so on. */
    private static String letter(int place) {
        String last = String.valueOf((char) ('A' + place % LETTERS));
        return place < LETTERS ? last : letter(place / LETTERS - 1) + last;
    }

    /** The letter of the phrase that this one is most like, the earliest of several. */
    private Optional<String> likest(Phrase phrase) {
        Optional<String> likest = Optional.empty();
        double most = 0;
        for (Map.Entry<String, Phrase> first : firsts.entrySet()) {
            double share = likeness(first.getValue(), phrase);
            if (share >= alike && share > most) {
                likest = Optional.of(first.getKey());
                most = share;
            }
        }
        return likest;
    }

    /** Which share of their notes two phrases have in common, 0 to 1; 0 where it is too few to tell. */
    private double likeness(Phrase earlier, Phrase later) {
        List<Note> model = pitched(earlier);
        List<Note> notes = pitched(later);
        int fewest = Math.min(model.size(), notes.size());
        Likeness bySemitones = Likeness.of(model, notes, Note::heardMidi);
        if (fewest < FEWEST) {
            boolean comesAgain = bySemitones.share() == 1 && bySemitones.steps() % 12 == 0;
            return comesAgain ? 1 : 0;
        }
        if (fewest < FEWEST_ALONG_SCALE || !analysis.homes().isSame(earlier.first(), later.first())) {
            return bySemitones.share();
        }
        ScaleSteps steps = new ScaleSteps(analysis.homeAt(later.first()).scale());
        Likeness bySteps = Likeness.of(model, notes, note -> steps.of(note.heardMidi()));
        return Math.max(bySemitones.share(), ALONG_SCALE * bySteps.share());
    }

    private boolean answers(Phrase call, Phrase phrase) {
        List<Note> called = pitched(call);
        List<Note> notes = pitched(phrase);
        return Math.min(called.size(), notes.size()) >= FEWEST
                && analysis.homes().isSame(call.first(), phrase.first())
                && isAboutAsLong(length(call), length(phrase))
                && landsMoreAtRest(call, phrase)
                && (Likeness.ofRhythm(called, notes).share() >= TAKEN_UP || likeness(call, phrase) >= alike);
    }

    private static boolean isAboutAsLong(Fraction one, Fraction other) {
        return !one.max(other).isMoreThan(one.min(other).times(LENGTHS_APART));
    }

    private boolean landsMoreAtRest(Phrase call, Phrase phrase) {
        int rest = Landing.of(analysis, phrase).map(Landing::rest).orElse(0);
        return rest > Landing.of(analysis, call).map(Landing::rest).orElse(rest);
    }

    private static Fraction length(Phrase phrase) {
        Fraction end = phrase.notes().stream().map(Note::end).reduce(Fraction.ZERO, Fraction::max);
        return end.minus(phrase.first().onset());
    }

    private static List<Note> pitched(Phrase phrase) {
        return phrase.notes().stream().filter(Note::isPitched).toList();
    }
}
