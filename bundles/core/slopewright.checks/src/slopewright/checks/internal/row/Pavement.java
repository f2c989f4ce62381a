package slopewright.checks.internal.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.checks.internal.Stop;
import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.EdgeKind;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * A pavement near the units, in their frame.
 *
 * @param name    what it is called
 * @param isApron whether it is an apron
 * @param line    its edge, or its centre line
 * @param halfM   half its width where the line is a centre line, else 0
 */
record Pavement(String name, boolean isApron, List<FramePoint> line, double halfM) {

    /** Returns the edges that were surveyed. */
    static List<Pavement> edges(Aerodrome aerodrome, SiteFrame frame) {
        List<Pavement> found = new ArrayList<>();
        for (TaxiwayEdge edge : aerodrome.getTaxiwayEdges()) {
            if (edge.getPoints().isEmpty()) {
                throw Stop.missing("points of " + Projects.label(edge));
            }
            List<FramePoint> line = edge.getPoints().stream().map(place -> inFrame(place, frame)).toList();
            found.add(new Pavement(Projects.label(edge), edge.getKind() == EdgeKind.APRON, line, 0));
        }
        return found;
    }

    /** Returns the other runways whose ends and width are known. */
    static List<Pavement> otherRunways(Aerodrome aerodrome, Runway own, SiteFrame frame) {
        List<Pavement> found = new ArrayList<>();
        for (Runway runway : aerodrome.getRunways()) {
            List<Place> ends = runway.getEnds().stream().map(RunwayEnd::getThreshold).filter(Objects::nonNull).toList();
            if (runway != own && ends.size() == 2 && runway.getWidthM() != null) {
                found.add(new Pavement(Projects.label(runway), false, ends.stream().map(place -> inFrame(place, frame)).toList(),
                        runway.getWidthM() / 2));
            }
        }
        return found;
    }

    private static FramePoint inFrame(Place place, SiteFrame frame) {
        try {
            return frame.toFrame(place, frame.originElevationM());
        } catch (SitingException e) {
            throw Stop.unsolved(e.reason());
        }
    }

    /** Returns the distance in plan, 0 on the pavement. */
    double distanceM(double alongM, double rightM) {
        FramePoint at = new FramePoint(alongM, rightM, 0);
        double least = at.planDistanceM(line.get(0));
        for (int i = 1; i < line.size(); i++) {
            FramePoint from = line.get(i - 1);
            FramePoint to = line.get(i);
            double along = to.alongM() - from.alongM();
            double right = to.rightM() - from.rightM();
            double square = along * along + right * right;
            double share = square == 0 ? 0 : ((alongM - from.alongM()) * along + (rightM - from.rightM()) * right) / square;
            least = Math.min(least, at.planDistanceM(from.towards(to, Math.max(0, Math.min(1, share)))));
        }
        return Math.max(0, least - halfM);
    }
}
