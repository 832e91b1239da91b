package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.workbook.graft.CellLook;
import org.rickyard.workbook.graft.CellLook.Align;
import org.rickyard.workbook.graft.CellLook.Border;
import org.rickyard.workbook.graft.CellLook.Vertical;

/**
 * How our cells look, by role. Colour only repeats what words and places say already. Everything stands at the top of its
 * row, so that a line is read straight across however tall its longest cell makes it.
 */
final class Looks {
    private Looks() {}

    private static final String INK = "26332B";
    private static final String EARTH = "6B4E2E";
    private static final String LINK_BLUE = "1F4E79";
    private static final String WARNING = "9C2A10";
    private static final String STONE = "ECE7DC";
    private static final String STRAW = "FBF6E4";
    private static final String GRASS = "E3EFDF";
    private static final String MOSS = "B4C7AC";
    private static final String WHITE = "FFFFFF";
    private static final String LINE_GREEN = "3D5A45";

    static final CellLook TITLE =
            CellLook.of("Rickyard title").withBold().withSize(14).withFont(INK);
    static final CellLook CHECK =
            CellLook.of("Rickyard check").withBold().withFont(EARTH).withVertical(Vertical.TOP);
    static final CellLook CAUTION =
            CellLook.of("Rickyard caution").withFont(WARNING).withVertical(Vertical.TOP);
    static final CellLook CAUTION_WRAPPED = CAUTION.withWrap();
    static final CellLook LABEL = CellLook.of("Rickyard label")
            .withBold()
            .withFont(WHITE)
            .withFill(LINE_GREEN)
            .withBorder(Border.THIN)
            .withWrap()
            .withVertical(Vertical.CENTER);
    static final CellLook UNIT = CellLook.of("Rickyard unit")
            .withItalic()
            .withFont(INK)
            .withFill(STONE)
            .withBorder(Border.THIN)
            .withAlign(Align.CENTER)
            .withVertical(Vertical.TOP);
    static final CellLook WORDS = CellLook.of("Rickyard words")
            .withFont(INK)
            .withFill(STONE)
            .withBorder(Border.THIN)
            .withSize(8)
            .withWrap()
            .withVertical(Vertical.TOP);
    static final CellLook TOTAL =
            CellLook.of("Rickyard total").withBold().withFont(INK).withBorder(Border.BOTTOM);
    static final CellLook NAME =
            CellLook.of("Rickyard name").withFont(INK).withBorder(Border.THIN).withVertical(Vertical.TOP);
    /** A name that no cell may cut off: it tells lines apart, or is to be typed as it stands. */
    static final CellLook NAME_WRAPPED = NAME.withWrap();

    static final CellLook KEY = CellLook.of("Rickyard key")
            .withFont("7A7A7A")
            .withBorder(Border.THIN)
            .withNumberFormat("0")
            .withVertical(Vertical.TOP);
    static final CellLook INPUT = CellLook.of("Rickyard input")
            .withFont(LINK_BLUE)
            .withFill(STRAW)
            .withBorder(Border.THIN)
            .withVertical(Vertical.TOP);
    static final CellLook INPUT_WRAPPED = INPUT.withWrap();
    static final CellLook STEP =
            CellLook.of("Rickyard step").withFont(INK).withBorder(Border.THIN).withVertical(Vertical.TOP);
    static final CellLook RESULT = CellLook.of("Rickyard result")
            .withBold()
            .withFont(INK)
            .withFill(GRASS)
            .withBorder(Border.THIN)
            .withVertical(Vertical.TOP);
    /** A filled cell of a chart: darker than any other, so that it stands out in a print without colour. */
    static final CellLook BAR = CellLook.of("Rickyard bar")
            .withBold()
            .withFont(INK)
            .withFill(MOSS)
            .withBorder(Border.THIN)
            .withVertical(Vertical.TOP);

    static final CellLook BAR_WRAPPED = BAR.withWrap();

    static final CellLook SENTENCE = CellLook.of("Rickyard sentence")
            .withFont(EARTH)
            .withBorder(Border.THIN)
            .withVertical(Vertical.TOP);
    /** Words in a table of few rows, broken into lines so that none is cut off. */
    static final CellLook SENTENCE_WRAPPED = SENTENCE.withWrap();

