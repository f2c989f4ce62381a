package slopewright.evaluation.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidLayouts;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/**
 * An indicator as it was built: the planned quantities worked out again from the angles, places and levels that were measured, each
 * unit against the tolerance of the rule set, and the flight inspections against the plan. Units that were not measured count as planned.
 *
 * @param planned        the layout of the project
 * @param built          the layout that was measured; the planned one where nothing was
 * @param units          the units in the order of the layout
 * @param plannedMarginM height of the planned obstacle surface above the governing obstacle, metres; empty where there is none
 * @param builtMarginM   the same for the surface of the measured layout
 * @param flights        the flight inspections in the order of the project
 * @param accuracy       how exactly an angle has to be set; empty where the rule set says nothing
 * @param resetBeyond    beyond which difference a unit in use is set again; empty where the rule set says nothing
 * @param findings       what stands against acceptance, one sentence each; empty where nothing does
 */
public record AsBuilt(Siting planned, Siting built, List<Unit> units, OptionalDouble plannedMarginM, OptionalDouble builtMarginM,
        List<Flight> flights, Optional<CitedValue> accuracy, Optional<CitedValue> resetBeyond, List<String> findings) {

    private static final double ROUNDING_MIN = 1e-6;

    /** What a measured angle comes to. */
    public enum Verdict {
        /** No angle was measured. */
        NOT_MEASURED,
        /** Set as exactly as the rule set wants it. */
        WITHIN,
        /** Not set as exactly as the rule set wants it, but not so far off that a unit in use is set again. */
        OUTSIDE,
        /** So far off that it is to be set again. */
        SET_AGAIN,
        /** The rule set gives no tolerance. */
        NO_TOLERANCE
    }

    /**
     * A unit as it was measured.
     *
     * @param id          its name
     * @param settingDeg  the planned angle, decimal degrees
     * @param measuredDeg the measured angle, decimal degrees
     * @param offMin      measured less planned, minutes of arc
     * @param verdict     what that comes to
     * @param offAlongM   measured less planned place along the runway, metres
     * @param offRightM   measured less planned place to the side, metres
     * @param offLevelM   measured less planned level of the lens, metres
     */
    public record Unit(String id, double settingDeg, OptionalDouble measuredDeg, OptionalDouble offMin, Verdict verdict,
            OptionalDouble offAlongM, OptionalDouble offRightM, OptionalDouble offLevelM) {

        /** Returns what to do about the angle, in words: how far to raise or to lower it. */
        public String advice() {
            if (offMin.isEmpty()) {
                return "";
            }
            String turn = turn(offMin.getAsDouble());
            return switch (verdict) {
                case WITHIN -> "within tolerance";
                case OUTSIDE -> turn + " (outside the accuracy of setting)";
                case NO_TOLERANCE -> turn + " (no tolerance known)";
                default -> turn;
            };
        }
    }

    /**
     * A flight inspection against the plan.
     *
     * @param inspection     what was entered
     * @param offMin         angle found less approach slope, minutes of arc; empty where no angle was entered
     * @param publishedRange how far the indicator has to be seen by day; empty where the rule set says nothing
     */
    public record Flight(Inspection inspection, OptionalDouble offMin, Optional<CitedValue> publishedRange) {

        /** Returns by how much all units would be turned to bring the angle found to the approach slope; empty where none was found. */
        public String advice() {
            return offMin.isEmpty() ? "" : Math.abs(offMin.getAsDouble()) < 0.05 ? "as planned"
                    : turn(offMin.getAsDouble()) + ", all units alike, after the angles on the ground were measured again";
        }

        /** Returns whether the range found reaches the published one; empty where one of them is not known. */
        public Optional<Boolean> reachesRange() {
            return inspection.getUsableRangeM() == null ? Optional.empty()
                    : publishedRange.map(range -> inspection.getUsableRangeM() >= range.value());
        }
    }

    /** Copies the lists. */
    public AsBuilt {
        units = List.copyOf(units);
        flights = List.copyOf(flights);
        findings = List.copyOf(findings);
    }

    /** Returns whether the angle of any unit was measured. */
    public boolean isMeasured() {
        return units.stream().anyMatch(unit -> unit.measuredDeg().isPresent());
    }

    /** Returns the units whose angles were not measured. */
    public List<String> notMeasured() {
        return units.stream().filter(unit -> unit.measuredDeg().isEmpty()).map(Unit::id).toList();
    }

    private static String turn(double offMin) {
        return String.format(Locale.ROOT, "%s by %.1f'", offMin > 0 ? "lower" : "raise", Math.abs(offMin));
    }

    /**
     * Works out an indicator as it was built.
     *
     * @param evaluation the evaluation of the aid as it is planned
     * @return the results
     * @throws SitingException where the plan or the measured layout can not be worked out; the message says why
     */
    public static AsBuilt of(AidEvaluation evaluation) {
        ApproachAid aid = evaluation.aid();
        ApproachHost host = evaluation.host();
        RuleSet rules = evaluation.rules();
        Siting planned = evaluation.siting().orThrow();
        double datumM = AidLayouts.datumM(host).orElseThrow(() -> new SitingException("the elevation of " + Projects.label(host)
                + " is missing"));
        List<UnitPlan> measured = planned.units().stream().map(unit -> measured(unit, of(aid, unit), datumM)).toList();
        Siting built = measured.equals(planned.units()) ? planned : Families.get(planned.family()).assess(evaluation.request().orThrow(), rules,
                measured, planned.nominalDistanceM());
        Optional<CitedValue> accuracy = rules.find(planned.family() + ".setting-accuracy-min");
        Optional<CitedValue> beyond = rules.find(planned.family() + ".reset-beyond-min");
        List<Unit> units = planned.units().stream().map(unit -> unit(unit, of(aid, unit), datumM, accuracy, beyond)).toList();
        Optional<CitedValue> range = rules.find(planned.family() + ".useful-range-day-m");
        List<Flight> flights = aid.getInspections().stream().map(one -> new Flight(one, one.getOnSlopeAngleDeg() == null
                ? OptionalDouble.empty() : OptionalDouble.of(Angles.degToMinutes(one.getOnSlopeAngleDeg() - planned.slopeDeg())), range))
                .toList();
        AsBuilt result = new AsBuilt(planned, built, units, evaluation.marginM(), builtMarginM(evaluation, built), flights,
                accuracy, beyond, List.of());
        return new AsBuilt(planned, built, units, result.plannedMarginM(), result.builtMarginM(), flights, accuracy, beyond,
                result.against(host, rules));
    }

    /** Returns what stands against acceptance. */
    private List<String> against(ApproachHost host, RuleSet rules) {
        List<String> found = new ArrayList<>();
        if (!notMeasured().isEmpty()) {
            found.add("No angle was measured of " + String.join(", ", notMeasured()) + ".");
        }
        units.stream().filter(unit -> unit.verdict() == Verdict.SET_AGAIN || unit.verdict() == Verdict.OUTSIDE).forEach(unit -> found.add(
                "Unit " + unit.id() + ": " + unit.advice() + "."));
        if (builtMarginM.isPresent() && builtMarginM.getAsDouble() < 0) {
            found.add(String.format(Locale.ROOT, "An obstacle stands %.2f m through the obstacle surface as built.", -builtMarginM
                    .getAsDouble()));
        }
        for (AeroplaneGroup group : host.getRegularGroups()) {
            rules.wheelClearance().filter(table -> group.getEyeToWheelM() != null).flatMap(table -> table.group(group.getEyeToWheelM()))
                    .filter(band -> built.mehtM() - group.getEyeToWheelM() < band.minimumM()).ifPresent(band -> found.add(
                            String.format(Locale.ROOT, "Wheels of %s clear the threshold by %.2f m, less than the minimum of %.2f m.",
                                    Projects.label(group), built.mehtM() - group.getEyeToWheelM(), band.minimumM())));
        }
        if (flights.isEmpty()) {
            found.add("No flight inspection was entered.");
        }
        for (Flight flight : flights) {
            if (Boolean.FALSE.equals(flight.inspection().getObstacleClear())) {
                found.add("The flight inspection found the beam not clear of obstacles.");
            }
            if (flight.reachesRange().filter(reached -> !reached).isPresent()) {
                found.add(String.format(Locale.ROOT, "The flight inspection found a range of %.0f m, less than the published %.0f m.",
                        flight.inspection().getUsableRangeM(), flight.publishedRange().orElseThrow().value()));
            }
        }
        return found;
    }

    private static Optional<MeasuredUnit> of(ApproachAid aid, UnitPlan unit) {
        return aid.getUnits().stream().filter(one -> unit.id().equals(one.getLabel() == null ? one.getId() : one.getLabel())).findFirst()
                .map(LightUnit::getMeasured);
    }

    private static UnitPlan measured(UnitPlan unit, Optional<MeasuredUnit> found, double datumM) {
        if (found.isEmpty()) {
            return unit;
        }
        MeasuredUnit measured = found.get();
        FramePoint place = new FramePoint(measured.getAlongM() == null ? unit.place().alongM() : measured.getAlongM(),
                measured.getRightM() == null ? unit.place().rightM() : measured.getRightM(),
                measured.getLensElevationM() == null ? unit.place().heightM() : measured.getLensElevationM() - datumM);
        UnitPlan placed = unit.at(place);
        return measured.getSettingDeg() == null ? placed : placed.raised(measured.getSettingDeg() - unit.settingDeg());
    }

    private static Unit unit(UnitPlan plan, Optional<MeasuredUnit> found, double datumM, Optional<CitedValue> accuracy,
            Optional<CitedValue> beyond) {
        OptionalDouble setting = number(found.map(MeasuredUnit::getSettingDeg));
        OptionalDouble off = setting.isEmpty() ? setting
                : OptionalDouble.of(Angles.degToMinutes(setting.getAsDouble() - plan.settingDeg()));
        return new Unit(plan.id(), plan.settingDeg(), setting, off, verdict(off, accuracy, beyond),
                number(found.map(MeasuredUnit::getAlongM).map(along -> along - plan.place().alongM())),
                number(found.map(MeasuredUnit::getRightM).map(right -> right - plan.place().rightM())),
                number(found.map(MeasuredUnit::getLensElevationM).map(level -> level - datumM - plan.place().heightM())));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Verdict verdict(OptionalDouble offMin, Optional<CitedValue> accuracy, Optional<CitedValue> beyond) {
        if (offMin.isEmpty()) {
            return Verdict.NOT_MEASURED;
        }
        double off = Math.abs(offMin.getAsDouble()) - ROUNDING_MIN;
        if (accuracy.isEmpty() && beyond.isEmpty()) {
            return Verdict.NO_TOLERANCE;
        }
        if (off <= accuracy.or(() -> beyond).get().value()) {
            return Verdict.WITHIN;
        }
        return beyond.isPresent() && off <= beyond.get().value() ? Verdict.OUTSIDE : Verdict.SET_AGAIN;
    }

    private static OptionalDouble builtMarginM(AidEvaluation evaluation, Siting built) {
        return evaluation.surroundings().value().flatMap(around -> built.surface().map(plan -> around.compare(plan.geometry()).marginM()))
                .orElseGet(OptionalDouble::empty);
    }
}
