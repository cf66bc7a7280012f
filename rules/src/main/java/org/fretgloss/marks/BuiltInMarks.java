package org.fretgloss.marks;

import java.util.List;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.RuleProvider;

/** The marks that come with Fretgloss, in the order in which their texts stand together. */
public final class BuiltInMarks implements RuleProvider {

    @Override
    public String name() {
        return "Fretgloss";
    }

    @Override
    public int interfaceLevel() {
        return INTERFACE_LEVEL;
    }

    @Override
    public List<Rule> rules() {
        return List.of(
                new BoxRule(),
                new Reach(),
                new BendRule(),
                new Third(),
                new Outline(),
                new Outside(),
                new Colour(),
                new Space(),
                new PhraseRule(),
                new LandingRule(),
                new ClimaxRule());
    }
}
