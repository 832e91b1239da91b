package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.RepeatedKey;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.text.Words;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.MissingList;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/** Makes the tables of feeding: which store and group belongs to which holding and clamp. */
final class FeedFamily {
    private static final String NONE = "no herds are listed";

    /** What herds are fed that no clamp is called by, in normal form. */
    private static final Set<String> FED_ELSEWHERE =
            Set.of("grazing", "grazed grass", "pasture", "bought", "bought in", "purchased", "hay", "straw");

    private final PlanContext plan;
    private final ListRows herds;
    private final ListRows stocks;
    private final ListRows clamps;
    private final NameKey clampNames;
    private final MissingList noClamps;
    private final FeedHoldings holdings;

    private FeedFamily(PlanContext plan, FeedHoldings holdings) {
        this.plan = plan;
        this.herds = plan.rows(Herds.LIST);
        this.stocks = plan.rows(Stocks.LIST);
        this.clamps = plan.rows(Clamps.LIST);
        this.noClamps = new MissingList(clamps);
        this.clampNames = NameKey.of(clamps, Clamps.CLAMP);
        this.holdings = holdings;
    }

    static void build(PlanContext plan, FeedHoldings holdings) {
        new FeedFamily(plan, holdings).build();
    }

    private void build() {
        int[] everyStock = RowNumbers.rows(stocks.size());
        int[] everyHerd = RowNumbers.rows(herds.size());
        int[] clampOfHerd = Arrays.stream(everyHerd).map(this::clampOfHerd).toArray();
        int[] holdingOfHerd = keys(herds, Herds.HOLDING);
        int[] clampOfStore = Arrays.stream(everyStock).map(this::clampOfStock).toArray();
        tellTwice(clampOfStore);
        plan.add(
                FeedTables.STOCKS,
                new RowSources(stocks.size())
                        .with(Role.STOCK, stocks, everyStock)
                        .with(Keys.CLAMP_KEY, clampOfStore)
                        .with(Keys.FEED_HOLDING_KEY, keys(stocks, Stocks.HOLDING)),
                "no stocks are listed");
        plan.add(
                FeedTables.DEMAND,
                new RowSources(herds.size())
                        .with(Role.HERD, herds, everyHerd)
                        .with(Keys.CLAMP_KEY, clampOfHerd)
                        .with(Keys.FEED_HOLDING_KEY, holdingOfHerd),
                NONE);
        Map<Integer, Integer> firsts = new LinkedHashMap<>();
        for (int herd : everyHerd) {
            firsts.putIfAbsent(holdingOfHerd[herd], herd);
            slips(herd);
        }
        GroupsInTurn.tell(plan, holdingOfHerd);
        plan.add(
                FeedTables.BALANCE,
                new RowSources(firsts.size())
                        .with(Role.HERD, herds, ints(firsts.values().stream().toList()))
                        .with(
                                Keys.FEED_HOLDING_KEY,
                                ints(firsts.keySet().stream().toList())),
                NONE);
        int[] fed = Arrays.stream(clampOfHerd)
                .filter(key -> key > 0)
                .map(key -> key - 1)
                .distinct()
                .sorted()
                .toArray();
        plan.add(FeedTables.FACE, ClampJoin.rows(clamps, fed), "no group of stock names the clamp it is fed from");
    }

    /** Rows of one clamp are added up, and each by itself may be less than it holds. */
    private void tellTwice(int[] clampOfStore) {
        Map<Integer, List<Integer>> ofClamp = new LinkedHashMap<>();
        for (int stock = 0; stock < clampOfStore.length; stock++) {
            if (clampOfStore[stock] > 0) {
                ofClamp.computeIfAbsent(clampOfStore[stock], any -> new ArrayList<>())
                        .add(stock);
            }
        }
        for (List<Integer> same : ofClamp.values()) {
            if (same.size() > 1) {
                String cells = same.stream()
                        .flatMap(stock -> stocks.address(Stocks.STORE, stock).stream())
                        .map(CellAddress::toString)
                        .collect(Collectors.joining(", "));
                plan.findings()
                        .add(Finding.caution(
                                stocks.address(Stocks.STORE, same.get(1)).orElse(null),
                                "the clamp '" + stocks.text(Stocks.STORE, same.get(0)) + "' stands in " + same.size()
                                        + " rows of Stocks (" + cells + "), which are added up: see that no silage is"
                                        + " counted twice and that together they are no more than the clamp holds."));
            }
        }
    }

    private int[] keys(ListRows list, ColumnSpec holding) {
        return Arrays.stream(RowNumbers.rows(list.size()))
                .map(row -> holdings.key(list.text(holding, row)))
                .toArray();
    }

    private static int[] ints(List<Integer> numbers) {
        return numbers.stream().mapToInt(Integer::intValue).toArray();
    }

