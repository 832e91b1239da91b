package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Range;

class ListDeclarationsTest {
    static Stream<Arguments> canonicalColumns() {
        return Stream.of(
                Arguments.of(
                        Fields.LIST,
                        "Holding|Field*|Crop|Area*|Block|Run length|Distance to clamp|Distance to fill"
                                + " point|Watercourse|Distance to watercourse|Overhead lines|Slope|Perimeter|Yield|Yield"
                                + " basis|DM at cutting|DM at ensiling|Clamp|Row spacing|Tree height|Tree width|Country|Notes|Tree spacing|Number of trees"),
                Arguments.of(
                        Cuts.LIST,
                        "Holding|Field|Crop|Cut*|Start|End|Yield|Yield basis|DM at cutting|DM at ensiling|Clamp"),
                Arguments.of(
                        Machines.LIST,
                        "Holding|Machine*|Type*|Number|Working width|Overlap|Speed|Lowest field speed|Highest field"
                                + " speed|Field efficiency|Turn time|Other lost time|Output|Output basis|Payload|Body"
                                + " volume|Load density|Round time|Mass|Unladen mass|Power|Power basis|Fuel|Crew|Tank|Usable tank|Rinse"
                                + " tank|Residual|Number of nozzles|Nozzle spacing|Nozzle size|Lowest pressure|Highest"
                                + " pressure|Spray quality|Last tested|Fill time|Priming|Move time|Cleaning time|Timed distance|Timed seconds|Test area|Test volume|Road speed laden|Road speed empty|Hours"
                                + " per day|Own or hired|Charge|Charge unit|Charge includes|List price|Purchase price|Trade-in"
                                + " value|Age|Hours now|Life|Hours per year|Rate of work|Rows|Row width|Nozzle flow|Total flow|Working pressure|Test weight|Pump flow|Wheel turns loaded|Wheel turns unloaded|Interest rate|Insurance and housing|Load distance|Draught"),
                Arguments.of(
                        Products.LIST,
                        "Product*|Unit|Dose|Highest dose|Highest total dose|Most applications|Least interval|Harvest"
                                + " interval|Latest stage|Lowest water volume|Highest water volume|Spray quality|Buffer"
                                + " category|Authorisation no.|Density|Pack size|Stock|Price|Nitrogen|Active content|Phosphate|Potash"),
                Arguments.of(Mixes.LIST, "Mix*|Product*|Dose*|Dose unit|Order in tank"),
                Arguments.of(
                        Jobs.LIST,
                        "Holding|Job|Field*|Operation*|Machine*|Tractor|Mix|Product|Dose|Dose unit|Water"
                                + " volume|Speed|Cut|Block|After|Lag|Earliest|Latest|Growth stage|Last harvest"
                                + " date|Workable days|Hours per day|Spray density|Band width|Wind speed|Wind height|Air"
                                + " temperature|Humidity|Days available"
                                + "|Active content|Nitrogen content|Phosphate content|Potash content"),
                Arguments.of(
                        Clamps.LIST,
                        "Holding|Clamp*|Kind*|Length*|Floor width*|Wall height*|Settled height|Batter|Ramps|Ramp run|"
                                + "Crown|Density, fresh|Density, dry matter|DM target|Roller mass|Layer|Delivery|"
                                + "Effluent tank|Distance to watercourse|Year built or enlarged|Country|Feed-out rate|"
                                + "Feeding season|Crown shape|Filled height|Overhead lines|Tank holds|Soil|Additive|Swell|Top width"),
                Arguments.of(Stocks.LIST, "Holding|Store*|Kind|Amount|Count|Weight each|DM|Date|Already fed"),
                Arguments.of(Herds.LIST, "Holding|Group*|Head*|Intake*|DM|Days|Start|End|Clamp"),
                Arguments.of(NozzleTest.LIST, "Sprayer*|Nozzle*|Flow*|Pressure|New flow|Holding"),
                Arguments.of(Assumptions.LIST, "Item*|Value*|Unit"),
                Arguments.of(Layout.LIST, "List*|Column*|Header in this workbook*|Unit"));
    }

    @ParameterizedTest
    @MethodSource("canonicalColumns")
    void columnsStandInCanonicalOrder(ListSpec list, String expected) {
        List<String> names = list.columns().stream()
                .map(column -> column.name() + (column.required() ? "*" : ""))
                .toList();
        assertThat(String.join("|", names)).isEqualTo(expected);
    }

    @Test
    void allListsAreThere() {
        assertThat(Lists.ALL.stream().map(ListSpec::name))
                .containsExactly(
                        "Fields",
                        "Cuts",
                        "Machines",
                        "Products",
                        "Mixes",
                        "Jobs",
                        "Clamps",
                        "Stocks",
                        "Herds",
                        "Nozzle test",
                        "Assumptions",
                        "Layout");
    }

    static Stream<ListSpec> lists() {
        return Lists.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void noHeaderMeansTwoColumnsOfOneList(ListSpec list) {
        Map<String, String> owner = new HashMap<>();
        List<String> clashes = new ArrayList<>();
        for (ColumnSpec column : list.columns()) {
            List<String> headers = new ArrayList<>(column.synonyms());
            headers.add(column.name());
            for (String header : headers) {
                String before = owner.putIfAbsent(HeaderText.normal(header), column.name());
                if (before != null && !before.equals(column.name())) {
                    clashes.add(header + ": " + before + ", " + column.name());
                }
            }
        }
        list.unclear().keySet().forEach(header -> {
            if (owner.containsKey(HeaderText.normal(header))) {
                clashes.add(header + " is both clear and unclear");
            }
        });
        assertThat(clashes).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void noWordMeansTwoChoicesOfOneColumn(ListSpec list) {
        for (ColumnSpec column : list.columns()) {
            Map<String, String> owner = new HashMap<>();
            column.choices().forEach((canonical, others) -> {
                List<String> all = new ArrayList<>(others);
                all.add(canonical);
                for (String word : all) {
                    String before = owner.putIfAbsent(Words.normal(word), canonical);
                    assertThat(before == null || before.equals(canonical))
                            .as("%s of %s: %s", word, column, before)
                            .isTrue();
                    assertThat(column.unclear()).doesNotContainKey(Words.normal(word));
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everyColumnHelpsThePersonWhoFillsItIn(ListSpec list) {
        assertThat(list.columns()).isNotEmpty().allSatisfy(column -> assertThat(column.help())
                .endsWith("."));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void whatIsUsualIsPossible(ListSpec list) {
        for (ColumnSpec column : list.columns()) {
            List<Symbol> symbols = new ArrayList<>(column.alternatives());
            symbols.add(column.symbol());
            for (Symbol symbol : symbols) {
                Range usual = symbol.usual();
                for (double bound : new double[] {usual.low() + (usual.lowOpen() ? 1e-9 : 0), usual.high()}) {
                    if (!usual.equals(Range.ANY)) {
                        assertThat(symbol.possible().contains(bound))
                                .as("%s of %s", bound, symbol)
                                .isTrue();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everyListKnowsWhatNamesARow(ListSpec list) {
        assertThat(list.identity()).isNotEmpty();
        assertThat(list.columns()).containsAll(list.identity());
        assertThat(list.columns()).containsAll(list.unitColumns().values());
        assertThat(list.columns()).containsAll(list.qualifiers().values());
    }
}
