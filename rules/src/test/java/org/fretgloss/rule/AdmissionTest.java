package org.fretgloss.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fretgloss.rule.Rules.provider;
import static org.fretgloss.rule.Rules.rule;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fretgloss.analysis.Analysis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AdmissionTest {

    private static final Rule SILENT = rule("silent", solo -> Stream.empty());

    @Test
    void asksForTheInterfaceLevelBeforeTheRules() {
        RuleProvider newer = new RuleProvider() {
            @Override
            public String name() {
                return "newer rules";
            }

            @Override
            public int interfaceLevel() {
                return INTERFACE_LEVEL + 1;
            }

            @Override
            public List<Rule> rules() {
                throw new AssertionError("asked too soon");
            }
        };
        Rulebook rulebook = Rulebook.of(newer, provider(SILENT));
        assertThat(rulebook.rules()).containsExactly(SILENT);
        assertThat(rulebook.refused()).singleElement().satisfies(refused -> {
            assertThat(refused.provider()).isEqualTo("newer rules");
            assertThat(refused.reason()).contains("interface level 2").contains("level 1");
        });
    }

    @Test
    void refusesASecondRuleOfOneId() {
        Rule again = rule("silent", solo -> Stream.empty());
        Rulebook rulebook = Rulebook.of(provider(SILENT), provider("their rules", 1, again));
        assertThat(rulebook.rules()).containsExactly(SILENT);
        assertThat(rulebook.refused())
                .containsExactly(new RefusedRules("their rules", "the rule id 'silent' is taken by our rules"));
    }

    @Test
    void refusesWhatIsNoRuleId() {
        assertThat(Rulebook.of(provider(rule("No Id", solo -> Stream.empty()))).refused())
                .extracting(RefusedRules::reason)
                .containsExactly("'No Id' is no rule id: lower-case words joined by hyphens are");
    }

    @Test
    void refusesTwoOptionsOfOneName() {
        Rule twice = new Rule() {
            @Override
            public String id() {
                return "twice";
            }

            @Override
            public List<Option<?>> options() {
                return List.of(Option.ofFlag("threshold", true, "takes the name that every rule has"));
            }

            @Override
            public Line line() {
                return Line.NOTES;
            }

            @Override
            public Stream<Finding> examine(Analysis analysis, Settings settings) {
                return Stream.empty();
            }
        };
        assertThat(Rulebook.of(provider(twice)).refused())
                .extracting(RefusedRules::reason)
                .containsExactly("the rule 'twice' declares two options of one name");
    }

    @Test
    void aProviderThatThrowsDoesNotStopTheOthers() {
        Rule nameless = new Rule() {
            @Override
            public String id() {
                throw new IllegalStateException("no id today");
            }

            @Override
            public Line line() {
                return Line.NOTES;
            }

            @Override
            public Stream<Finding> examine(Analysis analysis, Settings settings) {
                return Stream.empty();
            }
        };
        Rulebook rulebook = Rulebook.of(provider("broken rules", 1, nameless), provider(SILENT));
        assertThat(rulebook.rules()).containsExactly(SILENT);
        assertThat(rulebook.refused()).extracting(RefusedRules::provider).containsExactly("broken rules");
    }

    @Test
    void goesOnWhereAServiceFileNamesAClassThatIsGone(@TempDir Path folder) throws IOException {
        Path services = Files.createDirectories(folder.resolve("META-INF/services"));
        Files.writeString(
                services.resolve(RuleProvider.class.getName()),
                "org.example.Gone\n" + LoadedProvider.class.getName() + "\n");
        URL[] path = {folder.toUri().toURL()};
        try (URLClassLoader loader = new URLClassLoader(path, getClass().getClassLoader())) {
            Rulebook rulebook = Rulebook.load(loader);
            assertThat(rulebook.rules()).extracting(Rule::id).contains("loaded");
            assertThat(rulebook.refused())
                    .singleElement()
                    .satisfies(refused -> assertThat(refused.reason()).contains("org.example.Gone"));
        }
    }

    /** Found through the service file that the test writes. */
    public static final class LoadedProvider implements RuleProvider {

        @Override
        public String name() {
            return "loaded rules";
        }

        @Override
        public int interfaceLevel() {
            return INTERFACE_LEVEL;
        }

        @Override
        public List<Rule> rules() {
            return List.of(rule("loaded", solo -> Stream.empty()));
        }
    }
}
