package org.fretgloss.marks;

import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Landing;
import org.fretgloss.analysis.Phrase;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Degree;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.solo.Note;
import org.fretgloss.time.Fraction;

/** The note on which a phrase comes to rest, named against the chord of the moment. */
final class LandingRule implements Rule {

    private static final Option<Fraction> LEAST = Option.ofFraction(
            "least", Fraction.ZERO, Fraction.ZERO, Fraction.of(8), "shortest last note that is marked, in beats");

    private static final double SURE_BEFORE_BREATH = 0.9;
    private static final double SURE_WITHOUT_BREATH = 0.6;

    @Override
    public Line line() {
        return Line.PHRASES;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(LEAST);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        Fraction least = settings.get(LEAST);
        Stream.Builder<Finding> findings = Stream.builder();
        List<Phrase> phrases = analysis.phrases();
        for (int i = 0; i < phrases.size(); i++) {
            boolean beforeBreath = i + 1 == phrases.size() || phrases.get(i + 1).afterBreath();
            Landing.of(analysis, phrases.get(i))
                    .filter(landing -> !beats(landing.note()).isLessThan(least))
                    .map(landing -> found(analysis, landing, beforeBreath))
                    .ifPresent(findings::add);
        }
        return findings.build();
    }

    private static Fraction beats(Note note) {
        return note.duration().dividedBy(note.bar().meter().beatLength());
    }

    private static Finding found(Analysis analysis, Landing landing, boolean beforeBreath) {
        Finding.Builder finding = Finding.at(landing.note())
                .text("→ " + against(landing))
                .explain(explanation(analysis, landing))
                .confidence(beforeBreath ? SURE_BEFORE_BREATH : SURE_WITHOUT_BREATH)
                .value("degree", landing.degree());
        landing.chord().ifPresent(chord -> finding.value("chord", chord.name()));
        landing.chordDegree().ifPresent(degree -> finding.value("chordDegree", degree));
        return finding.build();
    }

    /** "1 of D7"; without a chord the home's degree, "1". */
    private static String against(Landing landing) {
        return landing.chordDegree().orElse(landing.degree())
                + landing.chord().map(chord -> " of " + chord.name()).orElse("");
    }

    private static String explanation(Analysis analysis, Landing landing) {
        Note note = landing.note();
        Pitch pitch = analysis.homeAt(note).spell(note.endMidi());
        String inChord = landing.chord()
                .map(chord -> ", the " + against(landing) + " and")
                .orElse(",");
        return Places.onNeck(analysis, note) + "the phrase lands on " + pitch + inChord + " the " + landing.degree()
                + " of the home " + analysis.homeAt(note).scale() + "." + change(landing);
    }

    /** Why the landing is heard as an arrival, where the chord has just changed under it. */
    private static String change(Landing landing) {
        if (!landing.tellsChange()) {
            return "";
        }
        Degree degree = landing.chordDegree().orElseThrow();
        ChordSymbol before = landing.chordBefore().orElseThrow();
        return " The chord has just changed from " + before.name() + ", and the " + degree
                + " of the new one makes the change heard.";
    }
}
