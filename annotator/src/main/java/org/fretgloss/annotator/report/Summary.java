package org.fretgloss.annotator.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fretgloss.analysis.AddedNote;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Harmony;
import org.fretgloss.analysis.Home;
import org.fretgloss.analysis.HomeSection;
import org.fretgloss.analysis.SilenceShare;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.rule.Gloss;
import org.fretgloss.solo.Note;

/** What the user reads after a score was annotated: home, chords, counts, climax, silence, and what to know. */
public final class Summary {

    private static final int CHORDS_NAMED = 12;

    private Summary() {}

    /** One line each, without line ends. */
    public static List<String> of(Annotated annotated) {
        Analysis analysis = annotated.analysis();
        List<String> lines = new ArrayList<>();
        homes(analysis).forEach(lines::add);
        lines.add("chords: " + chords(analysis));
        lines.add("found: " + counts(annotated.glosses()));
        analysis.climax()
                .ifPresent(climax -> lines.add("climax: " + climax.bars() + " bars from bar "
                        + climax.bar().number()));
        double silence = SilenceShare.of(analysis.solo(), analysis.silences()).toDouble();
        lines.add("silence: " + Math.round(100 * silence) + " % of the solo");
        return lines.stream().map(PlainText::of).toList();
    }

    /** A line for each home; from the second on it says where the home begins. */
    private static List<String> homes(Analysis analysis) {
        List<String> lines = new ArrayList<>();
        for (HomeSection section : analysis.homes().sections()) {
            List<Note> notes = analysis.homes().notesOf(section, analysis.solo());
            String from = lines.isEmpty() ? "" : "from " + analysis.placeOf(notes.get(0)) + " ";
            lines.add("home: " + from + home(section.home(), notes));
        }
        return lines;
    }

    private static String home(Home home, List<Note> notes) {
        String added =
                home.added().stream().map(note -> added(note, home, notes)).collect(Collectors.joining("; "));
        String sure = home.runnerUp()
                .map(next -> " (" + sureness(home.confidence()) + "; next likely: " + next + ")")
                .orElse(" (as you said)");
        return home.scale() + (added.isEmpty() ? "" : ", plus " + added) + sure;
    }

    private static String sureness(double confidence) {
        return Math.round(100 * confidence) + " % sure";
    }

    /** "C♯ (3): 9 times, 7 of them bent from C". */
    private static String added(AddedNote note, Home home, List<Note> notes) {
        String times = note.count() == 1 ? "once" : note.count() + " times";
        String bent = note.bent() == 0
                ? ""
                : note.count() == note.bent()
                        ? ", bent" + origin(note, home, notes)
                        : ", " + note.bent() + " of them bent" + origin(note, home, notes);
        return note.pitch() + " (" + note.degree() + "): " + times + bent;
    }

    private static String origin(AddedNote added, Home home, List<Note> notes) {
        Set<String> origins = notes.stream()
                .filter(Note::isBentAway)
                .filter(note ->
                        Math.floorMod(note.heardMidi(), 12) == added.pitch().chroma())
                .map(note -> home.spell(note.midi()).name().toString())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return origins.isEmpty() ? "" : " from " + String.join(" or ", origins);
    }

    private static String chords(Analysis analysis) {
        if (analysis.harmony().source() == Harmony.Source.NONE) {
            return "none in the score, so marks that need a chord are left out;"
                    + " give them with --chords \"A7 | D7 | A7 | %\" or --form \"twelve-bar A\"";
        }
        List<String> all = analysis.harmony().spans().stream()
                .flatMap(span -> span.chord().stream())
                .map(chord -> chord.name())
                .distinct()
                .toList();
        String names = all.stream().limit(CHORDS_NAMED).collect(Collectors.joining(" "))
                + (all.size() > CHORDS_NAMED ? " …" : "");
        String source = analysis.form()
                .map(form -> form.progression()
                                .key()
                                .map(key -> form.progression().name() + " in " + key)
                                .orElse("as you gave them")
                        + ", from bar " + form.start().number())
                .orElse(
                        analysis.harmony().source() == Harmony.Source.INFERRED
                                ? "inferred from the part that plays under it"
                                : "from the score");
        return names + " (" + source + ")";
    }

    /** How often each mark is made, "3 × box": "box 3" would be the text of a mark. */
    private static String counts(List<Gloss> glosses) {
        Map<String, Integer> counts = new TreeMap<>();
        glosses.forEach(gloss -> counts.merge(gloss.rule(), 1, Integer::sum));
        return counts.isEmpty()
                ? "nothing to mark"
                : counts.entrySet().stream()
                        .map(entry -> entry.getValue() + " × " + entry.getKey())
                        .collect(Collectors.joining(" · "));
    }
}
