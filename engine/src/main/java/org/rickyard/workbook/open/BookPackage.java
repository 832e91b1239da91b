package org.rickyard.workbook.open;

import java.io.Closeable;
import java.io.EOFException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.rickyard.workbook.open.RefusedException.Reason;

/**
 * A client's workbook, opened for reading. Whatever cannot be extended without harm is refused here, so that nothing
 * further on needs to ask. Parts may be read from several threads at once.
 */
public final class BookPackage implements PartSource, Closeable {
    private final SeekableByteChannel channel;
    private final ZipFile zip;
    private final String displayName;
    private final PackageCaps caps;
    private final ZipDirectory directory;
    private final ContentTypes contentTypes;
    private final String workbookPart;
    private final WorkbookPart workbook;
    private final List<SheetRef> sheets;
    private final List<DefinedName> definedNames;
    private final Map<String, List<Relationship>> relationships = new HashMap<>();

    private BookPackage(SeekableByteChannel channel, ZipFile zip, String displayName, PackageCaps caps)
            throws RefusedException, IOException {
        this.channel = channel;
        this.zip = zip;
        this.displayName = displayName;
        this.caps = caps;
        this.directory = new ZipDirectory(zip, displayName, caps);
        refuseOtherKinds();
        this.contentTypes = new ContentTypes(markup(ContentTypes.PART));
        this.workbookPart = findWorkbook();
        this.workbook = new WorkbookPart(markup(workbookPart), workbookPart, displayName);
        this.sheets = workbook.sheets(read(workbookPart), this);
        this.definedNames = workbook.definedNames();
        refuseDoctypeInStyles();
    }

