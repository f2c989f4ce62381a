package slopewright.ui.plan.internal.outline;

import slopewright.model.Aerodrome;

/**
 * A node of the outline that stands for elements of one kind.
 *
 * @param kind      which kind
 * @param aerodrome whose they are
 */
record OutlineGroup(Kind kind, Aerodrome aerodrome) {

    /** The kinds that have a node of their own. */
    enum Kind {
        /** Obstacles. */
        OBSTACLES,
        /** Pictures under the plan. */
        IMAGES
    }

    /**
     * Stands for elements that are not listed.
     *
     * @param count how many
     */
    record More(int count) {
    }
}
