package slopewright.siting.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Families;
import slopewright.siting.GroundSource;
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
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.RuleSet;

/** What the siting of every family goes through: inputs, rule values, ground; then the parts are put together. */
final class LayoutBuilder {

    /** Units that stand so close together along the runway stand at one place. */
    private static final double ONE_PLACE_M = 1;
    /** How near a solved eye height comes to the wanted one, metres. */
    private static final double SOLVED_M = 1e-9;
    private static final int MOST_STEPS = 60;
    private static final int RIGHT_ANGLE_DEG = 90;
    /** From so far out the signals of a unit abeam of the hover point are read. */
    private static final double FAR_OUT_M = 1000;

    private final IndicatorFamily family;
    private final SitingRequest request;
    private final RuleReader reader;
    private final String prefix;
    private final GroundLine ground;
    private final double slopeDeg;
    private final double turnDeg;
    private final double turnCos;
    private final double allowanceDeg;
    private boolean clearanceIsKept;

    LayoutBuilder(IndicatorFamily family, SitingRequest request, RuleSet rules) {
        this.family = family;
        this.request = request;
        reader = new RuleReader(rules);
        prefix = family.ruleKey() + ".";
        ground = GroundLine.of(request);
        slopeDeg = Slopes.slopeDeg(request, reader);
        turnDeg = request.number(Input.AXIS_TURN).orElse(0.0);
        turnCos = turnDeg == 0 ? 1 : Math.cos(Math.toRadians(turnDeg));
        if (Math.abs(turnDeg) >= RIGHT_ANGLE_DEG) {
            throw new SitingException(Message.of("siting.refused.turn", Input.AXIS_TURN.message()));
        }
        if (request.number(Input.CODE).filter(code -> code < 1 || code > 4).isPresent()) {
            throw new SitingException(Message.of("siting.refused.code", Input.CODE.message()));
        }
        if (request.atHelipad() && !family.atHelipads()) {
            throw new SitingException(Message.of("siting.refused.not-for-helipads", Families.name(family), Words.name(family.key())));
        }
        if (!request.atHelipad() && !family.atRunways()) {
            throw new SitingException(Message.of("siting.refused.for-helipads", Families.name(family), Words.name(family.key()),
                    Input.HOVER_HEIGHT.message(), Input.EYE_ABOVE_SKIDS.message()));
        }
        allowanceDeg = request.atHelipad() || !reader.has(prefix() + "boundary-allowance-min") ? 0
                : reader.degrees(prefix() + "boundary-allowance");
    }

    /** A distance with its lens height. */
    record Place(LevelSolution level) {

        double distanceM() {
            return level.distanceM();
        }

        double lensM() {
            return level.levelDifferenceM();
        }

        FramePoint lens() {
            return new FramePoint(level.distanceM(), 0, level.levelDifferenceM());
        }
    }

    /** Units at a place, their axes turned, and what bounds their on-slope signal over the origin of the frame. */
    record Laid(Place place, List<UnitPlan> units, OnSlopeBound bound) {
    }

    RuleReader reader() {
        return reader;
    }

    SitingRequest request() {
        return request;
    }

    GroundLine ground() {
        return ground;
    }

    double slopeDeg() {
        return slopeDeg;
    }

    String prefix() {
        return prefix;
    }

    /** Returns the tangent of an angle in the plane of the turned axis, for a metre along the runway. */
    double riseAlong(double angleDeg) {
        return Angles.tanDeg(angleDeg) * turnCos;
    }

    /** Returns half the runway width in metres; 0 for a given layout of which only the signals are asked. */
    double halfWidthM() {
        if (request.atHelipad()) {
            return 0;
        }
        Optional<Double> width = request.number(Input.RUNWAY_WIDTH);
        if (width.isEmpty() && request.isGiven()) {
            reader.note(Message.of("siting.note.no-width"));
            return 0;
        }
        double entered = request.need(Input.RUNWAY_WIDTH);
        if (entered <= 0) {
            throw new SitingException(Message.of("siting.refused.more-than-zero", Input.RUNWAY_WIDTH.message()));
        }
        return entered / 2;
    }

    /** Returns the number of units, checked against those the family comes in. */
    int unitCount() {
        int count = request.number(Input.UNITS).map(number -> (int) Math.round(number)).orElse(family.unitCounts().get(0));
        if (!family.unitCounts().contains(count)) {
            throw new SitingException(Message.of("siting.refused.units", Families.name(family),
                    Words.list(family.unitCounts().stream().map(Words::count).toList()), Words.count(count), Input.UNITS.message()));
        }
        return count;
    }

