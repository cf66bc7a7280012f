package org.fretgloss.annotator;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Given;
import org.fretgloss.annotator.config.Corrections;
import org.fretgloss.annotator.config.Silenced;
import org.fretgloss.annotator.config.Unheeded;
import org.fretgloss.annotator.file.Memory;
import org.fretgloss.annotator.file.NoteScanner;
import org.fretgloss.annotator.file.ScoreException;
import org.fretgloss.annotator.file.ScoreFile;
import org.fretgloss.annotator.file.ScoreScan;
import org.fretgloss.annotator.read.Notice;
import org.fretgloss.annotator.read.Reading;
import org.fretgloss.annotator.read.ScoreReader;
import org.fretgloss.annotator.write.Ascii;
import org.fretgloss.annotator.write.Composition;
import org.fretgloss.annotator.write.LineChoice;
import org.fretgloss.annotator.write.LineComposer;
import org.fretgloss.annotator.write.ScoreWriter;
import org.fretgloss.annotator.write.SelfCheck;
import org.fretgloss.annotator.write.SelfCheckException;
import org.fretgloss.annotator.write.Stamp;
import org.fretgloss.annotator.write.Stripped;
import org.fretgloss.annotator.write.Stripper;
import org.fretgloss.rule.Examination;
import org.fretgloss.rule.Gloss;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Rulebook;
import org.fretgloss.rule.SettingException;
import org.fretgloss.rule.Settings;
import org.fretgloss.rule.Severity;
import org.fretgloss.solo.Solo;

/**
 * Explains transcribed solos in their own files.
 *
 * <pre>{@code
 * Fretgloss fretgloss = Fretgloss.withFoundRules();
 * Annotated annotated = fretgloss.annotate(ScoreFile.read(Path.of("solo.musicxml")), Request.PLAIN);
 * Files.write(Path.of("annotated.musicxml"), annotated.bytes());
 * }</pre>
 */
public final class Fretgloss {

    private final Rulebook rulebook;

    private Fretgloss(Rulebook rulebook) {
        this.rulebook = rulebook;
    }

    /** With the built-in rules and all others on the class path. */
    public static Fretgloss withFoundRules() {
        return new Fretgloss(Rulebook.load(Fretgloss.class.getClassLoader()));
    }

    /** With the rules of a rulebook. */
    public static Fretgloss with(Rulebook rulebook) {
        return new Fretgloss(rulebook);
    }

    /**
     * Annotates a score. Lines of ours that it holds already are taken out first.
     *
     * @throws ScoreException if the score cannot be read, does not hold what the request names, or has too few lyric
     *     numbers left
     * @throws SettingException if the request sets an option that a rule does not have
     * @throws SelfCheckException if the result, stripped, would not be the score again
     */
    public Annotated annotate(ScoreFile score, Request request) throws ScoreException {
        return Memory.guard(() -> annotated(score, request));
    }

    private Annotated annotated(ScoreFile score, Request request) throws ScoreException {
        Map<String, Settings> settings = settings(request);
        Stripped plain = Stripper.strip(score.text());
        Memory.requireRoomToRead(plain.text());
        NoteScanner scanner = NoteScanner.over(plain.text());
        Reading reading = ScoreReader.read(scanner, request.part());
        ScoreScan scan = scanner.scan();

        Analysis analysis = analysed(reading, request.given());
        Set<Line> lines = lines(request);
        boolean doubts = lines.contains(Line.DOUBTS);
        Examination examination = rulebook.examine(analysis, settings, rule -> doubts || !rule.isCheck());
        LineChoice choice = new LineChoice(lines, request.ascii(), request.roman());
        List<Gloss> glosses = unsilenced(reading.solo(), examination.glosses(), request.corrections());
        Composition composition = LineComposer.compose(analysis, glosses, reading.carriers(), choice);
        String text = ScoreWriter.annotate(scan, composition.texts(), stamp(request), score.insertable());

        Annotated annotated = new Annotated(
                score,
                text,
                analysis,
                shown(glosses, composition.uncarried(), request.ascii()),
                reading.carriers(),
                examination.failures(),
                Stream.of(
                                notices(score, plain, reading, analysis, request, Inferred.frets(analysis)).stream(),
                                composition.uncarried().stream().map(gloss -> uncarried(analysis, gloss)),
                                withoutChordsLine(request, lines).stream())
                        .flatMap(told -> told)
                        .toList());
        SelfCheck.verify(score, plain.text(), annotated.bytes());
        return annotated;
    }

