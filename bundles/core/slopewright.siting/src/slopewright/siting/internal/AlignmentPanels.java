package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
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
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/**
 * Three unlit panels: the outer two nearer to the approach and higher, the middle one farther and lower by the rise of the slope. The
 * farther element moves the same way as the aircraft: above the slope the middle panel appears above the line of the outer two.
 */
public final class AlignmentPanels implements IndicatorFamily {

    private static final double RESOLUTION_MIN = 1;
    private static final int FRONT = 1;
    private static final int REAR = 2;
    private static final double SHOWN_ERROR_DEG = 0.5;
    private static final FramePoint ORIGIN = new FramePoint(0, 0, 0);

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
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        layout.unitCount();
        RuleReader reader = layout.reader();
        double slope = layout.slopeDeg();
        double apart = request.number(Input.PANEL_DISTANCE).orElseGet(() -> reader.metres("alignment-panels.panel-distance"));
        double rise = apart * layout.riseAlong(slope);
        double resolution = reader.degrees("alignment-panels.resolution");
        double inner = layout.halfWidthM() + reader.metres("alignment-panels.panel-to-edge");
        double spacing = reader.metres("alignment-panels.panel-spacing");
        LayoutBuilder.Laid laid = lay(layout, rear -> Sides.place(List.of(
                panel("P1", FRONT, rear.distanceM() - apart, inner, rear.lensM() + rise, slope),
                panel("P2", REAR, rear.distanceM(), inner + spacing, rear.lensM(), slope),
                panel("P3", FRONT, rear.distanceM() - apart, inner + 2 * spacing, rear.lensM() + rise, slope)), request.side()));
        LayoutBuilder.Place rear = laid.place();
        reader.note(Message.of("siting.note.panels-rise", Words.m(apart), Words.mm(rise)));
        reader.note(Message.of("siting.note.panels-range", Words.min(Angles.degToMinutes(resolution)),
                Words.wholeM(readableRangeM(apart, slope, SHOWN_ERROR_DEG, resolution))));
        double front = rear.distanceM() - apart;
        return layout.finish(laid, OptionalDouble.of(layout.nominalHeightM(rear.lens(), slope)),
                new Surfaces.Anchor(slope, front, UnshiftedDistance.of(front), rear.lensM() + rise));
    }

    /** An eye height that was entered is the one on the slope; an aeroplane keeps its clearance on the least signal. */
    private static LayoutBuilder.Laid lay(LayoutBuilder layout, Function<LayoutBuilder.Place, List<UnitPlan>> panels) {
        SitingRequest request = layout.request();
        if (!request.has(Input.DISTANCE) && EyeTarget.isOfAeroplane(request)) {
            return layout.solveLeast(EyeTarget.ofAeroplaneM(request, layout.reader()), layout.slopeDeg(), 0, panels);
        }
        LayoutBuilder.Place rear = request.has(Input.DISTANCE) ? layout.given()
                : layout.solve(EyeTarget.eyeHeightM(request, layout.reader()), layout.slopeDeg(), 0);
        return layout.lay(rear, panels.apply(rear));
    }

    @Override
    public Siting assess(SitingRequest request, RuleSet rules, List<UnitPlan> units, UnshiftedDistance unshifted) {
        LayoutBuilder layout = new LayoutBuilder(this, request, rules);
        FramePoint front = LayoutBuilder.centre(LayoutBuilder.bar(units, FRONT));
        FramePoint rear = LayoutBuilder.centre(LayoutBuilder.bar(units, REAR));
        double slope = Angles.elevationDeg(front.heightM() - rear.heightM(), meanAxisM(units, REAR) - meanAxisM(units, FRONT));
        return layout.laid(units, rear, slope, OptionalDouble.of(layout.nominalHeightM(rear, slope)), unshifted);
    }

    private static double meanAxisM(List<UnitPlan> units, int bar) {
        return LayoutBuilder.bar(units, bar).stream().mapToDouble(unit -> unit.axisDistanceM(ORIGIN)).average().orElseThrow();
    }

    private static UnitPlan panel(String id, int bar, double alongM, double rightM, double heightM, double slopeDeg) {
        return new UnitPlan(id, bar, new FramePoint(alongM, rightM, heightM), slopeDeg, 0, List.of());
    }

    /**
     * Returns from how far an error of the given size can be seen: with k = apart x (tan of the eye's angle less tan of the slope), the
     * tangent of the split is k over (range x (1 + tan squared) + tan x k).
     */
    private static double readableRangeM(double apartM, double slopeDeg, double errorDeg, double resolutionDeg) {
        double tan = Angles.tanDeg(slopeDeg + errorDeg);
        double rise = apartM * (tan - Angles.tanDeg(slopeDeg));
        return (rise / Angles.tanDeg(resolutionDeg) - tan * rise) / (1 + tan * tan);
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

    /**
     * The panels have no edges: sought is the height h at which the middle panel has come up to what an eye can tell, t in tangents. With
     * A and B for the tangents of the eye over the outer and the middle panels, A - B + t (1 + A B) = 0, which is quadratic in h.
     */
    @Override
    public Optional<OnSlopeBound> lowestOnSlope(List<UnitPlan> units, double allowanceDeg) {
        double frontM = meanAxisM(units, FRONT);
        double rearM = meanAxisM(units, REAR);
        if (frontM <= 0 || rearM <= frontM) {
            return Optional.empty();
        }
        double frontHeight = LayoutBuilder.centre(LayoutBuilder.bar(units, FRONT)).heightM();
        double rearHeight = LayoutBuilder.centre(LayoutBuilder.bar(units, REAR)).heightM();
        double tan = Angles.tanDeg(Angles.minutesToDeg(RESOLUTION_MIN));
        double square = tan / (frontM * rearM);
        double linear = 1 / frontM - 1 / rearM - square * (frontHeight + rearHeight);
        double constant = rearHeight / rearM - frontHeight / frontM + tan + square * frontHeight * rearHeight;
        double root = linear * linear - 4 * square * constant;
        if (linear <= 0 || root < 0) {
            return Optional.empty();
        }
        double height = -2 * constant / (linear + Math.sqrt(root));
        return Optional.of(new OnSlopeBound("", Angles.elevationDeg(height - rearHeight, rearM), height));
    }

    @Override
    public Map<String, Meaning> meanings(List<SeenUnit> seen) {
        double offset = seen.stream().filter(panel -> panel.unit().bar() != FRONT)
                .mapToDouble(panel -> panel.offsetMin().orElse(Double.NaN)).sum();
        if (Double.isNaN(offset)) {
            return Map.of("", Meaning.OUTSIDE);
        }
        return Map.of("", offset >= RESOLUTION_MIN ? Meaning.ABOVE : offset <= -RESOLUTION_MIN ? Meaning.BELOW : Meaning.ON_SLOPE);
    }
}
