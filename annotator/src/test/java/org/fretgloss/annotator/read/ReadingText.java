package org.fretgloss.annotator.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fretgloss.analysis.ChordSpan;
import org.fretgloss.neck.StringFret;
import org.fretgloss.pitch.ChordSymbol;
import org.fretgloss.pitch.Pitch;
import org.fretgloss.solo.Attack;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.ChordMark;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.solo.Technique;
import org.fretgloss.time.Fraction;
import org.fretgloss.time.Glyphs;

/** A solo as a person would write its reading down, a line for each note. {@code fixtures/reading} tells the form. */
final class ReadingText {

    private ReadingText() {}

    static List<String> of(Reading reading) {
        List<String> lines = of(reading.solo());
        List<String> backing = reading.backing().parts();
        if (!backing.isEmpty()) {
            lines.add("accompanied by " + String.join(", ", backing));
        }
        for (ChordSpan span :
                reading.backing().notes().infer(reading.solo().bars()).spans()) {
            lines.add("inferred " + at(reading.solo(), span.start())
                    + span.chord().map(ChordSymbol::toString).orElse("none"));
        }
        return lines;
    }

    private static List<String> of(Solo solo) {
        List<String> lines = new ArrayList<>();
        lines.add("part " + solo.part().id() + " " + solo.part().name());
        lines.add("tuning "
                + solo.tuning().strings().stream().map(Pitch::toString).collect(Collectors.joining(" ")));
        lines.add("capo " + solo.tuning().capo());
        solo.chords().forEach(mark -> lines.add(chord(solo, mark)));
        Optional<Bar> current = Optional.empty();
        for (Note note : solo.notes()) {
            if (current.isEmpty() || !current.get().equals(note.bar())) {
                current = Optional.of(note.bar());
                lines.add(bar(note.bar()));
            }
            lines.add(note(note));
        }
        return lines;
    }

    private static String chord(Solo solo, ChordMark mark) {
        return "chord " + at(solo, mark.onset())
                + mark.chord().map(ChordSymbol::toString).orElse("none");
    }

    private static String at(Solo solo, Fraction moment) {
        Bar bar = solo.barAt(moment);
        return "bar " + bar.number() + " beat " + Glyphs.of(bar.beatAt(moment)) + ": ";
    }

    private static String bar(Bar bar) {
        return "bar " + bar.number() + (bar.isFull() ? "" : " lasts " + bar.length());
    }

    private static String note(Note note) {
        List<String> words = new ArrayList<>();
        words.add(Glyphs.of(note.beat()));
        words.add(note.at().map(StringFret::toString).orElse("-"));
        words.add(note.pitch().toString());
        words.add(note.duration().toString());
        if (note.grace()) {
            words.add("grace");
        }
        if (note.attack() != Attack.PICKED) {
            words.add(kebab(note.attack()));
        }
        note.bend().ifPresent(bend -> words.add("bend " + heights(bend)));
        for (Technique technique : Technique.values()) {
            if (note.has(technique)) {
                words.add(kebab(technique));
            }
        }
        if (note.written().tieOpen()) {
            words.add("tie-open");
        }
        return String.join(" ", words);
    }

    private static String heights(Bend bend) {
        return bend.heights().stream().map(Fraction::toString).collect(Collectors.joining(" "));
    }

    private static String kebab(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
