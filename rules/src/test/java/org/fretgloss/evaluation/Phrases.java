package org.fretgloss.evaluation;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.time.Meter;

/**
 * Where phrases begin, by the F1 score of each melody, averaged: with the first note counted as a beginning (the
 * convention of Pearce, Müllensiefen and Wiggins 2008) and, strictly, without it.
 */
final class Phrases implements Measurement {

    @Override
    public String name() {
        return "phrases";
    }

    @Override
    public List<Figure> measure(JsonArray cases) {
        List<Case> melodies = StreamSupport.stream(cases.spliterator(), false)
                .map(JsonElement::getAsJsonObject)
                .map(Case::of)
                .toList();
        return List.of(
                figure("phrases: F1, first note counted", melodies, Case::withFirst),
                figure("phrases: F1, inner boundaries", melodies, Case::inside));
    }

    private static Figure figure(String what, List<Case> melodies, ToDoubleFunction<Case> score) {
        return new Figure(what, melodies.stream().mapToDouble(score).average().orElse(0), melodies.size());
    }

    /**
     * The beginnings that a melody's editor marked, and those found; both with the first note.
     *
     * @param marked indexes of notes
     * @param found indexes of notes
     */
    private record Case(Set<Integer> marked, Set<Integer> found) {

        static Case of(JsonObject json) {
            Set<Integer> marked = json.getAsJsonArray("starts").asList().stream()
                    .map(JsonElement::getAsInt)
                    .collect(Collectors.toCollection(HashSet::new));
            marked.add(0);
            Set<Integer> found =
                    Analysis.of(Melody.of(json.getAsJsonArray("notes"), meter(json)), Given.NOTHING).phrases().stream()
                            .map(phrase -> phrase.first().index())
                            .collect(Collectors.toSet());
            return new Case(marked, found);
        }

        /** A melody without a meter is counted in 4/4. */
        private static Meter meter(JsonObject json) {
            JsonElement meter = json.get("meter");
            if (meter == null || !meter.isJsonArray()) {
                return Meter.COMMON;
            }
            JsonArray pair = meter.getAsJsonArray();
            return new Meter(pair.get(0).getAsInt(), pair.get(1).getAsInt());
        }

        double withFirst() {
            return f1(marked, found);
        }

        double inside() {
            return f1(inner(marked), inner(found));
        }

        private static Set<Integer> inner(Set<Integer> starts) {
            return starts.stream().filter(start -> start > 0).collect(Collectors.toSet());
        }

        /** Two empty sets agree. */
        private static double f1(Set<Integer> one, Set<Integer> other) {
            int sizes = one.size() + other.size();
            long shared = one.stream().filter(other::contains).count();
            return sizes == 0 ? 1 : 2.0 * shared / sizes;
        }
    }
}
