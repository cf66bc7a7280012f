package org.fretgloss.annotator.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.StringJoiner;
import org.fretgloss.annotator.Annotated;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented score that moves from A minor to C♯ minor in bar 9, as the reports tell it. */
class SectionsTest {

    private static final List<String> A_MINOR = List.of("A4 C5 D5 C5", "A4 G4 E4 G4", "A4 C5 E5 D5", "C5 G4 A4 A4");
    private static final List<String> C_SHARP_MINOR =
            List.of("C#5 E5 F#5 E5", "C#5 B4 G#4 B4", "C#5 E5 G#5 F#5", "E5 B4 C#5 C#5");

    private static String score() {
        List<String> bars = new java.util.ArrayList<>();
        Collections.nCopies(2, A_MINOR).forEach(bars::addAll);
        Collections.nCopies(2, C_SHARP_MINOR).forEach(bars::addAll);
        StringJoiner measures = new StringJoiner("\n");
        for (int i = 0; i < bars.size(); i++) {
            measures.add("<measure number=\"" + (i + 1) + "\">"
                    + (i == 0 ? "<attributes><divisions>1</divisions></attributes>" : "") + notes(bars.get(i))
                    + "</measure>");
        }
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <score-partwise version="4.0">
                <part-list><score-part id="P1"><part-name>Guitar</part-name></score-part></part-list>
                <part id="P1">
                %s
                </part>
                </score-partwise>
                """.formatted(measures);
    }

    private static String notes(String bar) {
        StringBuilder notes = new StringBuilder();
        for (String name : bar.split(" ", -1)) {
            String alter = name.contains("#") ? "<alter>1</alter>" : "";
            notes.append("<note><pitch><step>%s</step>%s<octave>%s</octave></pitch><duration>1</duration></note>"
                    .formatted(name.charAt(0), alter, name.charAt(name.length() - 1)));
        }
        return notes.toString();
    }

    @Test
    void tellWhereEachHomeBegins(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("two-homes.musicxml"), score());
        Annotated annotated = Fretgloss.withFoundRules().annotate(ScoreFile.read(file), Request.PLAIN);
        JsonObject findings = JsonParser.parseString(FindingsJson.of(annotated)).getAsJsonObject();
        assertThat(findings.getAsJsonArray("sections").asList())
                .extracting(JsonElement::toString)
                .containsExactly(
                        "{\"bar\":\"1\",\"beat\":\"1\",\"tonic\":\"A\",\"scale\":\"minor pentatonic\"}",
                        "{\"bar\":\"9\",\"beat\":\"1\",\"tonic\":\"C♯\",\"scale\":\"minor pentatonic\"}");
        assertThat(Summary.of(annotated))
                .anyMatch(line -> line.startsWith("home: A minor pentatonic ("))
                .anyMatch(line -> line.startsWith("home: from bar 9 beat 1 C♯ minor pentatonic ("));
    }
}
