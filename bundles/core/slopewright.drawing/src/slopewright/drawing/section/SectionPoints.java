package slopewright.drawing.section;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.site.SurveyPoints;

/** Which points of survey blocks a window of a section shows: of those near the approach the highest over each place. */
final class SectionPoints {

    /** How far beside the obstacle surface something is still drawn, metres. */
    static final double BESIDE_M = 300;
    /** Width of a place of the outline on paper or screen, millimetres. */
    static final double COLUMN_MM = 0.6;

    private final SectionWindow window;
    private final Optional<ProtectionSurface> surface;

    SectionPoints(SectionWindow window, Optional<ProtectionSurface> surface) {
        this.window = window;
        this.surface = surface;
    }

    /** Returns how far beside the centre line something is drawn at a place, metres. */
    double reachM(double alongM) {
        return BESIDE_M + surface.map(found -> found.halfWidthM(Math.max(0, Math.min(found.lengthM(), found.startAlongM() - alongM))))
                .orElse(0.0);
    }

    /** Returns the index of the highest of the points near the approach over each place, -1 where there is none. */
    int[] highest(SurveyPoints.InFrame places) {
        double[] reach = IntStream.range(0, (int) Math.ceil(window.widthMm() / COLUMN_MM))
                .mapToDouble(column -> reachM(window.at((column + 0.5) * COLUMN_MM, 0).x())).toArray();
        int[] tops = new int[reach.length];
        Arrays.fill(tops, -1);
        double scale = window.mmAlong() / COLUMN_MM;
        double[] alongM = places.alongM();
        double[] heightM = places.heightM();
        for (int i = 0; i < alongM.length; i++) {
            int column = (int) Math.floor((alongM[i] - window.minAlongM()) * scale);
            if (column >= 0 && column < tops.length && Math.abs(places.rightM()[i]) <= reach[column] && !Double.isNaN(heightM[i])
                    && (tops[column] < 0 || heightM[i] > heightM[tops[column]])) {
                tops[column] = i;
            }
        }
        return tops;
    }

    /**
     * Returns the point that is drawn nearest to a place: of the outline, of those through the surface, or the governing one of a block.
     *
     * @param drawn   the aid whose section it is
     * @param alongM  the place along the approach, metres
     * @param heightM its height, metres
     * @param reachMm how far on paper or screen the point may lie from it, millimetres
     */
    Optional<SurveyPointAt> nearest(DrawnAid drawn, double alongM, double heightM, double reachMm) {
        Optional<SurveyPointAt> nearest = Optional.empty();
        double leastMm = reachMm;
        for (Surroundings.Block block : drawn.surroundings().blocks()) {
            for (int index : shown(block.points()).toArray()) {
                FramePoint point = block.points().point(index);
                double away = Math.hypot((point.alongM() - alongM) * window.mmAlong(), (point.heightM() - heightM) * window.mmUp());
                if (away <= leastMm) {
                    leastMm = away;
                    nearest = Optional.of(new SurveyPointAt(block.block(), index, point));
                }
            }
        }
        return nearest;
    }

    private IntStream shown(SurveyField field) {
        IntStream outline = Arrays.stream(highest(field.places()));
        IntStream through = surface.stream().filter(plane -> field.compare(plane).above() > 0)
                .flatMap(plane -> field.above(plane, Integer.MAX_VALUE).stream()).mapToInt(SurveyField.Above::index);
        IntStream governing = surface.stream().mapToInt(plane -> field.compare(plane).worst());
        return IntStream.concat(IntStream.concat(outline, through), governing).filter(index -> index >= 0);
    }
}
