/** The palette of the plan editor. */
package slopewright.ui.plan.internal.palette;