    /** Returns the place that was given. */
    Place given() {
        double distance = request.need(Input.DISTANCE);
        return new Place(new LevelSolution(distance, 0, LevelSolution.Method.GIVEN, distance, ground.lensAt(distance)));
    }

    /** Returns the place at which the plane of an angle through a lens on the centre line passes a height over the origin. */
    Place solve(double heightM, double angleDeg, double levelFromM) {
        return new Place(ground.solve(heightM, riseAlong(angleDeg), levelFromM));
    }

    /** Returns the place beyond the hover point that was given, or at which the path passes through the eye at the hover. */
    Place helipadPlace() {
        if (request.has(Input.DISTANCE)) {
            return given();
        }
        reader.note(Message.of("siting.note.path-through-hover"));
        return solve(request.need(Input.HOVER_HEIGHT) + request.need(Input.EYE_ABOVE_SKIDS), slopeDeg, 0);
    }

    /** Returns the eye height over the origin on the slope itself, from the lens on the centre line, metres. */
    double nominalHeightM(FramePoint lens, double angleDeg) {
        return lens.alongM() * riseAlong(angleDeg) + lens.heightM();
    }

    /** Turns the axes of units and finds what bounds their signal. */
    Laid lay(Place place, List<UnitPlan> units) {
        refuseBefore(place);
        List<UnitPlan> turned = turnDeg == 0 ? units : units.stream().map(unit -> unit.turned(turnDeg)).toList();
        return new Laid(place, turned, bound(turned));
    }

    /**
     * Finds the place at which the units give an eye height over the threshold as the least that reads on slope. On ground of straight
     * pieces the first step is exact but for a turn of the axis, and the second with it.
     *
     * @param mehtM      wanted least on-slope eye height, metres
     * @param angleDeg   angle that is expected to bound it, decimal degrees
     * @param levelFromM level difference from which the published single step moves the unit, metres
     * @param units      lays the units at a place
     * @throws SitingException where no place gives it
     */
    Laid solveLeast(double mehtM, double angleDeg, double levelFromM, Function<Place, List<UnitPlan>> units) {
        Place place = solve(mehtM, angleDeg, levelFromM);
        Laid laid = lay(place, units.apply(place));
        for (int step = 0; Math.abs(laid.bound().heightM() - mehtM) > SOLVED_M; step++) {
            if (step == MOST_STEPS) {
                throw new SitingException(Message.of("siting.refused.no-least-height", Words.m(mehtM)));
            }
            double rise = riseAlong(laid.bound().angleDeg());
            double beside = laid.bound().heightM() - nominalHeightM(place.lens(), laid.bound().angleDeg());
            place = new Place(ground.solve(mehtM - beside, rise, levelFromM));
            laid = lay(place, units.apply(place));
        }
        keepClearance();
        return laid;
    }

    private void refuseBefore(Place place) {
        if (request.atHelipad() ? place.distanceM() < 0 : place.distanceM() <= 0) {
            throw new SitingException(Message.of(request.atHelipad() ? "siting.refused.before-hover" : "siting.refused.before-threshold",
                    Words.m(-place.distanceM())));
        }
    }

    private OnSlopeBound bound(List<UnitPlan> units) {
        return family.lowestOnSlope(units, allowanceDeg).or(() -> request.atHelipad() ? boundAbeam(units) : Optional.empty())
                .orElseThrow(() -> SitingException.wrong(Message.of(
                        request.atHelipad() ? "siting.nothing-on-slope-at-hover" : "siting.nothing-on-slope", Families.name(family))));
    }

    /** Abeam of the hover point nothing is seen there; what bounds the signal is read farther out, its plane carried back. */
    private Optional<OnSlopeBound> boundAbeam(List<UnitPlan> units) {
        if (units.stream().anyMatch(unit -> Math.abs(unit.place().alongM()) > ONE_PLACE_M)) {
            return Optional.empty();
        }
        List<UnitPlan> farther = units.stream().map(unit -> unit.at(new FramePoint(unit.place().alongM() + FAR_OUT_M,
                unit.place().rightM(), unit.place().heightM()))).toList();
        reader.note(Message.of("siting.note.abeam-of-hover"));
        return family.lowestOnSlope(farther, allowanceDeg).map(bound -> new OnSlopeBound(bound.unitId(), bound.angleDeg(),
                bound.heightM() - FAR_OUT_M * riseAlong(bound.angleDeg())));
    }

