package org.fretgloss.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.pitch.UnknownNameException;
import org.fretgloss.solo.Bar;
import org.fretgloss.solo.Note;
import org.fretgloss.solo.Solo;

/** The rules at hand, in order, and what could not be taken among them. */
public final class Rulebook {

    /** In time, a grace note at the moment of its main note. What stands together keeps the order of rules. */
    private static final Comparator<Gloss> IN_TIME =
            Comparator.comparing(gloss -> gloss.finding().note().onset());

    private final List<Admission.Entry> entries;
    private final List<RefusedRules> refused;

    private Rulebook(Admission admission) {
        this.entries = admission.entries();
        this.refused = admission.refused();
    }

    /** The rules of every provider that the service loader finds with a class loader, in the order found. */
    public static Rulebook load(ClassLoader loader) {
        Admission admission = new Admission();
        admission.admitAll(ServiceLoader.load(RuleProvider.class, loader));
        return new Rulebook(admission);
    }

    /** The rules of these providers, in the order given. */
    public static Rulebook of(RuleProvider... providers) {
        Admission admission = new Admission();
        for (RuleProvider provider : providers) {
            admission.admit(provider.getClass().getName(), () -> provider);
        }
        return new Rulebook(admission);
    }

    public List<Rule> rules() {
        return entries.stream().map(Admission.Entry::rule).toList();
    }

    /** Providers and rules that could not be taken, and why. */
    public List<RefusedRules> refused() {
        return refused;
    }

    /**
     * The rule of that id.
     *
     * @throws UnknownNameException if there is none; it holds the ids there are
     */
    public Rule rule(String id) {
        return entries.stream()
                .filter(entry -> entry.id().equals(id))
                .map(Admission.Entry::rule)
                .findFirst()
                .orElseThrow(() -> new UnknownNameException(
                        "a rule", id, entries.stream().map(Admission.Entry::id).toList()));
    }

    /**
     * Asks every rule about a solo. One that throws is reported and leaves nothing behind; the others go on.
     *
     * @param settings of the rules that are not to run with their defaults, by id
     * @throws UnknownNameException if settings name a rule that is not here
     */
    public Examination examine(Analysis analysis, Map<String, Settings> settings) {
        return examine(analysis, settings, rule -> true);
    }

    /**
     * Asks some of the rules about a solo; those that proof-read are asked about the solo as the score has it.
     *
     * @param asked which of them
     * @throws UnknownNameException if settings name a rule that is not here
     */
    public Examination examine(Analysis analysis, Map<String, Settings> settings, Predicate<Rule> asked) {
        settings.keySet().forEach(this::rule);
        List<Gloss> glosses = new ArrayList<>();
        List<RuleFailure> failures = new ArrayList<>();
        List<Admission.Entry> askedEntries =
                entries.stream().filter(entry -> asked.test(entry.rule())).toList();
        Analysis written = analysis.asWritten();
        for (Admission.Entry entry : askedEntries) {
            List<Finding> found = new ArrayList<>();
            try {
                collect(
                        entry.rule(),
                        entry.rule().isCheck() ? written : analysis,
                        settingsOf(entry.id(), settings),
                        found);
                glosses.addAll(glosses(entry, found));
            } catch (RuntimeException | LinkageError e) {
                failures.add(new RuleFailure(entry.id(), entry.provider(), lastBar(found), e));
            }
        }
        glosses.sort(IN_TIME);
        return new Examination(
                Texts.resolve(
                        glosses, gloss -> settingsOf(gloss.rule(), settings).get(Rule.THRESHOLD)),
                failures);
    }

    /** Adds the findings one by one, so that it is known how far a rule came. */
    private static void collect(Rule rule, Analysis analysis, Settings settings, List<Finding> found) {
        try (Stream<Finding> findings = rule.examine(analysis, settings)) {
            findings.forEachOrdered(finding -> found.add(checked(finding, analysis.solo())));
        }
    }

    private static List<Gloss> glosses(Admission.Entry entry, List<Finding> found) {
        return found.stream()
                .sorted(Comparator.comparingInt(finding -> finding.note().index()))
                .map(finding -> new Gloss(entry.id(), entry.line(), finding, finding.text()))
                .toList();
    }

    private static Settings settingsOf(String id, Map<String, Settings> settings) {
        return settings.getOrDefault(id, Settings.defaults());
    }

    private static Finding checked(Finding finding, Solo solo) {
        if (!holds(solo, finding.note()) || !holds(solo, finding.lastNote())) {
            throw new IllegalStateException("a finding stands on a note that is not in the solo");
        }
        return finding;
    }

    private static boolean holds(Solo solo, Note note) {
        return note.index() < solo.notes().size()
                && solo.notes().get(note.index()).equals(note);
    }

    private static Optional<Bar> lastBar(List<Finding> found) {
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(found.get(found.size() - 1).note().bar());
    }
}
