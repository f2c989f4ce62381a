package slopewright.ui.profile.internal.pilot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import slopewright.drawing.pilot.FlownApproach;
import slopewright.drawing.pilot.PilotPicture;
import slopewright.geometry.FramePoint;
import slopewright.siting.LightRhythm;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;

/** The time in the pilot's view: where on the approach it is, and where in their period the lights are. Time is given from outside. */
public final class Playback {

    /** Seconds of one step. */
    public static final double STEP_S = 1;

    private static final int SAMPLES = 240;

    private final Map<String, Double> phases = new HashMap<>();
    private FlownApproach approach;
    private double timeS;
    private double factor = 1;
    private boolean playing;
    private boolean held;

    /**
     * What is seen at a moment of the approach.
     *
     * @param timeS       seconds from the start
     * @param beforeM     distance before the threshold or hover point, metres
     * @param observation what is seen
     */
    record Sample(double timeS, double beforeM, Observation observation) {
    }

    /** Starts at the start of an approach. */
    Playback(FlownApproach approach) {
        this.approach = approach;
    }

    /** Returns the approach. */
    public FlownApproach approach() {
        return approach;
    }

    /** Flies another approach; the share of it that is flown stays. */
    void approach(FlownApproach other) {
        double share = timeS / approach.durationS();
        approach = other;
        timeS = share * other.durationS();
    }

    /** Returns the time from the start of the approach, seconds. */
    public double timeS() {
        return timeS;
    }

    /** Goes to a time, seconds from the start. */
    void seek(double seconds) {
        timeS = Math.max(0, Math.min(approach.durationS(), seconds));
    }

    /** Returns whether the approach is being flown. */
    public boolean isPlaying() {
        return playing;
    }

    /** Flies on, from the start where it has ended; or stops. */
    void play(boolean on) {
        if (on && isAtEnd()) {
            timeS = 0;
        }
        playing = on;
    }

    boolean isAtEnd() {
        return timeS >= approach.durationS();
    }

    /** Sets how many times quicker than in nature the approach is flown. */
    void factor(double newFactor) {
        factor = newFactor;
    }

    /** Returns how many times quicker than in nature the approach is flown. */
    public double factor() {
        return factor;
    }

    /** Returns whether lights are held on. */
    public boolean isHeld() {
        return held;
    }

    /** Holds lights on that would flash or pulsate, or lets them. */
    void hold(boolean hold) {
        held = hold;
    }

    /**
     * Lets the approach go on.
     *
     * @param seconds the time that has passed
     * @return whether the eye has moved
     */
    boolean fly(double seconds) {
        if (!playing) {
            return false;
        }
        seek(timeS + seconds * factor);
        playing = !isAtEnd();
        return true;
    }

    /**
     * Lets lights go on and off; they keep their own time, whatever the approach does.
     *
     * @param seconds the time that has passed
     * @param sight   what is seen
     * @return whether one has come on or gone off
     */
    boolean blink(double seconds, Sight sight) {
        if (held) {
            return false;
        }
        boolean changed = false;
        for (SeenUnit seen : sight.seen()) {
            LightRhythm rhythm = sight.rhythm(seen);
            if (rhythm.isTimed()) {
                double phase = phases.getOrDefault(seen.unit().id(), 0.0);
                double next = rhythm.advance(phase, seconds);
                phases.put(seen.unit().id(), next);
                changed |= rhythm.isOn(phase) != rhythm.isOn(next);
            } else {
                phases.remove(seen.unit().id());
            }
        }
        return changed;
    }

    /** Returns whether a unit is lit at this moment. */
    public boolean isLit(Sight sight, SeenUnit seen) {
        LightRhythm rhythm = sight.rhythm(seen);
        return !rhythm.isTimed() || held ? rhythm.onShare() > 0 : rhythm.isOn(phases.getOrDefault(seen.unit().id(), 0.0));
    }

    /** Returns the eye on the approach now. */
    FramePoint eye(Indicator indicator) {
        return approach.eyeAt(timeS, indicator.siting());
    }

    /** Returns what is seen along the whole approach, from the start to the end. */
    List<Sample> samples(Indicator indicator) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= SAMPLES; i++) {
            double time = approach.durationS() * i / SAMPLES;
            FramePoint eye = approach.eyeAt(time, indicator.siting());
            PilotPicture picture = PilotPicture.toward(eye, indicator.siting().reference());
            samples.add(new Sample(time, approach.beforeM(time), picture.observe(indicator.siting())));
        }
        return samples;
    }
}
