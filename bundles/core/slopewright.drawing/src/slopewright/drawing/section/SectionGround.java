package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Style;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/** The ground in a section: the level of the origin, the runway's own profile and the surveyed ground of the units. */
final class SectionGround {

    private final DrawnAid drawn;
    private final SectionLines lines;

    SectionGround(DrawnAid drawn, SectionLines lines) {
        this.drawn = drawn;
        this.lines = lines;
    }

    void draw() {
        lines.line(Style.dashed(Ink.GROUND, 0.2), "", lines.window().minAlongM(), 0, lines.window().maxAlongM(), 0);
        if (drawn.host() instanceof RunwayEnd end) {
            double datum = drawn.frame().originElevationM();
            Projects.runway(end).ifPresent(runway -> centreLine(end, runway, datum));
            lines.pieces(Style.line(Ink.GROUND, 0.5), "", along(end.getSiteProfile(), 0, 1, datum));
        }
    }

    /** The centre line counts from the end that comes first; the other end sees it backward. */
    private void centreLine(RunwayEnd end, Runway runway, double datumM) {
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        boolean first = !runway.getEnds().isEmpty() && runway.getEnds().get(0) == end;
        if (first) {
            lines.pieces(Style.line(Ink.DIMENSION, 0.8), "", along(runway.getCentreLine(), -displaced, 1, datumM));
        } else if (runway.getLengthM() != null) {
            lines.pieces(Style.line(Ink.DIMENSION, 0.8), "", along(runway.getCentreLine(), runway.getLengthM() - displaced, -1, datumM));
        }
    }

    private static double[] along(List<ProfilePoint> points, double from, double direction, double datumM) {
        List<ProfilePoint> known = new ArrayList<>(points);
        known.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null);
        known.sort(Comparator.comparing(ProfilePoint::getChainageM));
        double[] xy = new double[known.size() * 2];
        for (int i = 0; i < known.size(); i++) {
            xy[2 * i] = from + direction * known.get(i).getChainageM();
            xy[2 * i + 1] = known.get(i).getElevationM() - datumM;
        }
        return xy;
    }
}
