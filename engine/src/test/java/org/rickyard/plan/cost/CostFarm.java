package org.rickyard.plan.cost;

import static org.rickyard.testing.SeasonBook.row;

import org.rickyard.testing.SeasonBook;

/** The farm whose costs are looked at. */
final class CostFarm {
    private CostFarm() {}

    /** All prices that costs ask for. */
    static final Object[][] PRICES = {
        row("Wage", 15, "£/h"),
        row("Fuel price", 0.9, "£/L"),
        row("Interest rate", 6, "%"),
        row("Insurance and housing", 1, "%"),
        row("Loads in the carting simulation", 500, null)
    };

    /** One field, an own mower behind a tractor and a hired rake, with a job each. */
    static SeasonBook farm(Object basis, Object charge, Object[]... prices) {
        Object[][] assumptions = new Object[prices.length + 1][];
        assumptions[0] = row("Item", "Value", "Unit");
        System.arraycopy(prices, 0, assumptions, 1, prices.length);
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis"),
                        row("Hill Top", "Long Acre", "grass", 12, 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price",
                                "List price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Hours now (h)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Charge includes",
                                "Fuel (L/h)"),
                        row(
                                "Mower",
                                "mower",
                                3,
                                10,
                                80,
                                null,
                                null,
                                10000,
                                12000,
                                1000,
                                10,
                                100,
                                500,
                                "own",
                                charge,
                                "ha",
                                "everything"),
                        row(
                                "Rake",
                                "rake",
                                6,
                                10,
                                80,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                "hired",
                                20,
                                "ha",
                                "everything",
                                5),
                        row("Old red", "tractor", null, null, null, 75, basis, 40000, 60000, 10000, 15, 400))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Cut", "grass", "mow", "Mower", "Old red"),
                        row("Row up", "grass", "rake", "Rake", null))
                .sheet("Assumptions", assumptions);
    }
}
