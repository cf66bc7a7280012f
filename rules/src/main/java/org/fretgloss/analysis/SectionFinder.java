package org.fretgloss.analysis;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;
import org.fretgloss.time.Fraction;

/**
 * Finds where the music moves to another home: of all ways to give each bar a home, the likeliest in which every home
 * lasts and every change pays. A home lasts {@value #SHORTEST} bars or more, so that a IV7 or a ii-V is none; a change
 * must win more than it costs, and the notes themselves must speak for it in {@value #WITNESSES} bars or more, so that
 * chords that move under a line which stays at home change nothing. From major to minor on one tonic is a change of
 * colour and not of home.
 */
final class SectionFinder {

    /** The fewest bars of a home. */
    static final int SHORTEST = 4;

    /** In how many of its bars the notes must fit a new home clearly better than the one before. */
    static final int WITNESSES = 3;

    /** What a change costs, in the logarithms of likelihood of {@link BarEvidence}: about five bars that fit badly. */
    private static final double CHANGE = 5;

    /** How much better a bar's notes must fit to speak clearly for a home. */
    private static final double CLEARLY = 0.25;

    private static final int HOMES = Tonality.ALL.size();

    private final List<Bar> bars;
    private final List<BarEvidence> evidence;

    private SectionFinder(List<Bar> bars, List<BarEvidence> evidence) {
        this.bars = bars;
        this.evidence = evidence;
    }

    /** Some bars and their home. */
    private record Run(int first, int end, Tonality home) {}

    /**
     * The homes of a solo.
     *
     * @param whole all of it as one passage
     */
    static Homes find(Solo solo, Passage whole) {
        if (whole.notes().isEmpty() || whole.statedKey().isPresent()) {
            return Homes.of(HomeFinder.find(whole));
        }
        return of(solo, whole).homes(whole);
    }

    private static SectionFinder of(Solo solo, Passage whole) {
        int first = whole.notes().get(0).bar().index();
        int last = whole.notes().get(whole.notes().size() - 1).bar().index();
        List<Bar> bars = solo.bars().subList(first, last + 1);
        boolean signaturesChange = bars.stream().map(Bar::key).distinct().count() > 1;
        Map<Bar, List<Note>> struck = whole.notes().stream().collect(Collectors.groupingBy(Note::bar));
        Map<Bar, List<Note>> landings = whole.landings().stream().collect(Collectors.groupingBy(Note::bar));
        List<BarEvidence> evidence = bars.stream()
                .map(bar -> new BarEvidence(
                        bar,
                        struck.getOrDefault(bar, List.of()),
                        landings.getOrDefault(bar, List.of()),
                        whole.harmony(),
                        Optional.of(bar.key()).filter(key -> signaturesChange)))
                .toList();
        return new SectionFinder(bars, evidence);
    }

    private Homes homes(Passage whole) {
        List<Run> runs = lasting(likeliest());
        List<HomeSection> sections = new ArrayList<>();
        int first = 0;
        while (first < runs.size()) {
            int end = first + 1;
            Passage passage = passage(whole, runs.subList(first, end));
            int tonic = tonicOf(passage);
            while (end < runs.size() && tonicOf(passage(whole, runs.subList(end, end + 1))) == tonic) {
                end++;
            }
            Passage section = passage(whole, runs.subList(first, end));
            int from = sections.isEmpty() ? 0 : section.notes().get(0).index();
            sections.add(new HomeSection(from, HomeFinder.find(section)));
            first = end;
        }
        return sections.size() == 1 ? Homes.of(HomeFinder.find(whole)) : new Homes(sections);
    }

    private Passage passage(Passage whole, List<Run> runs) {
        return whole.between(
                startOf(runs.get(0).first()), startOf(runs.get(runs.size() - 1).end()));
    }

    private static int tonicOf(Passage passage) {
        return HomeFinder.find(passage).scale().tonic().chroma();
    }

    private Fraction startOf(int bar) {
        return bar < bars.size()
                ? bars.get(bar).start()
                : bars.get(bars.size() - 1).end();
    }

    /** The likeliest way through the bars. */
    private List<Run> likeliest() {
        int count = bars.size();
        double[][] best = new double[count + 1][HOMES];
        int[][] since = new int[count + 1][HOMES];
        int[] bestHome = new int[count + 1];
        int shortest = Math.min(SHORTEST, count);
        for (int end = 1; end <= count; end++) {
            for (int home = 0; home < HOMES; home++) {
                best[end][home] = Double.NEGATIVE_INFINITY;
                int begin = end - shortest;
                if (begin == 0 || begin >= shortest) {
                    double before = begin == 0 ? 0 : best[begin][bestHome[begin]] - CHANGE;
                    best[end][home] = before + sum(begin, end, Tonality.ALL.get(home));
                    since[end][home] = begin;
                }
                double staying = best[end - 1][home] + evidence.get(end - 1).of(Tonality.ALL.get(home));
                if (end > shortest && staying >= best[end][home]) {
                    best[end][home] = staying;
                    since[end][home] = since[end - 1][home];
                }
                bestHome[end] = best[end][home] > best[end][bestHome[end]] ? home : bestHome[end];
            }
        }
        Deque<Run> runs = new ArrayDeque<>();
        for (int end = count; end > 0; end = runs.getFirst().first) {
            runs.addFirst(new Run(since[end][bestHome[end]], end, Tonality.ALL.get(bestHome[end])));
        }
        return List.copyOf(runs);
    }

    /** Joins what is no change of home after all to what stands before it. */
    private List<Run> lasting(List<Run> runs) {
        List<Run> lasting = new ArrayList<>();
        for (Run run : runs) {
            Run before = lasting.isEmpty() ? run : lasting.get(lasting.size() - 1);
            if (lasting.isEmpty()) {
                lasting.add(run);
            } else if (!isHeard(run, before)) {
                lasting.set(lasting.size() - 1, new Run(before.first, run.end, before.home));
            } else {
                lasting.add(run);
            }
        }
        return lasting;
    }

    private boolean isHeard(Run run, Run before) {
        long clear = evidence.subList(run.first, run.end).stream()
                .filter(bar -> bar.ofNotes(run.home) - bar.ofNotes(before.home) > CLEARLY)
                .count();
        return clear >= WITNESSES;
    }

    private double sum(int begin, int end, Tonality home) {
        return evidence.subList(begin, end).stream()
                .mapToDouble(bar -> bar.of(home))
                .sum();
    }
}
