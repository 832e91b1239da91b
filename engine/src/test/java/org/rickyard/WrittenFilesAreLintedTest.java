package org.rickyard;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.rickyard.run.Recalculation;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.graft.Graft;

/** No test has the engine write a workbook without the linter looking it over. */
@AnalyzeClasses(packages = "org.rickyard", importOptions = ImportOption.OnlyIncludeTests.class)
class WrittenFilesAreLintedTest {
    /** What makes inputs, what asks for a refusal, and the benchmark, whose files are measured and thrown away. */
    private static final List<String> EXEMPT = List.of(
            "org.rickyard.run.ListsAdded", "org.rickyard.workbook.graft.GraftTest", "org.rickyard.benchmark.Benchmark");

    private static final DescribedPredicate<JavaClass> WRITE_WORKBOOKS = DescribedPredicate.describe(
            "write workbooks",
            one -> !EXEMPT.contains(one.getName())
                    && one.getMethodCallsFromSelf().stream()
                            .anyMatch(call -> call.getName().equals("write")
                                    && (call.getTargetOwner().isEquivalentTo(Recalculation.class)
                                            || call.getTargetOwner().isEquivalentTo(Graft.class))));

    private static final ArchCondition<JavaClass> LINT_THEM = new ArchCondition<>("have the linter look them over") {
        @Override
        public void check(JavaClass one, ConditionEvents events) {
            boolean lints = one.getDirectDependenciesFromSelf().stream()
                    .anyMatch(dependency -> dependency.getTargetClass().isEquivalentTo(Linted.class));
            events.add(new SimpleConditionEvent(one, lints, one.getName() + (lints ? " lints" : " does not lint")));
        }
    };

    @ArchTest
    static final ArchRule THOSE_THAT_WRITE_LINT = classes()
            .that(WRITE_WORKBOOKS)
            .should(LINT_THEM)
            .because("what office programs repair in silence must be noticed here");
}
