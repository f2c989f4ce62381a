package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.SeenUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * Three unlit panels: the outer two nearer to the approach and higher, the middle one farther and lower by the rise of the slope. The
 * farther element moves the same way as the aircraft: above the slope the middle panel appears above the line of the outer two.
 */
public final class AlignmentPanels implements IndicatorFamily {

    private static final double RESOLUTION_MIN = 1;
    private static final int FRONT = 1;
    private static final int HALVINGS = 60;

    @Override
    public String key() {
        return "alignment-panels";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.PANELS);
    }

    @Override
    public String name() {
        return "alignment of elements";
    }

    @Override
    public List<Integer> unitCounts() {
        return List.of(3);
    }

    @Override
    public DisplayForm displayForm() {
        return DisplayForm.PANELS;
    }

    @Override
    public Siting site(SitingRequest request, RuleSet rules) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        draft.unitCount();
        RuleReader reader = draft.reader();
        double slope = draft.slopeDeg();
        double apart = request.number(Input.PANEL_DISTANCE).orElseGet(() -> reader.metres("alignment-panels.panel-distance"));
        LayoutBuilder.Place rear = request.has(Input.DISTANCE) ? draft.given()
                : new LayoutBuilder.Place(draft.ground().solve(EyeTarget.eyeHeightM(request, reader), slope, 0), draft.ground());
        double rise = apart * Angles.tanDeg(slope);
        double resolution = reader.degrees("alignment-panels.resolution");
        reader.note(String.format(Locale.ROOT, "The front panels stand %.2f m before the rear one and %.3f m higher.", apart, rise));
        reader.note(String.format(Locale.ROOT, "Half a degree off the slope shows as %.0f' or more only within %.0f m of the panels.",
                Angles.degToMinutes(resolution), readableRangeM(apart, slope, 0.5, resolution)));
        double inner = draft.halfWidthM() + reader.metres("alignment-panels.panel-to-edge");
        double spacing = reader.metres("alignment-panels.panel-spacing");
        double front = rear.distanceM() - apart;
        List<UnitPlan> panels = List.of(panel("P1", FRONT, front, inner, rear.lensM() + rise, slope),
                panel("P2", 2, rear.distanceM(), inner + spacing, rear.lensM(), slope),
                panel("P3", FRONT, front, inner + 2 * spacing, rear.lensM() + rise, slope));
        double eyeHeight = rear.distanceM() * Angles.tanDeg(slope) + rear.lensM();
        double lowest = lowestOnSlope(panels, 0).map(OnSlopeBound::angleDeg).orElse(slope);
        return draft.finish(rear, rear.distanceM(), Sides.place(panels, request.side()), OptionalDouble.of(eyeHeight),
                new Surfaces.Anchor(slope, lowest, front, front, rear.lensM() + rise, OptionalDouble.empty()));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, double nominalDistanceM) {
        LayoutBuilder draft = new LayoutBuilder(this, request, rules);
        FramePoint front = LayoutBuilder.centre(LayoutBuilder.bar(units, FRONT));
        FramePoint rear = LayoutBuilder.centre(LayoutBuilder.bar(units, 2));
        double slope = Angles.elevationDeg(front.heightM() - rear.heightM(), rear.alongM() - front.alongM());
        return draft.laid(units, rear, slope, LayoutBuilder.heightOn(rear, slope), nominalDistanceM, OptionalDouble.empty());
    }

    private static UnitPlan panel(String id, int bar, double alongM, double rightM, double heightM, double slopeDeg) {
        return new UnitPlan(id, bar, new FramePoint(alongM, rightM, heightM), slopeDeg, 0, List.of());
    }

    /** Returns from how far an error of the given size can be seen: range times range plus spacing over spacing is the height per split. */
    private static double readableRangeM(double apartM, double slopeDeg, double errorDeg, double resolutionDeg) {
        double low = 0;
        double high = 100_000;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (splitDeg(middle, apartM, slopeDeg, slopeDeg + errorDeg) >= resolutionDeg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double splitDeg(double rangeM, double apartM, double slopeDeg, double eyeDeg) {
        double height = (rangeM + apartM) * Angles.tanDeg(eyeDeg);
        return Math.abs(eyeDeg - Angles.elevationDeg(height - apartM * Angles.tanDeg(slopeDeg), rangeM));
    }

    @Override
    public List<SeenUnit> look(List<UnitPlan> units, FramePoint eye) {
        double front = units.stream().filter(unit -> unit.bar() == FRONT).mapToDouble(unit -> unit.elevationDeg(eye)).average()
                .orElse(Double.NaN);
        List<SeenUnit> seen = new ArrayList<>();
        for (UnitPlan unit : units) {
            double elevation = unit.elevationDeg(eye);
            double offset = unit.bar() == FRONT ? 0 : Angles.degToMinutes(front - elevation);
            seen.add(new SeenUnit(unit, Light.DARK, false, elevation, OptionalDouble.of(offset)));
        }
        return seen;
    }

    /** The panels have no edges: the height at which the middle panel has just come up to what an eye can tell is found by halving. */
    @Override
    public Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        FramePoint rear = LayoutBuilder.centre(LayoutBuilder.bar(units, 2));
        FramePoint front = LayoutBuilder.centre(LayoutBuilder.bar(units, FRONT));
        if (front.alongM() <= 0 || rear.alongM() <= front.alongM()) {
            return Optional.empty();
        }
        double low = Math.min(front.heightM(), rear.heightM());
        double high = low + rear.alongM();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double offset = Angles.degToMinutes(Angles.elevationDeg(middle - front.heightM(), front.alongM())
                    - Angles.elevationDeg(middle - rear.heightM(), rear.alongM()));
            if (offset > -RESOLUTION_MIN) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Optional.of(new OnSlopeBound("", Angles.elevationDeg(high - rear.heightM(), rear.alongM()), high));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        double offset = seen.stream().filter(one -> one.unit().bar() != FRONT).mapToDouble(one -> one.offsetMin().orElse(Double.NaN)).sum();
        if (Double.isNaN(offset)) {
            return Map.of("", Meaning.OUTSIDE);
        }
        return Map.of("", offset >= RESOLUTION_MIN ? Meaning.ABOVE : offset <= -RESOLUTION_MIN ? Meaning.BELOW : Meaning.ON_SLOPE);
    }
}
