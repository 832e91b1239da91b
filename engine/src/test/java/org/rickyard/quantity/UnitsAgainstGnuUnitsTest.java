package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every unit against the definitions that GNU units brings, asked in one call of that program. */
class UnitsAgainstGnuUnitsTest {
    @TempDir
    private Path folder;

    @Test
    void everyConstantHasAnExpressionHere() {
        assertThat(expressions().keySet()).isEqualTo(UnitConstants.all().keySet());
    }

    @Test
    void everyFactorAndDimensionIsThatOfGnuUnits() throws Exception {
        GnuUnits.required();
        Map<String, Unit> constants = new TreeMap<>(UnitConstants.all());
        constants.values().removeIf(unit -> !UnitConstants.isProportional(unit));
        List<String> questions = new ArrayList<>();
        constants.forEach((name, unit) -> {
            questions.add(expressions().get(name));
            questions.add(inBaseUnits(unit.dimension()));
        });
        List<String> answers = ask(questions);
        assertThat(answers).as("one number each, or a unit does not conform").hasSize(constants.size());
        SoftAssertions all = new SoftAssertions();
        int line = 0;
        for (Map.Entry<String, Unit> constant : constants.entrySet()) {
            double theirs = Double.parseDouble(answers.get(line++));
            double ours = constant.getValue().factor().toDouble();
            all.assertThat(Math.abs(ours - theirs))
                    .as("%s: %s, GNU units %s", constant.getKey(), ours, theirs)
                    .isLessThanOrEqualTo(1e-14 * theirs);
        }
        all.assertAll();
    }

    @Test
    void temperaturesAreThoseOfGnuUnits() throws Exception {
        GnuUnits.required();
        List<String> answers =
                ask(List.of("tempC(20)", "tempF", "tempF(14)", "tempC", "tempC(-40)", "K", "tempF(451)", "K"));
        double[] ours = {
            Units.CELSIUS.convert(20, Units.FAHRENHEIT),
            Units.FAHRENHEIT.convert(14, Units.CELSIUS),
            Units.CELSIUS.convert(-40, Units.KELVIN),
            Units.FAHRENHEIT.convert(451, Units.KELVIN)
        };
        double[] theirs = answers.stream().mapToDouble(Double::parseDouble).toArray();
        assertThat(theirs).containsExactly(ours, org.assertj.core.data.Offset.offset(1e-10));
    }

    private List<String> ask(List<String> questions) throws Exception {
        return GnuUnits.ask(folder, questions);
    }

    private static String inBaseUnits(Dimension dimension) {
        StringBuilder text = new StringBuilder("1");
        for (Dimension.Base base : Dimension.Base.values()) {
            if (dimension.exponent(base) != 0) {
                text.append(" (")
                        .append(
                                switch (base) {
                                    case LENGTH -> "m";
                                    case MASS -> "kg";
                                    case TIME -> "s";
                                    case TEMPERATURE -> "K";
                                    case MONEY -> "farmmoney";
                                    case DRY_MATTER -> "kgdrymatter";
                                    case PRODUCT -> "productunit";
                                    case SUBSTANCE -> "kgsubstance";
                                })
                        .append(")^(")
                        .append(dimension.exponent(base))
                        .append(')');
            }
        }
        return text.toString();
    }

    private static Map<String, String> expressions() {
        Map<String, String> units = new TreeMap<>();
        units.put("ONE", "1");
        units.put("PERCENT", "percent");
        units.put("PER_MILLE", "gram/kilogram");
        units.put("M", "meter");
        units.put("CM", "centimeter");
        units.put("MM", "millimeter");
        units.put("KM", "kilometer");
        units.put("FT", "foot");
        units.put("IN", "inch");
        units.put("YD", "yard");
        units.put("MILE", "mile");
        units.put("M2", "meter^2");
        units.put("HA", "hectare");
        units.put("AC", "intacre");
        units.put("M3", "meter^3");
        units.put("L", "liter");
        units.put("ML", "milliliter");
        units.put("GAL_UK", "brgallon");
        units.put("GAL_US", "usgallon");
        units.put("QT_UK", "brquart");
        units.put("QT_US", "usquart");
        units.put("PT_UK", "brpint");
        units.put("PT_US", "uspint");
        units.put("FL_OZ_UK", "brfluidounce");
        units.put("FL_OZ_US", "usfluidounce");
        units.put("FT3", "foot^3");
        units.put("YD3", "yard^3");
        units.put("KG", "kilogram");
        units.put("G", "gram");
        units.put("T", "tonne");
        units.put("LB", "pound");
        units.put("OZ", "ounce");
        units.put("CWT", "brhundredweight");
        units.put("CWT_US", "ushundredweight");
        units.put("LONG_TON", "longton");
        units.put("SHORT_TON", "shortton");
        units.put("KG_DM", "kgdrymatter");
        units.put("T_DM", "1000 kgdrymatter");
        units.put("PERCENT_DM", "percent kgdrymatter/kilogram");
        units.put("S", "second");
        units.put("MIN", "minute");
        units.put("H", "hour");
        units.put("D", "day");
        units.put("WEEK", "week");
        units.put("YR", "julianyear");
        units.put("KM_PER_H", "kilometer/hour");
        units.put("M_PER_S", "meter/second");
        units.put("MPH", "mile/hour");
        units.put("HA_PER_H", "hectare/hour");
        units.put("AC_PER_H", "intacre/hour");
        units.put("T_PER_H", "tonne/hour");
        units.put("M3_PER_H", "meter^3/hour");
        units.put("L_PER_HA", "liter/hectare");
        units.put("L_PER_MIN", "liter/minute");
        units.put("L_PER_H", "liter/hour");
        units.put("T_PER_HA", "tonne/hectare");
        units.put("T_DM_PER_HA", "1000 kgdrymatter/hectare");
        units.put("KG_PER_M3", "kilogram/meter^3");
        units.put("KG_DM_PER_M3", "kgdrymatter/meter^3");
        units.put("T_PER_M3", "tonne/meter^3");
        units.put("PA", "pascal");
        units.put("BAR", "bar");
        units.put("KPA", "kilopascal");
        units.put("MPA", "megapascal");
        units.put("PSI", "psi");
        units.put("NEWTON", "N");
        units.put("KN", "kN");
        units.put("LBF", "lbf");
        units.put("KW", "kilowatt");
        units.put("HP", "horsepower");
        units.put("PS", "metrichorsepower");
        units.put("KELVIN", "kelvin");
        units.put("CELSIUS", "tempC");
        units.put("FAHRENHEIT", "tempF");
        units.put("MONEY_UNIT", "farmmoney");
        units.put("PRODUCT_UNIT", "productunit");
        units.put("KG_SUBSTANCE", "kgsubstance");
        units.put("SUBSTANCE_DOSE", "kgsubstance/hectare");
        units.put("DOSE", "productunit/hectare");
        units.put("CONCENTRATION", "productunit/liter");
        return units;
    }
}
