package slopewright.standards.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import slopewright.standards.AimingPointTable;
import slopewright.standards.Citation;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.HeliportSurfaceTable;
import slopewright.standards.PhotometryTable;
import slopewright.standards.Provenance;
import slopewright.standards.RemedyKind;
import slopewright.standards.RemedyTable;
import slopewright.standards.RuleSet;
import slopewright.standards.SurfaceTable;
import slopewright.standards.WheelClearanceTable;

/** Reads the printed tables of one folder; a table that is not there is inherited. */
final class TableReaders {

    private static final List<String> WHEEL_CLEARANCE = List.of("eye_to_wheel_from_m", "eye_to_wheel_below_m", "desired_clearance_m",
            "minimum_clearance_m", "light_aeroplane_clearance_m");
    private static final List<String> SURFACE = List.of("approach", "code", "inner_edge_m", "start_m", "divergence_percent",
            "total_length_m", "t_form_slope_deg", "four_unit_row_below_a_deg", "two_unit_row_below_a_deg", "t_form_inner_edge_m",
            "t_form_total_length_m",
            "dimension_provenance", "length_provenance", "slope_provenance");
    private static final List<String> HELIPORT = List.of("approach", "distance_from_fato_m", "divergence_percent", "total_length_m",
            "four_unit_row_below_a_deg", "two_unit_row_below_a_deg", "heliport_sector_below_a_deg");
    private static final List<String> AIMING_POINT = List.of("landing_distance_from_m", "landing_distance_below_m", "distance_m");
    private static final List<String> CROSSING_HEIGHT = List.of("group", "cockpit_to_wheel_ft", "crossing_height_ft", "tolerance_above_ft",
            "tolerance_below_ft");
    private static final List<String> PHOTOMETRY = List.of("families", "colour", "condition", "shape", "intensity_cd", "azimuth_deg",
            "elevation_deg");
    private static final List<String> PHOTOMETRY_FILES = List.of("fig-a2-22.csv", "fig-a2-23.csv", "fig-ii-5-11.csv", "fig-3-1.csv");
    private static final List<String> REMEDIES = List.of("remedy");
    private static final List<String> T_FORMS = List.of("t-form", "t-form-abbreviated");

    private final String folder;
    private final Function<String, Optional<String>> data;
    private final RuleSetLoader.CitationMaker citations;
    private final Optional<RuleSet.Tables> base;
    private final Provenance atMost;

    TableReaders(String folder, Function<String, Optional<String>> data, RuleSetLoader.CitationMaker citations,
            Optional<RuleSet.Tables> base, Provenance atMost) {
        this.folder = folder;
        this.data = data;
        this.citations = citations;
        this.base = base;
        this.atMost = atMost;
    }

    RuleSet.Tables readAll() {
        return new RuleSet.Tables(
                first(WHEEL_CLEARANCE, this::wheelClearance, "tab-5-2.csv", "tab-m-1.csv").or(() -> base
                        .flatMap(RuleSet.Tables::wheelClearance)
                        .map(table -> new WheelClearanceTable(table.groups(), table.citation().atMost(atMost),
                                table.desired().atMost(atMost)))),
                first(SURFACE, this::surface, "tab-5-3.csv", "tab-m-2.csv").or(() -> base.flatMap(RuleSet.Tables::surface)
                        .map(table -> new SurfaceTable(table.rows(), table.fromIndicator(), table.citation().atMost(atMost)))),
                first(HELIPORT, this::heliport, "tab-ii-5-1.csv").or(() -> base.flatMap(RuleSet.Tables::heliport)
                        .map(table -> new HeliportSurfaceTable(table.rows(), table.citation().atMost(atMost)))),
                first(AIMING_POINT, this::aimingPoint, "tab-5-1.csv").or(() -> base.flatMap(RuleSet.Tables::aimingPoint)
                        .map(table -> new AimingPointTable(table.bands(), table.citation().atMost(atMost)))),
                first(CROSSING_HEIGHT, this::crossingHeight, "tab-3-3.csv").or(() -> base.flatMap(RuleSet.Tables::crossingHeight)
                        .map(table -> new CrossingHeightTable(table.groups(), table.citation().atMost(atMost)))),
                photometry(),
                first(REMEDIES, this::remedies, "remedies.csv").or(() -> base.flatMap(RuleSet.Tables::remedies)
                        .map(table -> new RemedyTable(table.kinds(), table.citation().atMost(atMost)))));
    }

    private RemedyTable remedies(HeadedCsv csv) {
        return new RemedyTable(csv.rows().stream().map(row -> word(row, "remedy", RemedyKind.values())).toList(),
                citation(csv, "table.remedies"));
    }

