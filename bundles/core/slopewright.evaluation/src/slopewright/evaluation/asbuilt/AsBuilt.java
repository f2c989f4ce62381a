package slopewright.evaluation.asbuilt;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidLayouts;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * An indicator as it was built: the same evaluation as that of the plan, of units with the angles, places and levels that were measured;
 * each unit against the tolerance of the rule set, and the flight inspections against the plan. Units that were not measured count as
 * planned.
 *
 * @param plan      the evaluation of the aid as it is planned
 * @param measured  the evaluation of the aid as it was measured; that of the plan where nothing was
 * @param units     the units in the order of the layout
 * @param flights   the flight inspections in the order of the project
 * @param tolerance by how much an angle may be off
 * @param findings  what stands against acceptance, one sentence each; empty where nothing does
 */
public record AsBuilt(AidEvaluation plan, AidEvaluation measured, List<Unit> units, List<Flight> flights, SettingTolerance tolerance,
        List<Message> findings) {

    /** Less than this rounds to no minutes at all. */
    private static final double AS_PLANNED_MIN = 0.05;

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
    public record Unit(String id, double settingDeg, OptionalDouble measuredDeg, OptionalDouble offMin, SettingTolerance.Verdict verdict,
            OptionalDouble offAlongM, OptionalDouble offRightM, OptionalDouble offLevelM) {

        /** Returns what to do about the angle: how far to raise or to lower it; empty where none was measured. */
        public Optional<Message> advice() {
            if (offMin.isEmpty()) {
                return Optional.empty();
            }
            Message turn = turn(offMin.getAsDouble());
            return Optional.of(switch (verdict) {
                case WITHIN -> Message.of("asbuilt.within");
                case OUTSIDE -> Message.of("asbuilt.outside", turn);
                case NO_TOLERANCE -> Message.of("asbuilt.no-tolerance", turn);
                default -> turn;
            });
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
        public Optional<Message> advice() {
            if (offMin.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(Math.abs(offMin.getAsDouble()) < AS_PLANNED_MIN ? Message.of("asbuilt.flight-as-planned")
                    : Message.of("asbuilt.flight-turn", turn(offMin.getAsDouble())));
        }

        /** Returns whether the range found reaches the published one; empty where one of them is not known. */
        public Optional<Boolean> reachesRange() {
            return inspection.getUsableRangeM() == null ? Optional.empty()
                    : publishedRange.map(range -> inspection.getUsableRangeM() >= range.value());
        }
    }

    /** Copies the lists. */
    public AsBuilt {
        Objects.requireNonNull(plan);
        Objects.requireNonNull(measured);
        Objects.requireNonNull(tolerance);
        units = List.copyOf(units);
        flights = List.copyOf(flights);
        findings = List.copyOf(findings);
    }

    /**
     * Works out an indicator as it was built.
     *
     * @param evaluation the evaluation of the aid as it is planned
     * @return the results
     * @throws SitingException where the plan or the measured layout cannot be worked out; the message says why
     */
    public static AsBuilt of(AidEvaluation evaluation) {
        ApproachAid aid = evaluation.aid();
        Siting planned = evaluation.siting().orThrow();
        AidEvaluation measured = measured(evaluation).orElse(evaluation);
        measured.siting().orThrow();
        SettingTolerance tolerance = SettingTolerance.of(evaluation.rules(), evaluation.family().orElseThrow());
        double datumM = AidLayouts.datumM(evaluation.host()).orElseThrow();
        List<Unit> units = planned.units().stream().map(unit -> unit(unit, measuredOf(aid, unit), datumM, tolerance)).toList();
        Optional<CitedValue> range = evaluation.rules().find(evaluation.family().get().ruleKey() + ".useful-range-day-m");
        List<Flight> flights = aid.getInspections().stream().map(flight -> new Flight(flight, flight.getOnSlopeAngleDeg() == null
                ? OptionalDouble.empty() : OptionalDouble.of(Angles.degToMinutes(flight.getOnSlopeAngleDeg() - planned.slopeDeg())), range))
                .toList();
        return new AsBuilt(evaluation, measured, units, flights, tolerance, AcceptanceFindings.of(measured, units, flights, tolerance));
    }

    /**
     * Evaluates an aid as it was measured; units that were not measured count as planned.
     *
     * @param evaluation the evaluation of the aid as it is planned
     * @return the evaluation of a copy of it; empty where nothing was measured
     */
    public static Optional<AidEvaluation> measured(AidEvaluation evaluation) {
        return evaluation.aid().getUnits().stream().noneMatch(unit -> unit.getMeasured() != null) ? Optional.empty()
                : Optional.of(evaluation.trial(copy -> copy.getUnits().forEach(AsBuilt::takeMeasured)));
    }

    private static void takeMeasured(LightUnit unit) {
        MeasuredUnit found = unit.getMeasured();
        if (found != null) {
            unit.setAlongM(found.getAlongM() == null ? unit.getAlongM() : found.getAlongM());
            unit.setRightM(found.getRightM() == null ? unit.getRightM() : found.getRightM());
            unit.setLensElevationM(found.getLensElevationM() == null ? unit.getLensElevationM() : found.getLensElevationM());
            unit.setSettingDeg(found.getSettingDeg() == null ? unit.getSettingDeg() : found.getSettingDeg());
        }
    }

    private static Optional<MeasuredUnit> measuredOf(ApproachAid aid, UnitPlan plan) {
        return aid.getUnits().stream().filter(unit -> plan.id().equals(unit.getLabel() == null ? unit.getId() : unit.getLabel()))
                .findFirst().map(LightUnit::getMeasured);
    }

    private static Unit unit(UnitPlan plan, Optional<MeasuredUnit> found, double datumM, SettingTolerance tolerance) {
        OptionalDouble setting = number(found.map(MeasuredUnit::getSettingDeg));
        OptionalDouble off = setting.isEmpty() ? setting
                : OptionalDouble.of(Angles.degToMinutes(setting.getAsDouble() - plan.settingDeg()));
        return new Unit(plan.id(), plan.settingDeg(), setting, off, tolerance.verdict(off),
                number(found.map(MeasuredUnit::getAlongM).map(along -> along - plan.place().alongM())),
                number(found.map(MeasuredUnit::getRightM).map(right -> right - plan.place().rightM())),
                number(found.map(MeasuredUnit::getLensElevationM).map(level -> level - datumM - plan.place().heightM())));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Message turn(double offMin) {
        return Message.of(offMin > 0 ? "asbuilt.lower" : "asbuilt.raise", Words.min(Math.abs(offMin)));
    }

    /** Returns the layout of the project. */
    public Siting planned() {
        return plan.siting().orThrow();
    }

    /** Returns the layout that was measured. */
    public Siting built() {
        return measured.siting().orThrow();
    }

    /** Returns the margin of the aid as it is planned: {@link AidEvaluation#marginM()}. */
    public OptionalDouble plannedMarginM() {
        return plan.marginM();
    }

    /** Returns the margin as built: the same comparison with the obstacle surface of the measured layout. */
    public OptionalDouble builtMarginM() {
        return measured.marginM();
    }

    /** Returns how exactly an angle has to be set; empty where the rule set says nothing. */
    public Optional<CitedValue> accuracy() {
        return tolerance.accuracy();
    }

    /** Returns beyond which difference a unit in use is set again; empty where the rule set says nothing. */
    public Optional<CitedValue> resetBeyond() {
        return tolerance.resetBeyond();
    }

    /** Returns whether the angle of any unit was measured. */
    public boolean isMeasured() {
        return units.stream().anyMatch(unit -> unit.measuredDeg().isPresent());
    }

    /** Returns the units whose angles were not measured. */
    public List<String> notMeasured() {
        return units.stream().filter(unit -> unit.measuredDeg().isEmpty()).map(Unit::id).toList();
    }
}
