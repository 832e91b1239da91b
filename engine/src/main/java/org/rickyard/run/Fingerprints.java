package org.rickyard.run;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.meaning.FormulaShape;
import org.rickyard.workbook.meaning.MeaningFingerprint;
import org.rickyard.workbook.write.CellFormula;
import org.rickyard.workbook.write.Meaning;
import org.rickyard.workbook.write.SheetSet;

/** Takes the fingerprint of each sheet while it is written, so that no sheet is worked out twice. */
final class Fingerprints {
    private record Taken(String id, String name, int sheetId, MeaningFingerprint fingerprint, String notes) {}

    private final List<Taken> taken = new ArrayList<>();

    /** A sheet that is about to be written. */
    void add(SheetSet.Sheet sheet, int sheetId) {
        MeaningFingerprint fingerprint = new MeaningFingerprint(SheetSet.firstSortableRow(sheet.id()));
        sheet.content().watchedBy(new Watch(fingerprint));
        NotesFingerprint notes = new NotesFingerprint();
        sheet.notes().forEach(note -> notes.add(note.row(), note.column(), note.text()));
        taken.add(new Taken(sheet.id(), sheet.name(), sheetId, fingerprint, notes.hex()));
    }

    /** Stands in the marker of a sheet until its fingerprints are taken. */
    static String awaited(String id) {
        return "{" + id + "}";
    }

    /** A text with the fingerprints of all sheets in their places, once all are written. */
    String filledIn(String text) {
        String filled = text;
        for (Taken each : taken) {
            filled = filled.replace(
                    OurSheets.marker(each.id(), awaited(each.id()), awaited(each.id())),
                    OurSheets.marker(
                            each.id(),
                            each.fingerprint().hex(),
                            each.fingerprint().unplacedHex()));
        }
        return filled;
    }

    /** The state with all fingerprints, once all sheets are written. */
    RunState state() {
        RunState state = new RunState();
        for (Taken each : taken) {
            state.put(
                    each.id(),
                    each.name(),
                    each.sheetId(),
                    each.fingerprint().hex(),
                    each.fingerprint().unplacedHex(),
                    each.fingerprint().rowlessHex(),
                    each.notes());
        }
        return state;
    }

    /** Takes a sheet's fingerprint as it is told cell by cell. */
    private static final class Watch implements Meaning {
        private final MeaningFingerprint fingerprint;
        private final Map<CellFormula, FormulaShape> shapes = new IdentityHashMap<>();
        /** By column, the formula met last and its shape. */
        private final List<CellFormula> lastFormulas = new ArrayList<>();

        private final List<FormulaShape> lastShapes = new ArrayList<>();

        Watch(MeaningFingerprint fingerprint) {
            this.fingerprint = fingerprint;
        }

        @Override
        public void formula(int row, int column, CellFormula formula, int number) {
            FormulaShape shape = shape(row, column, formula);
            if (shape == null || !fingerprint.takes(shape, row, number)) {
                String text = String.join(Integer.toString(number), formula.pieces());
                fingerprint.cell(row, column, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, text);
            } else {
                fingerprint.cell(row, column, shape, number);
            }
        }

        /** The formula's shape; null for a formula of one cell only, which is not worth one until it is met again. */
        private FormulaShape shape(int row, int column, CellFormula formula) {
            while (column >= lastFormulas.size()) {
                lastFormulas.add(null);
                lastShapes.add(null);
            }
            boolean again = lastFormulas.get(column) == formula;
            if (again && lastShapes.get(column) != null) {
                return lastShapes.get(column);
            }
            boolean whole = formula.pieces().size() == 1
                    && (!again || MeaningFingerprint.isConstant(formula.pieces().get(0)));
            FormulaShape shape = whole ? null : shapes.get(formula);
            if (shape == null && !whole) {
                shape = fingerprint.shape(formula.pieces(), row);
                shapes.put(formula, shape);
            }
            lastFormulas.set(column, formula);
            lastShapes.set(column, shape);
            return shape;
        }

        @Override
        public void number(int row, int column, double number) {
            fingerprint.cell(row, column, Grid.Kind.NUMBER, number, "", Grid.Format.GENERAL, null);
        }

        @Override
        public void text(int row, int column, String text) {
            fingerprint.cell(row, column, Grid.Kind.TEXT, 0, text, Grid.Format.GENERAL, null);
        }
    }
}