    /**
     * Proof-reads a score: asks the checks and only them. Lines of ours that it holds are not looked at.
     *
     * @param asked which of the checks
     * @throws ScoreException if the score cannot be read, or does not hold what the request names
     * @throws SettingException if the request sets an option that a check does not have
     */
    public Checked check(ScoreFile score, Request request, Predicate<Rule> asked) throws ScoreException {
        return Memory.guard(() -> checked(score, request, asked));
    }

    private Checked checked(ScoreFile score, Request request, Predicate<Rule> asked) throws ScoreException {
        Map<String, Settings> settings = settings(request);
        Stripped plain = Stripper.strip(score.text());
        Memory.requireRoomToRead(plain.text());
        Reading reading = ScoreReader.read(NoteScanner.over(plain.text()), request.part());
        Analysis analysis = analysed(reading, request.given());
        boolean hasFrets = Inferred.tellsFrets(reading.solo());
        Predicate<Rule> wanted = rule -> rule.isCheck() && asked.test(rule);
        Predicate<Rule> checks = wanted.and(rule -> hasFrets || !rule.needsFrets());
        Examination examination = rulebook.examine(analysis, settings, checks);
        List<String> leftOut = ids(wanted.and(checks.negate()));
        Silenced silenced =
                Silenced.of(reading.solo(), examination.glosses(), Set.copyOf(ids(checks)), request.corrections());
        return new Checked(
                score.name(),
                analysis,
                silenced.withOpen(shown(silenced.open(), List.of(), request.ascii())),
                scope(analysis, checks, leftOut, examination),
                reading.carriers(),
                examination.failures(),
                notices(score, plain, reading, analysis, request, Inferred.unchecked(analysis, leftOut)));
    }

    private Scope scope(Analysis analysis, Predicate<Rule> checks, List<String> leftOut, Examination examination) {
        if (ids(checks).isEmpty()) {
            return Scope.NOTHING;
        }
        boolean lacksPlaces = Inferred.lacksPlaces(analysis)
                && !ids(checks.and(Rule::needsFrets)).isEmpty();
        return lacksPlaces || !leftOut.isEmpty() || !examination.failures().isEmpty() ? Scope.PART : Scope.ALL;
    }

    /** The rules at hand, in order. */
    public List<Rule> rules() {
        return rulebook.rules();
    }

    private List<String> ids(Predicate<Rule> wanted) {
        return rulebook.rules().stream().filter(wanted).map(Rule::id).toList();
    }

    /** Marks, and the doubts that the teacher has not let stand; hints are for whoever asks {@code check} for them. */
    private static List<Gloss> unsilenced(Solo solo, List<Gloss> glosses, Corrections corrections) {
        return Silenced.of(solo, glosses, Set.of(), corrections).open().stream()
                .filter(gloss -> gloss.finding()
                        .doubt()
                        .filter(doubt -> !doubt.severity().isAtLeast(Severity.WARNING))
                        .isEmpty())
                .toList();
    }

    /**
     * Takes our lines out of a score.
     *
     * @throws ScoreException if it cannot be read
     */
    public static Plain strip(ScoreFile score) throws ScoreException {
        Stripped stripped = Memory.guard(() -> Stripper.strip(score.text()));
        List<String> notices = new ArrayList<>(score.notices());
        notices.addAll(Edited.notices(stripped));
        return new Plain(score, stripped.text(), notices);
    }

    private Map<String, Settings> settings(Request request) {
        Map<String, Settings> settings = new HashMap<>();
        request.settings().forEach((id, texts) -> {
            Rule rule = rulebook.rule(id);
            settings.put(id, Settings.of(rule, texts));
        });
        return settings;
    }

