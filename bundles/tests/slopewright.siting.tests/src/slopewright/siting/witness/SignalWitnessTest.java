package slopewright.siting.witness;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.geometry.FramePoint;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.witness.Angles;
import slopewright.witness.Eye;
import slopewright.witness.Family;
import slopewright.witness.Layout;
import slopewright.witness.LightUnit;
import slopewright.witness.Meaning;
import slopewright.witness.Meanings;
import slopewright.witness.Seen;
import slopewright.witness.State;
import slopewright.witness.View;

/** What random eyes see of random layouts and what it means, held against the second implementation. */
class SignalWitnessTest {

    private static final int EYES = 60;
    /** Places agree to a micrometre, which at 50 m is 1e-6 degrees; an eye so near an edge may be on either side of it. */
    private static final double NEAR_EDGE_MIN = 1e-3;

    static Stream<String> combinations() {
        return LayoutWitnessTest.combinations();
    }

    @ParameterizedTest
    @MethodSource("combinations")
    void bothSeeTheSame(String combination) {
        Differences differences = new Differences();
        Draw draw = new Draw(combination);
        Random random = Trial.random(combination.hashCode() + 1L);
        for (int i = 0; i < Trial.count(); i++) {
            Trial trial = draw.next(i);
            Optional<Siting> product = trial.product();
            if (product.isEmpty()) {
                differences.refuse();
                continue;
            }
            Layout layout = trial.layout(product.get().distanceM());
            for (int n = 0; n < EYES; n++) {
                compare(differences, trial, layout, product.get(), eye(random, layout));
            }
        }
        differences.verify(Trial.count());
    }

    /** Half of the eyes are about the slope, the others anywhere between a degree below the horizon and twelve above. */
    private static Eye eye(Random random, Layout layout) {
        double out = 60 * Math.pow(250, random.nextDouble());
        double deg = random.nextBoolean() ? layout.slopeDeg() + 2 * random.nextDouble() - 1 : 13 * random.nextDouble() - 1;
        return new Eye(-out, (random.nextDouble() - 0.5) * out,
                layout.referenceHeightM() + (layout.referenceAlongM() + out) * Angles.tanDeg(deg));
    }

    private static void compare(Differences differences, Trial trial, Layout layout, Siting siting, Eye eye) {
        View view = slopewright.witness.Signals.view(layout, eye);
        Observation seen = Signals.observe(siting, new FramePoint(eye.alongM(), eye.rightM(), eye.heightM()));
        if (isNearEdge(layout, eye)) {
            differences.except();
            return;
        }
        String name = trial.name() + " " + eye + " ";
        for (int i = 0; i < view.seen().size(); i++) {
            LightUnit unit = layout.units().get(i);
            List<SeenUnit> there = seen.seen().stream().filter(lamp -> Math.abs(lamp.unit().place().alongM() - unit.alongM()) < 1e-5
                    && Math.abs(lamp.unit().place().rightM() - unit.rightM()) < 1e-5).toList();
            differences.word(name + unit.id(), light(layout, view.seen().get(i)), there.size() == 1
                    ? there.get(0).light().colour() + " " + there.get(0).light().form() : "nothing");
        }
        if (isBelowHorizon(layout, view)) {
            return;
        }
        differences.word(name + "meaning", meaning(layout, view), seen.meaning());
        if (layout.family() == Family.THREE_BAR) {
            differences.word(name + "upper", view.upper(), seen.meanings().get("upper"));
        }
    }

    private static boolean isNearEdge(Layout layout, Eye eye) {
        return layout.units().stream().anyMatch(unit -> slopewright.witness.Signals.inTransition(layout, unit, eye, NEAR_EDGE_MIN));
    }

    /**
     * The red of a T form begins at the horizon (5.3.5.11); the product draws it on below, where it means well below as it does above. The
     * witness sees nothing there.
     */
    private static boolean isBelowHorizon(Layout layout, View view) {
        return layout.family().tForm() && view.seen().stream().anyMatch(light -> light.elevationDeg() <= 0);
    }

    private static String light(Layout layout, Seen seen) {
        boolean drawnOn = layout.family().tForm() && seen.elevationDeg() <= 0 && !seen.bar().equals("fly-down");
        return drawnOn ? "RED STEADY" : seen.colour() + " " + (seen.state() == State.OFF ? "OFF" : seen.state());
    }

    /** Where rows on both sides do not tell the same, no text says what that means: the product tells nothing. */
    private static Meaning meaning(Layout layout, View view) {
        if (!layout.family().row()) {
            return view.meaning();
        }
        Set<Meaning> sides = new LinkedHashSet<>();
        for (String bar : List.of("left", "right")) {
            List<Seen> side = view.seen().stream().filter(light -> light.bar().equals(bar)).toList();
            if (!side.isEmpty()) {
                sides.add(Meanings.of(layout.family(), side, false));
            }
        }
        return sides.size() == 1 ? sides.iterator().next() : Meaning.OUTSIDE;
    }
}
