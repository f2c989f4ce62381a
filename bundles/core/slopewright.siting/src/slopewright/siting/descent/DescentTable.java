package slopewright.siting.descent;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.geometry.Decimals;
import slopewright.siting.internal.DataFile;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.Provenance;
import slopewright.standards.Source;
import slopewright.standards.StandardsException;

/**
 * The published table of rates of descent by angle and speed, as it is printed: rounded, and in the form that it names itself. Between
 * its rows and columns it is interpolated; outside it says nothing. Immutable.
 */
public final class DescentTable {

    private static final String FILE = "/data/descent/rate-of-descent.csv";
    private static final DescentTable BUNDLED = new DescentTable(DataFile.bundled(FILE));

    private final double[] speeds;
    private final double[] angles;
    private final double[][] descents;
    private final DescentForm form;
    private final double regularToDeg;
    private final Citation citation;

    private DescentTable(DataFile file) {
        try {
            speeds = file.columns().stream().skip(1).mapToDouble(Decimals::parse).toArray();
            form = DescentForm.valueOf(file.head("form").toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new StandardsException(FILE, 0, e.getMessage());
        }
        regularToDeg = file.number("regular to");
        angles = file.rows().stream().mapToDouble(row -> row[0]).toArray();
        descents = file.rows().stream().map(row -> Arrays.copyOfRange(row, 1, row.length)).toArray(double[][]::new);
        citation = new Citation("table.rate-of-descent", new Source("descent-table", CitedText.of(file.head("title")), CitedText.of("")),
                CitedText.of("@complete-as-seen"), Provenance.of(file.head("provenance")), CitedText.of(file.head("note")), "");
    }

    /**
     * What the table says.
     *
     * @param descentFtMin rate of descent, feet a minute
     * @param printed      whether it is a printed number, not interpolated
     * @param form         the form of the table
     * @param note         what a reader must know; may be empty
     */
    public record Entry(double descentFtMin, boolean printed, DescentForm form, String note) {
    }

    /** Returns the table that comes with the product. */
    public static DescentTable bundled() {
        return BUNDLED;
    }

    /** Returns the form of its numbers: speed over the ground or along the path. */
    public DescentForm form() {
        return form;
    }

    /** Returns where it comes from. */
    public Citation citation() {
        return citation;
    }

    /** Returns the angles of its rows, decimal degrees. */
    public List<Double> anglesDeg() {
        return Arrays.stream(angles).boxed().toList();
    }

    /** Returns the speeds of its columns, knots. */
    public List<Double> speedsKt() {
        return Arrays.stream(speeds).boxed().toList();
    }

    /**
     * Looks up the rate of descent.
     *
     * @param angleDeg path angle, decimal degrees
     * @param speedKt  speed in the sense of the table's form, knots
     * @return the entry, empty where the table does not reach
     */
    public Optional<Entry> descent(double angleDeg, double speedKt) {
        int row = before(angles, angleDeg);
        int column = before(speeds, speedKt);
        if (row < 0 || column < 0) {
            return Optional.empty();
        }
        double down = (angleDeg - angles[row]) / (angles[row + 1] - angles[row]);
        double across = (speedKt - speeds[column]) / (speeds[column + 1] - speeds[column]);
        double upper = descents[row][column] * (1 - across) + descents[row][column + 1] * across;
        double lower = descents[row + 1][column] * (1 - across) + descents[row + 1][column + 1] * across;
        boolean printed = (down == 0 || down == 1) && (across == 0 || across == 1);
        return Optional.of(new Entry(upper * (1 - down) + lower * down, printed, form, note(angleDeg)));
    }

    /**
     * Looks up the angle of a rate of descent.
     *
     * @param speedKt      speed in the sense of the table's form, knots
     * @param descentFtMin rate of descent, feet a minute
     * @return decimal degrees, interpolated; empty where the table does not reach
     */
    public Optional<Double> angleDeg(double speedKt, double descentFtMin) {
        if (before(speeds, speedKt) < 0) {
            return Optional.empty();
        }
        List<Double> column = new ArrayList<>();
        for (double angle : angles) {
            column.add(descent(angle, speedKt).orElseThrow().descentFtMin());
        }
        double[] values = column.stream().mapToDouble(Double::doubleValue).toArray();
        int row = before(values, descentFtMin);
        return row < 0 ? Optional.empty()
                : Optional.of(angles[row] + (descentFtMin - values[row]) / (values[row + 1] - values[row]) * (angles[row
                        + 1] - angles[row]));
    }

    private String note(double angleDeg) {
        return angleDeg > regularToDeg ? String.format(Locale.ROOT, "Above %.1f° the table leaves its own form.", regularToDeg) : "";
    }

    /** Returns the index of the step that holds a number, or -1 outside. */
    private static int before(double[] rising, double number) {
        for (int i = 0; i + 1 < rising.length; i++) {
            if (number >= rising[i] && number <= rising[i + 1]) {
                return i;
            }
        }
        return -1;
    }
}
