package slopewright.siting.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/** What the siting of every family goes through: inputs, rule values, ground; then the parts are put together. */
final class LayoutBuilder {

    /** Units that stand so close together along the runway stand at one place. */
    private static final double ONE_PLACE_M = 1;

    private final IndicatorFamily family;
    private final SitingRequest request;
    private final RuleReader reader;
    private final Ground ground;
    private final double slopeDeg;

    LayoutBuilder(IndicatorFamily family, SitingRequest request, RuleSet rules) {
        this.family = family;
        this.request = request;
        reader = new RuleReader(rules);
        ground = Ground.of(request);
        slopeDeg = Slopes.slopeDeg(request, reader);
        if (request.number(Input.CODE).filter(code -> code < 1 || code > 4).isPresent()) {
            throw new SitingException("the code number (code) is 1 to 4");
        }
        if (request.atHelipad() && !family.atHelipads()) {
            throw new SitingException(family.name() + " (" + family.key() + ") is not for helipads");
        }
        if (!request.atHelipad() && !family.atRunways()) {
            throw new SitingException(family.name() + " (" + family.key()
                    + ") is for helipads: give the hover height (hover-height-m) and the eye"
                    + " height above the skids (eye-above-skids-m)");
        }
    }

    RuleReader reader() {
        return reader;
    }

    SitingRequest request() {
        return request;
    }

    Ground ground() {
        return ground;
    }

    double slopeDeg() {
        return slopeDeg;
    }

    String prefix() {
        return family.ruleKey() + ".";
    }

    /** Returns half the runway width in metres; 0 for a given layout of which only the signals are asked. */
    double halfWidthM() {
        if (request.atHelipad()) {
            return 0;
        }
        Optional<Double> width = request.number(Input.RUNWAY_WIDTH);
        if (width.isEmpty() && request.isGiven()) {
            reader.note("The runway width is not known; places to the side are counted from the centre line.");
            return 0;
        }
        double entered = request.need(Input.RUNWAY_WIDTH);
        if (entered <= 0) {
            throw new SitingException("the runway width (runway-width-m) must be more than zero");
        }
        return entered / 2;
    }

    /** Returns the number of units, checked against those the family comes in. */
    int unitCount() {
        int count = request.number(Input.UNITS).map(number -> (int) Math.round(number)).orElse(family.unitCounts().get(0));
        if (!family.unitCounts().contains(count)) {
            throw new SitingException(family.name() + " comes in " + family.unitCounts() + " units, not " + count);
        }
        return count;
    }

    /** Returns hover height plus eye above skids, metres. */
    double helicopterEyeHeightM() {
        return request.need(Input.HOVER_HEIGHT) + request.need(Input.EYE_ABOVE_SKIDS);
    }

    /**
     * Finds the distance from the hover point: the path passes through the eye at the hover, or the distance is given.
     *
     * @return metres beyond the hover point
     */
    Place helipadPlace() {
        if (request.has(Input.DISTANCE)) {
            return given();
        }
        reader.note("The distance brings the eye to the hover on the path angle itself.");
        return new Place(ground.solve(helicopterEyeHeightM(), slopeDeg, 0), ground);
    }

    Place given() {
        return new Place(new LevelSolution(request.need(Input.DISTANCE), 0, "given", request.need(Input.DISTANCE),
                ground.lensAt(request.need(Input.DISTANCE))), ground);
    }

    /** A distance with its lens height. */
    record Place(LevelSolution level, Ground ground) {

        double distanceM() {
            return level.distanceM();
        }

        double lensM() {
            return level.levelDifferenceM();
        }
    }

    /** Puts the layout together. */
    Siting finish(Place place, double nominalDistanceM, List<UnitPlan> units, OptionalDouble nominalEyeHeightM, Surfaces.Anchor anchor) {
        if (place.distanceM() <= 0) {
            throw new SitingException(String.format(java.util.Locale.ROOT,
                    "the indicator would stand %.1f m before the threshold; check eye height, lens height and slope", -place.distanceM()));
        }
        if (!place.level().stopRule().equals("given") && Math.abs(place.lensM()) > 0) {
            reader.note(String.format(java.util.Locale.ROOT,
                    "The lenses stand %.2f m %s the threshold; distance solved in %d step(s), %s; the published single step gives %.2f m.",
                    Math.abs(place.lensM()), place.lensM() >= 0 ? "above" : "below", place.level().iterations(), place.level().stopRule(),
                    place.level().singleStepM()));
        }
        double turn = request.number(Input.AXIS_TURN).orElse(0.0);
        noteTurn(turn);
        List<UnitPlan> turned = turn == 0 ? units : units.stream().map(unit -> unit.turned(turn)).toList();
        return siting(place.distanceM(), nominalDistanceM, turned, new FramePoint(place.distanceM(), 0, place.lensM()), nominalEyeHeightM,
                anchor, Optional.of(place.level()));
    }

