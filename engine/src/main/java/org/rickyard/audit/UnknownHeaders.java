package org.rickyard.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Place;
import org.rickyard.lists.Products;
import org.rickyard.lists.header.Vocabulary;

/** Columns of the client's lists whose headers mean nothing here: a header a little off must not go unnoticed. */
final class UnknownHeaders {
    private static final int MOST_NAMED = 12;

    private static final Pattern OF_A_CUT = Pattern.compile(
            "(?i).*\\b(?:1st|2nd|3rd|4th|first|second|third|fourth)[ -]?cut\\b.*|.*\\bcut[ -]?[1-6]\\b.*");

    private static final Pattern MONEY_ALONE = Pattern.compile(
            "(?i)\\s*[£$€]\\s*(?:/|per\\b|an?\\b)\\s*(ha|hectare|ac|acre|h|hr|hour|t|tonne|ton|bale)\\s*");

    private static final Pattern NUTRIENT_OF_A_VOLUME = Pattern.compile(
            "(?i).*\\b(N|nitrogen|P2O5|phosphate|K2O|potash)\\b.*\\b(?:kg|g)\\s*(?:/|per)\\s*(?:m3|m³|L|litre)"
                    + "(?!\\w).*");

    private static final Pattern TURNS_OF_A_WHEEL =
            Pattern.compile("(?i).*\\bwheel\\b.*\\b(?:turns?|revs|revolutions?|circumference)\\b.*"
                    + "|.*\\b(?:turns|revs|revolutions|circumference) of\\b.*\\bwheel\\b.*");

    /** No sprayer puts on so much that it is counted in cubic metres; a slurry tanker does. */
    private static final Pattern CUBIC_METRES_OF_A_FIELD =
            Pattern.compile("(?i).*\\bm(?:3|³|\\^3)\\s*(?:/|per\\b)\\s*(?:ha|hectare|ac|acre)\\b.*");

    private UnknownHeaders() {}

