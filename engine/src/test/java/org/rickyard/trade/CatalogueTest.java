package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
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
import org.rickyard.trade.catalogue.Catalogue;

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

    /** Parts of longer reckonings of spraying, tried only on whole sheets; each should get an example of its own. */
    private static final Set<String> WITHOUT_EXAMPLE = Set.of(
            "time-spraying",
            "time-turning",
            "time-filling",
            "time-fetching",
            "time-moving",
            "time-cleaning",
            "time-beside-filling",
            "area-times-round",
            "label-quality-place",
            "nozzle-quality-place",
            "spray-on-field",
            "mix-with-priming",
            "product-on-field",
            "days-since-last",
            "days-to-harvest",
            "record-items",
            "spray-density",
            "nozzle-colour",
            "spray-quality-known",
            "preferred-pressure",
            "nozzle-group",
            "nozzle-order",
            "nozzle-rank",
            "nozzle-mean",
            "test-pressure-fits",
            "water-carted",
            "compared-work-rate",
            "window-days",
            "window-fit",
            "wind-at-boom",
            "concentration-factor",
            "flow-per-side");

    @Test
    void everyFormulaThatDoesMoreThanAddUpHasAWorkedExample() {
        Set<String> without = new TreeSet<>();
        for (Formula formula : Catalogue.all()) {
            if (!addsUp(formula) && formula.examples().isEmpty()) {
                without.add(formula.id());
            }
        }
        assertThat(without).isEqualTo(new TreeSet<>(WITHOUT_EXAMPLE));
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
        assertThat(published).isGreaterThan(125);
    }
}
