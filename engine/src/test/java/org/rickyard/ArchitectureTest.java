package org.rickyard;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Set;

/** What the picture in DEVELOPERS.md promises about the engine: which way it leans, and what it does not lean on. */
@AnalyzeClasses(packages = "org.rickyard", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Classes that may use POI, each with its reason; the ordinary path of a run uses none of it. */
    private static final String MAY_USE_POI =
            // formulas for which the file stores no value are worked out by POI's evaluator, of which alone it has need
            "org\\.rickyard\\.workbook\\.follow\\.(EvaluatedBook|EvaluatedTable|CertainFunctions)(\\$.*)?";

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("quantity")
            .definedBy("org.rickyard.quantity..")
            .layer("formula")
            .definedBy("org.rickyard.formula..")
            .layer("trade")
            .definedBy("org.rickyard.trade..")
            .layer("lists")
            .definedBy("org.rickyard.lists..")
            .layer("plan")
            .definedBy("org.rickyard.plan..")
            .layer("audit")
            .definedBy("org.rickyard.audit..")
            .layer("workbook")
            .definedBy("org.rickyard.workbook..")
            .whereLayer("formula")
            .mayOnlyAccessLayers("quantity")
            .whereLayer("trade")
            .mayOnlyAccessLayers("formula", "quantity")
            .whereLayer("lists")
            .mayOnlyAccessLayers("trade", "formula", "quantity")
            .whereLayer("plan")
            .mayOnlyAccessLayers("lists", "trade", "formula", "quantity")
            .whereLayer("audit")
            .mayOnlyAccessLayers("plan", "lists", "trade", "formula", "quantity")
            .whereLayer("workbook")
            .mayOnlyAccessLayers("audit", "plan", "lists", "trade", "formula", "quantity")
            .whereLayer("quantity")
            .mayNotAccessAnyLayer()
            .because("a formula must be readable without knowing where its numbers come from or go");

    @ArchTest
    static final ArchRule FAMILIES_OF_TABLES_LEAN_ONE_WAY = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("table")
            .definedBy("org.rickyard.plan.table")
            .layer("join")
            .definedBy("org.rickyard.plan.join")
            .layer("fit")
            .definedBy("org.rickyard.plan.fit")
            .layer("silage")
            .definedBy("org.rickyard.plan.silage")
            .layer("spraying")
            .definedBy("org.rickyard.plan.spraying")
            .layer("workrate")
            .definedBy("org.rickyard.plan.workrate")
            .layer("season")
            .definedBy("org.rickyard.plan.season")
            .layer("cost")
            .definedBy("org.rickyard.plan.cost")
            .layer("plan")
            .definedBy("org.rickyard.plan")
            .whereLayer("table")
            .mayNotAccessAnyLayer()
            .whereLayer("join")
            .mayOnlyAccessLayers("table")
            .whereLayer("fit")
            .mayOnlyAccessLayers("join", "table")
            .whereLayer("silage")
            .mayOnlyAccessLayers("fit", "join", "table")
            .whereLayer("spraying")
            .mayOnlyAccessLayers("fit", "join", "table")
            .whereLayer("workrate")
            .mayOnlyAccessLayers("silage", "fit", "join", "table")
            .whereLayer("season")
            .mayOnlyAccessLayers("workrate", "fit", "join", "table")
            .whereLayer("cost")
            .mayOnlyAccessLayers("workrate", "silage", "fit", "join", "table")
            .because("what a table is must be readable without any family, and a family without those that read it");

    @ArchTest
    static final ArchRule PACKAGES_FORM_NO_RINGS =
            slices().matching("org.rickyard.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule A_WORKBOOK_IS_OPENED_READ_AND_WRITTEN_APART = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("xml")
            .definedBy("org.rickyard.workbook.xml")
            .layer("open")
            .definedBy("org.rickyard.workbook.open")
            .layer("notation")
            .definedBy("org.rickyard.workbook.notation")
            .layer("read")
            .definedBy("org.rickyard.workbook.read")
            .layer("meaning")
            .definedBy("org.rickyard.workbook.meaning")
            .layer("follow")
            .definedBy("org.rickyard.workbook.follow")
            .layer("graft")
            .definedBy("org.rickyard.workbook.graft")
            .layer("write")
            .definedBy("org.rickyard.workbook.write")
            .whereLayer("xml")
            .mayNotAccessAnyLayer()
            .whereLayer("notation")
            .mayNotAccessAnyLayer()
            .whereLayer("open")
            .mayOnlyAccessLayers("xml")
            .whereLayer("read")
            .mayOnlyAccessLayers("open", "xml", "notation")
            .whereLayer("meaning")
            .mayOnlyAccessLayers("read", "notation")
            .whereLayer("follow")
            .mayOnlyAccessLayers("read", "open", "xml", "notation")
            .whereLayer("graft")
            .mayOnlyAccessLayers("open", "xml")
            .whereLayer("write")
            .mayOnlyAccessLayers("graft", "open", "xml")
            .because("what is read must not rest on what is written, nor the other way about");

    @ArchTest
    static final ArchRule THE_READING_OF_XML_LEANS_ON_NOTHING = noClasses()
            .that()
            .resideInAPackage("org.rickyard.workbook.xml..")
            .should()
            .dependOnClassesThat(
                    resideInAPackage("org.rickyard..").and(not(resideInAPackage("org.rickyard.workbook.xml.."))));

    @ArchTest
    static final ArchRule LISTS_ARE_FOUND_FROM_WORDS_TO_ROWS = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("text")
            .definedBy("org.rickyard.lists.text")
            .layer("declared")
            .definedBy("org.rickyard.lists")
            .layer("header")
            .definedBy("org.rickyard.lists.header")
            .layer("table")
            .definedBy("org.rickyard.lists.table")
            .layer("read")
            .definedBy("org.rickyard.lists.read")
            .whereLayer("text")
            .mayNotAccessAnyLayer()
            .whereLayer("declared")
            .mayOnlyAccessLayers("text")
            .whereLayer("header")
            .mayOnlyAccessLayers("text", "declared")
            .whereLayer("table")
            .mayOnlyAccessLayers("text", "declared", "header")
            .whereLayer("read")
            .mayOnlyAccessLayers("text", "declared", "header", "table")
            .because(
                    "what a text says is read without knowing its list, and a list is declared once, however it is found");

    @ArchTest
    static final ArchRule POI_IS_USED_ONLY_WHERE_LISTED = noClasses()
            .that()
            .haveNameNotMatching(MAY_USE_POI)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.poi..", "org.apache.xmlbeans..", "org.openxmlformats..")
            .because("a workbook loaded through POI costs a second of start-up and loses what POI does not know");

    @ArchTest
    static final ArchRule ONLY_WORKBOOK_PACKAGES_KNOW_ZIP_AND_XML = noClasses()
            .that(not(resideInAPackage("org.rickyard.workbook..")))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.xml..", "java.util.zip..", "org.apache.commons.compress..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule THE_TRADE_TOUCHES_NO_FILE = noClasses()
            .that()
            .resideInAnyPackage("org.rickyard.quantity..", "org.rickyard.formula..", "org.rickyard.trade..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule NOTHING_ASKS_THE_CLOCK = noClasses()
            .should()
            .callMethodWhere(clockIsAsked())
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.time.Clock")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Date")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Calendar")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.TimeZone")
            .because("the same workbook must give the same bytes whenever and wherever it is run");

    @ArchTest
    static final ArchRule NOTHING_DEPENDS_ON_THE_MACHINES_LANGUAGE = noClasses()
            .should()
            .callMethodWhere(machineIsAsked())
            .because("a decimal comma or a dotless i must not find its way into a formula");

    @ArchTest
    static final ArchRule NOTHING_PRINTS_OR_ENDS_THE_PROGRAM = noClasses()
            .should()
            .accessFieldWhere(standardStream())
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Throwable.class, "printStackTrace")
            .because("the engine is a library: what is said, and where, is for its caller");

    @ArchTest
    static final ArchRule NAMES_SAY_WHAT_A_CLASS_IS = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager");

    @ArchTest
    static final ArchRule NO_STATE_IS_SHARED = classes()
            .should(new NoSharedState())
            .because("two workbooks worked out at once must know nothing of each other");

    private static DescribedPredicate<JavaCall<?>> clockIsAsked() {
        Set<Class<?>> dated =
                Set.of(LocalDate.class, LocalDateTime.class, Instant.class, ZonedDateTime.class, OffsetDateTime.class);
        return DescribedPredicate.describe("the clock or the time zone is asked", call -> {
            JavaClass owner = call.getTargetOwner();
            String name = call.getName();
            return name.equals("now") && dated.stream().anyMatch(owner::isEquivalentTo)
                    || owner.isEquivalentTo(ZoneId.class) && name.equals("systemDefault")
                    || owner.isEquivalentTo(System.class)
                            && (name.equals("currentTimeMillis") || name.equals("nanoTime"));
        });
    }

    /** Calls that take the locale or the character set from the machine because none is given. */
    private static DescribedPredicate<JavaCall<?>> machineIsAsked() {
        return DescribedPredicate.describe("the machine's locale or character set is asked", call -> {
            JavaClass owner = call.getTargetOwner();
            String name = call.getName();
            var parameters = call.getTarget().getRawParameterTypes();
            boolean none = parameters.isEmpty();
            boolean localeFirst = !none && parameters.get(0).isEquivalentTo(java.util.Locale.class);
            if (owner.isEquivalentTo(String.class)) {
                return none && (name.equals("toLowerCase") || name.equals("toUpperCase") || name.equals("getBytes"))
                        || name.equals("formatted")
                        || name.equals("format") && !localeFirst;
            }
            return owner.isEquivalentTo(java.util.Locale.class) && name.equals("getDefault")
                    || owner.isEquivalentTo(java.nio.charset.Charset.class) && name.equals("defaultCharset");
        });
    }

    private static DescribedPredicate<JavaAccess<?>> standardStream() {
        return DescribedPredicate.describe(
                "a standard stream is used",
                access -> access.getTargetOwner().isEquivalentTo(System.class)
                        && Set.of("out", "err", "in").contains(access.getName()));
    }
}
