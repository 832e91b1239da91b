package org.rickyard.trade.spraying;

import java.util.List;
import org.rickyard.formula.Source;

/** Publications that several formulas of spraying take figures from, and the one table that many are checked by. */
final class SpraySources {
    private SpraySources() {}

    static final Source ALBERTA = Source.published("Government of Alberta, Agdex 606-1, p. 10-11");
    static final Source FARM_PRESS =
            Source.published("Irish Independent / Farm Ireland, Useful formulae for working out"
                    + " nozzle selection, forward speed, application rate (farm press)");
    static final Source FACTSHEET = Source.published(
            "Calculating Spray Application Information, Canadian provincial fact sheet (issuing body not shown)");
    static final Source CROPWATCH = Source.published(
            "University of Nebraska-Lincoln CropWatch 2016, Setting the"
                    + " Sprayer Flow Rate for Non-Water Solutions: 28 % at 10.65 lb/gal is 2.982 lb a gallon, 75 lb in 25.151 gal");
    static final Source DUST =
            Source.published("US Army MD0173: 10 lb an acre of what is in a dust of 5 % are 200 lb of dust");
    static final Source EMULSION = Source.published(
            "US Army MD0173: 0.3 lb an acre of what is in an emulsion of 6 % at 8.34 lb/gal are 0.6 gal");
    static final Source FLORIDA =
            Source.published("University of Florida, UF00067504, table 1: 20 lb on 10 × 435 ft are 200 lb an acre");
    static final Source EXERCISE_3B =
            Source.published("Extension calibration exercise 3b: 30 GPA, 7 mph, 30 in; tips of 1.5 gpm want 9.9 mph");
    static final Source EXERCISE_7B =
            Source.published("Extension calibration exercise 7b: 300 gal tank, 40 GPA, 0.5 lb/ac from 2 lb/gal");
    static final Source PSD = Source.published("UK PSD, LERAP Equipment Accreditation: reference nozzle F110/1.2/3.0");
    static final Source GRAINEWS = Source.secondHand("Grainews, Nozzle colour and flow rate confusion (farm press)");
    static final Source TRADE = Source.secondHand("placedupro.com (French trade), worked example");

    /** A student repository: read in its own text, but of low standing, and so named as second hand. */
    static Source courseNotes(String question) {
        return Source.secondHand("GATE agricultural engineering notes, plant protection " + question);
    }

    /**
     * A cell of the Alberta table for nozzles 50 cm apart at 275 kPa.
     *
     * @param size size of the nozzle, 2 for 02
     * @param flow printed flow, L/min, to two places
     * @param speed km/h
     * @param rate printed rate, L/ac, the fraction dropped
     */
    record AlbertaCell(double size, double flow, double speed, double rate) {
        /** How far the exact rate of this flow may lie from the print: a dropped fraction, and the flow's rounding. */
        double tolerance() {
            return 1 + rate * 0.005 / flow;
        }
    }

    /** The whole table, row by row. It is drawn up in US gallons at 40 psi and then turned into litres. */
    static final List<AlbertaCell> ALBERTA_TABLE = List.of(
            new AlbertaCell(1, 0.38, 6, 30),
            new AlbertaCell(1, 0.38, 8, 22),
            new AlbertaCell(1, 0.38, 9, 20),
            new AlbertaCell(1, 0.38, 10, 18),
            new AlbertaCell(1.5, 0.57, 6, 45),
            new AlbertaCell(1.5, 0.57, 8, 34),
            new AlbertaCell(1.5, 0.57, 9, 30),
            new AlbertaCell(1.5, 0.57, 10, 27),
            new AlbertaCell(2, 0.75, 6, 60),
            new AlbertaCell(2, 0.75, 8, 45),
            new AlbertaCell(2, 0.75, 9, 40),
            new AlbertaCell(2, 0.75, 10, 36));
}
