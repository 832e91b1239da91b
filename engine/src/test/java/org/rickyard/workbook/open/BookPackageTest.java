package org.rickyard.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.workbook.open.RefusedException.Reason;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.UnreadablePartException;

class BookPackageTest {
    private static final String WORKBOOK = "xl/workbook.xml";
    private static final String TYPES = "[Content_Types].xml";
    private static final String LINKS = "xl/_rels/workbook.xml.rels";
    private static final String DOCTYPE = "<!DOCTYPE a [<!ENTITY b \"c\">]>";

    @TempDir
    Path folder;

    private BookPackage open(SmallPackage small) throws Exception {
        return BookPackage.open(small.writeTo(folder.resolve("client.xlsx")));
    }

    private RefusedException refusal(SmallPackage small) throws Exception {
        return refusal(small.writeTo(folder.resolve("client.xlsx")));
    }

    private static RefusedException refusal(Path file) {
        RefusedException refused = catchThrowableOfType(
                RefusedException.class, () -> BookPackage.open(file).close());
        assertThat(refused).as("refused").isNotNull();
        assertThat(refused.getMessage())
                .startsWith("\"" + file.getFileName() + "\" ")
                .endsWith(".")
                .contains(". ");
        return refused;
    }

    @Test
    void sheetsAndNamesAreListedAsTheTabsShowThem() throws Exception {
        SmallPackage small = SmallPackage.plain()
                .edit(
                        WORKBOOK,
                        "</sheets>",
                        "<sheet name=\"A &amp; B\" sheetId=\"7\" state=\"hidden\" r:id=\"rId9\"/>"
                                + "</sheets><definedNames><definedName name=\"Area\" localSheetId=\"1\" hidden=\"1\">"
                                + "'A &amp; B'!$A$1</definedName></definedNames><calcPr calcMode=\"manual\"/>")
                .edit(WORKBOOK, "<bookViews>", "<workbookPr date1904=\"true\"/><bookViews>")
                .edit(
                        LINKS,
                        "</Relationships>",
                        SmallPackage.link("rId9", "chartsheet", "/xl/charts%20of%20us/ONE.xml") + "</Relationships>")
                .part("xl/charts of us/one.xml", "<chartsheet xmlns=\"" + SmallPackage.MAIN + "\"/>");
        try (BookPackage book = open(small)) {
            assertThat(book.sheets())
                    .containsExactly(
                            new SheetRef("Fields", 0, 1, "xl/worksheets/sheet1.xml", false, true),
                            new SheetRef("A & B", 1, 7, "xl/charts of us/one.xml", true, false));
            assertThat(book.definedNames()).containsExactly(new DefinedName("Area", 1, "'A & B'!$A$1", true));
            assertThat(book.date1904()).isTrue();
            assertThat(book.manualCalculation()).isTrue();
            assertThat(book.stylesPart()).contains("xl/styles.xml");
            assertThat(book.sharedStringsPart()).isEmpty();
            assertThat(book.calcChainPart()).isEmpty();
            assertThat(book.displayName()).isEqualTo("client.xlsx");
        }
    }

