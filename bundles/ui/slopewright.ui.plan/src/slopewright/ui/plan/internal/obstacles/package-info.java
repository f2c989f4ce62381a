/** Obstacles in great number: where they are, and how they are drawn and hit without a part each. */
package slopewright.ui.plan.internal.obstacles;
