package slopewright.siting;

import java.util.List;
import java.util.stream.Collectors;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** What many tests start from. */
final class Trials {

    static final double FOOT = 0.3048;

    private Trials() {
    }

    static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    /** A runway 45 m wide, 3 degrees, code 3, eye 15 m over the threshold. */
    static SitingRequest.Builder runway() {
        return SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 3.0).set(Input.EYE_HEIGHT, 15.0);
    }

    /** A helipad, 6 degrees, skids 2 m over the hover point, eye 1.8 m above them. */
    static SitingRequest.Builder helipad() {
        return SitingRequest.builder().set(Input.SLOPE, 6.0).set(Input.HOVER_HEIGHT, 2.0).set(Input.EYE_ABOVE_SKIDS, 1.8)
                .set(Input.SAFETY_AREA_WIDTH, 36.0).set(Input.FATO_LENGTH, 24.0);
    }

    /** An eye at an elevation over the reference point of a siting. */
    static FramePoint eye(Siting siting, double distanceM, double elevationDeg) {
        return new FramePoint(siting.reference().alongM() - distanceM, 0,
                siting.reference().heightM() + distanceM * Angles.tanDeg(elevationDeg));
    }

    /** Returns the notes of a siting in English. */
    static List<String> notes(Siting siting) {
        return siting.notes().stream().map(Message::english).toList();
    }

    /** Returns why a siting has no obstacle surface, in English; empty where it has one. */
    static String noSurface(Siting siting) {
        return siting.noSurface().map(Message::english).orElse("");
    }

    static UnitPlan unit(Siting siting, String id) {
        return siting.units().stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    static String colours(Observation seen) {
        return seen.seen().stream().map(one -> one.light().colour().name().substring(0, 1)).collect(Collectors.joining());
    }
}