    @Test
    void partsAreFoundWithoutRegardToCase() throws Exception {
        try (BookPackage book = open(SmallPackage.plain());
                InputStream in = book.open("XL/Worksheets/SHEET1.xml")) {
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).contains("Long Acre");
            assertThat(book.exists("xl/worksheets/sheet2.xml")).isFalse();
            assertThatThrownBy(() -> book.open("xl/worksheets/sheet2.xml"))
                    .isInstanceOf(FileNotFoundException.class)
                    .hasMessageContaining("sheet2.xml");
        }
    }

    @Test
    void aMissingFileAndAFolderAreRefused() {
        assertThat(refusal(folder.resolve("absent.xlsx")).reason()).isEqualTo(Reason.NOT_A_FILE);
        assertThat(refusal(folder).reason()).isEqualTo(Reason.FOLDER);
    }

    @Test
    void otherKindsOfFileAreToldByTheirContent() throws Exception {
        Path text = Files.writeString(folder.resolve("text.xlsx"), "Field,Area\nLong Acre,4\n");
        assertThat(refusal(text).reason()).isEqualTo(Reason.NOT_A_WORKBOOK);
        Path empty = Files.write(folder.resolve("empty.xlsx"), new byte[0]);
        assertThat(refusal(empty).reason()).isEqualTo(Reason.EMPTY);
        Path old = folder.resolve("old.xlsx");
        try (HSSFWorkbook book = new HSSFWorkbook();
                var out = Files.newOutputStream(old)) {
            book.createSheet("Fields");
            book.write(out);
        }
        assertThat(refusal(old).reason()).isEqualTo(Reason.OLD_FORMAT);
    }

    @Test
    void aWorkbookWithAPasswordSaysWhatToDo() throws Exception {
        Path plain = SmallPackage.plain().writeTo(folder.resolve("plain.xlsx"));
        Path locked = folder.resolve("locked.xlsx");
        try (POIFSFileSystem system = new POIFSFileSystem()) {
            var encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("hay");
            try (var out = encryptor.getDataStream(system)) {
                Files.copy(plain, out);
            }
            try (var out = Files.newOutputStream(locked)) {
                system.writeFilesystem(out);
            }
        }
        RefusedException refused = refusal(locked);
        assertThat(refused.reason()).isEqualTo(Reason.ENCRYPTED);
        assertThat(refused).hasMessageContaining("Remove the password");
    }

    @Test
    void kindsOfWorkbookThatCannotBeExtendedAreRefused() throws Exception {
        SmallPackage binary = SmallPackage.plain()
                .edit(
                        TYPES,
                        "application/vnd.openxmlformats-officedocument." + "spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.binary.macroEnabled.main");
        assertThat(refusal(binary).reason()).isEqualTo(Reason.BINARY);
        SmallPackage document = SmallPackage.plain()
                .part("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
                .part("content.xml", "<a/>");
        assertThat(refusal(document).reason()).isEqualTo(Reason.OPEN_DOCUMENT);
        SmallPackage strict =
                SmallPackage.plain().edit(WORKBOOK, SmallPackage.MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main");
        assertThat(refusal(strict).reason()).isEqualTo(Reason.STRICT);
        SmallPackage signed = SmallPackage.plain().part("_xmlsignatures/sig1.xml", "<a/>");
        assertThat(refusal(signed).reason()).isEqualTo(Reason.SIGNED);
        SmallPackage locked = SmallPackage.plain()
                .edit(WORKBOOK, "<bookViews>", "<workbookProtection lockStructure=\"1\"/><bookViews>");
        assertThat(refusal(locked).reason()).isEqualTo(Reason.LOCKED_STRUCTURE);
        SmallPackage shared = SmallPackage.plain()
                .edit(
                        LINKS,
                        "</Relationships>",
                        SmallPackage.link("rId5", "revisionHeaders", "revisions/revisionHeaders.xml")
                                + "</Relationships>");
        assertThat(refusal(shared).reason()).isEqualTo(Reason.SHARED);
    }

    @Test
    void anOldMacroModuleCountsAsASheetWithoutPart() throws Exception {
        SmallPackage module = SmallPackage.plain()
                .edit(WORKBOOK, "</sheets>", "<sheet name=\"Module\" sheetId=\"2\" r:id=\"\"/></sheets>");
        try (BookPackage book = open(module)) {
            assertThat(book.sheets()).last().isEqualTo(new SheetRef("Module", 1, 2, "", false, false));
        }
    }

    @Test
    void aMacroWorkbookIsAccepted() throws Exception {
        SmallPackage macros = SmallPackage.plain()
                .edit(
                        TYPES,
                        "application/vnd.openxmlformats-officedocument." + "spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml");
        try (BookPackage book = open(macros)) {
            assertThat(book.sheets()).hasSize(1);
        }
    }

    @Test
    void brokenPackagesAreRefusedWithThePartThatIsBroken() throws Exception {
        SmallPackage noTypes = SmallPackage.plain().without(TYPES);
        assertThat(refusal(noTypes).reason()).isEqualTo(Reason.DAMAGED);
        SmallPackage noWorkbook = SmallPackage.plain().without(WORKBOOK);
        assertThat(refusal(noWorkbook)).hasMessageContaining(WORKBOOK);
        SmallPackage noSheetPart = SmallPackage.plain().without("xl/worksheets/sheet1.xml");
        assertThat(refusal(noSheetPart)).hasMessageContaining("Fields");
        SmallPackage noSheets =
                SmallPackage.plain().edit(WORKBOOK, "<sheet name=\"Fields\" sheetId=\"1\" r:id=\"rId1\"/>", "");
        assertThat(refusal(noSheets).reason()).isEqualTo(Reason.NO_SHEETS);
        SmallPackage unclosed = SmallPackage.plain().edit(WORKBOOK, "</sheets>", "");
        assertThat(refusal(unclosed)).hasMessageContaining(WORKBOOK);
    }

    @Test
    void documentTypesAreRefusedInEveryPartThatIsReadWhole() throws Exception {
        for (String part : new String[] {WORKBOOK, TYPES, LINKS, "_rels/.rels", "xl/styles.xml"}) {
            SmallPackage small = SmallPackage.plain();
            small.edit(part, "?>\r\n", "?>\r\n" + DOCTYPE);
            RefusedException refused = refusal(small);
            assertThat(refused.reason()).as(part).isEqualTo(Reason.DOCTYPE);
            assertThat(refused).hasMessageContaining(part);
        }
    }

    @Test
    void entriesThatDifferOnlyInCaseAreRefused() throws Exception {
        SmallPackage twins = SmallPackage.plain().part("XL/Styles.xml", "<a/>");
        RefusedException refused = refusal(twins);
        assertThat(refused.reason()).isEqualTo(Reason.DUPLICATE_ENTRIES);
        assertThat(refused).hasMessageContaining("XL/Styles.xml");
    }

    @Test
    void capsAreAppliedBeforeAnythingIsParsed() throws Exception {
        SmallPackage small = SmallPackage.plain().part("xl/media/hay.bin", new byte[200_000]);
        PackageCaps caps = PackageCaps.DEFAULT;
        assertThat(refusal(small, new PackageCaps(1000, 99, 1 << 20, 1 << 20, 999, 0, 9999)))
                .contains("client.xlsx");
        assertThat(refusal(small, new PackageCaps(1 << 20, 5, 1 << 20, 1 << 20, 9999, 0, 9999)))
                .contains("7 parts");
        assertThat(refusal(small, new PackageCaps(1 << 20, 99, 100_000, 1 << 20, 9999, 0, 9999)))
                .contains("hay.bin");
        assertThat(refusal(small, new PackageCaps(1 << 20, 99, 1 << 20, 150_000, 9999, 0, 9999)))
                .contains("unpacked");
        assertThat(refusal(small, new PackageCaps(1 << 20, 99, 1 << 20, 1 << 20, 100, 1 << 16, 9999)))
                .contains("hay.bin");
        assertThat(refusal(small, new PackageCaps(1 << 20, 99, 1 << 20, 1 << 20, 9999, 0, 100)))
                .contains("[Content_Types].xml");
        assertThat(caps.entryBytes()).isGreaterThan(1_500_000_000L);
        assertThat(caps.fileBytes()).isGreaterThan(160_000_000L);
    }

    private String refusal(SmallPackage small, PackageCaps caps) throws Exception {
        Path file = small.writeTo(folder.resolve("client.xlsx"));
        try (var channel = Files.newByteChannel(file)) {
            RefusedException refused =
                    catchThrowableOfType(RefusedException.class, () -> BookPackage.open(channel, "client.xlsx", caps)
                            .close());
            assertThat(refused.reason()).isEqualTo(Reason.TOO_LARGE);
            return refused.getMessage();
        }
    }

    @Test
    void aFileCutShortIsRefused() throws Exception {
        Path file = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        byte[] whole = Files.readAllBytes(file);
        for (int length : new int[] {4, 30, whole.length / 2, whole.length - 30, whole.length - 1}) {
            Path cut = Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(whole, length));
            assertThat(refusal(cut).reason()).as("cut to " + length).isEqualTo(Reason.DAMAGED);
        }
    }

    @Test
    void aPartThatDoesNotMatchItsChecksumIsNotReadToTheEnd() throws Exception {
        Path file = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        spoilChecksum(file, "xl/worksheets/sheet1.xml");
        try (BookPackage book = BookPackage.open(file);
                InputStream in = book.open("xl/worksheets/sheet1.xml")) {
            assertThatThrownBy(in::readAllBytes).hasMessageContaining("checksum");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "my fields.xml, my%20fields.xml",
        "my%20fields.xml, my fields.xml",
        "my%20fields.xml, my%20fields.xml",
        "a#b.xml, a%23b.xml"
    })
    void aTargetAndItsEntryMaySpellANameInTwoWays(String entry, String target) throws Exception {
        SmallPackage small = SmallPackage.plain()
                .renamed(part -> part.replace("sheet1.xml", entry))
                .edit("xl/_rels/workbook.xml.rels", "sheet1.xml", target);
        try (BookPackage book = open(small);
                InputStream in = book.open(book.sheets().get(0).part())) {
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).contains("Long Acre");
        }
    }

    /** The sheet's own data is read well before the end of the part, where the checksum is looked at. */
    @Test
    void aSheetThatDoesNotMatchItsChecksumIsNotReadAsIfItDid() throws Exception {
        SmallPackage small = SmallPackage.plain()
                .edit("xl/worksheets/sheet1.xml", "</sheetData>", "</sheetData>" + " ".repeat(20_000));
        Path file = small.writeTo(folder.resolve("client.xlsx"));
        spoilChecksum(file, "xl/worksheets/sheet1.xml");
        try (BookPackage book = BookPackage.open(file)) {
            assertThatThrownBy(() -> BookReader.read(
                            book, book.sheets(), Optional.empty(), Optional.empty(), false, sheet -> true))
                    .isInstanceOf(UnreadablePartException.class)
                    .hasMessageContaining("The sheet Fields")
                    .hasMessageContaining("what is packed is not what was written");
        }
    }

    private static void spoilChecksum(Path file, String part) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        ByteBuffer view = ByteBuffer.wrap(whole).order(ByteOrder.LITTLE_ENDIAN);
        byte[] name = part.getBytes(StandardCharsets.US_ASCII);
        int central = -1;
        for (int at = 0; at + 46 + name.length < whole.length; at++) {
            boolean header = view.getInt(at) == 0x02014b50;
            if (header && Arrays.equals(Arrays.copyOfRange(whole, at + 46, at + 46 + name.length), name)) {
                central = at;
            }
        }
        try (RandomAccessFile broken = new RandomAccessFile(file.toFile(), "rw")) {
            broken.seek(central + 16);
            broken.write(new byte[] {1, 2, 3, 4});
        }
    }
}
