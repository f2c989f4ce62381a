package slopewright.checks.internal.sector;

import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.Transition;
import slopewright.siting.ElementNames;

/** Compares the sectors of a unit with those of its equipment type. */
public final class Sectors {
    private static final double SAME_DEG = 0.001;
    private static final double SAME_MIN = 0.01;

    private Sectors() {
    }

    /**
     * Returns whether two rows of sectors are the same: as many edges, at the same angles, as sharp, of the same colours and states.
     *
     * @throws slopewright.checks.internal.Stop where an angle is missing
     */
    public static boolean same(List<Transition> own, List<Transition> entered) {
        if (own.size() != entered.size()) {
            return false;
        }
        for (int i = 0; i < own.size(); i++) {
            Transition laid = own.get(i);
            Transition wanted = entered.get(i);
            double from = AidFacts.need(laid.getOffsetDeg(), Message.of("missing.sector-edge"));
            double to = AidFacts.need(wanted.getOffsetDeg(), Message.of("missing.sector-edge-of-type",
                    ElementNames.of((Identified) wanted.eContainer())));
            if (Math.abs(from - to) > SAME_DEG || !isAsSharp(laid, wanted) || laid.getAboveColour() != wanted.getAboveColour()
                    || laid.getBelowColour() != wanted.getBelowColour()
                    || laid.getAboveState() != wanted.getAboveState() || laid.getBelowState() != wanted.getBelowState()) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAsSharp(Transition laid, Transition wanted) {
        return laid.getWidthMinutes() == null || wanted.getWidthMinutes() == null
                || Math.abs(laid.getWidthMinutes() - wanted.getWidthMinutes()) <= SAME_MIN;
    }
}
