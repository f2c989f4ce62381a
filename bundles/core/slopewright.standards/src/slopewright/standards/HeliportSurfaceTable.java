package slopewright.standards;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Dimensions and slopes of the obstacle protection surface at heliports; the inner edge is as long as the safety area is wide.
 *
 * @param rows     one for each approach type
 * @param citation the printed table
 */
public record HeliportSurfaceTable(List<Row> rows, Citation citation) {

    /**
     * One column of the printed table.
     *
     * @param nonPrecision      approach other than visual
     * @param startM            start from the end of the FATO, metres
     * @param divergencePercent divergence on each side
     * @param lengthM           total length, metres
     * @param belowDeg          degrees below the setting that the table calls A, by family
     */
    public record Row(boolean nonPrecision, double startM, double divergencePercent, double lengthM, Map<String, Double> belowDeg) {

        /** Copies the map. */
        public Row {
            belowDeg = Map.copyOf(belowDeg);
        }
    }

    /** Copies the rows. */
    public HeliportSurfaceTable {
        rows = List.copyOf(rows);
    }

    /** Returns the column of an approach type. */
    public Optional<Row> row(boolean nonPrecision) {
        return rows.stream().filter(row -> row.nonPrecision() == nonPrecision).findFirst();
    }
}
