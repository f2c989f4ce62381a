package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import slopewright.drawing.section.Section;
import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.ui.profile.internal.Messages;

/** The points of the ground beside the runway in its section: where they lie, and the edits that move one and add one. */
final class GroundPoints {
    private static final double MILLIMETRES = 1000;

    private GroundPoints() {
    }

    /** Returns the points of the ground of a section in the order of the model; none at a helipad and where nothing was entered. */
    static List<FramePoint> of(Section section) {
        return end(section.drawn().host()).filter(end -> end.getThresholdElevationM() != null).map(end -> end.getSiteProfile().stream()
                .map(point -> new FramePoint(value(point.getChainageM()), 0, value(point.getElevationM()) - end.getThresholdElevationM()))
                .toList()).orElse(List.of());
    }

    /** Returns whether a point can be added to the ground of a section. */
    static boolean canGrow(Section section) {
        return end(section.drawn().host()).filter(end -> end.getThresholdElevationM() != null).isPresent();
    }

    private static double value(Double number) {
        return number == null ? Double.NaN : number;
    }

    private static Optional<RunwayEnd> end(Object host) {
        return host instanceof RunwayEnd end ? Optional.of(end) : Optional.empty();
    }

    private static RunwayEnd endOf(ApproachAid aid) {
        return end(aid.eContainer()).orElseThrow(() -> new EditException(Message.said("plain", Messages.get("section.ground.no-runway"))));
    }

    /**
     * Moves a point.
     *
     * @param index    which one
     * @param alongM   its new place from the threshold, metres
     * @param byM      by how much it is raised, metres
     */
    static Function<ApproachAid, RecordedEdit> move(int index, double alongM, double byM) {
        return aid -> {
            ProfilePoint point = endOf(aid).getSiteProfile().get(index);
            return Compound.of(Messages.get("section.edit.ground"), List.of(SetAttribute.of(point, Literals.PROFILE_POINT__CHAINAGE_M,
                    rounded(alongM)), SetAttribute.of(point, Literals.PROFILE_POINT__ELEVATION_M, rounded(point.getElevationM() + byM))));
        };
    }

    /** Adds a point at a place of the frame. */
    static Function<ApproachAid, RecordedEdit> add(FramePoint place) {
        return aid -> {
            RunwayEnd end = endOf(aid);
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM(rounded(place.alongM()));
            point.setElevationM(rounded(end.getThresholdElevationM() + place.heightM()));
            return AddChild.of(end, Literals.RUNWAY_END__SITE_PROFILE, point);
        };
    }

    /** Returns the element of a point, so that it can be selected. */
    static Optional<ProfilePoint> element(ApproachHost host, int index) {
        return end(host).map(RunwayEnd::getSiteProfile).filter(points -> index < points.size()).map(points -> points.get(index));
    }

    private static double rounded(double metres) {
        return Math.round(metres * MILLIMETRES) / MILLIMETRES;
    }
}
