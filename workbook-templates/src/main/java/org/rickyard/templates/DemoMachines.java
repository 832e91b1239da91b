package org.rickyard.templates;

import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The machines of the demo, an Excel table. The group shares them, so no farm stands beside them. */
final class DemoMachines {
    private DemoMachines() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        ClientSheet sheet = new ClientSheet(
                        workbook,
                        looks,
                        "Machines",
                        "Machines of the group",
                        "Payloads are what the trailers carry of wilted grass on the road, within plate and law.")
                .words("Machine", 21)
                .words("Type", 18)
                .number("Number", 9, 0)
                .number("Working width (m)", 10, 1)
                .number("Speed (km/h)", 9, 1)
                .number("Field efficiency (%)", 11, 0)
                .number("Turn time (s)", 9, 0)
                .number("Output (t/h)", 9, 0)
                .number("Output (m3/h)", 9, 0)
                .words("Output basis", 11)
                .number("Payload (t)", 9, 1)
                .number("Body volume (m3)", 9, 1)
                .number("Mass (t)", 8, 1)
                .number("Power (kW)", 8, 0)
                .words("Power basis", 9)
                .number("Fuel (L/h)", 8, 0)
                .number("Crew", 7, 0)
                .number("Tank (L)", 8, 0)
                .number("Usable tank (L)", 8, 0)
                .number("Rinse tank (L)", 8, 0)
                .number("Residual (L)", 9, 0)
                .number("Number of nozzles", 9, 0)
                .number("Nozzle spacing (m)", 9, 2)
                .words("Nozzle size", 8)
                .number("Lowest pressure (bar)", 10, 1)
                .number("Highest pressure (bar)", 10, 1)
                .words("Spray quality", 10)
                .day("Last tested")
                .number("Fill time (min)", 8, 0)
                .number("Priming (L)", 8, 0)
                .number("Move time (min)", 8, 0)
                .number("Cleaning time (min)", 9, 0)
                .number("Road speed laden (km/h)", 11, 0)
                .number("Road speed empty (km/h)", 11, 0)
                .number("Hours per day (h)", 9, 0)
                .words("Own or hired", 8)
                .number("Charge", 8, 0)
                .words("Charge unit", 8)
                .words("Charge includes", 11)
                .number("List price", 10, 0)
                .number("Purchase price", 10, 0)
                .number("Trade-in value", 10, 0)
                .number("Age (yr)", 7, 0)
                .number("Hours now (h)", 8, 0)
                .number("Life (yr)", 7, 0)
                .number("Hours per year (h)", 8, 0);
        machines().forEach(machine -> sheet.row(machine.cells));
        sheet.asTable("Machines").finish(1);
    }

    private static List<Machine> machines() {
        return List.of(
                machine("Mower 3.2 m", "mower", 1, 3.2, 12, 80, null)
                        .hours(10)
                        .owned(14_500, 12_800, 5_500, 3, 240, 9, 85)
                        .contractorAsks(34, "ha", "everything"),
                machine("Tedder 7.6 m", "tedder", 1, 7.6, 10, null, 20)
                        .hours(8)
                        .owned(13_200, 12_000, 5_000, 4, 190, 10, 55),
                machine("Rake 7 m", "rake", 1, 7.0, 11, 80, null).hours(9).owned(16_800, 15_000, 6_000, 2, 110, 10, 55),
                machine("Forager", "forager", 1, 7.0, 8, 70, null)
                        .output(60)
                        .mass(11.5)
                        .power(330)
                        .fuel(62, 1)
                        .hours(10)
                        .hired(165, "ha", "everything"),
                machine("Trailer 12 t", "trailer", 3, null, null, null, null)
                        .load(12, 38.0)
                        .fuel(13, 1)
                        .road(25, 32)
                        .owned(21_000, 18_500, 8_000, 6, 900, 15, 150),
                machine("Trailer 8 t", "trailer", 1, null, null, null, null)
                        .load(8, 24.0)
                        .fuel(10, 1)
                        .road(22, 28)
                        .owned(12_500, 7_000, 3_000, 14, 2_100, 12, 150),
                machine("Buckrake", "buckrake", 1, null, null, null, null)
                        .output(65)
                        .fuel(15, 1)
                        .hours(10)
                        .hired(52, "h", "everything"),
                machine("Loader", "loader", 1, null, null, null, null)
                        .output(80)
                        .load(null, 2.5)
                        .mass(9.2)
                        .power(100)
                        .fuel(14, 1)
                        .hours(10)
                        .hired(46, "h", "everything"),
                machine("Roller tractor", "clamp roller", 1, null, null, null, null)
                        .mass(12)
                        .fuel(14, 1)
                        .hours(10)
                        .hired(48, "h", "everything"),
                machine("Sprayer 24 m", "sprayer", 1, 24, 12, 65, null)
                        .mass(5.4)
                        .fuel(14, 1)
                        .tank(3000, 2900, 320, 25)
                        .nozzles(48, "04", 1.5, 5.0, "medium")
                        .tested(LocalDate.of(2024, 3, 12), 15)
                        .times(40, 12, 30)
                        .road(25, 30)
                        .hours(9)
                        .owned(64_000, 52_000, 22_000, 5, 980, 10, 180),
                machine("Sprayer 12 m", "sprayer", 1, 12, 8, 60, null)
                        .mass(1.1)
                        .tank(800, 760, 80, 12)
                        .nozzles(24, "03", 1.0, 4.0, "coarse")
                        .tested(LocalDate.of(2022, 2, 24), 12)
                        .times(15, 10, 25)
                        .road(20, 25)
                        .hours(8)
                        .owned(11_500, 6_000, 2_500, 11, 620, 10, 50),
                machine("Spreader 24 m", "fertiliser spreader", 1, 24, null, 70, null)
                        .load(3, null)
                        .road(20, 30)
                        .hours(9),
                machine("Digger 5 t", "excavator", 1, null, null, null, null)
                        .dig(25, "in ground")
                        .mass(5.2)
                        .power(32)
                        .fuel(6, 1)
                        .hours(8)
                        .hired(42, "h", "everything"),
                machine("Tractor 120 kW", "tractor", 1, null, null, null, null)
                        .mass(7.1)
                        .power(120)
                        .fuel(18, 1)
                        .road(28, 40)
                        .owned(118_000, 84_000, 40_000, 5, 4_200, 10, 750),
                machine("Tractor 85 kW", "tractor", 3, null, null, null, null)
                        .mass(4.9)
                        .power(85)
                        .fuel(12, 1)
                        .road(25, 35)
                        .owned(74_000, 41_000, 18_000, 9, 5_300, 10, 600));
    }

    private static Machine machine(
            String name, String type, Number number, Number width, Number speed, Number efficiency, Number turn) {
        return new Machine(name, type, number, width, speed, efficiency, turn);
    }

    /** One row of the table, by the groups of columns that go together. */
    private static final class Machine {
        private final Object[] cells = new Object[46];

        Machine(Object... first) {
            put(0, first);
        }

        Machine output(Number tonnes) {
            return put(7, tonnes);
        }

        Machine dig(Number cubicMetres, String basis) {
            return put(8, cubicMetres, basis);
        }

        Machine load(Number payload, Number volume) {
            return put(10, payload, volume);
        }

        Machine mass(Number tonnes) {
            return put(12, tonnes);
        }

        Machine power(Number kilowatts) {
            return put(13, kilowatts, "engine");
        }

        Machine fuel(Number litres, Number crew) {
            return put(15, litres, crew);
        }

        Machine tank(Number nominal, Number usable, Number rinse, Number residual) {
            return put(17, nominal, usable, rinse, residual);
        }

        Machine nozzles(Number count, String size, Number lowest, Number highest, String quality) {
            return put(21, count, 0.5, size, lowest, highest, quality);
        }

        Machine tested(LocalDate day, Number fillMinutes) {
            return put(27, day, fillMinutes);
        }

        Machine road(Number laden, Number empty) {
            return put(32, laden, empty);
        }

        Machine hours(Number perDay) {
            return put(34, perDay);
        }

        Machine times(Number primingLitres, Number moveMinutes, Number cleaningMinutes) {
            return put(29, primingLitres, moveMinutes, cleaningMinutes);
        }

        Machine hired(Number charge, String unit, String includes) {
            return put(35, "hired", charge, unit, includes);
        }

        /** What a contractor would charge for the work of an own machine. */
        Machine contractorAsks(Number charge, String unit, String includes) {
            return put(36, charge, unit, includes);
        }

        Machine owned(
                Number listPrice,
                Number paid,
                Number tradeIn,
                Number age,
                Number hoursNow,
                Number life,
                Number hoursPerYear) {
            put(35, "own");
            return put(39, listPrice, paid, tradeIn, age, hoursNow, life, hoursPerYear);
        }

        private Machine put(int from, Object... values) {
            System.arraycopy(values, 0, cells, from, values.length);
            return this;
        }
    }
}