    private int clampOfHerd(int herd) {
        String name = herds.text(Herds.CLAMP, herd);
        if (name.isEmpty()) {
            return 0;
        }
        NameKey.Resolution found = resolve(herds.text(Herds.HOLDING, herd), name);
        if (found instanceof NameKey.Found one) {
            return one.row() + 1;
        }
        if (found instanceof NameKey.None && isStore(name)) {
            plan.findings()
                    .add(Finding.note(
                            herds.address(Herds.CLAMP, herd).orElse(null),
                            "'" + name
                                    + "' is a store on Stocks and no clamp: this group counts for the farm's feed, of which"
                                    + " all stores are added up, but for no clamp."));
            return 0;
        }
        if (found instanceof NameKey.None && FED_ELSEWHERE.contains(Words.normal(name))) {
            plan.findings()
                    .add(Finding.note(
                            herds.address(Herds.CLAMP, herd).orElse(null),
                            "'" + name
                                    + "' is taken for feed that lies in no clamp: this group counts for the farm, but for"
                                    + " no clamp. If nothing from the stores is fed to it, leave its row out."));
            return 0;
        }
        if (clamps.size() == 0) {
            noClamps.tell(
                    herds.address(Herds.CLAMP, herd).orElse(null),
                    "this group is fed from a clamp",
                    "no group counts for one",
                    plan.findings());
            return 0;
        }
        plan.findings()
                .add(Finding.stop(
                        herds.address(Herds.CLAMP, herd).orElse(null),
                        found instanceof NameKey.Ambiguous
                                ? "more than one clamp is called '" + name + "'; give each its own name. This group"
                                        + " counts for the farm, but for no clamp."
                                : "there is no clamp '" + name + "' in the clamp list; add it there or mend the name."
                                        + clampNames.meant(name)
                                        + " This group counts for the farm, but for no clamp."));
        return 0;
    }

    private boolean isStore(String name) {
        return IntStream.range(0, stocks.size())
                .anyMatch(stock -> NameKey.key(stocks.text(Stocks.STORE, stock)).equals(NameKey.key(name)));
    }

    /** A store that bears a clamp's name is that clamp; any other name is a stack of its own. */
    private int clampOfStock(int stock) {
        if (stocks.text(Stocks.KIND, stock).equals("bales")) {
            return 0;
        }
        NameKey.Resolution found = resolve(stocks.text(Stocks.HOLDING, stock), stocks.text(Stocks.STORE, stock));
        return found instanceof NameKey.Found one ? one.row() + 1 : 0;
    }

    private NameKey.Resolution resolve(String holding, String name) {
        NameKey.Resolution own = clampNames.resolve(holding, name);
        return own instanceof NameKey.None ? clampNames.resolve("", name) : own;
    }

    /** Two slips that a range alone explains badly. */
    private void slips(int herd) {
        if (herds.state(Herds.INTAKE, herd) == ListRows.State.IMPOSSIBLE
                && herds.unit(Herds.INTAKE, herd)
                        .filter(unit -> unit.isCompatible(Units.KG_DM.over(Units.D)))
                        .isPresent()) {
            plan.findings()
                    .add(Finding.stop(
                            herds.address(Herds.INTAKE, herd).orElse(null),
                            "an intake of " + Numbers.readable(herds.number(Herds.INTAKE, herd))
                                    + " kg dry matter a day: no animal eats so much; expected up to 30, usually under"
                                    + " 18. If it is fresh feed, write kg fresh/day in the header and the dry matter of"
                                    + " the feed in DM."));
        }
        if (herds.state(Herds.HEAD, herd) == ListRows.State.IMPOSSIBLE) {
            plan.findings()
                    .add(Finding.note(
                            herds.address(Herds.HEAD, herd).orElse(null),
                            "a group with no animals: leave its row out, or clear it, and the farm's balance is given"
                                    + " again."));
        }
    }

    /** The holdings of a workbook that has feed, numbered from 1 in order of appearance. */
    static final class FeedHoldings {
        private final Map<String, Integer> numbers = new HashMap<>();

        FeedHoldings(PlanContext plan) {
            add(plan.rows(org.rickyard.lists.Fields.LIST), org.rickyard.lists.Fields.HOLDING);
            add(plan.rows(Clamps.LIST), Clamps.HOLDING);
            add(plan.rows(Herds.LIST), Herds.HOLDING);
            add(plan.rows(Stocks.LIST), Stocks.HOLDING);
        }

        private void add(ListRows list, ColumnSpec holding) {
            RepeatedKey names = new RepeatedKey();
            for (int row = 0; row < list.size(); row++) {
                String name = names.of(list.text(holding, row));
                if (!name.isEmpty()) {
                    numbers.putIfAbsent(name, numbers.size() + 1);
                }
            }
        }

        /** The number of a holding; where only one is named, a blank means that one. */
        int key(String holding) {
            String name = NameKey.key(holding);
            if (name.isEmpty() && numbers.size() <= 1) {
                return 1;
            }
            return numbers.computeIfAbsent(name, n -> numbers.size() + 1);
        }
    }
}
