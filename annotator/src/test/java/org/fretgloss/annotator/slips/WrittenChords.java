package org.fretgloss.annotator.slips;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.HomeScale;

/**
 * The chord of each moment, read from a score's symbols, or else from the progression or form that its labels name, with
 * tables of its own.
 *
 * @param score where they are written
 * @param tones by the moment from which they sound: pitch classes, none where there is no chord
 */
record WrittenChords(CleanScore score, NavigableMap<Long, Set<Integer>> tones) {

    /** Semitones above the root, of the kinds that the clean scores and the slips have. */
    static final Map<String, List<Integer>> KINDS = Map.of(
            "major", List.of(0, 4, 7),
            "minor", List.of(0, 3, 7),
            "dominant", List.of(0, 4, 7, 10),
            "minor-seventh", List.of(0, 3, 7, 10),
            "major-seventh", List.of(0, 4, 7, 11),
            "diminished-seventh", List.of(0, 3, 6, 9),
            "power", List.of(0, 7),
            "none", List.of());

    /** The forms that the labels name, as semitones of each root above the tonic and its kind; a stroke halves a bar. */
    private static final Map<String, List<String>> FORMS = Map.of(
            "twelve-bar", bars("0d 0d 0d 0d 5d 5d 0d 0d 7d 5d 0d 7d"),
            "quick-change", bars("0d 5d 0d 0d 5d 5d 0d 0d 7d 5d 0d 7d"),
            "minor-twelve-bar", bars("0m 0m 0m 0m 5m 5m 0m 0m 8d 7d 0m 0m"),
            "eight-bar", bars("0d 7d 5d 5d 0d 7d 0d 7d"),
            "jazz-twelve-bar", bars("0d 5d 0d 0d 5d 5d 0d 9d 2m 7d 0d/9d 2m/7d"));

    private static final Pattern SYMBOL = Pattern.compile(
            "<root-step>([A-G])</root-step>(?:\\s*<root-alter>(-?1)</root-alter>)?.*?<kind[^>]*>([^<]*)</kind>",
            Pattern.DOTALL);

    private static List<String> bars(String text) {
        return List.of(text.split(" "));
    }

    static WrittenChords of(CleanScore score) {
        NavigableMap<Long, Set<Integer>> tones = new TreeMap<>();
        if (score.times().symbols().isEmpty()) {
            readLabels(score, tones);
        } else {
            score.times()
                    .symbols()
                    .forEach(
                            symbol -> tones.put(symbol.onset(), read(symbol.at().group())));
        }
        return new WrittenChords(score, tones);
    }

    /** Pitch classes of a chord symbol. */
    static Set<Integer> read(String harmony) {
        Matcher symbol = SYMBOL.matcher(harmony);
        if (!symbol.find()) {
            return Set.of();
        }
        int alter = Optional.ofNullable(symbol.group(2)).map(Integer::parseInt).orElse(0);
        return tones(NoteText.chroma(symbol.group(1)) + alter, symbol.group(3));
    }

    static Set<Integer> tones(int root, String kind) {
        return KINDS.getOrDefault(kind, List.of()).stream()
                .map(semitones -> Math.floorMod(root + semitones, 12))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static void readLabels(CleanScore score, NavigableMap<Long, Set<Integer>> tones) {
        List<List<Set<Integer>>> round = round(score);
        if (round.isEmpty()) {
            return;
        }
        String first = score.expected().getAsJsonObject("form").get("startBar").getAsString();
        List<ScoreTimes.Bar> bars = score.times().bars();
        List<String> numbers = bars.stream().map(ScoreTimes.Bar::number).toList();
        for (int i = 0; i < bars.size(); i++) {
            List<Set<Integer>> chords = round.get(Math.floorMod(i - numbers.indexOf(first), round.size()));
            long start = bars.get(i).start();
            tones.put(start, chords.get(0));
            if (chords.size() > 1) {
                tones.put(start + (endOf(i, bars) - start) / 2, chords.get(1));
            }
        }
    }

    private static long endOf(int bar, List<ScoreTimes.Bar> bars) {
        return bar + 1 < bars.size() ? bars.get(bar + 1).start() : Long.MAX_VALUE;
    }

    /** The chords of one round of the form, bar by bar; none where the labels name no form. */
    private static List<List<Set<Integer>>> round(CleanScore score) {
        List<String> options = StreamSupport.stream(
                        score.expected().getAsJsonArray("options").spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
        if (options.contains("--chords")) {
            return Stream.of(options.get(options.indexOf("--chords") + 1).split("\\|"))
                    .map(String::strip)
                    .map(name -> List.of(tones(
                            NoteText.chroma(name.substring(0, 1)), name.contains("m") ? "minor-seventh" : "dominant")))
                    .toList();
        }
        JsonElement form = score.expected().get("form");
        if (form == null || form.isJsonNull()) {
            return List.of();
        }
        JsonObject named = form.getAsJsonObject();
        String key = named.get("key").getAsString();
        int tonic = NoteText.chroma(key.substring(0, 1)) - (key.endsWith("♭") ? 1 : 0);
        return FORMS.getOrDefault(named.get("name").getAsString(), List.of()).stream()
                .map(bar -> Stream.of(bar.split("/"))
                        .map(chord -> tones(
                                tonic + Integer.parseInt(chord.substring(0, 1)),
                                chord.endsWith("m") ? "minor-seventh" : "dominant"))
                        .toList())
                .toList();
    }

    /** Whether a note, written as it is there or otherwise, sounds in the home scale or in the chord of its moment. */
    boolean isInside(int note, NoteText written) {
        JsonObject home = score.expected().getAsJsonObject("home");
        HomeScale scale = HomeScale.parse(
                home.get("tonic").getAsString() + " " + home.get("scale").getAsString());
        int midi = written.heard().orElseThrow();
        return scale.contains(midi) || chordAt(note).contains(Math.floorMod(midi, 12));
    }

    private Set<Integer> chordAt(int note) {
        return Optional.ofNullable(tones.floorEntry(score.times().onsets().get(note)))
                .map(Map.Entry::getValue)
                .orElse(Set.of());
    }
}
