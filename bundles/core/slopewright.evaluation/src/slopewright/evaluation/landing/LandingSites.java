package slopewright.evaluation.landing;

import java.util.Comparator;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.TrialCopies;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.Side;

/** Says which unit a helipad is looked at with: one that stands there, or else one that is proposed. */
public final class LandingSites {

    /** The family that is proposed where nobody names another. */
    public static final String USUAL_FAMILY = "heliport-sector";

    private LandingSites() {
    }

    /**
     * Returns the evaluation of the aid of a helipad: a portable one first, in the order of the directions. Where there is none, or none of
     * the family that was asked for, one is proposed on a copy, which changes nothing of the project.
     *
     * @param evaluation the evaluation of the project
     * @param helipad    a helipad of it
     * @param familyKey  the family; empty for whatever stands there
     * @return the evaluation
     * @throws slopewright.siting.SitingException where the family is unknown
     */
    public static AidEvaluation of(ProjectEvaluation evaluation, Helipad helipad, Optional<String> familyKey) {
        return helipad.getDirections().stream().flatMap(direction -> direction.getAids().stream())
                .filter(aid -> familyKey.isEmpty() || familyKey.get().equals(aid.getFamilyKey()))
                .min(Comparator.comparing(aid -> !Boolean.TRUE.equals(aid.getPortable()))).map(evaluation::aid)
                .orElseGet(() -> proposed(evaluation, helipad, familyKey.orElse(USUAL_FAMILY)));
    }

    private static AidEvaluation proposed(ProjectEvaluation evaluation, Helipad helipad, String familyKey) {
        Helipad copy = TrialCopies.of(helipad);
        if (copy.getDirections().isEmpty()) {
            ApproachDirection north = SlopewrightFactory.eINSTANCE.createApproachDirection();
            north.setTrueBearingDeg(0.0);
            copy.getDirections().add(north);
        }
        ApproachDirection direction = copy.getDirections().get(0);
        ApproachAid aid = Proposals.newAid(direction, familyKey, evaluation.rules(), Side.LEFT);
        direction.getAids().add(aid);
        return evaluation.propose(aid, evaluation.rules());
    }

    /** Returns whether an aid is one that was proposed for a helipad, and not one that stands in the project. */
    public static boolean isProposed(AidEvaluation evaluation, Helipad helipad) {
        return Projects.helipad(evaluation.host()).orElse(null) != helipad;
    }
}
