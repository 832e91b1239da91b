package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampCrown;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.FilledByCrop;

/** Shapes drawn at random from a seed, against slices; and the solve against the volume it inverts. */
@Tag("derived")
class SilageGeometryTest {
    private static final int SHAPES = 60;
    private static final double CLOSE = 1e-6;
    private static final double DENSITY = 650;

    @TempDir
    Path folder;

    private record Shape(
            String kind,
            double length,
            double width,
            double height,
            double batter,
            int ramps,
            double run,
            double crown,
            boolean straight) {
        static Shape draw(Random random) {
            String[] kinds = {"walled", "walled", "earth pit", "heap", "field heap", "measured"};
            String kind = kinds[random.nextInt(kinds.length)];
            double height = 1 + 2.5 * random.nextDouble();
            boolean walled = kind.equals("walled");
            boolean crowned = walled || kind.equals("earth pit");
            return new Shape(
                    kind,
                    30 + 40 * random.nextDouble(),
                    8 + 14 * random.nextDouble(),
                    height,
                    walled ? 0.3 * random.nextDouble() : 0.5 + 2.5 * random.nextDouble(),
                    walled ? random.nextInt(3) : 0,
                    1 + 3 * random.nextDouble(),
                    crowned ? random.nextDouble() : 0,
                    crowned && random.nextBoolean());
        }

        double volume(double to, boolean withCrown) {
            double onTop = withCrown ? Slices.crown(width + 2 * batter * to, crown, straight) : 0;
            return switch (kind) {
                case "walled" -> Slices.walled(length, width, batter, to, ramps, run, onTop);
                case "earth pit" -> Slices.level(length, width, batter, to) + onTop * length;
                case "heap", "field heap" ->
                    Slices.level(length, width, -batter, Math.min(to, Math.min(length, width) / 2 / batter));
                default -> length * width * to;
            };
        }

        Object[] asRow(int number) {
            return row(
                    "C" + number,
                    kind,
                    length,
                    width,
                    height,
                    batter,
                    ramps == 0 ? null : ramps,
                    ramps == 0 ? null : run,
                    crown == 0 ? null : crown,
                    straight ? "straight shouldered" : null,
                    DENSITY,
                    30);
        }
    }

    private static List<Shape> shapes() {
        Random random = new Random(20_260);
        List<Shape> shapes = new ArrayList<>();
        while (shapes.size() < SHAPES) {
            shapes.add(Shape.draw(random));
        }
        return shapes;
    }

