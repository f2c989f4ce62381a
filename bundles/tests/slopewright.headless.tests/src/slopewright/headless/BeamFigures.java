package slopewright.headless;

import static slopewright.headless.OneAidOutputs.cell;
import static slopewright.headless.OneAidOutputs.found;
import static slopewright.headless.OneAidOutputs.property;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Angles, surface, spacing and staff of the row at 09, and what is published of it, in every output; worked out here from what was entered:
 * a slope of 3 degrees, an allowance of 2 minutes on the setting of B, a surface of 1 degree 50.8 minutes from 60 m before the threshold,
 * and units 9 m apart from 37.5 m on, at settings of 35 and 15 minutes above and below.
 */
final class BeamFigures {

    private static final double LENS_M = 87.131 - 86.4;
    private static final double ALONG_M = 330.462;
    private static final double LOWEST_DEG = 2 + 43 / 60.0;

    private BeamFigures() {
    }

    static List<SameFiguresTest.Figure> all() {
        List<SameFiguresTest.Figure> figures = new ArrayList<>(angles());
        figures.addAll(surface());
        figures.addAll(places());
        figures.addAll(published());
        return figures;
    }

    private static List<SameFiguresTest.Figure> angles() {
        return List.of(figure("slope of the approach deg", 3, 0.0005, Map.of(
                "report", found("Approach slope 3\u00b000' \\((3\\.\\d{3})\u00b0"),
                "Bericht", found("Anflugwinkel 3\u00b000' \\((3,\\d{3})\u00b0"),
                "report PDF", found("Approach slope 3\u00b000' \\((3\\.\\d{3})\u00b0"),
                "commissioning", found("Approach slope 3\u00b000' \\((3\\.\\d{3})\u00b0"),
                "published", cell("runway 09,PAPI 09,", "angle deg"),
                "SVG signals", minutes("slope (3\u00b0\\d+')"), "SVG section", minutes("Slope (3\u00b0\\d+')"),
                "SVG near", minutes("Slope (3\u00b0\\d+')"))),
                figure("lowest on-slope signal deg", LOWEST_DEG, 0.0005, Map.of(
                        "report", found("Lowest on-slope signal 2\u00b043' \\((\\d\\.\\d{3})\u00b0"),
                        "report PDF", found("Lowest on-slope signal 2\u00b043' \\((\\d\\.\\d{3})\u00b0"),
                        "published", cell("runway 09,PAPI 09,", "eye height holds for deg"),
                        "SVG signals", minutes("Lowest on-slope signal (2\u00b0\\d+')"),
                        "SVG section", minutes("lowest on-slope signal (2\u00b0\\d+')"),
                        "SVG near", minutes("lowest on-slope signal (2\u00b0\\d+')"),
                        "section PDF", minutes("lowest on-slope signal (2\u00b0\\d+')"))),
                figure("true azimuth deg", 272, 0.0005, Map.of(
                        "schedule", cell("runway 09,PAPI 09,D,", "azimuth true deg"),
                        "XLSX", cell("runway 09,PAPI 09,D,", "azimuth true deg"),
                        "GeoJSON", property("unit", "D", "azimuthTrueDeg"))));
    }

