package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.EdgeKind;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * A pavement near the units, in their frame.
 *
 * @param element what it belongs to
 * @param isApron whether it is an apron
 * @param line    its edge, or its centre line
 * @param halfM   half its width where the line is a centre line, else 0
 */
record Pavement(Identified element, boolean isApron, List<FramePoint> line, double halfM) {

    /** Returns a surveyed edge of a taxiway or an apron; ends the rule where it has no points. */
    static Pavement of(TaxiwayEdge edge, SiteFrame frame) {
        if (edge.getPoints().isEmpty()) {
            throw Stop.missing(Message.of("missing.pavement-points", ElementNames.of(edge)));
        }
        return new Pavement(edge, edge.getKind() == EdgeKind.APRON, edge.getPoints().stream().map(place -> inFrame(place, frame)).toList(),
                0);
    }

    /**
     * Returns another runway, with the pavement before displaced thresholds; ends the rule where its thresholds or its width are not known,
     * because nobody can tell how near it comes.
     */
    static Pavement of(Runway runway, SiteFrame frame) {
        List<RunwayEnd> ends = runway.getEnds();
        if (ends.size() != 2 || ends.stream().anyMatch(end -> end.getThreshold() == null) || runway.getWidthM() == null) {
            throw Stop.missing(Message.of("missing.runway-outline", ElementNames.of(runway)));
        }
        FramePoint first = inFrame(ends.get(0).getThreshold(), frame);
        FramePoint second = inFrame(ends.get(1).getThreshold(), frame);
        return new Pavement(runway, false, List.of(extremity(first, second, ends.get(0)), extremity(second, first, ends.get(1))),
                runway.getWidthM() / 2);
    }

    private static FramePoint extremity(FramePoint threshold, FramePoint farThreshold, RunwayEnd end) {
        double lengthM = threshold.planDistanceM(farThreshold);
        Double displacedM = end.getDisplacedThresholdM();
        return displacedM == null || lengthM == 0 ? threshold : threshold.towards(farThreshold, -displacedM / lengthM);
    }

    private static FramePoint inFrame(Place place, SiteFrame frame) {
        try {
            return frame.toFrame(place, frame.originElevationM());
        } catch (SitingException e) {
            throw Stop.unsolved(e.reason());
        }
    }

    /** Returns the distance in plan, 0 on the pavement. */
    double distanceM(UnitAt unit) {
        FramePoint at = new FramePoint(unit.alongM(), unit.rightM(), 0);
        double least = at.planDistanceM(line.get(0));
        for (int i = 1; i < line.size(); i++) {
            FramePoint from = line.get(i - 1);
            FramePoint to = line.get(i);
            double along = to.alongM() - from.alongM();
            double right = to.rightM() - from.rightM();
            double square = along * along + right * right;
            double share = square == 0 ? 0
                    : ((at.alongM() - from.alongM()) * along + (at.rightM() - from.rightM()) * right) / square;
            least = Math.min(least, at.planDistanceM(from.towards(to, Math.max(0, Math.min(1, share)))));
        }
        return Math.max(0, least - halfM);
    }
}
