package org.fretgloss.checks;

import java.util.List;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.RuleProvider;

/** The proof-reading that comes with Fretgloss, in the order in which doubts about one note stand. */
public final class BuiltInChecks implements RuleProvider {

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
                new PitchAgainstFret(),
                new OctaveFret(),
                new OffNeck(),
                new SameString(),
                new BarLength(),
                new BendWidth(),
                new Legato(),
                new TieRule(),
                new ReachAndShift(),
                new WrongBox(),
                new LikelyString(),
                new ChordSymbolRule(),
                new OddOneOut(),
                new Spelling(),
                new LeadSheet());
    }
}