    /** Each clamp is given a crop of its own, of a share of what the slices say it holds. */
    private SilageBook book(List<Shape> shapes, double share) {
        List<Object[]> clamps = new ArrayList<>();
        List<Object[]> fields = new ArrayList<>();
        clamps.add(row(
                "Clamp",
                "Kind",
                "Length (m)",
                "Floor width (m)",
                "Wall height (m)",
                "Batter",
                "Ramps",
                "Ramp run",
                "Crown (m)",
                "Crown shape",
                "Density, fresh (kg/m3)",
                "DM target (%)"));
        fields.add(row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"));
        for (int i = 0; i < shapes.size(); i++) {
            clamps.add(shapes.get(i).asRow(i));
            double tonnes = share * shapes.get(i).volume(shapes.get(i).height(), false) * DENSITY / 1000;
            fields.add(row("F" + i, tonnes / 20, 20, "as carted fresh", 30, "C" + i));
        }
        return new SilageBook(folder)
                .list("Fields", fields.toArray(Object[][]::new))
                .list("Clamps", clamps.toArray(Object[][]::new))
                .run();
    }

    @Test
    void everyKindOfShapeIsDrawnWithEveryCrownAndNumberOfRamps() {
        List<Shape> shapes = shapes();
        assertThat(shapes.stream().map(Shape::kind)).contains("walled", "earth pit", "heap", "field heap", "measured");
        for (String kind : List.of("walled", "earth pit")) {
            assertThat(shapes).anyMatch(s -> s.kind().equals(kind) && s.straight());
            assertThat(shapes).anyMatch(s -> s.kind().equals(kind) && !s.straight() && s.crown() > 0);
        }
        assertThat(shapes.stream().filter(s -> s.kind().equals("walled")).map(Shape::ramps))
                .contains(0, 1, 2);
    }

    @Test
    void volumesOfRandomShapesAreThoseOfThinSlices() throws IOException {
        List<Shape> shapes = shapes();
        try (SilageBook book = book(shapes, 0.7)) {
            for (int i = 0; i < shapes.size(); i++) {
                Shape shape = shapes.get(i);
                double slices = shape.volume(shape.height(), true);
                assertThat(book.number("clamps", ClampShape.VOLUME, i))
                        .as("%s", shape)
                        .isCloseTo(slices, within(CLOSE * slices));
            }
        }
    }

    @Test
    void theWidthOverACrownIsThatOfAChainOfShortPieces() throws IOException {
        List<Shape> shapes = shapes();
        try (SilageBook book = book(shapes, 0.7)) {
            for (int i = 0; i < shapes.size(); i++) {
                if (shapes.get(i).crown() > 0) {
                    double top = book.number("clamps", ClampShape.TOP_WIDTH_USED, i);
                    double arc =
                            Slices.arc(top, shapes.get(i).crown(), shapes.get(i).straight());
                    assertThat(book.number("clamps", ClampCrown.WIDTH_OVER_TOP, i))
                            .isCloseTo(arc, within(CLOSE * arc));
                }
            }
        }
    }

    @Test
    void theHeightThatTheCropFillsHoldsTheCropAgain() throws IOException {
        List<Shape> shapes = shapes();
        try (SilageBook book = book(shapes, 0.7)) {
            for (int i = 0; i < shapes.size(); i++) {
                double crop = book.number("clamp-heights", FilledByCrop.CROP_VOLUME, i);
                double height = book.number("clamp-heights", FilledByCrop.FILLED_TO, i);
                assertThat(shapes.get(i).volume(height, false))
                        .as("%s", shapes.get(i))
                        .isCloseTo(crop, within(CLOSE * crop));
                assertThat(book.number("clamp-heights", FilledByCrop.RESIDUAL, i))
                        .isCloseTo(0, within(CLOSE * crop));
                assertThat(height).isLessThan(shapes.get(i).height());
            }
        }
    }

    @Test
    void moreThanAHeapCanHoldAtAnyHeightIsWithheldAndSaid() throws IOException {
        Shape ridge = new Shape("heap", 40, 10, 1.6, 3, 0, 0, 0, false);
        Shape meeting = new Shape("walled", 12, 10, 3, 0, 2, 2, 0, false);
        try (SilageBook book = book(List.of(ridge, meeting), 1.3)) {
            assertThat(book.has("clamp-heights", FilledByCrop.FILLED_TO, 0)).isFalse();
            assertThat(book.status("clamp-heights", 0)).contains("the crop is more than this");
            assertThat(book.has("clamp-heights", FilledByCrop.FILLED_TO, 1)).isFalse();
            assertThat(book.status("clamp-heights", 1)).contains("the crop is more than this");
            assertThat(book.number("clamps", ClampContents.ROOM, 0)).isNegative();
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void theSectionOfAStraightShoulderedCrownLiesUnderARoundOneOfTheSameHeightOnlyWhereItsFlatIsNarrow()
            throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Crown (m)",
                                "Crown shape",
                                "Density, fresh (kg/m3)",
                                "DM target (%)"),
                        row("Round", "walled", 30, 10, 3, 0.6, "parabolic", 700, 30),
                        row("Straight", "walled", 30, 10, 3, 0.6, "straight shouldered", 700, 30),
                        row("Meeting", "walled", 30, 10, 3, 4.9, "straight shouldered", 700, 30),
                        row("Too high", "walled", 30, 8, 3, 4.9, "straight shouldered", 700, 30))
                .run()) {
            assertThat(book.number("clamps", ClampShape.CROWN_SECTION, 0)).isCloseTo(4, within(1e-12));
            assertThat(book.number("clamps", ClampShape.CROWN_SECTION, 1)).isCloseTo(5.64, within(1e-12));
            assertThat(book.number("clamps", ClampShape.CROWN_SECTION, 2)).isCloseTo(24.99, within(1e-12));
            assertThat(book.has("clamps", ClampShape.VOLUME, 3)).isFalse();
            assertThat(book.status("clamps", 3)).contains("shoulders meet");
        }
    }

    /** Wider, longer or higher holds more: none of the shapes may run the other way. */
    @Test
    void aLargerBodyHoldsMore() throws IOException {
        List<Shape> shapes = shapes();
        List<Shape> larger = new ArrayList<>();
        Random random = new Random(7);
        for (Shape s : shapes) {
            int which = random.nextInt(3);
            larger.add(new Shape(
                    s.kind(),
                    s.length() * (which == 0 ? 1.05 : 1),
                    s.width() * (which == 1 ? 1.05 : 1),
                    s.height() * (which == 2 ? 1.02 : 1),
                    s.batter(),
                    s.ramps(),
                    s.run(),
                    s.crown(),
                    s.straight()));
        }
        List<Shape> both = new ArrayList<>(shapes);
        both.addAll(larger);
        try (SilageBook book = book(both, 0.7)) {
            for (int i = 0; i < SHAPES; i++) {
                double one = book.number("clamps", ClampShape.VOLUME, i);
                double other = book.number("clamps", ClampShape.VOLUME, i + SHAPES);
                boolean ridge = shapes.get(i).kind().endsWith("heap")
                        && book.number("clamps", ClampShape.TOP_WIDTH_USED, i) == 0;
                if (ridge) {
                    // Height wanted beyond the ridge adds nothing; length and width still do.
                    assertThat(other).as("%s", shapes.get(i)).isGreaterThanOrEqualTo(one);
                } else {
                    assertThat(other).as("%s", shapes.get(i)).isGreaterThan(one);
                }
            }
        }
    }
}
