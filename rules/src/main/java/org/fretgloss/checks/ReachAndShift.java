package org.fretgloss.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;
import org.fretgloss.solo.Tempo;
import org.fretgloss.time.Fraction;

/** A stretch that no hand spans at its part of the neck, or a move faster than a hand moves. */
final class ReachAndShift implements Rule {

    private static final Option<Integer> SCALE_LENGTH =
            Option.ofInt("scale-length", 648, 300, 900, "length of the open string, in millimetres");

    private static final Option<Integer> SPAN = Option.ofInt(
            "span", 130, 60, 250, "widest stretch from first to fourth finger, in millimetres along the string");

    private static final Option<Integer> SPEED =
            Option.ofInt("speed", 1000, 300, 5000, "fastest move of the hand along the neck, in millimetres a second");

    private static final int SECONDS_A_MINUTE = 60;

    @Override
    public Line line() {
        return Line.DOUBTS;
    }

    @Override
    public boolean needsFrets() {
        return true;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(SCALE_LENGTH, SPAN, SPEED);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        FretDistance neck = new FretDistance(settings.get(SCALE_LENGTH));
        List<List<Note>> hands = Hands.of(analysis.solo());
        Stream.Builder<Finding> findings = Stream.builder();
        for (int i = 0; i < hands.size(); i++) {
            stretch(hands.get(i), neck, settings.get(SPAN)).ifPresent(findings::add);
            if (i > 0) {
                shift(analysis.solo(), hands.get(i - 1), hands.get(i), neck, settings)
                        .ifPresent(findings::add);
            }
        }
        return findings.build();
    }

    private static Optional<Finding> stretch(List<Note> hand, FretDistance neck, int span) {
        Comparator<Note> byFret = Comparator.comparingInt(ReachAndShift::fret);
        Note low = hand.stream().min(byFret).orElseThrow();
        Note high = hand.stream().max(byFret).orElseThrow();
        double millimetres = neck.between(fret(low), fret(high));
        if (millimetres <= span) {
            return Optional.empty();
        }
        return Optional.of(Finding.at(hand.get(0))
                .to(hand.get(hand.size() - 1))
                .doubt(Severity.WARNING)
                .explain("From fret %d to fret %d the hand would span %d mm, and %d mm is a wide stretch already."
                        .formatted(fret(low), fret(high), Math.round(millimetres), span))
                .value("millimetres", (int) Math.round(millimetres))
                .build());
    }

    private static Optional<Finding> shift(
            Solo solo, List<Note> from, List<Note> to, FretDistance neck, Settings settings) {
        Note left = from.get(0);
        Note reached = to.get(0);
        Optional<Tempo> tempo = tempoAt(solo, left.onset());
        if (tempo.isEmpty() || reached.attack() == Attack.SLID) {
            return Optional.empty();
        }
        double way = neck.between(fret(left), fret(reached)) - settings.get(SPAN);
        double quarters = reached.onset().minus(left.onset()).toDouble();
        double seconds = quarters * SECONDS_A_MINUTE / tempo.get().quartersPerMinute();
        if (way <= settings.get(SPEED) * seconds) {
            return Optional.empty();
        }
        return Optional.of(Finding.at(reached)
                .doubt(Severity.WARNING)
                .explain("From fret %d to fret %d in %.2f s at this tempo: no hand moves so fast."
                        .formatted(fret(left), fret(reached), seconds))
                .value("frets", fret(reached) - fret(left))
                .build());
    }

    private static Optional<Tempo> tempoAt(Solo solo, Fraction moment) {
        return solo.tempos().stream()
                .filter(tempo -> !tempo.onset().isMoreThan(moment))
                .reduce((earlier, later) -> later);
    }

    private static int fret(Note note) {
        return note.at().map(StringFret::fret).orElseThrow();
    }

    /** What the fretting hand holds at each moment. */
    private static final class Hands {

        private Hands() {}

        /** The fretted notes struck together, moment by moment; open strings, taps and harmonics need no fretting hand. */
        static List<List<Note>> of(Solo solo) {
            List<List<Note>> hands = new ArrayList<>();
            for (Note note : solo.notes()) {
                if (isFretted(note)) {
                    boolean together = !hands.isEmpty()
                            && hands.get(hands.size() - 1).get(0).onset().equals(note.onset());
                    if (!together) {
                        hands.add(new ArrayList<>());
                    }
                    hands.get(hands.size() - 1).add(note);
                }
            }
            return hands;
        }

        private static boolean isFretted(Note note) {
            return note.isPitched()
                    && note.at().filter(at -> !at.isOpen()).isPresent()
                    && note.attack() != Attack.TAPPED
                    && !note.has(Technique.HARMONIC);
        }
    }
}
