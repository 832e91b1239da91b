package org.rickyard.benchmark;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamReader;

/** The least any program must do: inflate and parse what comes in, deflate what goes out. */
final class Floor {
    private static final int LEVEL = 1;

    private Floor() {}

    static void measure(Path in, Path written) throws Exception {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        long events = 0;
        try (ZipFile zip = new ZipFile(in.toFile())) {
            for (Enumeration<? extends ZipEntry> entries = zip.entries(); entries.hasMoreElements(); ) {
                ZipEntry entry = entries.nextElement();
                if (!entry.getName().endsWith(".xml")) {
                    continue;
                }
                try (InputStream part = zip.getInputStream(entry)) {
                    XMLStreamReader reader = factory.createXMLStreamReader(part);
                    while (reader.hasNext()) {
                        reader.next();
                        events++;
                    }
                }
            }
        }
        double parsed = System.nanoTime();
        long bytes = deflate(written);
        System.out.println("  " + events + " events in; " + (bytes >> 20) + " MB deflated out in "
                + Math.round((System.nanoTime() - parsed) / 1e7) / 100.0 + " s");
    }

    private static long deflate(Path written) throws Exception {
        long total = 0;
        Deflater deflater = new Deflater(LEVEL, true);
        byte[] block = new byte[1 << 16];
        byte[] packed = new byte[1 << 16];
        try (ZipFile zip = new ZipFile(written.toFile());
                OutputStream sink = OutputStream.nullOutputStream()) {
            for (Enumeration<? extends ZipEntry> entries = zip.entries(); entries.hasMoreElements(); ) {
                try (InputStream part = zip.getInputStream(entries.nextElement())) {
                    for (int read = part.read(block); read > 0; read = part.read(block)) {
                        deflater.setInput(block, 0, read);
                        while (!deflater.needsInput()) {
                            int count = deflater.deflate(packed);
                            sink.write(packed, 0, count);
                            total += count;
                        }
                    }
                }
            }
        }
        deflater.end();
        return total;
    }
}
