package org.fretgloss.annotator;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLInputFactory;
import org.jspecify.annotations.NullMarked;

/** The order of the packages: one way through the house, never back. A rule here that matches nothing fails. */
@AnalyzeClasses(packages = "org.fretgloss", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.fretgloss.annotator";
    private static final String FILE = ROOT + ".file";
    private static final String NAMES = ROOT + ".names";
    private static final String READ = ROOT + ".read";
    private static final String WRITE = ROOT + ".write";
    private static final String CONFIG = ROOT + ".config";
    private static final String REPORT = ROOT + ".report";
    private static final String CLI = ROOT + ".cli";

    private static final String RULES = "rules";
    private static final String ANNOTATOR = ROOT + "..";

    /** Each library to the packages that use it. */
    private static final Map<String, Set<String>> HOMES = Map.of(
            "org.audiveris..", Set.of(READ),
            "jakarta.xml.bind..", Set.of(READ),
            "com.ctc.wstx..", Set.of(FILE),
            "org.apache.commons.compress..", Set.of(FILE),
            "org.tomlj..", Set.of(CONFIG),
            "com.google.gson..", Set.of(REPORT, WRITE),
            "picocli..", Set.of(CLI));

    private static final DescribedPredicate<JavaClass> MUSIC = describe(
            "of the module rules",
            type -> type.getPackageName().startsWith("org.fretgloss.")
                    && !type.getPackageName().startsWith(ROOT));

    private static final DescribedPredicate<JavaClass> AN_ARRAY = describe("an array", JavaClass::isArray);

    @ArchTest
    static final ArchRule PACKAGES_DEPEND_ONE_WAY = layers();

    @ArchTest
    static final ArchRule NO_CIRCLES =
            slices().matching("org.fretgloss.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule RULES_ARE_FOUND_AND_NOT_NAMED = noClasses()
            .that()
            .resideInAPackage(ANNOTATOR)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.fretgloss.marks..", "org.fretgloss.checks..")
            .because("the built-in rules come by the service loader, as everybody's rules do");

    /** A library that left its home, or that nobody uses any more, fails. */
    @ArchTest
    static void librariesStayAtHome(JavaClasses all) {
        assertThat(HOMES)
                .allSatisfy((library, homes) ->
                        assertThat(users(all, library)).as(library).isEqualTo(homes));
    }

    private static Set<String> users(JavaClasses all, String library) {
        return all.stream()
                .filter(type -> type.getDirectDependenciesFromSelf().stream()
                        .anyMatch(dependency -> resideInAPackage(library).test(dependency.getTargetClass())))
                .map(JavaClass::getPackageName)
                .collect(Collectors.toSet());
    }

    @ArchTest
    static final ArchRule ONE_PARSER_ONLY = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.xml.parsers..", "javax.xml.transform..", "org.xml.sax..", "org.w3c.dom..")
            .because("every byte goes through the one parser whose places are right and whose bounds are set");

    @ArchTest
    static final ArchRule THE_PARSER_IS_NOT_LOOKED_UP = noClasses()
            .should()
            .callMethodWhere(describe(
                    "a look-up of a parser",
                    call -> call.getTargetOwner().isEquivalentTo(XMLInputFactory.class)
                            && call.getName().matches("new.*Factory|newInstance")));

    @ArchTest
    static final ArchRule NOTHING_IS_FETCHED = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net.http..", "javax.net..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.net.Socket")
            .orShould()
            .callMethod(java.net.URL.class, "openConnection")
            .orShould()
            .callMethod(java.net.URL.class, "openStream");

    @ArchTest
    static final ArchRule ONLY_THE_CONSOLE_HAS_THE_STANDARD_STREAMS =
            noClasses().that().doNotHaveFullyQualifiedName(CLI + ".Console").should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule ONLY_THE_CONSOLE_READS_STANDARD_INPUT = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(CLI + ".Console")
            .should()
            .accessField(System.class, "in");

    @ArchTest
    static final ArchRule ONLY_MAIN_ENDS_THE_PROCESS = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(CLI + ".Main")
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class);

    @ArchTest
    static final ArchRule STATIC_FIELDS_NEVER_CHANGE = fields().that()
            .areStatic()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .beFinal()
            .andShould()
            .notHaveRawType(AN_ARRAY);

    @ArchTest
    static final ArchRule TYPES_ARE_CLOSED = classes()
            .that()
            .areNotInterfaces()
            .and()
            .areNotAnonymousClasses()
            .should()
            .haveModifier(JavaModifier.FINAL)
            .because("a record, an enum or a final class cannot be changed by another; what is open is an interface");

    @ArchTest
    static void everyPackageKeepsNullOut(JavaClasses all) {
        assertThat(all.stream().map(JavaClass::getPackage).distinct())
                .hasSizeGreaterThan(6)
                .allSatisfy(home -> assertThat(home.isAnnotatedWith(NullMarked.class))
                        .as(home.getName())
                        .isTrue());
    }

    private static LayeredArchitecture layers() {
        Map<String, List<String>> mayUse = new LinkedHashMap<>();
        mayUse.put(FILE, List.of(RULES));
        mayUse.put(NAMES, List.of(RULES));
        mayUse.put(READ, List.of(RULES, FILE, NAMES));
        mayUse.put(WRITE, List.of(RULES, FILE));
        mayUse.put(CONFIG, List.of(RULES, FILE, NAMES));
        mayUse.put(ROOT, List.of(RULES, FILE, READ, WRITE, CONFIG));
        mayUse.put(REPORT, List.of(RULES, CONFIG, ROOT));
        mayUse.put(CLI, List.of(RULES, FILE, NAMES, WRITE, CONFIG, ROOT, REPORT));
        LayeredArchitecture layers = layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("org.fretgloss..")
                .withOptionalLayers(false)
                .ensureAllClassesAreContainedInArchitecture()
                .layer(RULES)
                .definedBy(MUSIC)
                .whereLayer(RULES)
                .mayNotAccessAnyLayer();
        for (String layer : mayUse.keySet()) {
            layers = layers.layer(layer).definedBy(layer);
        }
        for (Map.Entry<String, List<String>> layer : mayUse.entrySet()) {
            layers = layers.whereLayer(layer.getKey())
                    .mayOnlyAccessLayers(layer.getValue().toArray(String[]::new));
        }
        return layers;
    }
}
