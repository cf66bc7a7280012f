package org.fretgloss.annotator.slips;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.Given;
import org.fretgloss.analysis.HomeScale;
import org.fretgloss.analysis.Progression;
import org.fretgloss.annotator.Request;
import org.fretgloss.pitch.PitchClass;

/**
 * A score without slips, as text.
 *
 * @param name the folder it lies in
 * @param text the whole file
 * @param notes where its note elements stand
 * @param bars the number of the bar of each note
 * @param times when its notes and symbols sound
 * @param expected its labels
 */
record CleanScore(
        String name, String text, List<MatchResult> notes, List<String> bars, ScoreTimes times, JsonObject expected) {

    private static final Pattern NOTE_OR_BAR =
            Pattern.compile("<measure\\b[^>]*number=\"([^\"]*)\"|<note\\b.*?</note>", Pattern.DOTALL);

    private static final Pattern STEP = Pattern.compile("<step>.</step>");

    private static final Pattern DIVISIONS = Pattern.compile("<divisions>(\\d+)</divisions>");

    /** All fixtures and labelled solos. */
    static List<CleanScore> all() {
        return Stream.of(Path.of("..", "fixtures"), Path.of("..", "fixtures", "labelled"))
                .flatMap(CleanScore::folders)
                .filter(folder -> Files.exists(folder.resolve("expected.json")))
                .sorted()
                .map(CleanScore::read)
                .toList();
    }

    private static Stream<Path> folders(Path parent) {
        try (Stream<Path> folders = Files.list(parent)) {
            return folders.toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CleanScore read(Path folder) {
        try {
            String text = Files.readString(folder.resolve("score.musicxml"));
            List<MatchResult> notes = new ArrayList<>();
            List<String> bars = new ArrayList<>();
            String bar = "";
            for (MatchResult match : NOTE_OR_BAR.matcher(text).results().toList()) {
                if (match.group(1) == null) {
                    notes.add(match);
                    bars.add(bar);
                } else {
                    bar = match.group(1);
                }
            }
            return new CleanScore(
                    String.valueOf(folder.getFileName()),
                    text,
                    notes,
                    bars,
                    ScoreTimes.of(text),
                    JsonParser.parseString(Files.readString(folder.resolve("expected.json")))
                            .getAsJsonObject());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether each note stands once: not on two staves, and not in two parts of which one writes what the other frets. */
    boolean isWrittenOnce() {
        List<String> parts = Stream.of(text.split("<part id"))
                .skip(1)
                .map(part ->
                        STEP.matcher(part).results().map(MatchResult::group).collect(Collectors.joining()))
                .filter(steps -> !steps.isEmpty())
                .toList();
        return !text.contains("<staves>2") && parts.stream().distinct().count() == parts.size();
    }

    boolean isOnePart() {
        return text.indexOf("<part id") == text.lastIndexOf("<part id");
    }

    /** Whether a note is plainly struck, and written once. */
    boolean isPlain(int index) {
        return holds(index) && isWrittenOnce() && note(index).isPlain();
    }

    /** Whether a finger stops the string for it besides. */
    boolean isFretted(int index) {
        return isPlain(index) && note(index).fret().getAsInt() > 0;
    }

    /** Whether it is a note, however played, and no rest. */
    boolean isStruck(int index) {
        return holds(index) && note(index).midi().isPresent();
    }

    boolean sharesBar(int one, int other) {
        return holds(one) && holds(other) && bars.get(one).equals(bars.get(other));
    }

    boolean arePlainNeighbours(int note, int next) {
        return sharesBar(note, next) && isPlain(note) && isPlain(next);
    }

    private boolean holds(int index) {
        return index >= 0 && index < notes.size();
    }

    /** Duration units of a quarter note. */
    int divisions() {
        return text.lines()
                .map(DIVISIONS::matcher)
                .filter(Matcher::find)
                .map(found -> Integer.parseInt(found.group(1)))
                .findFirst()
                .orElse(1);
    }

    NoteText note(int index) {
        return new NoteText(notes.get(index).group());
    }

    /** The text with one note written otherwise. */
    String with(int index, NoteText other) {
        MatchResult at = notes.get(index);
        return text.substring(0, at.start()) + other.text() + text.substring(at.end());
    }

    /** The text with two notes written otherwise, the first before the second. */
    String with(int first, NoteText one, int second, NoteText other) {
        MatchResult at = notes.get(second);
        String later = text.substring(0, at.start()) + other.text() + text.substring(at.end());
        MatchResult earlier = notes.get(first);
        return later.substring(0, earlier.start()) + one.text() + later.substring(earlier.end());
    }

    /** What its labels say about the music. */
    Request request() {
        List<String> options = StreamSupport.stream(
                        expected.getAsJsonArray("options").spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
        Optional<Progression> form = option(options, "--form").map(value -> {
            String[] words = value.split(" ", 2);
            return Progression.form(words[0], PitchClass.parse(words[1]));
        });
        return new Request(
                option(options, "--part"),
                new Given(
                        option(options, "--home").map(HomeScale::parse),
                        option(options, "--chords").map(Progression::parse).or(() -> form),
                        option(options, "--form-start")));
    }

    private static Optional<String> option(List<String> options, String name) {
        int place = options.indexOf(name);
        return place < 0 ? Optional.empty() : Optional.of(options.get(place + 1));
    }

    @Override
    public String toString() {
        return name;
    }
}
