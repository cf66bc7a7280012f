package org.fretgloss.annotator.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The comparison itself can tell equal marks from others. */
class FindingsDiffTest {

    private static final String BEND = """
            {"rule": "bend", "note": 41, "bar": "5", "beat": "7/2", "line": "moves", "text": "full 4→5",
             "values": {"kind": "bend", "semitones": 2}}
            """;

    private static JsonObject finding(String json) {
        return JsonParser.parseString(json).getAsJsonObject();
    }

    private static List<Difference> differences(String expected, String found) {
        return FindingsDiff.between(List.of(finding(expected)), List.of(finding(found)));
    }

    @Test
    void whatIsNotHeldMayDiffer() {
        String found = BEND.replace("\"note\": 41", "\"note\": 41, \"lastNote\": 41, \"confidence\": 0.9");

        assertThat(differences(BEND, found)).isEmpty();
    }

    @Test
    void missingAndUnexpectedMarksAreNamedWithBarAndBeat() {
        assertThat(FindingsDiff.between(List.of(finding(BEND)), List.of()))
                .singleElement()
                .asString()
                .startsWith("missing: bar 5 beat 3½ (note 41), bend \"full 4→5\"");
        assertThat(FindingsDiff.between(List.of(), List.of(finding(BEND))))
                .singleElement()
                .asString()
                .startsWith("unexpected: bar 5 beat 3½");
        assertThat(differences(BEND, BEND.replace("41", "43"))).hasSize(2);
    }

    @Test
    void everyDifferentKeyIsNamed() {
        String found = BEND.replace("7/2", "4")
                .replace("\"full 4→5\"", "null")
                .replace("\"semitones\": 2", "\"semitones\": 3, \"chordTone\": true")
                .replace("\"note\": 41", "\"note\": 41, \"lastNote\": 42, \"carrier\": 40");

        assertThat(differences(BEND, found))
                .singleElement()
                .asString()
                .startsWith("different: bar 5 beat 3½")
                .contains(
                        "lastNote should be 41 and is 42",
                        "carrier should be null and is 40",
                        "beat should be \"7/2\" and is \"4\"",
                        "text should be \"full 4→5\" and is null",
                        "semitones should be 2 and is 3",
                        "chordTone should be null and is true");
    }

    @Test
    void ofAClimaxOnlyTheLengthIsHeld() {
        String climax = BEND.replace("\"bend\", \"note\"", "\"climax\", \"note\"")
                .replace("{\"kind\": \"bend\", \"semitones\": 2}", "{\"bars\": 2}");

        assertThat(differences(climax, climax.replace("\"bars\": 2", "\"bars\": 2, \"density\": 1.5")))
                .isEmpty();
        assertThat(differences(climax, climax.replace("\"bars\": 2", "\"bars\": 3")))
                .singleElement()
                .asString()
                .contains("bars should be 2 and is 3");
    }
}
