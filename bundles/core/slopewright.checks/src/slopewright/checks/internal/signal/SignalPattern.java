package slopewright.checks.internal.signal;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.Transition;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;

/**
 * The lights of one unit from its lowest sector to its highest.
 *
 * @param lights the lights
 */
record SignalPattern(List<Light> lights) {

    SignalPattern {
        lights = List.copyOf(lights);
    }

    /** Returns the pattern of edges, lowest first. */
    static SignalPattern of(List<SectorEdge> edges) {
        List<Light> lights = new ArrayList<>();
        for (SectorEdge edge : edges) {
            if (lights.isEmpty()) {
                lights.add(edge.below());
            }
            lights.add(edge.above());
        }
        return new SignalPattern(lights);
    }

    /**
     * Returns the pattern of the sectors of a unit as they were entered.
     *
     * @throws slopewright.checks.internal.Stop where an angle is missing
     */
    static SignalPattern of(UnitAt unit) {
        List<Light> lights = new ArrayList<>();
        for (Transition transition : unit.unit().getTransitions()) {
            if (lights.isEmpty()) {
                lights.add(light(transition.getBelowColour(), transition.getBelowState()));
            }
            lights.add(light(transition.getAboveColour(), transition.getAboveState()));
        }
        return new SignalPattern(lights);
    }

    /** Returns whether the sectors of a unit rise and each begins with the light with which the one below ends. */
    static boolean isJoined(UnitAt unit) {
        List<Transition> transitions = unit.unit().getTransitions();
        for (int i = 0; i < transitions.size(); i++) {
            double angle = UnitAt.need(transitions.get(i).getOffsetDeg(), Message.of("missing.transition-angle", unit.name()));
            if (i > 0) {
                Transition before = transitions.get(i - 1);
                boolean joins = before.getAboveColour() == transitions.get(i).getBelowColour()
                        && before.getAboveState() == transitions.get(i).getBelowState();
                if (!joins || angle <= before.getOffsetDeg()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static Light light(LightColour colour, LightState state) {
        boolean dark = colour == LightColour.NONE || state == LightState.OFF;
        return dark && colour == LightColour.NONE ? Light.DARK
                : new Light(Colour.valueOf(colour.getName()), LightForm.valueOf(state.getName()));
    }

    /** Returns whether another pattern shows the same: a make may cut its lowest sector off to the dark below. */
    boolean isShownBy(SignalPattern other) {
        List<Light> shown = other.lights();
        boolean cutOff = shown.size() == lights.size() + 1 && shown.get(0).equals(Light.DARK) && !lights.get(0).equals(Light.DARK);
        return lights.equals(cutOff ? shown.subList(1, shown.size()) : shown);
    }

    /** Returns the lights as words, lowest first. */
    Argument words() {
        return Words.list(lights.stream().map(SignalPattern::word).toList());
    }

    private static Argument word(Light light) {
        return light.colour() == Colour.NONE ? Words.term("colour.none")
                : Message.of("signal.light", Words.term("light-form." + light.form().key()), Words.term("colour." + light.colour().key()));
    }
}
