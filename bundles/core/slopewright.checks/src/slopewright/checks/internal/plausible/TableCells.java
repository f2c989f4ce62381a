package slopewright.checks.internal.plausible;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

import slopewright.standards.Citation;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.HeliportSurfaceTable;
import slopewright.standards.PhotometryTable;
import slopewright.standards.RuleSet;
import slopewright.standards.SurfaceTable;
import slopewright.standards.WheelClearanceTable;

/**
 * The numbers of the tables of a rule set by what they say, so that tables that are cut differently can be compared: a clearance by the
 * eye-to-wheel height in whole metres, a marking by the landing distance, an intensity by its direction.
 */
final class TableCells {
    private static final int TALLEST_M = 14;
    private static final int[] LANDING_M = {400, 1000, 1800, 3000};
    private static final int[][] DIRECTIONS_DEG = {{0, 0}, {2, 0}, {4, 0}, {6, 0}, {8, 0}, {0, 2}, {0, 3}};

    private final Map<String, Double> cells = new TreeMap<>();
    private final Predicate<Citation> wanted;

    private TableCells(Predicate<Citation> wanted) {
        this.wanted = wanted;
    }

    /** Returns the numbers of those tables of a rule set whose citation is wanted, by what they say. */
    static Map<String, Double> of(RuleSet rules, Predicate<Citation> wanted) {
        TableCells found = new TableCells(wanted);
        RuleSet.Tables tables = rules.tables();
        tables.wheelClearance().ifPresent(found::wheelClearance);
        tables.surface().filter(table -> wanted.test(table.citation())).ifPresent(found::surface);
        tables.heliport().filter(table -> wanted.test(table.citation())).ifPresent(found::heliport);
        tables.crossingHeight().filter(table -> wanted.test(table.citation())).ifPresent(found::crossingHeight);
        tables.aimingPoint().filter(table -> wanted.test(table.citation())).ifPresent(table -> {
            for (int landing : LANDING_M) {
                found.put("aiming-point " + landing + " m distance-m", table.distanceM(landing));
            }
        });
        tables.photometry().stream().filter(table -> wanted.test(table.citation())).forEach(found::photometry);
        return found.cells;
    }

    private void put(String cell, double value) {
        cells.put(cell, value);
    }

    private void wheelClearance(WheelClearanceTable table) {
        for (int height = 0; height < TALLEST_M; height++) {
            String name = "wheel-clearance " + height + " m ";
            table.group(height).ifPresent(group -> {
                if (wanted.test(table.desired())) {
                    put(name + "desired-m", group.desiredM());
                }
                if (wanted.test(table.citation())) {
                    put(name + "minimum-m", group.minimumM());
                    group.lightAeroplaneM().ifPresent(light -> put(name + "light-m", light));
                }
            });
        }
    }

    private void surface(SurfaceTable table) {
        for (SurfaceTable.Row row : table.rows()) {
            String name = "surface " + (row.instrument() ? "instrument " : "visual ") + row.code() + " ";
            put(name + "inner-edge-m", row.innerEdgeM());
            put(name + "start-m", row.startM());
            put(name + "divergence-percent", row.divergencePercent());
            put(name + "length-m", row.lengthM());
            row.innerEdges().forEach((family, edge) -> put(name + family + " inner-edge-m", edge));
            row.lengths().forEach((family, length) -> put(name + family + " length-m", length));
            row.slopes().forEach((family, slope) -> put(name + family + " " + slope.basis() + " slope-deg", slope.deg()));
        }
    }

    private void heliport(HeliportSurfaceTable table) {
        for (HeliportSurfaceTable.Row row : table.rows()) {
            String name = "heliport-surface " + (row.nonPrecision() ? "non-precision " : "visual ");
            put(name + "start-m", row.startM());
            put(name + "divergence-percent", row.divergencePercent());
            put(name + "length-m", row.lengthM());
            row.belowDeg().forEach((family, below) -> put(name + family + " below-deg", below));
        }
    }

    private void crossingHeight(CrossingHeightTable table) {
        for (CrossingHeightTable.Group group : table.groups()) {
            String name = "crossing-height " + group.number() + " ";
            put(name + "cockpit-to-wheel-ft", group.cockpitToWheelFt());
            put(name + "height-ft", group.crossingHeightFt());
            put(name + "above-ft", group.aboveFt());
            put(name + "below-ft", group.belowFt());
        }
    }

    private void photometry(PhotometryTable table) {
        for (String family : table.families()) {
            for (int[] at : DIRECTIONS_DEG) {
                table.intensityCd(at[0], at[1]).ifPresent(candela -> put("light " + family + " " + table.colour() + " " + table.condition()
                        + " " + at[0] + " " + at[1] + " cd", candela));
            }
        }
    }
}
