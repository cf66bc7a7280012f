package org.fretgloss;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.implement;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.fretgloss.checks.BuiltInChecks;
import org.fretgloss.marks.BuiltInMarks;
import org.fretgloss.page.RulePage;
import org.fretgloss.rule.Rule;
import org.fretgloss.rule.RuleProvider;

/** The order of the house. A rule here that matches nothing fails, so none can rot. */
@AnalyzeClasses(packages = "org.fretgloss", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.fretgloss.";

    /** Each uses those before it. */
    private static final List<String> ORDER = List.of("time", "pitch", "neck", "solo", "fingering", "analysis", "rule");

    /** All stand on the order, and none on another: marks and checks are found by the service loader alone. */
    private static final List<String> UPON_IT = List.of("marks", "checks", "page");

    private static final DescribedPredicate<JavaClass> AN_ARRAY =
            DescribedPredicate.describe("an array, whose elements can be set", JavaClass::isArray);

    @ArchTest
    static final ArchRule PACKAGES_DEPEND_ONE_WAY = layers();

    @ArchTest
    static final ArchRule MUSIC_TOUCHES_NO_FILE = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(RulePage.class.getName())
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "javax.xml..")
            .because("only a rule's page is read, from the class path")
            .allowEmptyShould(false);

    @ArchTest
    static final ArchRule MUSIC_PRINTS_NOTHING = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.allowEmptyShould(false);

    @ArchTest
    static final ArchRule STATIC_FIELDS_NEVER_CHANGE = fields().that()
            .areStatic()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should()
            .beFinal()
            .andShould()
            .notHaveRawType(AN_ARRAY)
            .allowEmptyShould(false);

    @ArchTest
    static final ArchRule TYPES_ARE_CLOSED = classes()
            .that()
            .areNotInterfaces()
            .and()
            .areNotAnonymousClasses()
            .should()
            .haveModifier(JavaModifier.FINAL)
            .because("a record, an enum or a final class cannot be changed by another; what is open is an interface")
            .allowEmptyShould(false);

    /** A final field may still hold what can be emptied: so each collection that one holds is asked to let go. */
    @ArchTest
    static void staticCollectionsNeverChange(JavaClasses classes) {
        List<JavaField> collections = classes.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
                .filter(field -> field.getRawType().isAssignableTo(Collection.class)
                        || field.getRawType().isAssignableTo(Map.class))
                .toList();
        assertThat(collections)
                .isNotEmpty()
                .allSatisfy(field -> assertThatThrownBy(() -> empty(field))
                        .as(field.getFullName())
                        .isInstanceOf(UnsupportedOperationException.class));
    }

    private static void empty(JavaField field) throws IllegalAccessException {
        Field actual = field.reflect();
        actual.setAccessible(true);
        if (actual.get(null) instanceof Map<?, ?> map) {
            map.clear();
        } else if (actual.get(null) instanceof Collection<?> collection) {
            collection.clear();
        }
    }

    @ArchTest
    static final ArchRule RULES_KEEP_NO_STATE = fields().that()
            .areDeclaredInClassesThat(implement(Rule.class).and(resideInAnyPackage(ROOT + "marks", ROOT + "checks")))
            .should()
            .beStatic()
            .allowEmptyShould(false);

    @ArchTest
    static void everyMarkIsBuiltIn(JavaClasses classes) {
        assertProvides(new BuiltInMarks(), "marks", classes);
    }

    @ArchTest
    static void everyCheckIsBuiltIn(JavaClasses classes) {
        assertProvides(new BuiltInChecks(), "checks", classes);
    }

    private static void assertProvides(RuleProvider provider, String folder, JavaClasses classes) {
        List<String> rules = classes.stream()
                .filter(implement(Rule.class).and(resideInAPackage(ROOT + folder)))
                .filter(rule -> !rule.getModifiers().contains(JavaModifier.ABSTRACT))
                .map(JavaClass::getName)
                .toList();
        assertThat(provider.rules())
                .extracting(rule -> rule.getClass().getName())
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(rules);
    }

    private static LayeredArchitecture layers() {
        LayeredArchitecture layers = layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage(ROOT + ".")
                .withOptionalLayers(false)
                .ensureAllClassesAreContainedInArchitecture();
        for (int i = 0; i < ORDER.size(); i++) {
            layers = layer(layers, ORDER.get(i), ORDER.subList(0, i));
        }
        for (String layer : UPON_IT) {
            layers = layer(layers, layer, ORDER);
        }
        return layers.whereLayer("marks")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("checks")
                .mayNotBeAccessedByAnyLayer();
    }

    private static LayeredArchitecture layer(LayeredArchitecture layers, String name, List<String> below) {
        LayeredArchitecture.LayerDependencySpecification layer =
                layers.layer(name).definedBy(ROOT + name).whereLayer(name);
        return below.isEmpty() ? layer.mayNotAccessAnyLayer() : layer.mayOnlyAccessLayers(below.toArray(String[]::new));
    }
}