    /**
     * Opens a workbook file.
     *
     * @throws RefusedException if it cannot be used, with what to do instead
     * @throws IOException if the file cannot be read at all
     */
    public static BookPackage open(Path file) throws RefusedException, IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.isDirectory(file)) {
            throw new RefusedException(Reason.FOLDER, name);
        }
        if (!Files.isRegularFile(file)) {
            throw new RefusedException(Reason.NOT_A_FILE, name);
        }
        SeekableByteChannel channel = Files.newByteChannel(file);
        try {
            return open(channel, name);
        } catch (RefusedException | IOException | RuntimeException failed) {
            channel.close();
            throw failed;
        }
    }

    /**
     * Opens a workbook from a stream, which is read to its end into memory and stays open.
     *
     * @param displayName the name to show for it
     * @throws RefusedException if it cannot be used, with what to do instead
     * @throws IOException if the stream cannot be read
     */
    public static BookPackage open(InputStream in, String displayName) throws RefusedException, IOException {
        return open(MemoryChannel.of(in), displayName);
    }

    /**
     * Opens a workbook from a channel, which is closed with the package (and left open when this throws).
     *
     * @param displayName the name to show for it
     */
    public static BookPackage open(SeekableByteChannel channel, String displayName)
            throws RefusedException, IOException {
        return open(channel, displayName, PackageCaps.DEFAULT);
    }

    /** Opens a workbook under other caps than the usual ones. */
    public static BookPackage open(SeekableByteChannel channel, String displayName, PackageCaps caps)
            throws RefusedException, IOException {
        switch (FileKind.of(channel)) {
            case OLE2_ENCRYPTED:
                throw new RefusedException(Reason.ENCRYPTED, displayName);
            case OLE2:
                throw new RefusedException(Reason.OLD_FORMAT, displayName);
            case OTHER:
                throw new RefusedException(channel.size() == 0 ? Reason.EMPTY : Reason.NOT_A_WORKBOOK, displayName);
            default:
                break;
        }
        try {
            ZipDirectory.checkAnnounced(channel, displayName, caps);
            return new BookPackage(channel, zip(channel), displayName, caps);
        } catch (ZipException | EOFException | IllegalArgumentException broken) {
            throw new RefusedException(Reason.DAMAGED, displayName, clause(broken));
        }
    }

    /** Any failure but one of the disk means that the zip is broken; the library wraps both alike. */
    private static ZipFile zip(SeekableByteChannel channel) throws IOException {
        try {
            return ZipFile.builder().setSeekableByteChannel(channel).get();
        } catch (IOException failed) {
            if (failed.getCause() instanceof FileSystemException) {
                throw failed;
            }
            throw new ZipException("its zip directory cannot be read");
        }
    }

    private static String clause(Exception broken) {
        return broken.getMessage() == null ? "the zip cannot be read" : broken.getMessage();
    }

    private void refuseOtherKinds() throws RefusedException, IOException {
        for (String key : directory.keys()) {
            if (key.startsWith("_xmlsignatures/")) {
                throw new RefusedException(Reason.SIGNED, displayName);
            }
        }
        boolean openDocument = exists("mimetype") && exists("content.xml");
        if (openDocument) {
            throw new RefusedException(Reason.OPEN_DOCUMENT, displayName);
        }
        if (!exists(ContentTypes.PART)) {
            boolean ours = exists("_rels/.rels") || exists("xl/workbook.xml");
            Reason reason = ours ? Reason.DAMAGED : Reason.NOT_A_WORKBOOK;
            throw new RefusedException(reason, displayName, "it holds no list of content types");
        }
    }

    private String findWorkbook() throws RefusedException, IOException {
        for (Relationship link : read("")) {
            if (link.type().startsWith(Namespaces.STRICT_STEM)) {
                throw new RefusedException(Reason.STRICT, displayName);
            }
            if (link.is("digital-signature/origin")) {
                throw new RefusedException(Reason.SIGNED, displayName);
            }
            if (link.is("officeDocument") && !link.external()) {
                return checkedWorkbook(link.target());
            }
        }
        throw new RefusedException(Reason.DAMAGED, displayName, "it does not say which part is the workbook");
    }

    private String checkedWorkbook(String part) throws RefusedException, IOException {
        String type = contentTypes.of(part).orElse("");
        if (type.contains("sheet.binary") || part.endsWith(".bin")) {
            throw new RefusedException(Reason.BINARY, displayName);
        }
        if (type.contains("wordprocessingml") || type.contains("presentationml") || type.contains("visio")) {
            throw new RefusedException(Reason.NOT_A_WORKBOOK, displayName);
        }
        if (!exists(part)) {
            throw new RefusedException(Reason.DAMAGED, displayName, "its part " + part + " is missing");
        }
        for (Relationship link : read(part)) {
            if (link.is("revisionHeaders") || link.is("usernames")) {
                throw new RefusedException(Reason.SHARED, displayName);
            }
            if (link.type().startsWith(Namespaces.STRICT_STEM)) {
                throw new RefusedException(Reason.STRICT, displayName);
            }
        }
        return existing(part);
    }

    private void refuseDoctypeInStyles() throws RefusedException, IOException {
        Optional<String> styles = stylesPart();
        if (styles.isPresent()) {
            markup(styles.get());
        }
    }

    /** The name to show for the file. */
    public String displayName() {
        return displayName;
    }

    /** All sheets in the order of their tabs, chart and hidden ones included. */
    public List<SheetRef> sheets() {
        return sheets;
    }

    /** The name of the workbook part. */
    public String workbookPart() {
        return workbookPart;
    }

    /** The workbook part with its offsets. */
    public Markup workbookMarkup() {
        return workbook.markup();
    }

    /** The content types with their offsets. */
    public ContentTypes contentTypes() {
        return contentTypes;
    }

    /** Whether day 0 is 1 January 1904. */
    public boolean date1904() {
        return workbook.date1904();
    }

    /** Whether the spreadsheet program calculates only when told to. */
    public boolean manualCalculation() {
        return workbook.manualCalculation();
    }

    /** Whether the spreadsheet program reckons with numbers as they are shown (ISO/IEC 29500-1, 18.2.2, fullPrecision). */
    public boolean roundsToShown() {
        return workbook.roundsToShown();
    }

    /** All defined names, in the order in which they stand. */
    public List<DefinedName> definedNames() {
        return definedNames;
    }

    /** The styles, if the workbook has any. */
    public Optional<String> stylesPart() throws RefusedException, IOException {
        return linked("styles");
    }

    /** The shared strings, if the workbook has any. */
    public Optional<String> sharedStringsPart() throws RefusedException, IOException {
        return linked("sharedStrings");
    }

    /** The chain of calculation, if the workbook has one. */
    public Optional<String> calcChainPart() throws RefusedException, IOException {
        return linked("calcChain");
    }

    private Optional<String> linked(String kind) throws RefusedException, IOException {
        return read(workbookPart).stream()
                .filter(link -> link.is(kind) && !link.external() && exists(link.target()))
                .map(Relationship::target)
                .findFirst();
    }

    /**
     * The links that lead from a part, or from the package itself for "".
     *
     * @throws RefusedException if they cannot be read
     */
    public List<Relationship> relationships(String part) throws RefusedException, IOException {
        return read(part);
    }

    private synchronized List<Relationship> read(String part) throws RefusedException, IOException {
        List<Relationship> known = relationships.get(PartNames.key(part));
        if (known != null) {
            return known;
        }
        String holder = PartNames.relationshipsOf(part);
        List<Relationship> links = new ArrayList<>();
        if (exists(holder)) {
            for (MarkupElement link : markup(holder).root().children("Relationship")) {
                boolean external =
                        link.value("TargetMode").filter("External"::equals).isPresent();
                String target = link.value("Target").orElse("");
                String type = link.value("Type").orElse("");
                String resolved = external ? target : existing(PartNames.resolve(part, target));
                links.add(new Relationship(link.value("Id").orElse(""), type, resolved, external));
            }
        }
        relationships.put(PartNames.key(part), List.copyOf(links));
        return relationships.get(PartNames.key(part));
    }

    /** The spelling of the entry, where there is one: targets may differ in case and in %20. */
    private String existing(String part) {
        ZipArchiveEntry entry = directory.find(part);
        return entry == null ? part : PartNames.ofEntry(entry.getName());
    }

    /**
     * The content of the customXml item whose root element has this namespace: how a program keeps data of its own in
     * a workbook.
     */
    public Optional<byte[]> customXml(String rootNamespace) throws RefusedException, IOException {
        Optional<String> part = customXmlPart(rootNamespace);
        return part.isEmpty() ? Optional.empty() : Optional.of(bytes(part.get()));
    }

    /** The part that holds that item. LibreOffice hangs such items on the package instead of the workbook. */
    public Optional<String> customXmlPart(String rootNamespace) throws RefusedException, IOException {
        Set<String> seen = new HashSet<>();
        List<Relationship> links = new ArrayList<>(read(workbookPart));
        links.addAll(read(""));
        for (Relationship link : links) {
            boolean item = link.is("customXml") && !link.external() && exists(link.target());
            if (item && seen.add(link.target())) {
                try (InputStream in = open(link.target())) {
                    if (CustomXmlRoot.namespaceOf(in)
                            .filter(rootNamespace::equals)
                            .isPresent()) {
                        return Optional.of(link.target());
                    }
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean exists(String part) {
        return directory.find(part) != null;
    }

    @Override
    public InputStream open(String part) throws IOException {
        ZipArchiveEntry entry = entry(part);
        return new CheckedEntryStream(zip.getInputStream(entry), part, entry.getSize(), entry.getCrc());
    }

    @Override
    public long size(String part) throws IOException {
        return entry(part).getSize();
    }

    private ZipArchiveEntry entry(String part) throws FileNotFoundException {
        ZipArchiveEntry entry = directory.find(part);
        if (entry == null) {
            throw new FileNotFoundException("\"" + displayName + "\" has no part " + part);
        }
        return entry;
    }

    /** A part held in memory whole; for the small ones. */
    public byte[] bytes(String part) throws RefusedException, IOException {
        if (entry(part).getSize() > caps.markupBytes()) {
            throw new RefusedException(Reason.TOO_LARGE, displayName, "its part " + part);
        }
        try (InputStream in = open(part)) {
            return in.readAllBytes();
        } catch (ZipException | EOFException broken) {
            throw new RefusedException(Reason.DAMAGED, displayName, clause(broken));
        }
    }

    /** A small XML part with its offsets. */
    public Markup markup(String part) throws RefusedException, IOException {
        return Markup.parse(bytes(part), part, displayName);
    }

    /** All entries of the zip in the order in which they stand in the file, for copying and comparing. */
    public List<ZipArchiveEntry> entries() {
        return List.copyOf(directory.entries());
    }

    /** The packed bytes of an entry. */
    public InputStream raw(ZipArchiveEntry entry) throws IOException {
        return zip.getRawInputStream(entry);
    }

    /** The entry's time and date fields (MS-DOS format) exactly as the file has them. */
    public int dosTime(ZipArchiveEntry entry) throws IOException {
        return ZipDirectory.dosTime(channel, entry);
    }

    @Override
    public void close() throws IOException {
        zip.close();
        channel.close();
    }
}