    private Siting siting(double distanceM, double nominalDistanceM, List<UnitPlan> units, FramePoint reference,
            OptionalDouble nominalEyeHeightM, Surfaces.Anchor anchor, Optional<LevelSolution> level) {
        double turn = request.number(Input.AXIS_TURN).orElse(0.0);
        OnSlopeBound bound = family.lowestOnSlope(units, allowanceDeg()).orElseThrow(() -> new SitingException(
                Message.of(request.atHelipad() ? "siting.nothing-on-slope-at-hover" : "siting.nothing-on-slope", Words.name(family.name()))));
        OptionalDouble clearance = request.atHelipad() ? OptionalDouble.empty() : EyeTarget.wheelClearanceM(request, bound.heightM());
        Surfaces surfaces = new Surfaces(family.ruleKey(), request, reader);
        Optional<SurfacePlan> surface = surfaces.make(anchor).map(plan -> plan.turned(turn));
        return new Siting(family.key(), reader.rules().key(), reader.rules().edition(), slopeDeg, distanceM, nominalDistanceM,
                bound.angleDeg(), bound.heightM(), nominalEyeHeightM, clearance, reference, Signals.inOrder(units), surface,
                surfaces.reason(), level, reader.notes(), reader.citations());
    }

    /** Returns what is taken off the setting that bounds the on-slope signal, decimal degrees; nothing at helipads. */
    double allowanceDeg() {
        return request.atHelipad() || !reader.has(prefix() + "boundary-allowance-min") ? 0 : reader.degrees(prefix() + "boundary-allowance");
    }

    private void noteTurn(double turnDeg) {
        if (Math.abs(turnDeg) >= 90) {
            throw new SitingException("the turn of the axis (axis-turn-deg) must be less than 90 degrees to either side");
        }
        if (turnDeg != 0 && reader.has("obstacle.axis-turn-limit-deg")) {
            double limit = reader.degrees("obstacle.axis-turn-limit");
            if (Math.abs(turnDeg) > limit) {
                reader.note(String.format(java.util.Locale.ROOT, "The axis is turned by %.2f°, more than the %.0f° that are allowed.",
                        Math.abs(turnDeg), limit));
            }
        }
    }

    /**
     * Puts together what a layout that stands already gives.
     *
     * @param units             the units as they stand
     * @param reference         the lens on the centre line that the distance belongs to
     * @param lowestSettingDeg  the setting that tables call A
     * @param nominalEyeHeightM the eye height on the slope itself, where there is one beside the MEHT
     * @param nominalDistanceM  the distance before any shift
     * @param fixedSlopeDeg     the slope of the surface where the layout itself sets it
     */
    Siting laid(List<UnitPlan> units, FramePoint reference, double lowestSettingDeg, OptionalDouble nominalEyeHeightM,
            double nominalDistanceM, OptionalDouble fixedSlopeDeg) {
        double nearest = units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElseThrow();
        double lensHeight = units.stream().map(UnitPlan::place).filter(place -> place.alongM() - nearest < ONE_PLACE_M)
                .mapToDouble(FramePoint::heightM).average().orElseThrow();
        double lowest = family.lowestOnSlope(units, allowanceDeg()).map(OnSlopeBound::angleDeg).orElse(lowestSettingDeg);
        Surfaces.Anchor anchor = new Surfaces.Anchor(lowestSettingDeg, lowest, nearest,
                nominalDistanceM - reference.alongM() + nearest, lensHeight, fixedSlopeDeg);
        return siting(reference.alongM(), nominalDistanceM, units, reference, nominalEyeHeightM, anchor, Optional.empty());
    }

    /** Returns the eye height over the origin on an angle through a lens on the centre line, metres. */
    static OptionalDouble heightOn(FramePoint lens, double angleDeg) {
        return OptionalDouble.of(lens.alongM() * Angles.tanDeg(angleDeg) + lens.heightM());
    }

    /** Returns the mean place of some units on the centre line. */
    static FramePoint centre(List<UnitPlan> units) {
        return new FramePoint(units.stream().mapToDouble(unit -> unit.place().alongM()).average().orElseThrow(), 0,
                units.stream().mapToDouble(unit -> unit.place().heightM()).average().orElseThrow());
    }

    /** Returns the units of one bar. */
    static List<UnitPlan> bar(List<UnitPlan> units, int bar) {
        List<UnitPlan> found = units.stream().filter(unit -> unit.bar() == bar).toList();
        if (found.isEmpty()) {
            throw new SitingException("the layout has no unit of bar " + bar);
        }
        return found;
    }
}