    static final CellLook STEP_WRAPPED = STEP.withWrap();
    static final CellLook RESULT_WRAPPED = RESULT.withWrap();
    static final CellLook TEXT = CellLook.of("Rickyard text").withFont(INK).withVertical(Vertical.TOP);
    static final CellLook TEXT_WRAPPED = TEXT.withWrap();
    static final CellLook HEADING =
            CellLook.of("Rickyard heading").withBold().withSize(11).withFont(LINE_GREEN);
    static final CellLook CONSTANT = CellLook.of("Rickyard constant")
            .withFont(EARTH)
            .withFill(STRAW)
            .withBorder(Border.THIN)
            .withVertical(Vertical.TOP);
    /** A constant that is a fraction without end: a third is not told to the sixteenth place. */
    static final CellLook FRACTION = CONSTANT.withNumberFormat("0.00####");

    static final CellLook LINK =
            CellLook.of("Rickyard link").withFont(LINK_BLUE).withVertical(Vertical.TOP);

    /** The height a clamp is never filled above. */
    static final CellLook LIMIT = RESULT.withSize(16).withNumberFormat("0.00");
    /** Wall or earth in a drawn section: dark. */
    static final CellLook DRAWN_WALL =
            CellLook.of("Rickyard section").withFont(INK).withFill("5B5B5B");
    /** Settled silage: a middle tone with a mark of its own, so that a grey print tells it apart. */
    static final CellLook DRAWN_SETTLED =
            CellLook.of("Rickyard section").withFont(INK).withFill("B5C2A6").withAlign(Align.CENTER);
    /** Silage on the day: nearly white, dotted. */
    static final CellLook DRAWN_ON_DAY =
            CellLook.of("Rickyard section").withFont(INK).withFill("F4F1E6").withAlign(Align.CENTER);
    /** The line of the height not to be exceeded. */
    static final CellLook DRAWN_LIMIT =
            CellLook.of("Rickyard section").withBold().withFont(WARNING).withAlign(Align.CENTER);

    private static final List<CellLook> PLAIN = List.of(
            TITLE,
            CHECK,
            CAUTION,
            CAUTION_WRAPPED,
            LABEL,
            UNIT,
            WORDS,
            TOTAL,
            NAME,
            KEY,
            SENTENCE,
            TEXT,
            TEXT_WRAPPED,
            HEADING,
            LINK,
            INPUT,
            STEP,
            RESULT,
            CONSTANT,
            SENTENCE_WRAPPED,
            STEP_WRAPPED,
            RESULT_WRAPPED,
            year(INPUT),
            LIMIT,
            DRAWN_WALL,
            DRAWN_SETTLED,
            DRAWN_ON_DAY,
            DRAWN_LIMIT,
            BAR,
            NAME_WRAPPED,
            FRACTION,
            INPUT_WRAPPED,
            BAR_WRAPPED);

    /** A look with so many decimals shown, and a space after them so that a figure does not touch the words beside it. */
    static CellLook decimals(CellLook look, int decimals) {
        return look.withNumberFormat(
                switch (decimals) {
                    case FINEST -> FINE;
                    case 2 -> HUNDREDTHS;
                    default -> format(decimals);
                });
    }

    private static String format(int decimals) {
        return (decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals)) + "_ ";
    }

    /** Of what is told to the millilitre or gram. */
    private static final int FINEST = 3;
    /** A jug shows millilitres, a tank of 3,900 L does not. */
    private static final String FINE = "[>=1000]" + format(0) + ";[>=100]" + format(1) + ";" + format(FINEST);

    /** Nobody tips 222,000.00 L; areas and money of a farm keep their hundredths. */
    private static final String HUNDREDTHS = "[>=10000]" + format(0) + ";" + format(2);

    /** A look that shows a day, with the space after it that numbers have. */
    static CellLook day(CellLook look) {
        return look.withNumberFormat("yyyy-mm-dd_ ");
    }

    /** A look that shows a year, without a comma in it. */
    static CellLook year(CellLook look) {
        return look.withNumberFormat("0");
    }

    /** Every look our sheets may use, in a fixed order, so that the styles of a workbook do not depend on its data. */
    static List<CellLook> all() {
        List<CellLook> all = new ArrayList<>(PLAIN);
        for (CellLook look : List.of(INPUT, STEP, RESULT, CONSTANT, TOTAL)) {
            for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
                all.add(decimals(look, decimals));
            }
            all.add(day(look));
        }
        return all;
    }

    static final int MOST_DECIMALS = 4;

    /** The style number of each look in the client's workbook. */
    static final class Numbers {
        private final Map<CellLook, Integer> numbers = new LinkedHashMap<>();

        Numbers(Map<CellLook, Integer> numbers) {
            this.numbers.putAll(numbers);
        }

        int of(CellLook look) {
            Integer number = numbers.get(look);
            if (number == null) {
                throw new IllegalArgumentException("the look " + look + " was not asked for");
            }
            return number;
        }
    }
}
