package slopewright.standards.witness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.standards.Citation;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.HeliportSurfaceTable;
import slopewright.standards.PhotometryTable;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.SurfaceTable;
import slopewright.standards.WheelClearanceTable;
import slopewright.witness.Entry;

/** Finds in the printed tables of a rule set what the second transcription holds cell by cell. */
final class Tables {

    private Tables() {
    }

    static List<Names.Held> held(RuleSet rules, Entry entry) {
        String[] parts = entry.name().split("\\.(?=\\D|\\d+\\.)");
        List<Names.Held> found = new ArrayList<>();
        if (entry.family().equals("wheel-clearance")) {
            rules.wheelClearance().ifPresent(table -> wheel(table, parts, found));
        } else if (parts[0].equals("surface") && (parts[1].equals("visual") || parts[1].equals("instrument"))) {
            rules.surface().ifPresent(table -> surface(rules, table, entry, parts, found));
        } else if (parts[0].equals("heliport-surface")) {
            rules.heliportSurface().ifPresent(table -> heliport(table, entry, parts, found));
        } else if (parts[0].equals("group")) {
            rules.crossingHeight().ifPresent(table -> group(table, parts, found));
        } else if (parts[0].equals("intensity")) {
            intensity(rules, entry, parts, found);
        }
        return found;
    }

    private static void none() {
        // held once
    }

    private static void add(List<Names.Held> found, String name, double value, Citation citation) {
        add(found, name, value, citation.provenance());
    }

    private static void add(List<Names.Held> found, String name, double value, Provenance provenance) {
        found.add(new Names.Held(name, value, provenance));
    }

    private static void wheel(WheelClearanceTable table, String[] parts, List<Names.Held> found) {
        WheelClearanceTable.Group group = table.groups().get(Integer.parseInt(parts[0].substring(3)) - 1);
        switch (parts[1]) {
            case "eye-to-wheel-below-m" -> add(found, "below", group.belowM(), table.citation());
            case "desired-m" -> add(found, "desired", group.desiredM(), table.desired());
            case "minimum-m" -> add(found, "minimum", group.minimumM(), table.citation());
            case "minimum-light-m" -> add(found, "light", group.lightAeroplaneM().orElseThrow(), table.citation());
            default -> none();
        }
    }

    private static void surface(RuleSet rules, SurfaceTable table, Entry entry, String[] parts, List<Names.Held> found) {
        for (SurfaceTable.Row row : table.rows()) {
            boolean column = row.instrument() == parts[1].equals("instrument");
            if (!column || parts.length == 4 && row.code() != Integer.parseInt(parts[2])) {
                continue;
            }
            for (String family : rules.descriptor().families()) {
                if (entry.family().equals(family) || entry.family().equals("all") && !hasOwn(row, family)) {
                    cell(table, row, family, parts[parts.length - 1], found);
                }
            }
        }
    }

    private static boolean hasOwn(SurfaceTable.Row row, String family) {
        return row.innerEdges().containsKey(family) || row.lengths().containsKey(family);
    }

    private static void cell(SurfaceTable table, SurfaceTable.Row row, String family, String name, List<Names.Held> found) {
        Citation printed = table.citation();
        Optional<SurfaceTable.Slope> slope = row.slope(family);
        switch (name) {
            case "inner-edge-m" -> add(found, name, row.innerEdgeM(family), printed.atMost(row.dimensionProvenance()));
            case "divergence-percent" -> add(found, name, row.divergencePercent(), printed.atMost(row.dimensionProvenance()));
            case "length-m" -> add(found, name, row.lengthM(family), printed.atMost(row.lengthProvenance()));
            case "start-m" -> ifThere(!table.fromIndicator(), found, name, row.startM(), row.dimensionProvenance());
            case "beyond-d1-m" -> ifThere(table.fromIndicator(), found, name, row.startM(), row.dimensionProvenance());
            case "slope-offset-deg" -> slope.filter(here -> here.basis() == SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING)
                    .ifPresent(here -> add(found, name, -here.deg(), row.slopeProvenance()));
            case "slope-deg" -> slope.filter(here -> here.basis() == SurfaceTable.SlopeBasis.FIXED)
                    .ifPresent(here -> add(found, name, here.deg(), row.slopeProvenance()));
            default -> none();
        }
    }

    private static void ifThere(boolean there, List<Names.Held> found, String name, double value, Provenance provenance) {
        if (there) {
            add(found, name, value, provenance);
        }
    }

    private static void heliport(HeliportSurfaceTable table, Entry entry, String[] parts, List<Names.Held> found) {
        for (HeliportSurfaceTable.Row row : table.rows()) {
            if (parts.length == 2) {
                Optional.ofNullable(row.belowDeg().get(entry.family())).ifPresent(deg -> add(found, parts[1], -deg, table.citation()));
            } else if (row.nonPrecision() == parts[1].equals("instrument")) {
                add(found, parts[2], switch (parts[2]) {
                    case "start-m" -> row.startM();
                    case "divergence-percent" -> row.divergencePercent();
                    default -> row.lengthM();
                }, table.citation());
            }
        }
    }

    private static void group(CrossingHeightTable table, String[] parts, List<Names.Held> found) {
        CrossingHeightTable.Group group = table.group(Integer.parseInt(parts[1])).orElseThrow();
        add(found, parts[2], switch (parts[2]) {
            case "crossing-height-ft" -> group.crossingHeightFt();
            case "crossing-tolerance-up-ft" -> group.aboveFt();
            case "crossing-tolerance-down-ft" -> group.belowFt();
            default -> group.cockpitToWheelFt();
        }, table.citation());
    }

    private static void intensity(RuleSet rules, Entry entry, String[] parts, List<Names.Held> found) {
        boolean night = parts[1].equals("night");
        String cell = parts[parts.length - 1];
        int ring = Integer.parseInt(parts[parts.length - 2]) - 1;
        List<String> colours = cell.endsWith("-cd") ? List.of(cell.substring(0, cell.length() - 3)) : List.of("red", "white", "green");
        for (String colour : colours) {
            Optional<PhotometryTable> table = rules.photometry(entry.family(), colour, night)
                    .filter(here -> !night && ring < here.contours().size());
            table.ifPresent(here -> add(found, cell, switch (cell) {
                case "azimuth-deg" -> here.contours().get(ring).azimuthDeg();
                case "elevation-deg" -> here.contours().get(ring).elevationDeg();
                default -> here.contours().get(ring).intensityCd();
            }, here.citation()));
        }
    }
}
