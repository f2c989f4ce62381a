package slopewright.evaluation.landing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.PadArea;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.TrialCopies;
import slopewright.evaluation.portable.DeckMotion;
import slopewright.evaluation.portable.SettingAllowance;
import slopewright.evaluation.portable.SightLine;
import slopewright.evaluation.portable.SightLines;
import slopewright.evaluation.portable.SlopeScale;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.EquipmentType;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;

/** Lays an aid out for one slope after another on a copy, as the edit does that takes a direction, and says what it is held against. */
final class TrialLayouts {
    private static final double ROUNDING_DEG = 1e-6;

    private final AidEvaluation evaluation;
    private final ApproachAid copy;
    private final ApproachDirection direction;
    private final boolean sighted;

    /**
     * What a layout is held against.
     *
     * @param line    what it is
     * @param surface the surface or plane, in the frame of its landing direction
     * @param reason  why it blocks whatever stands there; empty where it does not
     * @param onPad   where a unit of the layout stands on the pad, or may do so; empty where all are clear of it
     */
    record Held(LandingCell.Line line, ProtectionSurface surface, Optional<Message> reason, Optional<PadArea.Where> onPad) {

        boolean isSight() {
            return line == LandingCell.Line.RED_EDGE;
        }

        /** Shielding is a matter of the obstacle surface; a line of sight knows none. */
        boolean mayBeShielded() {
            return line == LandingCell.Line.SURFACE;
        }
    }

    TrialLayouts(AidEvaluation evaluation) {
        this.evaluation = evaluation;
        copy = TrialCopies.of(evaluation.aid());
        direction = (ApproachDirection) Projects.host(copy).orElseThrow();
        sighted = Boolean.TRUE.equals(copy.getPortable())
                || evaluation.family().filter(family -> family.traits().contains(Trait.DARK_BELOW)).isPresent();
    }

    /** Returns whether lines of sight count beside the obstacle surface. */
    boolean isSighted() {
        return sighted;
    }

    /** Turns the copy to a landing direction, decimal degrees from true north; the ground under its units is that of this direction. */
    void turn(double trueDeg) {
        direction.setTrueBearingDeg(trueDeg);
    }

    /** Returns what the aid is held against once it is laid out for a slope; a reason where it cannot be, or something is not known. */
    Attempt<List<Held>> at(double slopeDeg) {
        return Attempt.of(() -> layOut(slopeDeg)).then(this::held);
    }

    private Siting layOut(double slopeDeg) {
        Proposals.layOutForSlope(copy, slopeDeg, evaluation.rules());
        return AidLayouts.evaluate(copy, evaluation.rules());
    }

    private Attempt<List<Held>> held(Siting siting) {
        Optional<Message> unsettable = unsettable(siting);
        if (unsettable.isPresent()) {
            return Attempt.failure(unsettable.get());
        }
        if (DeckMotion.isUnknown(evaluation.host())) {
            return Attempt.failure(Message.of("landing.deck-unknown"));
        }
        if (siting.surface().isEmpty()) {
            return Attempt.failure(siting.noSurface().orElse(Message.of("siting.no-surface")));
        }
        List<Held> held = new ArrayList<>();
        held.add(new Held(LandingCell.Line.SURFACE, siting.surface().map(SurfacePlan::geometry).orElseThrow(), Optional.empty(), onPad(
                siting)));
        if (sighted) {
            List<SightLine.Drawn> lines = SightLines.draw(evaluation, siting);
            lines.forEach(line -> held.add(held(line)));
            if (lines.size() < 2 * siting.units().size()) {
                return Attempt.failure(Message.of("sight.no-red-edge"));
            }
        }
        return Attempt.success(held);
    }

    /** Returns where the unit stands that stands worst on the pad or in its safety area; empty where all are clear, or no size is known. */
    private Optional<PadArea.Where> onPad(Siting siting) {
        return Projects.helipad(direction).flatMap(PadArea::of).flatMap(area -> siting.units().stream()
                .map(unit -> area.standing(unit.place(), direction.getTrueBearingDeg()).where())
                .filter(where -> where != PadArea.Where.CLEAR).min(Comparator.naturalOrder()));
    }

    private static Held held(SightLine.Drawn line) {
        Optional<Message> below = line.lowestAngleDeg() < 0
                ? Optional.of(Message.of("landing.below-horizon", line.kind().message())) : Optional.empty();
        return new Held(LandingCell.Line.valueOf(line.kind().name()), line.lowest(), below, Optional.empty());
    }

    /** A pair sets its units above and below the slope: each of them must be within the range. */
    private Optional<Message> unsettable(Siting siting) {
        EquipmentType type = copy.getEquipment();
        boolean within = type == null || siting.units().stream().mapToDouble(UnitPlan::settingDeg).allMatch(
                setting -> !(type.getMinSettingDeg() != null && setting < type.getMinSettingDeg() - ROUNDING_DEG)
                        && !(type.getMaxSettingDeg() != null && setting > type.getMaxSettingDeg() + ROUNDING_DEG));
        return within ? betweenMarks(siting) : Optional.of(Message.of("landing.unsettable"));
    }

    /** What the card refuses, because its nearest mark is another setting, is no slope that can be set. */
    private Optional<Message> betweenMarks(Siting siting) {
        SettingAllowance allowance = SettingAllowance.of(evaluation, siting);
        return SlopeScale.of(copy.getEquipment()).flatMap(scale -> siting.units().stream().map(unit -> scale.mark(unit.settingDeg()))
                .filter(allowance::isOtherSetting).findFirst()).map(mark -> Message.of("landing.between-marks",
                        Words.min(Math.abs(mark.offMin())), Words.min(allowance.accuracy().value())));
    }
}
