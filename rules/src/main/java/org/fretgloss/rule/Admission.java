package org.fretgloss.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.Spliterator;
import java.util.function.Supplier;

/** Takes providers' rules into a rulebook, and writes down why where it cannot: a bad provider never stops the others. */
final class Admission {

    /**
     * A rule that was taken.
     *
     * @param id asked once
     * @param line asked once
     * @param rule the rule
     * @param provider the name of its set
     */
    record Entry(String id, Line line, Rule rule, String provider) {}

    private static final String KEBAB_CASE = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

    /** The search goes on after a failure; should it fail for ever, it ends here. */
    private static final int MOST_FAILURES = 100;

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<RefusedRules> refused = new ArrayList<>();

    /** Takes what a service loader finds; what it cannot load is refused, and the search goes on. */
    void admitAll(ServiceLoader<RuleProvider> services) {
        Spliterator<ServiceLoader.Provider<RuleProvider>> providers =
                services.stream().spliterator();
        boolean more = true;
        int failures = 0;
        while (more && failures < MOST_FAILURES) {
            try {
                more = providers.tryAdvance(provider -> admit(provider.type().getName(), provider));
            } catch (ServiceConfigurationError e) {
                refuse("an unknown provider", "it could not be loaded: " + e.getMessage());
                failures++;
            }
        }
    }

    /**
     * Asks a provider for its rules, its interface level first.
     *
     * @param origin what the provider is called where it cannot even be made
     */
    void admit(String origin, Supplier<? extends RuleProvider> source) {
        String name = origin;
        try {
            RuleProvider provider = source.get();
            name = provider.name();
            int level = provider.interfaceLevel();
            if (level != RuleProvider.INTERFACE_LEVEL) {
                refuse(
                        name,
                        "its rules are built for interface level " + level + ", and this is level "
                                + RuleProvider.INTERFACE_LEVEL + ": take a version of them for this level");
                return;
            }
            for (Rule rule : provider.rules()) {
                admit(name, rule);
            }
        } catch (RuntimeException | LinkageError | ServiceConfigurationError e) {
            refuse(name, "it could not be asked for its rules: " + e);
        }
    }

    private void admit(String provider, Rule rule) {
        String id = rule.id();
        Entry holder = entries.get(id);
        if (!id.matches(KEBAB_CASE)) {
            refuse(provider, "'" + id + "' is no rule id: lower-case words joined by hyphens are");
        } else if (holder != null) {
            refuse(provider, "the rule id '" + id + "' is taken by " + holder.provider());
        } else if (repeatsAnOption(rule)) {
            refuse(provider, "the rule '" + id + "' declares two options of one name");
        } else {
            entries.put(id, new Entry(id, Objects.requireNonNull(rule.line(), "a rule has a line"), rule, provider));
        }
    }

    private static boolean repeatsAnOption(Rule rule) {
        Set<String> names = new HashSet<>(Set.of(Rule.THRESHOLD.name()));
        return !rule.options().stream().allMatch(option -> names.add(option.name()));
    }

    private void refuse(String provider, String reason) {
        refused.add(new RefusedRules(provider, reason));
    }

    List<Entry> entries() {
        return List.copyOf(entries.values());
    }

    List<RefusedRules> refused() {
        return List.copyOf(refused);
    }
}
