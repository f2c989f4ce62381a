package slopewright.siting;

import java.util.stream.Collectors;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
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

    /** A visual runway 45 m wide, 3 degrees, code 3, eye 15 m over the threshold. */
    static SitingRequest.Builder runway() {
        return SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 3.0).set(Input.EYE_HEIGHT, 15.0)
                .approach(Approach.VISUAL);
    }

    /** A helipad with a visual approach, 6 degrees, skids 2 m over the hover point, eye 1.8 m above them. */
    static SitingRequest.Builder helipad() {
        return SitingRequest.builder().set(Input.SLOPE, 6.0).set(Input.HOVER_HEIGHT, 2.0).set(Input.EYE_ABOVE_SKIDS, 1.8)
                .set(Input.SAFETY_AREA_WIDTH, 36.0).set(Input.FATO_LENGTH, 24.0).approach(Approach.VISUAL);
    }

    /** An eye at an elevation over the reference point of a siting. */
    static FramePoint eye(Siting siting, double distanceM, double elevationDeg) {
        return new FramePoint(siting.reference().alongM() - distanceM, 0,
                siting.reference().heightM() + distanceM * Angles.tanDeg(elevationDeg));
    }

    /** Returns the note with a key; fails where there is none. */
    static Message note(Siting siting, String key) {
        return siting.notes().stream().filter(note -> note.key().equals(key)).findFirst()
                .orElseThrow(() -> new AssertionError(key + " is not among " + siting.notes()));
    }

    /** Returns whether a siting has a note with a key. */
    static boolean hasNote(Siting siting, String key) {
        return siting.notes().stream().anyMatch(note -> note.key().equals(key));
    }

    /** Returns the number in a place of a message. */
    static double number(Message message, int place) {
        return ((Argument.Quantity) message.arguments().get(place)).value();
    }

    static UnitPlan unit(Siting siting, String id) {
        return siting.units().stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    static String colours(Observation seen) {
        return seen.seen().stream().map(seenUnit -> seenUnit.light().colour().name().substring(0, 1)).collect(Collectors.joining());
    }
}
