package org.fretgloss.rule;

import java.util.List;

/** A set of rules, found by {@link java.util.ServiceLoader}; the built-in ones come the same way. */
public interface RuleProvider {

    /** The level of this interface. It rises when a rule built for an older level may no longer work. */
    int INTERFACE_LEVEL = 1;

    /** What the set is called in messages. */
    String name();

    /** The interface level the rules were built for; asked before the rules are. */
    int interfaceLevel();

    /** The rules, in the order in which their findings at one moment stand. */
    List<Rule> rules();
}
