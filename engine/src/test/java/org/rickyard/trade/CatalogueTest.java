package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Checked;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.trade.catalogue.Catalogue;
import org.rickyard.trade.spraying.SprayCatalogue;

/** What every formula of the catalogue owes its reader. */
class CatalogueTest {

    private static boolean addsUp(Formula formula) {
        return formula.expr() instanceof Expr.Total
                || formula.expr() instanceof Expr.Count
                || formula.expr() instanceof Expr.Scale scale && scale.a() instanceof Expr.Total;
    }

    @Test
    void everyFormulaNamesItsSourceAndItsRangeOfValidity() {
        for (Formula formula : Catalogue.all()) {
            assertThat(formula.source().reference()).as(formula.id()).isNotBlank();
            assertThat(formula.validity()).as(formula.id()).isNotBlank();
        }
    }

    @Test
    void everyFormulaThatDoesMoreThanAddUpHasAWorkedExample() {
        Set<String> without = new TreeSet<>();
        for (Formula formula : Catalogue.all()) {
            if (!addsUp(formula) && formula.examples().isEmpty()) {
                without.add(formula.id());
            }
        }
        assertThat(without).isEmpty();
    }

    @Test
    void everyExampleGivesNothingButInputsOfItsFormula() {
        for (Formula formula : Catalogue.all()) {
            formula.examples().forEach(example -> {
                Set<Symbol> given = new LinkedHashSet<>(example.numbers().keySet());
                given.addAll(example.words().keySet());
                assertThat(formula.inputs()).as(formula.id()).containsAll(given);
            });
        }
    }

    /** Published volume classes begin below the least water volume that is let through, and are checked from there. */
    @Test
    void everyExampleStaysWithinThePossible() {
        for (Formula formula : Catalogue.all()) {
            if (formula.id().equals("volume-class")) {
                continue;
            }
            formula.examples().forEach(example -> example.numbers()
                    .forEach((symbol, number) -> assertThat(symbol.possible().contains(number))
                            .as("%s: %s = %s", formula.id(), symbol, number)
                            .isTrue()));
        }
    }

    @Test
    void oneNameMeansOneQuantity() {
        Map<String, Symbol> byName = new HashMap<>();
        for (Formula formula : Catalogue.all()) {
            Set<Symbol> symbols = new LinkedHashSet<>(formula.inputs());
            for (Symbol symbol : symbols) {
                Symbol before = byName.putIfAbsent(symbol.name(), symbol);
                assertThat(before == null
                                || before.equals(symbol)
                                || symbol.unit().isSameScale(before.unit()))
                        .as("'%s' of %s", symbol, formula.id())
                        .isTrue();
            }
        }
    }

    @Test
    void everyConstantAndTableHasANameOfItsOwnAndASource() {
        assertThat(Catalogue.constants()).extracting(Constant::name).doesNotHaveDuplicates();
        assertThat(Catalogue.tables()).extracting(ReferenceTable::name).doesNotHaveDuplicates();
        assertThat(Catalogue.constants())
                .allSatisfy(
                        constant -> assertThat(constant.source().reference()).isNotBlank());
        assertThat(Catalogue.tables())
                .isNotEmpty()
                .allSatisfy(table -> assertThat(table.source().reference()).isNotBlank());
    }

    @Test
    void theFirstSetIsThereUnderItsStableIds() {
        assertThat(Catalogue.all())
                .extracting(Formula::id)
                .contains(
                        "spot-work-rate",
                        "work-rate",
                        "hours",
                        "machine-hours",
                        "holding-hours",
                        "nozzle-output",
                        "total-spray-mix",
                        "area-per-tankful",
                        "full-tankfuls",
                        "part-tankful",
                        "product-total",
                        "product-per-full-tankful",
                        "product-in-part-tankful",
                        "packs",
                        "volume-class",
                        "clamp-volume",
                        "clamp-density",
                        "clamp-capacity",
                        "standing-crop",
                        "crop-ensiled",
                        "crop-in-clamp",
                        "clamp-fill",
                        "volume-in-ground",
                        "spoil-volume",
                        "spoil-mass",
                        "digging-hours");
    }

    @Test
    void resultsAreGivenForWhatTheFormulaIsAskedToGive() {
        for (Formula formula : Catalogue.all()) {
            assertThat(formula.result().possible().contains(Double.NaN)).isFalse();
            if (formula.result().type() == Symbol.Type.NUMBER) {
                assertThat(formula.expr().unit().isCompatible(formula.result().unit()))
                        .as(formula.id())
                        .isTrue();
            }
        }
    }

    @Test
    void manyExamplesAreOfOthersAndTheCountIsTold() {
        Map<Source.Standing, Integer> counts = new EnumMap<>(Source.Standing.class);
        for (Formula formula : Catalogue.all()) {
            Checked.counts(formula).forEach((standing, count) -> counts.merge(standing, count, Integer::sum));
        }
        System.out.println("worked examples by standing: " + counts + " over "
                + Catalogue.all().size() + " formulas");
        int published = counts.getOrDefault(Source.Standing.PUBLISHED, 0)
                + counts.getOrDefault(Source.Standing.PUBLISHED_SECOND_HAND, 0);
        // Derived ones have no such bound: geometry and the steps of a solve are pinned down by them, branch by branch.
        assertThat(published).isGreaterThan(360);
    }

    /** Each figure of others counts once, however many formulas it checks and whichever way round; derived ones all count. */
    @Test
    void inSprayingTheFiguresOfOthersOutnumberTheDerivedOnes() {
        Set<Set<String>> figures = new HashSet<>();
        int derived = 0;
        for (Formula formula : SprayCatalogue.FORMULAS) {
            for (WorkedExample example : formula.examples()) {
                switch (example.source().standing()) {
                    case PUBLISHED, PUBLISHED_SECOND_HAND -> figures.add(figure(formula, example));
                    case DERIVED -> derived++;
                    default -> {
                        // Common practice and memory stand for themselves.
                    }
                }
            }
        }
        System.out.println("spraying: " + figures.size() + " figures of others, " + derived + " derived examples");
        assertThat(figures).hasSizeGreaterThan(derived);
    }

    private static Set<String> figure(Formula formula, WorkedExample example) {
        Set<String> figure = new TreeSet<>(example.words().values());
        figure.add(example.source().reference());
        example.numbers().values().forEach(number -> figure.add(figure(number)));
        figure.add(
                example.answerWord() != null
                        ? example.answerWord()
                        : figure(example.answerUnit()
                                .convert(example.answer(), formula.result().unit())));
        return figure;
    }

    private static String figure(double number) {
        return String.format(Locale.ROOT, "%.6e", number);
    }
}
