package org.fretgloss.annotator.slips;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fretgloss.annotator.Fretgloss;
import org.fretgloss.annotator.Request;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.neck.StringFret;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Severity;
import org.fretgloss.rule.Suggestion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * How many planted slips are found, and how many doubts a clean score raises. Slips are written into the text of the
 * score by {@link SlipKind}, which shares nothing with the checks. The counts are printed.
 */
class PlantedSlipsTest {

    private static final Fretgloss FRETGLOSS = Fretgloss.withFoundRules();
    private static final int OF_EACH_KIND = 200;

    /** Of these many become music, so it takes more of them to tell. */
    private static final int OF_ONE_FRET = 1_000;

    private static final int TRIES = 60_000;
    private static final Pattern NOTE = Pattern.compile("<note\\b.*?</note>", Pattern.DOTALL);
    private static final List<CleanScore> SCORES = CleanScore.all();

    /** What proof-reading says about the scores as they are. */
    private static final Set<String> CLEAN = SCORES.stream()
            .flatMap(score -> check(score, score.text(), Severity.WARNING, Set.of()).stream()
                    .map(gloss -> score + gloss.finding().explanation()))
            .collect(Collectors.toUnmodifiableSet());

    @ParameterizedTest
    @EnumSource(SlipKind.class)
    void areFound(SlipKind kind) {
        List<Slip> slips = slips(kind);
        List<Optional<Gloss>> found =
                slips.parallelStream().map(slip -> doubt(kind, slip)).toList();
        long hits = found.stream().filter(Optional::isPresent).count();
        System.out.printf(Locale.ROOT, "%s: %d of %d found%n", kind, hits, slips.size());

        assertThat(slips).hasSize(asked(kind));
        if (kind == SlipKind.WRONG_BOX) {
            tellOfBoxes(slips, found);
        } else {
            assertThat(hits).isGreaterThanOrEqualTo(slips.size() * (kind.severity() == Severity.ERROR ? 95 : 80) / 100);
        }
    }

    @Test
    void areRareInCleanScores() {
        long doubts = SCORES.stream()
                .mapToLong(score -> tell(score, check(score, score.text(), Severity.WARNING, Set.of())))
                .sum();
        System.out.printf(Locale.ROOT, "clean: %d errors and warnings in %d notes%n", doubts, notes());
        assertThat(500 * doubts).isLessThan(notes());
    }

    /** Read without what the user says about home and form, so that many have no chord: more is doubted, but not much more. */
    @Test
    void areFewInCleanScoresThatNothingIsSaidAbout() {
        long doubts = SCORES.stream()
                .mapToLong(score -> tell(score, check(score, score.text(), Request.PLAIN, Severity.WARNING, Set.of())))
                .sum();
        System.out.printf(Locale.ROOT, "clean, nothing said: %d errors and warnings in %d notes%n", doubts, notes());
        assertThat(250 * doubts).isLessThan(notes());
    }

    private static int notes() {
        return SCORES.stream()
                .mapToInt(score -> score.expected().get("notes").getAsInt())
                .sum();
    }

    /** Prints doubts and counts them. */
    private static int tell(CleanScore score, List<Gloss> doubts) {
        doubts.forEach(gloss -> System.out.println(
                score + " bar " + gloss.finding().note().bar().number() + ": " + gloss.rule() + ": "
                        + gloss.finding().explanation()));
        return doubts.size();
    }

    private static int asked(SlipKind kind) {
        return kind == SlipKind.WRONG_BOX ? OF_ONE_FRET : OF_EACH_KIND;
    }

    private static List<Slip> slips(SlipKind kind) {
        Random random = new Random(kind.name().hashCode());
        Map<String, Slip> slips = new LinkedHashMap<>();
        for (int i = 0; i < TRIES && slips.size() < asked(kind); i++) {
            CleanScore score = SCORES.get(random.nextInt(SCORES.size()));
            kind.planter()
                    .plant(score, random.nextInt(score.notes().size()), random)
                    .ifPresent(slip -> slips.putIfAbsent(slip.text(), slip));
        }
        return List.copyOf(slips.values());
    }

    /** The doubt of the right check in the slip's bar that the score without the slip does not raise, if there is one. */
    private static Optional<Gloss> doubt(SlipKind kind, Slip slip) {
        return check(slip.score(), slip.text(), kind.severity(), Set.of(kind.check())).stream()
                .filter(gloss -> slip.bar()
                        .filter(bar -> !bar.equals(gloss.finding().note().bar().number()))
                        .isEmpty())
                .filter(gloss ->
                        gloss.finding().explanation().contains(slip.said().orElse("")))
                .filter(gloss -> !CLEAN.contains(slip.score() + gloss.finding().explanation()))
                .findFirst();
    }

    private static List<Gloss> check(CleanScore score, String text, Severity least, Set<String> only) {
        return check(score, text, score.request(), least, only);
    }

    private static List<Gloss> check(CleanScore score, String text, Request request, Severity least, Set<String> only) {
        try {
            return FRETGLOSS
                    .check(
                            ScoreFile.of(score.name(), text.getBytes(StandardCharsets.UTF_8)),
                            request,
                            rule -> only.isEmpty() || only.contains(rule.id()))
                    .from(least)
                    .glosses();
        } catch (ScoreException e) {
            throw new AssertionError(score.name(), e);
        }
    }

    /** A slip that lands on another note of the scale or the chord cannot be told from music. */
    private static void tellOfBoxes(List<Slip> slips, List<Optional<Gloss>> found) {
        int leaving = 0;
        int told = 0;
        int suggested = 0;
        for (int i = 0; i < slips.size(); i++) {
            boolean leaves = leaves(slips.get(i));
            leaving += leaves ? 1 : 0;
            if (leaves && found.get(i).isPresent()) {
                told++;
                suggested += suggests(found.get(i).get(), slips.get(i)) ? 1 : 0;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "WRONG_BOX: %d of %d leave scale and chord; of these %d are found, of these %d with the right fret first%n",
                leaving,
                slips.size(),
                told,
                suggested);
        assertThat(told).isGreaterThanOrEqualTo(leaving * 80 / 100);
        assertThat(suggested).isGreaterThanOrEqualTo(told * 80 / 100);
    }

    private static boolean suggests(Gloss gloss, Slip slip) {
        return gloss.finding()
                .doubt()
                .flatMap(doubt -> doubt.suggestion().flatMap(Suggestion::at))
                .map(StringFret::fret)
                .filter(fret -> fret == slip.fret().orElse(-1))
                .isPresent();
    }

    /** By the score's own labels and symbols: in neither the home scale nor the chord of the moment. */
    private static boolean leaves(Slip slip) {
        int place = 0;
        for (MatchResult note : NOTE.matcher(slip.text()).results().toList()) {
            if (!note.group().equals(slip.score().notes().get(place).group())) {
                return !WrittenChords.of(slip.score()).isInside(place, new NoteText(note.group()));
            }
            place++;
        }
        throw new AssertionError("no note differs");
    }
}
