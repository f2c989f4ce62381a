package slopewright.standards;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Dimensions and slopes of the obstacle protection surface at runways.
 *
 * @param rows          one for each approach type and code number
 * @param fromIndicator whether the start is measured from the indicator's unshifted distance instead of the threshold
 * @param citation      the printed table
 */
public record SurfaceTable(List<Row> rows, boolean fromIndicator, Citation citation) {

    /** How the slope of a surface is given. */
    public enum SlopeBasis {
        /** So many degrees below the setting that the table calls A. */
        BELOW_LOWEST_SETTING,
        /** A fixed angle. */
        FIXED
    }

    /**
     * The slope for one kind of indicator.
     *
     * @param basis how it is given
     * @param deg   decimal degrees
     */
    public record Slope(SlopeBasis basis, double deg) {
    }

    /**
     * One column of the printed table.
     *
     * @param instrument          instrument approach
     * @param code                code number, 1 to 4
     * @param innerEdgeM          length of the inner edge, metres
     * @param startM              start before the threshold, or beyond the indicator's distance, metres
     * @param divergencePercent   divergence on each side
     * @param lengthM             total length, metres
     * @param slopes              slope by family; a family that is absent has none
     * @param innerEdges          inner edges that differ by family, metres
     * @param lengths             lengths that differ by family, metres
     * @param dimensionProvenance how well inner edge, start and divergence are known
     * @param lengthProvenance    how well the length is known
     * @param slopeProvenance     how well the slopes are known
     */
    public record Row(boolean instrument, int code, double innerEdgeM, double startM, double divergencePercent, double lengthM,
            Map<String, Slope> slopes, Map<String, Double> innerEdges, Map<String, Double> lengths, Provenance dimensionProvenance,
            Provenance lengthProvenance, Provenance slopeProvenance) {

        /** Copies the maps. */
        public Row {
            slopes = Map.copyOf(slopes);
            innerEdges = Map.copyOf(innerEdges);
            lengths = Map.copyOf(lengths);
        }

        /** Returns the inner edge for a family, metres. */
        public double innerEdgeM(String family) {
            return innerEdges.getOrDefault(family, innerEdgeM);
        }

        /** Returns the total length for a family, metres. */
        public double lengthM(String family) {
            return lengths.getOrDefault(family, lengthM);
        }

        /** Returns the slope for a family, empty where the table prints none. */
        public Optional<Slope> slope(String family) {
            return Optional.ofNullable(slopes.get(family));
        }
    }

    /** Copies the rows. */
    public SurfaceTable {
        rows = List.copyOf(rows);
    }

    /** Returns the column of an approach type and code number. */
    public Optional<Row> row(boolean instrument, int code) {
        return rows.stream().filter(row -> row.instrument() == instrument && row.code() == code).findFirst();
    }
}
