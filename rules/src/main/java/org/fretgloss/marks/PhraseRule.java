package org.fretgloss.marks;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.fretgloss.analysis.Phrase;
import org.fretgloss.analysis.PhraseName;
import org.fretgloss.analysis.PhraseNames;
import org.fretgloss.rule.Finding;
import org.fretgloss.rule.Line;
import org.fretgloss.rule.Option;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.Settings;

/** Where a phrase begins, and which earlier one it varies or answers. */
final class PhraseRule implements Rule {

    private static final Option<Double> ALIKE = Option.ofShare(
            "alike", 0.6, "share of their notes that two phrases have in common, from which one is a variant");

    private static final double SURE_AFTER_BREATH = 0.95;
    private static final double SURE_WITHOUT_BREATH = 0.7;

    @Override
    public Line line() {
        return Line.PHRASES;
    }

    @Override
    public List<Option<?>> options() {
        return List.of(ALIKE);
    }

    @Override
    public Stream<Finding> examine(Analysis analysis, Settings settings) {
        List<PhraseName> names = PhraseNames.of(analysis, settings.get(ALIKE));
        List<Phrase> phrases = analysis.phrases();
        return IntStream.range(0, phrases.size()).mapToObj(i -> found(analysis, phrases.get(i), names.get(i)));
    }

    private static Finding found(Analysis analysis, Phrase phrase, PhraseName name) {
        Finding.Builder finding = Finding.at(phrase.first())
                .text(name.text())
                .explain(explanation(analysis, phrase, name))
                .confidence(phrase.afterBreath() ? SURE_AFTER_BREATH : SURE_WITHOUT_BREATH)
                .value("letter", name.letter());
        if (name.isVariant()) {
            finding.value("variantOf", name.letter());
        }
        name.answers().ifPresent(letter -> finding.value("answers", letter));
        return finding.build();
    }

    private static String explanation(Analysis analysis, Phrase phrase, PhraseName name) {
        String begins = Places.inSolo(analysis, phrase.first()) + "phrase " + name.text()
                + (phrase.afterBreath() ? " begins." : " begins, without a rest before it.");
        String varies = name.isVariant() ? " It takes up phrase " + name.letter() + " again." : "";
        String answers = name.answers()
                .map(letter -> " It answers phrase " + letter + ": that one hangs in the air, this one comes to rest.")
                .orElse("");
        return begins + varies + answers;
    }
}
