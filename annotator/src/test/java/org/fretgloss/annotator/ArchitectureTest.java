package org.fretgloss.annotator;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The order of the packages: one way through the house, never back. */
@AnalyzeClasses(packages = "org.fretgloss", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule ORDER = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("file")
            .definedBy("org.fretgloss.annotator.file")
            .layer("read")
            .definedBy("org.fretgloss.annotator.read")
            .layer("write")
            .definedBy("org.fretgloss.annotator.write")
            .layer("facade")
            .definedBy("org.fretgloss.annotator")
            .layer("report")
            .definedBy("org.fretgloss.annotator.report")
            .layer("cli")
            .definedBy("org.fretgloss.annotator.cli")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("facade")
            .mayOnlyBeAccessedByLayers("report", "cli")
            .whereLayer("write")
            .mayOnlyBeAccessedByLayers("facade", "report", "cli")
            .whereLayer("read")
            .mayOnlyBeAccessedByLayers("facade")
            .whereLayer("file")
            .mayOnlyBeAccessedByLayers("read", "write", "facade", "report", "cli");

    @ArchTest
    static final ArchRule NO_CIRCLES =
            slices().matching("org.fretgloss.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule THE_SCORE_MODEL_ENDS_AT_THE_READER = onlyIn("..annotator.read..", "org.audiveris..");

    @ArchTest
    static final ArchRule BINDING_ENDS_AT_THE_READER = onlyIn("..annotator.read..", "jakarta.xml.bind..");

    @ArchTest
    static final ArchRule OPTIONS_ARE_PARSED_IN_THE_COMMAND_LINE = onlyIn("..annotator.cli..", "picocli..");

    @ArchTest
    static final ArchRule ARCHIVES_ARE_OPENED_WITH_FILES =
            onlyIn("..annotator.file..", "org.apache.commons.compress..");

    @ArchTest
    static final ArchRule JSON_IS_FOR_REPORTS_AND_OUR_FIELD = noClasses()
            .that(not(resideInAPackage("..annotator.report..")).and(not(resideInAPackage("..annotator.write.."))))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.google.gson..");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_HAS_A_CONSOLE = noClasses()
            .that(not(resideInAPackage("..annotator.cli..")))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in");

    @ArchTest
    static final ArchRule NOTHING_MUTABLE_IS_STATIC =
            noFields().that().areStatic().should().notBeFinal();

    private static ArchRule onlyIn(String home, String library) {
        return noClasses()
                .that(not(resideInAPackage(home)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }
}