    /** Figures of intensities that a folder holds stand for those of the base of the same families and colours. */
    private List<PhotometryTable> photometry() {
        List<PhotometryTable> own = new ArrayList<>();
        for (String name : PHOTOMETRY_FILES) {
            data.apply(folder + "/" + name).ifPresent(text -> own.addAll(photometry(HeadedCsv.read(folder + "/" + name, text, PHOTOMETRY),
                    "table." + name.substring(0, name.indexOf('.')))));
        }
        base.stream().flatMap(tables -> tables.photometry().stream())
                .filter(table -> own.stream().noneMatch(mine -> mine.colour().equals(table.colour())
                        && mine.families().stream().anyMatch(table.families()::contains)))
                .map(table -> table.atMost(atMost)).toList().forEach(own::add);
        return own;
    }

    /** Reads contours; rows of the same families, colour and condition belong together and go outward with falling intensity. */
    private List<PhotometryTable> photometry(HeadedCsv csv, String key) {
        Citation citation = citation(csv, key);
        List<PhotometryTable> tables = new ArrayList<>();
        for (HeadedCsv.Row row : csv.rows()) {
            List<String> families = List.of(row.text("families").split(" "));
            PhotometryTable.Condition condition = word(row, "condition", PhotometryTable.Condition.values());
            PhotometryTable.Contour contour = new PhotometryTable.Contour(word(row, "shape", PhotometryTable.Shape.values()),
                    row.number("intensity_cd"), row.number("azimuth_deg"), row.isBlank("elevation_deg") ? 90 : row.number("elevation_deg"));
            PhotometryTable last = tables.isEmpty() ? null : tables.get(tables.size() - 1);
            List<PhotometryTable.Contour> contours = new ArrayList<>();
            if (last != null && last.families().equals(families) && last.colour().equals(row.text("colour"))
                    && last.condition() == condition) {
                contours.addAll(tables.remove(tables.size() - 1).contours());
                PhotometryTable.Contour inner = contours.get(contours.size() - 1);
                if (contour.intensityCd() >= inner.intensityCd() || contour.azimuthDeg() <= inner.azimuthDeg()) {
                    throw row.fault("contour-order");
                }
            }
            if (!(contour.intensityCd() > 0) || !(contour.azimuthDeg() > 0) || !(contour.elevationDeg() > 0)) {
                throw row.fault("contour-empty");
            }
            contours.add(contour);
            tables.add(new PhotometryTable(families, row.text("colour"), condition, contours, citation));
        }
        return tables;
    }

    private static <T extends Enum<T>> T word(HeadedCsv.Row row, String column, T[] values) {
        String text = row.text(column);
        for (T value : values) {
            if (value.name().toLowerCase(Locale.ROOT).equals(text)) {
                return value;
            }
        }
        throw row.fault("no-word", text, column);
    }

    private <T> Optional<T> first(List<String> columns, Function<HeadedCsv, T> reader, String... names) {
        for (String name : names) {
            String file = folder + "/" + name;
            Optional<String> text = data.apply(file);
            if (text.isPresent()) {
                return text.map(found -> reader.apply(HeadedCsv.read(file, found, columns)));
            }
        }
        return Optional.empty();
    }

    private Citation citation(HeadedCsv csv, String key) {
        return citations.make(key, csv.head("source"), csv.head("clause"), csv.headProvenance("provenance").key(), csv.head("title"),
                (why, values) -> csv.headFault("source", why, values));
    }

    private WheelClearanceTable wheelClearance(HeadedCsv csv) {
        List<WheelClearanceTable.Group> groups = new ArrayList<>();
        double reached = 0;
        for (HeadedCsv.Row row : csv.rows()) {
            double from = row.number("eye_to_wheel_from_m");
            double below = row.number("eye_to_wheel_below_m");
            reached = checkBand(row, reached, from, below);
            Optional<Double> light = row.isBlank("light_aeroplane_clearance_m") ? Optional.empty()
                    : Optional.of(row.realSize("light_aeroplane_clearance_m"));
            double desired = row.realSize("desired_clearance_m");
            double minimum = row.realSize("minimum_clearance_m");
            if (desired < minimum) {
                throw row.fault("desired-below-least", desired, minimum);
            }
            groups.add(new WheelClearanceTable.Group(from, below, desired, minimum, light));
        }
        Citation printed = citation(csv, "table.wheel-clearance");
        Citation desired = csv.findHead("desired.provenance").isEmpty() ? printed
                : citations.make("table.wheel-clearance-desired", csv.head("source"), csv.head("clause"),
                        csv.headProvenance("desired.provenance").key(), csv.head("desired.note"),
                        (why, values) -> csv.headFault("desired.provenance", why, values));
        return new WheelClearanceTable(groups, printed, desired);
    }

    private static double checkBand(HeadedCsv.Row row, double reached, double from, double below) {
        if (from != reached) {
            throw row.fault("band-start", from, reached);
        }
        if (below <= from) {
            throw row.fault("band-end", below, from);
        }
        return below;
    }