    private static List<SameFiguresTest.Figure> surface() {
        return List.of(figure("slope of the surface deg", 1 + 50.8 / 60, 0.0005, Map.of(
                "report", found("Slope 1\u00b050\\.8' \\((1\\.\\d{3})\u00b0"),
                "Bericht", found("Neigung 1\u00b050,8' \\((1,\\d{3})\u00b0"),
                "report PDF", found("Slope 1\u00b050\\.8' \\((1\\.\\d{3})\u00b0"),
                "SVG surface", minutes("Obstacle surface (1\u00b0[\\d.]+')"),
                "SVG section", minutes("obstacle surface (1\u00b0[\\d.]+')"), "SVG near", minutes("obstacle surface (1\u00b0[\\d.]+')"),
                "GeoJSON", property("surface", "", "slopeDeg"))),
                figure("start of the surface before the threshold m", 60, 0.005, Map.of(
                        "report", found("m long, at -([\\d.]+) m along"), "report PDF", found("m long, at -([\\d.]+) m along"),
                        "SVG surface", found("from -(\\d+) m, inner edge"),
                        "GeoJSON", property("surface", "", "startAlongM").andThen(text -> text.replaceFirst("^-", "")))),
                figure("inner edge m", 300, 0.005, Map.of(
                        "report", found("Inner edge ([\\d.]+) m long"), "report PDF", found("Inner edge ([\\d.]+) m long"),
                        "SVG surface", found("inner edge (\\d+) m"), "GeoJSON", property("surface", "", "innerEdgeM"))),
                figure("length of the surface m", 15_000, 0.5, Map.of(
                        "report", found("Length (\\d+) m"), "report PDF", found("Length (\\d+) m"), "SVG surface", found("length (\\d+) m"),
                        "GeoJSON", property("surface", "", "lengthM"))),
                figure("what governs, before the threshold m", 1341.53, 0.5, Map.of(
                        "report", found("Tannery power line line -(\\d+\\.\\d+),"), "SVG plan", found("surface, (\\d+) m before"),
                        "SVG section", found("surface, (\\d+) m before"), "SVG surface", found("surface, (\\d+) m before"),
                        "SVG near", found("surface, (\\d+) m before"), "section PDF", found("surface, (\\d+) m before"))));
    }

    private static List<SameFiguresTest.Figure> places() {
        double gradient = Math.tan(Math.toRadians(3 + 35 / 60.0));
        return List.of(figure("between two units m", 9, 0.005, Map.of(
                "SVG plan", found(" (9\\.\\d\\d) "), "SVG detail", found(" (9\\.\\d\\d) "), "plan PDF", found(" (9\\.\\d\\d) "),
                "report", found("Difference = (9\\.\\d{3}) m"))),
                figure("inner unit to the edge m", 37.5 - 22.5, 0.005, Map.of(
                        "SVG plan", found(" (15\\.\\d\\d) "), "SVG detail", found(" (15\\.\\d\\d) "),
                        "report", found("half the runway width = 37\\.500 m \\S 22\\.500 m = (15\\.\\d{3}) m"))),
                figure("gradient of D", gradient, 0.000006, Map.of(
                        "commissioning", found(" D (0\\.06\\d{3}) "),
                        "commissioning PDF", found(" D (0\\.06\\d{3}) "),
                        "schedule", cell("runway 09,PAPI 09,D,", "gradient mm per m").andThen(text -> String.valueOf(Double
                                .parseDouble(text) / 1000)))),
                figure("staff of D at 10 m, m above the lens", 10 * gradient, 0.0006, Map.of(
                        "commissioning", found(" D 0\\.06\\d{3} [\\d.]+ ([\\d.]+) "),
                        "commissioning PDF", found(" D 0\\.06\\d{3} [\\d.]+ ([\\d.]+) "),
                        "schedule", found("runway 09,PAPI 09,D,.*?,87\\.757,([\\d.]+),"))),
                figure("ground under D m", 86.531, 0.0006, Map.of(
                        "schedule", found("runway 09,PAPI 09,D,.*?,(86\\.\\d{3}),330"), "SVG mounting", found(" D ([\\d.]+) "),
                        "mounting PDF", found(" D (86\\.\\d+) "))));
    }

    /** The words for the publication stand in sheet and report. */
    private static List<SameFiguresTest.Figure> published() {
        double mehtM = LENS_M + ALONG_M * Math.tan(Math.toRadians(LOWEST_DEG));
        String words = "PAPI, left, 3\\.00\u00b0, MEHT ([\\d.]+) m \\(54 ft\\)";
        return List.of(figure("MEHT in the words for the publication m", mehtM, 0.0055, Map.of(
                "report", found(words), "report PDF", found(words), "published", found(words),
                "Bericht", found("PAPI, links, 3,00\u00b0, MEHT ([\\d,]+) m \\(54 ft\\)"))));
    }

    private static SameFiguresTest.Figure figure(String name, double expected, double tolerance,
            Map<String, Function<String, String>> places) {
        return new SameFiguresTest.Figure(name, expected, tolerance, places);
    }

    private static Function<String, String> minutes(String pattern) {
        return found(pattern).andThen(OneAidOutputs::degrees);
    }
}
