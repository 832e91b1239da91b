package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.Arrays;
import java.util.OptionalDouble;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.open.SheetRef;

/** One pass through the rows of one sheet. Written to make no object for a cell that holds a number. */
final class CellReading {
    private static final char[] INLINE_TEXT = "inlineStr".toCharArray();
    private static final char[] FORMULA_TEXT = "str".toCharArray();

    private final PartXml xml;
    private final SheetRef sheet;
    private final SharedStrings strings;
    private final NumberFormats formats;
    private final Epoch epoch;
    private final TextPool pool;
    private final CellSink sink;
    private final FormulaReading formulas;

    private int row = -1;
    private int column;
    private Type type;
    private int style;

    private char[] value = new char[64];
    private int length;
    private boolean hasValue;
    private final SharedStrings.RichText inline = new SharedStrings.RichText();
    private boolean hasInline;

    private enum Type {
        NUMBER,
        SHARED,
        TEXT,
        LOGICAL,
        ERROR,
        DATE
    }

    CellReading(
            PartXml xml,
            SheetRef sheet,
            SharedStrings strings,
            NumberFormats formats,
            Epoch epoch,
            TextPool pool,
            CellSink sink) {
        this.xml = xml;
        this.sheet = sheet;
        this.strings = strings;
        this.formats = formats;
        this.epoch = epoch;
        this.pool = pool;
        this.sink = sink;
        this.formulas = new FormulaReading(xml, sink.wantsFormulaText(), sink::wantsShared);
    }

