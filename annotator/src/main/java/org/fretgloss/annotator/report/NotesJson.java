package org.fretgloss.annotator.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Phrase;
import org.fretgloss.annotator.Report;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Line;
import org.fretgloss.solo.Bend;
import org.fretgloss.solo.Note;

/**
 * Every note of a solo as JSON, one after the other in sounding order, whether or not a rule found anything in it. What
 * does not apply is left out: the degrees of a dead note, the place of a note that no string reaches, the chord where
 * none sounds, the phrase where no rule named it.
 */
final class NotesJson {

    private final Analysis analysis;

    /** By the ordinal of the note that opens it. */
    private final Map<Integer, String> phraseLetters;

    private NotesJson(Report report) {
        this.analysis = report.analysis();
        this.phraseLetters = phraseLetters(report.glosses());
    }

    static JsonArray of(Report report) {
        NotesJson json = new NotesJson(report);
        JsonArray notes = new JsonArray();
        json.analysis.solo().notes().forEach(note -> notes.add(json.note(note)));
        return notes;
    }

    /** Letters are a rule's to give, so that they agree with its findings. */
    private static Map<Integer, String> phraseLetters(List<Gloss> glosses) {
        Map<Integer, String> letters = new HashMap<>();
        glosses.stream()
                .filter(gloss -> gloss.line() == Line.PHRASES)
                .forEach(gloss -> Optional.ofNullable(gloss.finding().values().get("letter"))
                        .ifPresent(letter ->
                                letters.putIfAbsent(gloss.finding().note().ordinal(), letter.toString())));
        return letters;
    }

    private JsonObject note(Note note) {
        JsonObject json = new JsonObject();
        json.addProperty("note", note.ordinal());
        json.addProperty("bar", note.bar().number());
        json.addProperty("beat", note.beat().toString());
        json.addProperty("onset", note.onset().toString());
        json.addProperty("duration", note.duration().toString());
        json.addProperty("midi", note.midi());
        json.add("peakMidi", peakMidi(note));
        addPlace(json, note);
        addHarmony(json, note);
        addBox(json, note);
        if (!note.isDead()) {
            json.addProperty("outOfScale", !analysis.homeAt(note).scale().contains(note.heardMidi()));
        }
        addPhrase(json, note);
        return json;
    }

    /** A curl's peak lies between two of the numbers. */
    private static JsonPrimitive peakMidi(Note note) {
        double width = note.bend()
                .map(Bend::width)
                .map(semitones -> semitones.toDouble())
                .orElse(0.0);
        return new JsonPrimitive(FindingsJson.plain(BigDecimal.valueOf(note.midi() + width)));
    }

    private void addPlace(JsonObject json, Note note) {
        note.at().ifPresent(at -> {
            json.addProperty("string", at.string());
            json.addProperty("fret", at.fret());
            json.addProperty("inferred", analysis.isInferred(note));
        });
    }

    private void addHarmony(JsonObject json, Note note) {
        if (!note.isDead()) {
            json.addProperty("degree", analysis.degreeOf(note).toString());
        }
        analysis.chordAt(note).ifPresent(chord -> json.addProperty("chord", chord.name()));
        if (!note.isDead()) {
            analysis.chordDegreeOf(note).ifPresent(degree -> json.addProperty("chordDegree", degree.toString()));
        }
    }

    private void addBox(JsonObject json, Note note) {
        analysis.boxes().boxOf(note).ifPresent(box -> {
            json.addProperty("box", box.number());
            if (note.at().isPresent()) {
                json.addProperty("outOfBox", analysis.boxes().reachOf(note) != 0);
            }
        });
    }

    private void addPhrase(JsonObject json, Note note) {
        Phrase phrase = analysis.phrases().get(analysis.phrasing().phraseOf(note));
        Optional.ofNullable(phraseLetters.get(phrase.first().ordinal()))
                .ifPresent(letter -> json.addProperty("phrase", letter));
        json.addProperty("phraseStart", analysis.startsPhrase(note));
    }
}