    private SurfaceTable surface(HeadedCsv csv) {
        List<SurfaceTable.Row> rows = new ArrayList<>();
        for (HeadedCsv.Row row : csv.rows()) {
            Map<String, SurfaceTable.Slope> slopes = new LinkedHashMap<>();
            Map<String, Double> innerEdges = new LinkedHashMap<>();
            Map<String, Double> lengths = new LinkedHashMap<>();
            for (String family : T_FORMS) {
                putSlope(slopes, family, row, "t_form_slope_deg", SurfaceTable.SlopeBasis.FIXED);
                putNumber(innerEdges, family, row, "t_form_inner_edge_m");
                putNumber(lengths, family, row, "t_form_total_length_m");
            }
            putSlope(slopes, "four-unit-row", row, "four_unit_row_below_a_deg", SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING);
            putSlope(slopes, "two-unit-row", row, "two_unit_row_below_a_deg", SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING);
            boolean instrument = choice(row, "approach", "visual", "instrument");
            int code = (int) row.number("code");
            boolean twice = rows.stream().anyMatch(other -> other.instrument() == instrument && other.code() == code);
            if (code != row.number("code") || code < 1 || code > 4 || twice) {
                throw row.fault("code");
            }
            rows.add(new SurfaceTable.Row(instrument, code, row.realSize("inner_edge_m"), row.size("start_m"),
                    row.size("divergence_percent"), row.realSize("total_length_m"), slopes, innerEdges, lengths,
                    row.provenance("dimension_provenance"),
                    row.provenance("length_provenance"), row.provenance("slope_provenance")));
        }
        String start = csv.head("start");
        if (!List.of("threshold", "indicator").contains(start)) {
            throw csv.headFault("start", "start", start);
        }
        return new SurfaceTable(rows, "indicator".equals(start), citation(csv, "table.surface"));
    }

    private static void putSlope(Map<String, SurfaceTable.Slope> slopes, String family, HeadedCsv.Row row, String column,
            SurfaceTable.SlopeBasis basis) {
        if (!row.isBlank(column)) {
            slopes.put(family, new SurfaceTable.Slope(basis, row.size(column)));
        }
    }

    private static void putNumber(Map<String, Double> numbers, String family, HeadedCsv.Row row, String column) {
        if (!row.isBlank(column)) {
            numbers.put(family, row.realSize(column));
        }
    }

    private static boolean choice(HeadedCsv.Row row, String column, String no, String yes) {
        String text = row.text(column);
        if (!text.equals(no) && !text.equals(yes)) {
            throw row.fault("one-of", column, no, yes, text);
        }
        return text.equals(yes);
    }

    private HeliportSurfaceTable heliport(HeadedCsv csv) {
        List<HeliportSurfaceTable.Row> rows = new ArrayList<>();
        for (HeadedCsv.Row row : csv.rows()) {
            boolean nonPrecision = choice(row, "approach", "visual", "non-precision");
            if (rows.stream().anyMatch(other -> other.nonPrecision() == nonPrecision)) {
                throw row.fault("approach-twice");
            }
            rows.add(new HeliportSurfaceTable.Row(nonPrecision, row.size("distance_from_fato_m"), row.size("divergence_percent"),
                    row.realSize("total_length_m"), Map.of("four-unit-row", row.size("four_unit_row_below_a_deg"),
                            "two-unit-row", row.size("two_unit_row_below_a_deg"),
                            "heliport-sector", row.size("heliport_sector_below_a_deg"))));
        }
        return new HeliportSurfaceTable(rows, citation(csv, "table.heliport-surface"));
    }

    private AimingPointTable aimingPoint(HeadedCsv csv) {
        List<AimingPointTable.Band> bands = new ArrayList<>();
        double reached = 0;
        for (HeadedCsv.Row row : csv.rows()) {
            double from = row.number("landing_distance_from_m");
            double below = row.isBlank("landing_distance_below_m") ? Double.POSITIVE_INFINITY : row.number("landing_distance_below_m");
            reached = checkBand(row, reached, from, below);
            bands.add(new AimingPointTable.Band(from, below, row.realSize("distance_m")));
        }
        return new AimingPointTable(bands, citation(csv, "table.aiming-point"));
    }

    private CrossingHeightTable crossingHeight(HeadedCsv csv) {
        List<CrossingHeightTable.Group> groups = new ArrayList<>();
        for (HeadedCsv.Row row : csv.rows()) {
            if (row.number("group") != groups.size() + 1) {
                throw row.fault("group", groups.size() + 1);
            }
            groups.add(new CrossingHeightTable.Group(groups.size() + 1, row.realSize("cockpit_to_wheel_ft"),
                    row.realSize("crossing_height_ft"), row.size("tolerance_above_ft"), row.size("tolerance_below_ft")));
        }
        return new CrossingHeightTable(groups, citation(csv, "table.crossing-height"));
    }
}