    private static Analysis analysed(Reading reading, Given given) throws ScoreException {
        try {
            return Analysis.of(reading.solo(), given, reading.backing().notes());
        } catch (IllegalArgumentException e) {
            throw new ScoreException(String.valueOf(e.getMessage()), e);
        }
    }

    /** The lines asked for; without a word those that are on by default, and the chords where the user gave them. */
    private static Set<Line> lines(Request request) {
        Set<Line> lines = EnumSet.noneOf(Line.class);
        request.lines().ifPresentOrElse(lines::addAll, () -> {
            for (Line line : Line.values()) {
                if (line.isOnByDefault()) {
                    lines.add(line);
                }
            }
            request.given().progression().ifPresent(given -> lines.add(Line.CHORDS));
        });
        lines.addAll(request.addedLines());
        return lines;
    }

    /** The settings that change what stands in the score. */
    private static Stamp stamp(Request request) {
        Map<String, String> settings = new LinkedHashMap<>();
        request.part().ifPresent(part -> settings.put("part", part));
        request.given().home().ifPresent(home -> settings.put("home", home.toString()));
        request.given()
                .progression()
                .ifPresent(progression -> settings.put(
                        "chords",
                        progression
                                .key()
                                .map(key -> progression.name() + " " + key)
                                .orElse(progression.name())));
        request.given().formStart().ifPresent(bar -> settings.put("form-start", bar));
        request.settings()
                .forEach((rule, texts) -> texts.forEach((option, text) -> settings.put(rule + "." + option, text)));
        if (request.roman()) {
            settings.put("roman", "true");
        }
        if (request.ascii()) {
            settings.put("ascii", "true");
        }
        return new Stamp(Version.NUMBER, settings);
    }

    /** The glosses with the texts that their lines show: none where no note can bear it, in ASCII where asked. */
    private static List<Gloss> shown(List<Gloss> glosses, List<Gloss> uncarried, boolean ascii) {
        return glosses.stream()
                .map(gloss -> uncarried.contains(gloss) ? gloss.unwritten() : gloss)
                .map(gloss -> ascii ? inAscii(gloss) : gloss)
                .toList();
    }

    private static Gloss inAscii(Gloss gloss) {
        return new Gloss(
                gloss.rule(), gloss.line(), gloss.finding(), gloss.text().map(Ascii::of));
    }

    private static String uncarried(Analysis analysis, Gloss gloss) {
        return "no note can bear '" + gloss.text().orElse("") + "' in "
                + analysis.placeOf(gloss.finding().note()) + ": it stands in the findings only";
    }

    private static Optional<String> withoutChordsLine(Request request, Set<Line> lines) {
        return request.roman() && !lines.contains(Line.CHORDS)
                ? Optional.of("Roman numerals stand on the line of chords, which is not written here;"
                        + " ask for it with --add-lines chords")
                : Optional.empty();
    }

    private List<String> notices(
            ScoreFile score,
            Stripped plain,
            Reading reading,
            Analysis analysis,
            Request request,
            Optional<String> frets) {
        List<String> notices = new ArrayList<>(score.notices());
        notices.addAll(Edited.notices(plain));
        reading.notices().stream().map(Notice::text).forEach(notices::add);
        frets.ifPresent(notices::add);
        notices.addAll(Inferred.notices(analysis, reading.backing()));
        notices.addAll(Unheeded.notices(request.corrections(), ids(Rule::isCheck)));
        analysis.form()
                .filter(form -> form.progression().bars().size()
                        > analysis.solo().bars().size())
                .ifPresent(form -> notices.add(
                        "the progression has " + form.progression().bars().size() + " bars and the solo only "
                                + analysis.solo().bars().size() + ": not all of it is used"));
        rulebook.refused()
                .forEach(refused ->
                        notices.add("rules of " + refused.provider() + " were left out: " + refused.reason()));
        return notices;
    }
}
