package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.read.ListFinder;

class LastWordsTest {
    private static FoundLists machines(String type) {
        return ListFinder.find(List.of(
                new SheetOf("Machines").row("Machine", "Type", "Width (m)").row("Mine", type, 6)));
    }

    private static List<String> messages(FoundLists found) {
        return found.findings().stream().map(Finding::message).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "rotary rake, rake",
        "Self-propelled forage harvester, forager",
        "12 m trailed forage harvester, forager",
        "tractor mounted sprayer, sprayer",
        "bale trailer, trailer",
        "grass harrow, cultivator"
    })
    void aLongerNameIsReadByWhatItsLastWordsNameAndThatIsSaid(String type, String read) {
        FoundLists found = machines(type);
        assertThat(found.rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo(read);
        if (!type.startsWith("Self")) {
            assertThat(messages(found))
                    .anyMatch(message -> message.startsWith("\"" + type + "\" is read as " + read + ", by its last"));
        }
    }

    /** As tables of machines are printed. */
    @ParameterizedTest
    @CsvSource({
        "'Forage harvester, SP', forager",
        "Mower (rotary), mower",
        "'Rotary mower-conditioner, 12 ft', mower",
        "'Combine, trailed', combine"
    })
    void aNameTurnedRoundIsReadByWhatStandsBeforeTheComma(String type, String read) {
        FoundLists found = machines(type);
        assertThat(found.rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo(read);
        assertThat(messages(found))
                .anyMatch(message -> message.startsWith(
                        "\"" + type + "\" is read as " + read + ", by what stands before the comma or bracket."));
    }

    /** What stands behind the comma is the first part of a name that is known, and a better one than the last alone. */
    @ParameterizedTest
    @CsvSource({
        "'Wagon, forage', forage wagon",
        "'Sprayer, orchard', air-blast sprayer",
        "Spreader (manure), muck spreader",
        "'Harrow, disc', cultivator"
    })
    void aNameTurnedRoundIsKnownByItsWholeName(String type, String read) {
        assertThat(machines(type).rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rake, tedder",
                "trailer (sprayer)",
                "rake tedder",
                "trailer sprayer",
                "topper",
                "hedge cutter",
                "loader bucket"
            })
    void whatMayBeTwoThingsOrIsUnknownIsNotGuessed(String type) {
        FoundLists found = machines(type);
        assertThat(found.rows(Machines.LIST).state(Machines.TYPE, 0)).isEqualTo(ListRows.State.NOT_READABLE);
        assertThat(found.findings())
                .anyMatch(finding -> finding.severity() == Finding.Severity.STOP
                        && finding.message()
                                .startsWith("\"" + type + "\" is not a word known here for Type: write mower"));
    }

    @Test
    void aWordThatMeansTwoThingsIsStillAsked() {
        assertThat(messages(machines("roller"))).anyMatch(message -> message.contains("can mean two things"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"$18.50 | 18.5", "£1,250 | 1250", "€ 9 | 9"})
    void aPriceWithItsCurrencyIsToldAsTheFigureAlone(String text, String figure) {
        FoundLists found = FoundIn.find(
                new SheetOf("Products").row("Product", "Unit", "Price").row("Alpha", "L", text));
        assertThat(messages(found))
                .anyMatch(message -> message.contains("\"" + text + "\" is not a number")
                        && message.endsWith(" Write the figure alone, " + figure + ", without the currency."));
    }

    @Test
    void figuresWithTheirSignOrUnitAreToldHowToBeWritten() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Fields")
                        .row("Field", "Area (ha)", "DM at cutting (%)")
                        .row("A", 2, "17%"),
                new SheetOf("Products").row("Product", "Unit", "Price").row("P", "L", "5 L")));
        assertThat(messages(found))
                .anyMatch(
                        message -> message.contains("\"17%\" is not a number") && message.contains("Write 17 without"))
                .anyMatch(message ->
                        message.contains("\"5 L\" is not a number") && message.contains("Write the figure alone, 5"));
    }
}