    /** Puts the layout together. */
    Siting finish(Laid laid, OptionalDouble nominalEyeHeightM, Surfaces.Anchor anchor) {
        Place place = laid.place();
        if (place.level().method() != LevelSolution.Method.GIVEN && Math.abs(place.lensM()) > 0) {
            reader.note(Message.of(place.lensM() >= 0 ? "siting.note.lenses-above" : "siting.note.lenses-below",
                    Words.m(Math.abs(place.lensM())), Words.count(place.level().iterations()), place.level().stopRule(),
                    Words.m(place.level().singleStepM())));
        }
        noteGround();
        noteTurn();
        new LimitNotes(family.ruleKey(), request, reader).of(laid.units(), laid.bound().heightM());
        if (!request.atHelipad() && !clearanceIsKept) {
            EyeTarget.wheelClearanceM(request, laid.bound().heightM())
                    .ifPresent(clearance -> EyeTarget.noteVerdict(request, reader, clearance));
        }
        return siting(laid, UnshiftedDistance.of(place.distanceM()), place.lens(), nominalEyeHeightM, anchor, request.groundSource(),
                Optional.of(place.level()));
    }

    private void noteGround() {
        request.notes().forEach(reader::note);
        reader.note(Message.of("siting.note.ground." + request.groundSource().key()));
    }

    private Siting siting(Laid laid, UnshiftedDistance unshifted, FramePoint reference, OptionalDouble nominalEyeHeightM,
            Surfaces.Anchor anchor, GroundSource source, Optional<LevelSolution> level) {
        OnSlopeBound bound = laid.bound();
        OptionalDouble clearance = request.atHelipad() ? OptionalDouble.empty() : EyeTarget.wheelClearanceM(request, bound.heightM());
        Surfaces surfaces = new Surfaces(family.ruleKey(), request, reader);
        Optional<SurfacePlan> surface = surfaces.make(anchor, bound.angleDeg()).map(plan -> plan.turned(turnDeg));
        return new Siting(family.key(), reader.rules().key(), reader.rules().edition(), slopeDeg, reference.alongM(), unshifted,
                bound.angleDeg(), bound.heightM(), nominalEyeHeightM, clearance, reference, source, Signals.inOrder(laid.units()), surface,
                surfaces.reason(), level, reader.notes(), reader.citations());
    }

    /** Returns what is taken off the setting that bounds the on-slope signal, decimal degrees; nothing at helipads. */
    double allowanceDeg() {
        return allowanceDeg;
    }

    /** Says that the distance follows from the aeroplane and its clearance, which needs no verdict. */
    void keepClearance() {
        clearanceIsKept = EyeTarget.isOfAeroplane(request);
    }

    private void noteTurn() {
        if (turnDeg != 0 && reader.has("obstacle.axis-turn-limit-deg")) {
            double limit = reader.degrees("obstacle.axis-turn-limit");
            if (Math.abs(turnDeg) > limit) {
                reader.note(Message.of("siting.note.turn", Words.degrees(Math.abs(turnDeg)), Words.wholeDegrees(limit)));
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
     * @param unshifted         the distance before any shift
     */
    Siting laid(List<UnitPlan> units, FramePoint reference, double lowestSettingDeg, OptionalDouble nominalEyeHeightM,
            UnshiftedDistance unshifted) {
        double nearest = units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElseThrow();
        double lensHeight = units.stream().map(UnitPlan::place).filter(place -> place.alongM() - nearest < ONE_PLACE_M)
                .mapToDouble(FramePoint::heightM).average().orElseThrow();
        Surfaces.Anchor anchor = new Surfaces.Anchor(lowestSettingDeg, nearest, unshifted.plus(nearest - reference.alongM()), lensHeight);
        Place place = new Place(new LevelSolution(reference.alongM(), 0, LevelSolution.Method.GIVEN, reference.alongM(),
                reference.heightM()));
        return siting(new Laid(place, units, bound(units)), unshifted, reference, nominalEyeHeightM, anchor, GroundSource.UNITS,
                Optional.empty());
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
            throw new SitingException(Message.of("siting.refused.no-bar", Words.count(bar)));
        }
        return found;
    }
}