    /** A note per list that has such columns. */
    static List<Finding> of(List<Place> places) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : places) {
            List<String> headers = place.unrecognised();
            if (headers.isEmpty()) {
                continue;
            }
            List<String> ofCuts = headers.stream()
                    .filter(header ->
                            OF_A_CUT.matcher(header.replace('\n', ' ')).matches())
                    .toList();
            if (place.list() == Fields.LIST && !ofCuts.isEmpty()) {
                findings.add(Finding.caution(
                        place.first(),
                        "what is told of single cuts beside the field is not read: "
                                + String.join(", ", ofCuts)
                                + ". Write it in a list Cuts, one row for each field and cut:"
                                + " Field, Cut, Yield, Yield basis, DM at ensiling, Clamp."));
            }
            String named = String.join(", ", headers.stream().limit(MOST_NAMED).toList());
            String more = Counted.andMore(headers.size() - MOST_NAMED);
            findings.add(Finding.note(
                    place.first(),
                    "not read as columns of " + place.list().name() + ": " + named + more
                            + ". If one of them is meant for this list, name it as About and the blank workbook do, or"
                            + " say on a sheet Layout (List | Column | Header in this workbook | Unit) which it is."
                            + waterOfJobs(place, headers)
                            + fuelOfMachines(place, headers)
                            + outputOfMachines(place, headers)
                            + chargeOfMachines(place, headers)
                            + turnsOfMachines(place, headers)
                            + nutrientOfProducts(place, headers)));
        }
        return findings;
    }

    /** Many keep the water volume beside the sprayer, but it belongs to each job. */
    private static String waterOfJobs(Place place, List<String> headers) {
        if (place.list() == Machines.LIST) {
            Optional<String> spread = headers.stream()
                    .filter(header -> CUBIC_METRES_OF_A_FIELD.matcher(header).matches())
                    .findFirst();
            if (spread.isPresent()) {
                return " \"" + spread.get() + "\" may be what is spread, which is the " + Jobs.DOSE.name()
                        + " of a job: with a row in a list Jobs for each field (Field, Operation, Machine, Product, Dose)"
                        + " its loads are worked out too.";
            }
        }
        return ofAnother(
                place,
                headers,
                Machines.LIST,
                Jobs.LIST,
                Jobs.WATER_VOLUME,
                "with a row there for each job of the sprayer, its spray and tankfuls are worked out too.");
    }

    /** Fuel is of the machine that burns it; a job may have several. */
    private static String fuelOfMachines(Place place, List<String> headers) {
        return ofAnother(
                place,
                headers,
                Jobs.LIST,
                Machines.LIST,
                Machines.FUEL,
                "what a machine or its tractor burns in an hour (or, if the header says so, on a hectare) is typed there"
                        + " once for all its jobs.");
    }

    /** What is got through in an hour is of the machine too; a job has its speed at most. */
    private static String outputOfMachines(Place place, List<String> headers) {
        return Stream.of(Machines.OUTPUT, Machines.RATE_OF_WORK)
                .map(column -> ofAnother(
                        place,
                        headers,
                        Jobs.LIST,
                        Machines.LIST,
                        column,
                        "what a machine gets through in an hour is typed there once for all its jobs."))
                .collect(Collectors.joining());
    }

    /** Money for a hectare may be what is paid for the machine, what it costs or what it earns. */
    private static String chargeOfMachines(Place place, List<String> headers) {
        return place.list() != Machines.LIST
                ? ""
                : headers.stream()
                        .filter(header -> MONEY_ALONE.matcher(header).matches())
                        .findFirst()
                        .map(header ->
                                " \"" + header + "\" names a unit and not what is counted in it: if the machine is"
                                        + " hired or charged out at that, write " + Machines.CHARGE.name() + " ("
                                        + header.strip()
                                        + ") in its place.")
                        .orElse("");
    }

    /** A drill is calibrated by turning its wheel, which headers tell in too many ways to know them all. */
    private static String turnsOfMachines(Place place, List<String> headers) {
        return place.list() != Machines.LIST
                ? ""
                : headers.stream()
                        .filter(header -> TURNS_OF_A_WHEEL.matcher(header).matches())
                        .findFirst()
                        .map(header -> " If \"" + header + "\" is of a calibration, call it "
                                + Machines.WHEEL_TURNS.name() + " or " + Machines.WHEEL_CIRCUMFERENCE.name()
                                + " (m or ft), whichever it is: with both, "
                                + Machines.TEST_WEIGHT.name()
                                + " and " + Machines.WORKING_WIDTH.name()
                                + " beside it the rate is worked out on a sheet"
                                + " Spreader tests.")
                        .orElse("");
    }

    /** Of slurry a laboratory counts by the cubic metre; a product holds a share. */
    private static String nutrientOfProducts(Place place, List<String> headers) {
        return place.list() != Products.LIST
                ? ""
                : headers.stream()
                        .filter(header -> NUTRIENT_OF_A_VOLUME.matcher(header).matches())
                        .findFirst()
                        .map(header -> " \"" + header
                                + "\" counts what a volume holds, and what a product holds is a share"
                                + " by weight: "
                                + Products.shareOfVolume(Products.NITROGEN.name() + " (%), " + Products.PHOSPHATE.name()
                                        + " (%) or " + Products.POTASH.name() + " (%)"))
                        .orElse("");
    }

    /** That a header in one list may be a column of another; empty if none may. */
    private static String ofAnother(
            Place place, List<String> headers, ListSpec here, ListSpec there, ColumnSpec column, String what) {
        if (place.list() != here) {
            return "";
        }
        Vocabulary vocabulary = new Vocabulary(there);
        return headers.stream()
                .filter(header -> vocabulary.columnsOf(header).contains(column))
                .findFirst()
                .map(header -> " \"" + header + "\" may be the " + column.name() + ", which is a column of "
                        + there.name() + ": " + what)
                .orElse("");
    }
}
