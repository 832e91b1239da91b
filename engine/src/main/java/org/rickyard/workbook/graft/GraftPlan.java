package org.rickyard.workbook.graft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.SheetRef;

/** What is to be grafted onto a workbook; filled in before {@link Graft#write} and not changed by it. */
public final class GraftPlan {
    private final List<NewSheet> added = new ArrayList<>();
    private final Map<SheetRef, NewSheet> replaced = new LinkedHashMap<>();
    private final Map<String, String> globalNames = new LinkedHashMap<>();
    private final List<DefinedName> localNames = new ArrayList<>();
    private final List<DefinedName> clientNames = new ArrayList<>();
    private Predicate<DefinedName> ownsName = name -> false;
    private StyleGraft styles;
    private String stateNamespace;
    private SheetContent state;
    private UnaryOperator<String> namesFilledIn;
    private boolean fullCalcOnLoad;

    /** Adds a sheet after all others. */
    public GraftPlan addSheet(NewSheet sheet) {
        added.add(sheet);
        return this;
    }

    /**
     * Puts a sheet in the place of a former sheet of ours, whose slot, name, sheetId and part it keeps.
     *
     * @throws IllegalArgumentException if the new sheet has another name, since formulas refer to it by name
     */
    public GraftPlan replaceSheet(SheetRef existing, NewSheet sheet) {
        if (!existing.name().equals(sheet.name())) {
            throw new IllegalArgumentException(
                    "the sheet " + existing.name() + " cannot be replaced by one called " + sheet.name());
        }
        replaced.put(existing, sheet);
        return this;
    }

    /** Defines a name for the whole workbook; {@code formula} without leading "=". */
    public GraftPlan globalName(String name, String formula) {
        globalNames.put(name, formula);
        return this;
    }

    /** Defines a name that belongs to a sheet already there and left as it is. */
    public GraftPlan localName(SheetRef sheet, LocalName name) {
        localNames.add(new DefinedName(name.name(), sheet.position(), name.formula(), name.hidden()));
        return this;
    }

    /**
     * Writes a name of the client's anew, where the present one belongs to the sheet of another number than it leads to.
     * It stands before ours, as it will the next time.
     */
    public GraftPlan clientName(DefinedName name) {
        clientNames.add(name);
        return this;
    }

    /** Says which defined names are ours from a former run: they are removed before the new ones are put in. */
    public GraftPlan ownsName(Predicate<DefinedName> owns) {
        ownsName = owns;
        return this;
    }

    /** Keeps data of ours in the workbook, in the customXml item whose root element has this namespace. */
    public GraftPlan state(String namespace, SheetContent xml) {
        stateNamespace = namespace;
        state = xml;
        return this;
    }

    /**
     * Has something in our names told only once all sheets are written. The workbook part is then written after them.
     *
     * @param text is given what is put into the workbook part
     */
    public GraftPlan namesFilledIn(UnaryOperator<String> text) {
        namesFilledIn = text;
        return this;
    }

    /** The styles that the sheets' cells refer to. */
    public GraftPlan looks(StyleGraft grafted) {
        styles = grafted;
        return this;
    }

    /** Whether the spreadsheet program is told to calculate everything when it opens the file. */
    public GraftPlan fullCalcOnLoad(boolean wanted) {
        fullCalcOnLoad = wanted;
        return this;
    }

    List<DefinedName> clientNames() {
        return clientNames;
    }

    List<DefinedName> localNames() {
        return localNames;
    }

    List<NewSheet> added() {
        return added;
    }

    Map<SheetRef, NewSheet> replaced() {
        return replaced;
    }

    Map<String, String> globalNames() {
        return globalNames;
    }

    Predicate<DefinedName> ownsName() {
        return ownsName;
    }

    Optional<StyleGraft> styles() {
        return Optional.ofNullable(styles);
    }

    Optional<UnaryOperator<String>> namesFilledIn() {
        return Optional.ofNullable(namesFilledIn);
    }

    Optional<String> stateNamespace() {
        return Optional.ofNullable(stateNamespace);
    }

    SheetContent state() {
        return state;
    }

    boolean fullCalcOnLoad() {
        return fullCalcOnLoad;
    }
}