    /** From the start tag of the sheet data to its end tag. */
    void readRows() throws IOException {
        for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (isNamed("c")) {
                    readCell();
                } else if (isNamed("row")) {
                    int number = xml.attribute("r", 0);
                    row = number > 0 ? number - 1 : row + 1;
                    column = -1;
                    formulas.enterRow(row);
                    if (SheetStream.isTrue(xml.attribute("hidden"))) {
                        sink.hiddenRow(row);
                    }
                } else {
                    xml.skip();
                }
            } else if (event == XMLStreamConstants.END_ELEMENT && isNamed("sheetData")) {
                return;
            }
        }
    }

    private boolean isNamed(String name) {
        return xml.at.name().equals(name);
    }

    private void readCell() throws IOException {
        int rowOfCell = readAttributes();
        length = 0;
        hasValue = false;
        hasInline = false;
        formulas.clear();
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                if (isNamed("v")) {
                    readValue();
                } else if (isNamed("f")) {
                    formulas.read(rowOfCell, column);
                } else if (isNamed("is")) {
                    inline.clear();
                    inline.read(xml);
                    hasInline = true;
                } else {
                    xml.skip();
                }
            } else if (event == XMLStreamConstants.END_DOCUMENT) {
                return;
            }
        }
        if (CellReference.onGrid(rowOfCell, column)) {
            deliver(rowOfCell, formulas.formula(rowOfCell, column));
        }
    }

    /** Reads place, type and style; a cell without place stands right of the one before. Returns the cell's row. */
    private int readAttributes() {
        type = Type.NUMBER;
        style = 0;
        long place = -1;
        for (int i = 0; i < xml.at.attributes(); i++) {
            String name = xml.at.attributeName(i);
            if (name.length() != 1) {
                continue;
            }
            int start = xml.at.attributeStart(i);
            int end = xml.at.attributeEnd(i);
            switch (name.charAt(0)) {
                case 'r' -> place = CellReference.parse(xml.at.characters(), start, end);
                case 's' -> style = Math.max(0, WholeNumber.parse(xml.at.characters(), start, end));
                case 't' -> type = typeOf(xml.at.characters(), start, end);
                default -> {}
            }
        }
        column = place < 0 ? column + 1 : CellReference.column(place);
        return place < 0 ? row : CellReference.row(place);
    }

    private static Type typeOf(char[] text, int start, int end) {
        if (end - start == 1) {
            return switch (text[start]) {
                case 's' -> Type.SHARED;
                case 'b' -> Type.LOGICAL;
                case 'e' -> Type.ERROR;
                case 'd' -> Type.DATE;
                default -> Type.NUMBER;
            };
        }
        boolean isText = Arrays.equals(text, start, end, INLINE_TEXT, 0, INLINE_TEXT.length)
                || Arrays.equals(text, start, end, FORMULA_TEXT, 0, FORMULA_TEXT.length);
        return isText ? Type.TEXT : Type.NUMBER;
    }

    private void readValue() throws IOException {
        hasValue = true;
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            switch (event) {
                case XMLStreamConstants.CHARACTERS -> {
                    int added = xml.at.textLength();
                    if (length + added > value.length) {
                        value = Arrays.copyOf(value, Math.max(2 * value.length, length + added));
                    }
                    System.arraycopy(xml.at.characters(), xml.at.textStart(), value, length, added);
                    length += added;
                }
                case XMLStreamConstants.START_ELEMENT -> xml.skip();
                case XMLStreamConstants.END_DOCUMENT -> {
                    return;
                }
                default -> {}
            }
        }
    }

    private void deliver(int at, String formula) throws IOException {
        if (formulas.isArray()) {
            sink.arrayFormula();
        }
        if (hasInline) {
            give(at, Kind.TEXT, 0, textOf(inline.characters(), inline.length()), formula);
            return;
        }
        if (type == Type.TEXT) {
            if (hasValue) {
                give(at, Kind.TEXT, 0, textOf(value, length), formula);
            } else if (formula != null) {
                give(at, Kind.UNCOMPUTED, 0, "", formula);
            }
            return;
        }
        int start = 0;
        int end = length;
        while (start < end && value[start] <= ' ') {
            start++;
        }
        while (end > start && value[end - 1] <= ' ') {
            end--;
        }
        if (start == end) {
            if (formula != null) {
                if (formats.showsUnits()) {
                    sink.shownUnit(at, column, formats.unitOfStyle(style));
                }
                give(at, Kind.UNCOMPUTED, 0, "", formula);
            }
            return;
        }
        switch (type) {
            case SHARED -> give(at, Kind.TEXT, 0, sharedText(at, start, end), formula);
            case ERROR -> give(at, Kind.ERROR, 0, pool.text(value, start, end), formula);
            case LOGICAL -> {
                String text = pool.text(value, start, end);
                boolean yes = text.equals("1") || text.equalsIgnoreCase("true");
                if (yes || text.equals("0") || text.equalsIgnoreCase("false")) {
                    give(at, Kind.LOGICAL, yes ? 1 : 0, yes ? "TRUE" : "FALSE", formula);
                } else {
                    give(at, Kind.TEXT, 0, text, formula);
                }
            }
            case DATE -> {
                String text = new String(value, start, end - start);
                OptionalDouble serial = IsoDate.serial(text, epoch);
                if (serial.isPresent()) {
                    sink.cell(at, column, Kind.NUMBER, serial.getAsDouble(), "", Format.DATE, formula);
                } else {
                    give(at, Kind.TEXT, 0, text, formula);
                }
            }
            default -> {
                double number = DecimalText.parse(value, start, end);
                if (Double.isNaN(number)) {
                    give(at, Kind.TEXT, 0, textOf(value, length), formula);
                } else {
                    if (formats.showsUnits()) {
                        sink.shownUnit(at, column, formats.unitOfStyle(style));
                    }
                    give(at, Kind.NUMBER, number, "", formula);
                }
            }
        }
    }

    private void give(int at, Kind kind, double number, String text, String formula) {
        sink.cell(at, column, kind, number, text, formats.ofStyle(style), formula);
    }

    private String textOf(char[] characters, int count) {
        return EscapedText.decode(pool.text(characters, 0, count));
    }

    private String sharedText(int at, int start, int end) throws IOException {
        int index = 0;
        for (int i = start; i < end && index >= 0; i++) {
            int digit = value[i] - '0';
            index = digit < 0 || digit > 9 || index > 99_999_999 ? -1 : 10 * index + digit;
        }
        String text = strings.text(index);
        if (text == null) {
            throw new UnreadablePartException(
                    "The cell " + new CellAddress(sheet.name(), at, column) + " points to shared text number "
                            + new String(value, start, end - start) + ", but the workbook holds " + strings.size()
                            + " shared texts: the file is damaged.",
                    null);
        }
        return text;
    }
}
